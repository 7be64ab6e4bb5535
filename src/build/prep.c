/* build/prep.c: what was done to a food before it goes in.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "base/arena.h"
#include "build/instruction.h"
#include "build/wording.h"

/* "You slice it": a verb so few words after a food is done to that food alone. */
#define NEAR_WORDS 24

/* "Two cloves. Crushed.": participles that begin a sentence so few words after a food are its own.
 */
#define ALONE_WORDS 3

static bool has_text(const text_list *list, struct text t)
{
    for (size_t i = 0; i < list->count; i++)
        if (text_equal(list->at[i], t))
            return true;
    return false;
}

/* "Cut in cubes" says all that "cut" says. */
static bool is_said(const text_list *list, struct text t)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->at[i].length > t.length && list->at[i].at[t.length] == ' '
            && text_equal(text_slice(list->at[i], 0, t.length), t))
            return true;
    return has_text(list, t);
}

static void add_text(struct arena *a, text_list *list, struct text t)
{
    if (t.length && !is_said(list, t))
        *LIST_ADD(a, list) = t;
}

/* The words as a line prints them: numbers as digits. */
static struct text printed(struct builder *b, size_t first, size_t last)
{
    struct prose p = {.begun = PROSE_BYTES}; /* begins inside a sentence: no capital */
    say_words(b, &p, first, last);
    return prose_text(&p, b->r->arena);
}

/* The participle of a verb, which the loader made of the same row; NULL when it has none. */
static const struct entry *participle(const struct pack *k, const struct entry *verb)
{
    size_t count;
    const struct entry *all = pack_entries(k, &count);
    for (size_t i = (size_t) (verb - all);
         i < count && entry_file(&all[i]) == entry_file(verb) && all[i].line == verb->line; i++)
        if (all[i].tag == TAG_DONE && text_equal(entry_value(&all[i]), entry_value(verb)))
            return &all[i];
    return NULL;
}

/* The participle without its particle: "chopped" of "chopped up". */
static struct text plain_participle(const struct builder *b, const struct entry *done)
{
    if (done->words_count == 1)
        return entry_shown(done);
    const struct entry *verb = action_entry(b->k, entry_value(done));
    const struct entry *plain = verb ? participle(b->k, verb) : NULL;
    return plain && plain->marks & MARK_OF(prep) ? entry_shown(plain) : entry_shown(done);
}

static void add_word(struct builder *b, struct ingredient *line, size_t i)
{
    const struct word *w = &b->r->words.at[i];
    if (!w->entry)
        return;
    if (w->tag == TAG_DONE && w->entry->marks & MARK_OF(prep))
        add_text(b->r->arena, &line->prep, plain_participle(b, w->entry));
    else if (w->tag == TAG_STATE && w->entry->marks & MARK_OF(prep))
        add_text(b->r->arena, &line->prep, entry_value(w->entry));
    else if (w->tag == TAG_EXTRACT)
        add_text(b->r->arena, &line->prep, entry_value(w->entry));
    else if (w->tag == TAG_STATE)
        add_text(b->r->arena, &line->state, entry_shown(w->entry));
    else if (w->tag == TAG_SIZE && !line->size.length)
        line->size = entry_shown(w->entry);
}

void read_prep_inside(struct builder *b, struct ingredient *line, const struct match *m)
{
    for (size_t i = m->words.first; i <= m->words.last; i++)
        if (b->r->words.at[i].tag != TAG_INSIDE && !(b->r->words.at[i].scope & SCOPE_NEGATED))
            add_word(b, line, i);
}

/* Whether the chunk leads to the pieces: "into" by itself, or as the last word of "cut into". */
static bool ends_in_into(const struct builder *b, const struct chunk *c)
{
    if (c->tag == TAG_INTO)
        return true;
    return c->first < c->last
           && entry_as(pack_find(b->k, b->r->words.at[c->last].key, NULL), TAG_INTO);
}

/* "cut into half-inch cubes": the chunk that names the pieces; 0 when chunk `index` begins no such
 * phrase. */
static size_t pieces_end(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    size_t i = index + 1;
    bool half_inch = i < c->count && c->at[i].tag == TAG_LENGTH; /* "cut in half inch cubes" */
    if (!ends_in_into(b, &c->at[index]) && !half_inch) {
        if (i >= c->count || c->at[i].tag != TAG_INTO
            || b->r->words.at[c->at[index].last].after >= AFTER_COMMA)
            return 0;
        i++;
    }
    for (; i < c->count && i < index + 6; i++) {
        unsigned char tag = c->at[i].tag;
        if (tag == TAG_COUNTER || tag == TAG_DISH || tag == TAG_OTHER || tag == TAG_FRACTION)
            return i;
        if (tag != TAG_MEASURE && tag != TAG_LENGTH && tag != TAG_SIZE && tag != TAG_STATE
            && tag != TAG_ARTICLE && tag != TAG_MANNER && tag != TAG_NUMBER && tag != TAG_FULLNESS)
            return 0;
    }
    return 0;
}

/* "All" without a food behind it. */
static bool is_share(const struct chunk *c)
{
    return c->match && c->match->rule->kind == RULE_share;
}

/* Whether a chunk may stand among the preparations of a food without ending them. */
static bool passes(const struct chunk *c)
{
    if (is_share(c))
        return true;
    switch (c->tag) {
    case TAG_DONE:
    case TAG_MANNER:
    case TAG_STATE:
    case TAG_SIZE:
    case TAG_MEASURE:
    case TAG_AND:
    case TAG_BE:
    case TAG_NOT:
    case TAG_OTHER:
    case TAG_SORRY:
    case TAG_WHOLE:
    case TAG_EACH:
    case TAG_THE:
    case TAG_THERE:
        return true;
    default:
        return false;
    }
}

/* What a preparation is when it begins at a chunk: its text, and the last chunk of it. */
struct phrase {
    struct text prep; /* empty: none begins here */
    size_t last;
};

/* "cut into half-inch cubes"; "chopped"; "chopped up". */
static struct phrase participle_at(struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    const struct chunk *k = &c->at[i];
    if (k->tag != TAG_DONE || k->scope & SCOPE_NOT_DONE)
        return (struct phrase){0};
    size_t end = pieces_end(b, i);
    bool prep = chunk_marks(k) & MARK_OF(prep);
    if (end && (prep || c->at[end].tag == TAG_COUNTER))
        return (struct phrase){printed(b, k->first, c->at[end].last), end};
    return (struct phrase){prep ? plain_participle(b, k->entry) : TEXT_EMPTY, i};
}

/* "one red pepper, in big strips" */
static struct phrase pieces_at(struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    size_t end = c->at[i].tag == TAG_INTO ? pieces_end(b, i) : 0;
    if (!end || c->at[end].tag != TAG_COUNTER || !(chunk_marks(&c->at[end]) & MARK_OF(plural)))
        return (struct phrase){0};
    return (struct phrase){printed(b, c->at[i].first, c->at[end].last), end};
}

/* "water, lukewarm", "a stick of butter, soft": a state behind the food is one to bring it to. */
static struct phrase state_at(const struct builder *b, size_t i)
{
    const struct chunk *k = &b->chunks.at[i];
    bool prep = k->tag == TAG_STATE && chunk_marks(k) & MARK_OF(prep)
                && !(k->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL));
    return (struct phrase){prep ? entry_value(k->entry) : TEXT_EMPTY, i};
}

/* What table removed-parts says of the last word of chunk `i`: what a food is called without that
 * part; empty for "off" and "out", which say that it is gone. False where the word is not listed.
 */
static bool is_removed(const struct builder *b, size_t i, struct text *done)
{
    const struct table *t = pack_table(b->k, "removed-parts");
    size_t row =
        t && i < b->chunks.count ? table_find(t, b->r->words.at[b->chunks.at[i].last].key) : 0;
    if (!t || i >= b->chunks.count || row >= t->rows)
        return false;
    *done = table_cell(t, row, table_column(t, "done"));
    return true;
}

static bool is_off(const struct builder *b, size_t i)
{
    struct text done;
    return is_removed(b, i, &done) && !done.length;
}

/* "strings off", "with the crusts cut off", "seeds taken out" */
static struct phrase removed_at(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    while (i < c->count && (c->at[i].tag == TAG_WITH || c->at[i].tag == TAG_THE))
        i++;
    struct text done;
    if (!is_removed(b, i, &done) || !done.length)
        return (struct phrase){0};
    size_t off = i + 1;
    while (off < c->count && c->at[off].tag == TAG_DONE && !is_off(b, off))
        off++;
    if (is_off(b, off))
        return (struct phrase){done, off};
    bool taken =
        off > i + 1
        && (chunk_marks(&c->at[off - 1]) & MARK_OF(takes) || c->at[off - 1].entry->words_count > 1);
    return (struct phrase){taken ? done : TEXT_EMPTY, off - 1};
}

static struct phrase prep_at(struct builder *b, size_t i)
{
    struct phrase p = removed_at(b, i);
    if (!p.prep.length)
        p = participle_at(b, i);
    if (!p.prep.length)
        p = pieces_at(b, i);
    return p.prep.length ? p : state_at(b, i);
}

/* "One onion, two carrots, two stalks of celery, all diced": the lines of the sentence before word
 * `end` all have it. */
static void give_all(struct builder *b, size_t end, struct text prep)
{
    for (size_t n = 0; n < b->dish->ingredients.count; n++) {
        struct ingredient *line = &b->dish->ingredients.at[n];
        if (line->id >= b->sentence->first && line->id < end && line->amount.known)
            add_text(b->r->arena, &line->prep, prep);
    }
}

/* Whether chunk `i` says that what follows holds for all that was listed: "all", "both", "each"; in
 * "the toasted ones" it does not. */
static bool means_all(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    bool ones = i + 2 < c->count && (c->at[i + 2].tag == TAG_IT || c->at[i + 2].tag == TAG_OTHER);
    return is_share(&c->at[i]) || c->at[i].tag == TAG_WHOLE || c->at[i].tag == TAG_EACH
           || (c->at[i].tag == TAG_THE && !ones);
}

void read_prep_after(struct builder *b, struct ingredient *line, size_t index)
{
    struct chunks *c = &b->chunks;
    size_t others = 0;
    bool all = false, back = false;
    for (size_t i = index + 1; i < c->count && others < 3; i++) {
        struct phrase p = prep_at(b, i);
        if (p.prep.length && back && line->prep.count)
            line->prep.at[line->prep.count - 1] = p.prep;
        else if (p.prep.length && all)
            give_all(b, c->at[i].first, p.prep);
        else if (p.prep.length)
            add_text(b->r->arena, &line->prep, p.prep);
        else if (!passes(&c->at[i]))
            return;
        others += c->at[i].tag == TAG_OTHER || c->at[i].tag == TAG_BE || c->at[i].tag == TAG_THERE;
        all = means_all(b, i) || (all && p.prep.length);
        back = c->at[i].tag == TAG_SORRY;
        i = p.prep.length ? p.last : i;
    }
}

void read_prep_alone(struct builder *b)
{
    struct ingredient *line = last_line(b);
    if (line && line->amount.known && b->chunks.count && line->words.last < b->sentence->first
        && b->sentence->first - line->words.last <= ALONE_WORDS && prep_at(b, 0).prep.length)
        read_prep_after(b, line, (size_t) -1);
}

/* Whether the chunk is a verb of one of these sorts whose participle is printed on a line. */
static bool prepares(const struct chunk *c, uint64_t sorts)
{
    uint64_t marks = chunk_marks(c);
    return !c->match && marks & MARK_OF(prep) && marks & sorts && !(c->scope & SCOPE_NOT_DONE);
}

/* Whether the food was put to something since: what is done then is done to the dish. */
static bool is_worked_on(const struct builder *b, const struct ingredient *line, size_t before)
{
    const uint64_t working =
        MARK_OF(puts) | MARK_OF(mixes) | MARK_OF(heats) | MARK_OF(waits) | MARK_OF(finishes);
    for (size_t i = line->words.last + 1; i < before; i++) {
        const struct word *w = &b->r->words.at[i];
        if (w->tag == TAG_ACTION && w->entry && w->entry->marks & working
            && !(w->scope & SCOPE_NOT_DONE))
            return true;
    }
    return false;
}

/* What the verb of chunk `verb` makes of a food that stands at chunk `food`, with the pieces behind
 * it; empty when it prepares nothing: "cut the potatoes into chunks". */
static struct text prepared(struct builder *b, size_t verb, size_t food, uint64_t sorts)
{
    const struct chunk *c = &b->chunks.at[verb];
    const struct entry *done =
        prepares(c, sorts) && c->tag == TAG_ACTION ? participle(b->k, c->entry) : NULL;
    size_t end = done ? pieces_end(b, food) : 0;
    if (end)
        return arena_format(b->r->arena, "%.*s %.*s", TEXT(plain_participle(b, done)),
                            TEXT(printed(b, b->chunks.at[food].last + 1, b->chunks.at[end].last)));
    bool it = b->chunks.at[food].tag != TAG_LINE;
    return done && (it || !(done->marks & MARK_OF(pieces))) ? plain_participle(b, done)
                                                            : TEXT_EMPTY;
}

/* "Peel six kiwis", "slice up half a cucumber", "chop the onions" while nothing was done with them
 * yet. */
void read_prep_before(struct builder *b, struct ingredient *line, size_t index)
{
    bool fresh = line->id >= b->sentence->first;
    if (is_worked_on(b, line, b->sentence->first))
        return;
    for (size_t i = index; i-- > 0;) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_AND || c->tag == TAG_MANNER)
            continue;
        struct text prep =
            prepared(b, i, index, fresh ? MARK_OF(cuts) | MARK_OF(takes) : MARK_OF(cuts));
        if (!prep.length)
            return;
        add_text(b->r->arena, &line->prep, prep);
    }
}

/* "... those up": a word that no lexicon knows, where the clause ends with it. */
static bool ends_with_particle(const struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    return c->tag == TAG_OTHER && !c->entry
           && (index + 1 == b->chunks.count || b->r->words.at[c->last].after >= AFTER_COMMA);
}

/* Whether the chunk stands for a food spoken of: "it", "those" with nothing behind that they belong
 * to. */
static bool is_it(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (index >= c->count || (c->at[index].tag != TAG_IT && c->at[index].tag != TAG_THE))
        return false;
    unsigned char next = index + 1 < c->count ? c->at[index + 1].tag : (unsigned char) TAG_SO;
    return c->at[index].tag == TAG_IT || b->r->words.at[c->at[index].last].after >= AFTER_COMMA
           || next == TAG_SO || next == TAG_AND || next == TAG_INTO || next == TAG_MANNER
           || next == TAG_DOWN || ends_with_particle(b, index + 1);
}

/* Whether the line was put in as it was said, or stands in a list of which nobody says which food
 * is meant: what comes next is done to all that is in there. */
static bool is_one_of_several(const struct builder *b, const struct ingredient *line)
{
    const uint64_t putting = MARK_OF(mixes) | MARK_OF(finishes);
    size_t first = line->words.first;
    for (size_t i = first; i-- > 0 && b->r->words.at[i].after < AFTER_STOP;)
        if (b->r->words.at[i].tag == TAG_ACTION && b->r->words.at[i].entry->marks & putting)
            return true;
    return first && b->r->words.at[first - 1].tag == TAG_AND && b->dish->ingredients.count > 1
           && line->words.last < b->sentence->first;
}

/* "I've diced those", "they're already peeled": the participle of chunk `i` with its "it" before or
 * behind. */
static struct text done_to_it(struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    size_t k = i;
    while (k > 0 && (c->at[k - 1].tag == TAG_WILL || c->at[k - 1].tag == TAG_OTHER))
        k--;
    unsigned char before = k ? c->at[k - 1].tag : (unsigned char) TAG_SO;
    bool said = (before == TAG_HAVE && is_it(b, i + 1))
                || (before == TAG_BE && k > 1 && c->at[k - 2].tag == TAG_IT) || before == TAG_THERE;
    if (!said || !prepares(&c->at[i], MARK_OF(cuts) | MARK_OF(takes)))
        return TEXT_EMPTY;
    return participle_at(b, i).prep;
}

void read_prep_of_it(struct builder *b, struct ingredient *line, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    size_t near = chunk_marks(c) & MARK_OF(takes) ? NEAR_WORDS / 2 : NEAR_WORDS;
    if (!line->amount.known || c->first <= line->words.last || c->first - line->words.last > near
        || is_worked_on(b, line, c->first) || is_one_of_several(b, line))
        return;
    if (c->tag == TAG_DONE)
        add_text(b->r->arena, &line->prep, done_to_it(b, index));
    else if (is_it(b, index + 1))
        add_text(b->r->arena, &line->prep,
                 prepared(b, index, index + 1, MARK_OF(cuts) | MARK_OF(takes)));
}
