/* build/prepnamed.c: what is done to a food that was named before: "peel those", "I've diced it".
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "build/instruction.h"
#include "build/stepwords.h"

/* What nobody cuts. */
#define LOOSE                                                                        \
    (MARK_OF(fat) | MARK_OF(water) | MARK_OF(flour) | MARK_OF(salt) | MARK_OF(dairy) \
     | MARK_OF(leavening))

/* Whether the line was put in as it was said, or stands in a list of which nobody says which food
 * is meant: what comes next is done to all that is in there. */
static bool is_one_of_several(const struct builder *b, const struct ingredient *line, bool cut)
{
    const uint64_t putting = MARK_OF(mixes) | MARK_OF(finishes);
    size_t first = line->words.first;
    for (size_t i = first; i-- > 0 && b->r->words.at[i].after < AFTER_STOP;)
        if (b->r->words.at[i].tag == TAG_ACTION && b->r->words.at[i].entry->marks & putting)
            return true;
    return !cut && first && b->r->words.at[first - 1].tag == TAG_AND
           && b->dish->ingredients.count > 1 && line->words.last < b->sentence->first;
}

/* "Get that grated", "have them sliced" */
static bool is_asked_for(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    return i > 1 && (c->at[i - 1].tag == TAG_IT || c->at[i - 1].tag == TAG_THE)
           && (c->at[i - 2].tag == TAG_HAVE
               || (c->at[i - 2].tag == TAG_ACTION && chunk_marks(&c->at[i - 2]) & MARK_OF(light)));
}

/* "I've diced those", "I minced them earlier", "they're already peeled": the participle of chunk
 * `i` with its "it" before or behind. */
static struct text done_to_it(struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    const uint64_t sorts = MARK_OF(cuts) | MARK_OF(takes);
    size_t k = i;
    while (k > 0 && (c->at[k - 1].tag == TAG_WILL || c->at[k - 1].tag == TAG_OTHER))
        k--;
    unsigned char before = k ? c->at[k - 1].tag : (unsigned char) TAG_SO;
    size_t object = object_of(b, i);
    bool it = object > 0, told = it && prepared_as(b, i, sorts);
    bool are = (before == TAG_BE && k > 1 && c->at[k - 2].tag == TAG_IT) || before == TAG_THERE;
    if (before == TAG_IT && prepares(&c->at[i], MARK_OF(waits))) /* "they soaked all night" */
        return plain_participle(b, c->at[i].entry);
    if (!told && !((are || is_asked_for(b, i)) && prepares(&c->at[i], sorts)))
        return TEXT_EMPTY;
    return told ? prepared(b, i, object, sorts) : participle_at(b, i).prep;
}

/* "Take the pits out", "pull the strings off them": the part that a verb takes away. */
static struct text removed_by(const struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    if (c->scope & SCOPE_NOT_DONE)
        return TEXT_EMPTY;
    struct text done = removed_at(b, index + 1).prep;
    return done.length ? done : part_taken(b, index);
}

/* "Two large onions you need to chop", "a clove of garlic that I smash": the verb whose object is
 * the food before it. */
static bool is_wanted(const struct builder *b, const struct ingredient *line, size_t index)
{
    const struct chunks *c = &b->chunks;
    size_t i = index;
    while (i > 1 && c->at[i - 1].tag == TAG_AND && c->at[i - 2].tag == TAG_ACTION
           && chunk_marks(&c->at[i - 2]) & MARK_OF(prep))
        i -= 2; /* "those I drain and rinse" */
    while (i > 0
           && (c->at[i - 1].tag == TAG_WILL || c->at[i - 1].tag == TAG_HAVE
               || c->at[i - 1].tag == TAG_TO))
        i--;
    bool who = i > 0 && (c->at[i - 1].tag == TAG_YOU || c->at[i - 1].tag == TAG_ME);
    bool that = who && i > 1
                && (c->at[i - 2].tag == TAG_THE || c->at[i - 2].tag == TAG_THERE
                    || chunk_marks(&c->at[i - 2]) & MARK_OF(asks)); /* "which I peel" */
    size_t next = index + 1;
    bool ends = next >= c->count || b->r->words.at[c->at[index].last].after >= AFTER_COMMA;
    if (that && !ends)
        ends = c->at[next].tag == TAG_AND || c->at[next].tag == TAG_SO
               || c->at[next].tag == TAG_MANNER;
    size_t first = c->at[that ? i - 2 : who ? i - 1 : i].first;
    return ends && (that || i < index) && first == line->words.last + 1;
}

/* Whether chunk `i` is a verb that prepares, in its base form, with no object of its own. */
static bool is_bare_verb(const struct builder *b, size_t i, uint64_t sorts)
{
    return i < b->chunks.count && b->chunks.at[i].tag == TAG_ACTION
           && prepares(&b->chunks.at[i], sorts);
}

/* "A can of chickpeas drain and rinse | and two potatoes peel and dice": orders right behind their
 * food, where captions have no stops. */
static bool is_ordered_behind(const struct builder *b, const struct ingredient *line, size_t index,
                              uint64_t sorts)
{
    const struct chunks *c = &b->chunks;
    size_t first = index, last = index;
    while (first > 1 && c->at[first - 1].tag == TAG_AND && is_bare_verb(b, first - 2, sorts))
        first -= 2;
    while (chunk_tag(c, last + 1) == TAG_AND && is_bare_verb(b, last + 2, sorts))
        last += 2;
    const struct chunk *next = last + 1 < c->count ? &c->at[last + 1] : NULL;
    if (next && next->tag == TAG_AND)
        next = last + 2 < c->count ? next + 1 : NULL;
    bool ends =
        !next || (next->tag == TAG_LINE && next->match && next->match->rule->kind == RULE_line);
    return !b->r->punctuated && ends && c->at[first].first == told_end(b, line) + 1;
}

/* "They've been soaking overnight", "I've had those draining": what it does by itself since. */
static struct text doing_since(const struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    unsigned char before = index ? b->chunks.at[index - 1].tag : (unsigned char) TAG_SO;
    unsigned char had = index > 1 ? b->chunks.at[index - 2].tag : (unsigned char) TAG_SO;
    bool since = before == TAG_RETURN || (before == TAG_BE && had == TAG_HAVE)
                 || ((before == TAG_IT || before == TAG_THE) && had == TAG_HAVE);
    const bool wanted = index && is_step_word(b, &b->chunks.at[index - 1], "wants")
                        && had == TAG_IT; /* "they want slicing" */
    const struct entry *verb = since || wanted ? action_entry(b->k, entry_value(c->entry)) : NULL;
    bool waits = verb && verb->marks & MARK_OF(prep)
                 && verb->marks & (MARK_OF(waits) | MARK_OF(takes) | (wanted ? MARK_OF(cuts) : 0U));
    const struct entry *done =
        waits && !(c->scope & SCOPE_NOT_DONE) ? participle(b->k, verb) : NULL;
    return done ? plain_participle(b, done) : TEXT_EMPTY;
}

/* "You squash with the knife", "peel with a spoon", "and you wash until it's clear": the order
 * names its tool or end, and no object. */
static bool has_tool_alone(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    unsigned char before = index ? c->at[index - 1].tag : (unsigned char) TAG_SO;
    if (index && is_and_cook(b, &c->at[index - 1], TAG_YOU))
        before = TAG_YOU;
    if (c->at[index].tag != TAG_ACTION
        || (before != TAG_SO && before != TAG_YOU && before != TAG_AND))
        return false;
    if (chunk_tag(c, index + 1) == TAG_UNTIL)
        return before == TAG_YOU;
    if (chunk_tag(c, index + 1) != TAG_WITH)
        return false;
    size_t i = index + 2;
    while (chunk_tag(c, i) == TAG_THE || chunk_tag(c, i) == TAG_ARTICLE
           || chunk_tag(c, i) == TAG_SIZE || chunk_tag(c, i) == TAG_STATE)
        i++;
    return chunk_tag(c, i) == TAG_TOOL;
}

/* What chunk `index` says was done to the food spoken of. */
static struct text prep_of_it(struct builder *b, const struct ingredient *line, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    if (c->tag == TAG_STATE || c->tag == TAG_EXTRACT || c->tag == TAG_INTO)
        return said_of_it(b, line, index);
    if (c->tag == TAG_DOING)
        return doing_since(b, index);
    if (c->tag == TAG_DONE) {
        struct text done = done_to_it(b, index);
        unsigned char who = done.length ? (unsigned char) TAG_SO : teller_of(b, index);
        return who == TAG_ME || who == TAG_HAVE ? removed_by(b, index) : done;
    }
    const uint64_t sorts = MARK_OF(cuts) | MARK_OF(takes);
    if (has_it_inside(b, c) && prepares(c, sorts)) {
        const struct entry *plain = action_entry(b->k, entry_value(c->entry)),
                           *done = plain ? participle(b->k, plain) : NULL;
        return done ? entry_shown(done) : TEXT_EMPTY;
    }
    if (is_it(b, index + 1))
        return prepared(b, index, index + 1, sorts);
    if (has_tool_alone(b, index) && prepares(c, sorts))
        return prepared(b, index, index, sorts);
    if (prepares(c, sorts)
        && (is_wanted(b, line, index) || is_ordered_behind(b, line, index, sorts)))
        return prepared(b, index, index, sorts);
    const struct entry *one_of = object_of(b, index) ? prepared_as(b, index, sorts) : NULL;
    if (one_of && !(one_of->marks & MARK_OF(pieces)))
        return plain_participle(b, one_of);
    return removed_by(b, index);
}

/* The word at which the verb of the chunk begins, "squeeze the juice"; its own where none is near.
 */
static size_t verb_before(const struct builder *b, size_t index)
{
    for (size_t i = index; i-- > 0 && i + 3 > index;)
        if (b->chunks.at[i].tag == TAG_ACTION)
            return b->chunks.at[i].first;
    return b->chunks.at[index].first;
}

void read_prep_of_it(struct builder *b, struct ingredient *line, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    size_t near = chunk_marks(c) & MARK_OF(takes) ? NEAR_WORDS / 2 : NEAR_WORDS;
    size_t told = told_end(b, line);
    size_t until = c->tag == TAG_EXTRACT ? verb_before(b, index) : c->first;
    bool here = line->id >= b->sentence->first && c->first - told <= 2; /* "raisins, soak them" */
    if ((!line->amount.known && !here) || c->first <= told || c->first - told > near
        || is_worked_on(b, line, until))
        return;
    bool several = means_several(b, index);
    struct ingredient *first = several ? list_of(b, line) : line;
    bool cut = chunk_marks(c) & MARK_OF(cuts) && !(line->entry && line->entry->marks & LOOSE);
    bool oil = several && line->entry && line->entry->marks & MARK_OF(uncounted)
               && line->entry->marks & (MARK_OF(fat) | MARK_OF(water) | MARK_OF(flour));
    if (oil || (first == line && is_one_of_several(b, line, cut)))
        return; /* "oil in the pan, and flatten them" */
    struct text prep = prep_of_it(b, line, index);
    size_t it = object_of(b, index);
    if (!prep.length && first == line && it)
        prep = prepared_it(b, line, c, it);
    else if (!prep.length && first == line && has_it_inside(b, c))
        prep = prepared_inside(b, line, c);
    for (; first <= line; first++)
        add_line_prep(b, first, prep);
}
