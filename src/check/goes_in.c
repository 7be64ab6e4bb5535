/* check/goes_in.c: whether a food goes in where it is named, or is spoken of in passing.
 * SPDX-License-Identifier: MIT */
#include "check/unmeasured.h"

const struct word *food_word(const struct checker *c, const struct ingredient *line)
{
    return line->id < c->r->words.count ? &c->r->words.at[line->id] : NULL;
}

/* "Two teaspoons of salt and oregano", "And vanilla.": named in a row of amounts, or alone in its
 * sentence. */
#define LIST_WORDS 3
#define ALONE_WORDS 4

/* "Lettuce, pickles, and two spoons of mayo": the last but one of a row. */
static bool listed_before(const struct checker *c, const struct ingredient *line,
                          const struct ingredient *other)
{
    const struct word *before = line->words.first ? &c->r->words.at[line->words.first - 1] : NULL;
    return before && (before->tag == TAG_FOOD || before->tag == TAG_AND)
           && other->words.first > line->id && other->words.first - line->id <= LIST_WORDS
           && span_has_tag(c->r, (struct span){line->id + 1, other->words.first}, TAG_AND);
}

static bool in_list(const struct checker *c, const struct ingredient *line)
{
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *other = &c->dish->ingredients.at[i];
        if (other->amount.known
            && ((other->id < line->words.first && line->words.first - other->id <= LIST_WORDS)
                || listed_before(c, line, other)))
            return true;
    }
    const struct sentence *s = sentence_of(c->r, line->id);
    return s && s->last - s->first < ALONE_WORDS && !(s->flags & SENTENCE_QUESTION);
}

/* "Raisins go in for the last minute", "in goes the syrup, this is what makes it shine". */
static bool put_in(const struct checker *c, const struct ingredient *line)
{
    const struct sentence *s = food_word(c, line) ? sentence_of(c->r, line->id) : NULL;
    struct span where, rest = s ? sentence_words(s) : NO_WORDS;
    while (rest.first <= rest.last && said_find(&c->sayings, c->r, "puts_in", rest, &where)) {
        if (where.first <= line->id && line->id <= where.last)
            return true;
        rest.first = where.first + 1;
    }
    return false;
}

/* "Salt", "salt and pepper": said alone, it goes in. */
bool only_seasons(const struct checker *c, const struct ingredient *line)
{
    const struct word *w = food_word(c, line);
    for (size_t i = line->id; w && i + 2 >= line->id; i--) {
        const struct word *before = &c->r->words.at[i];
        if (before->entry && before->tag == TAG_FOOD && before->entry->marks & MARK_OF(salt))
            return i == line->id || (line->entry && line->entry->marks & MARK_OF(spice));
        if (!i || (i < line->id && before->tag != TAG_AND))
            return false;
    }
    return false;
}

/* Whether the food is spoken of where a step puts it in; a mention in passing tells nothing. */
bool goes_in(const struct checker *c, const struct ingredient *line)
{
    const uint64_t no = MARK_OF(serves) | MARK_OF(light) | MARK_OF(hidden) | MARK_OF(takes);
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        if (line->id >= s->words.first && line->id <= s->words.last && !(step_marks(c, s) & no))
            return true;
    }
    struct span where;
    return in_list(c, line) || put_in(c, line) || vague_behind(c, line, &where);
}

/* "Pour all of that into the flour": the food is where something else goes, and in already. */
#define PLACE_WORDS 5
bool is_place(const struct checker *c, const struct ingredient *line)
{
    const struct word *w = food_word(c, line);
    const struct sentence *s = w ? sentence_of(c->r, line->id) : NULL;
    size_t food = w && w->entry && w->entry->words_count > 1 ? w->entry_first : line->id;
    if (!s || food == s->first)
        return false;
    struct span where, before = {s->first, food};
    if (food - s->first > PLACE_WORDS)
        before.first = food - PLACE_WORDS;
    while (before.first <= before.last
           && said_find(&c->sayings, c->r, "place_food", before, &where)) {
        if (where.last >= food)
            return true;
        before.first = where.first + 1;
    }
    return false;
}

/* "My sister puts peas in hers", "until a drop of water skates", "like popcorn", "hot sauce on
 * mine": nothing goes in there. */
bool in_passing(const struct checker *c, const struct ingredient *line)
{
    const struct word *w = food_word(c, line);
    const struct sentence *s = w ? sentence_of(c->r, line->id) : NULL;
    struct span where, rest = s ? sentence_words(s) : NO_WORDS;
    const bool asks = s && s->flags & SENTENCE_QUESTION; /* "Raisins? Some families put raisins." */
    if (s && s->last + 1 < c->r->words.count
        && (asks || c->r->words.at[s->last].after < AFTER_COMMA))
        rest.last = sentence_of(c->r, s->last + 1)->last;
    while (s && rest.first <= rest.last && said_find(&c->sayings, c->r, "passing", rest, &where)) {
        if ((where.first <= line->id && line->id <= where.last) || (asks && where.first > s->last))
            return true;
        rest.first = where.first + 1;
    }
    return w && w->scope & (SCOPE_UNREAL | SCOPE_UNTIL);
}
