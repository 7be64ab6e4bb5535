/* build/partof.c: lines that went into a part of the dish which is named only when it is made:
 * "four eggs, a cup of milk ... pour the custard over".
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "build/stepwords.h"
#include "build/wording.h"

/* Between two foods of one part stand so many words at most. */
#define GAP_WORDS 70
/* And so many behind the last one before the part is named. */
#define NAMED_WORDS 90
/* A part is of so many foods at least. */
#define PART_LINES 2

/* The tag before the word, but for how it is: "the dough", "it comes to a soft dough". */
static unsigned char tag_before(const struct builder *b, const struct word *w)
{
    const struct word *words = b->r->words.at;
    size_t i = w->entry_first;
    while (i > 0 && (words[i - 1].tag == TAG_STATE || words[i - 1].tag == TAG_SIZE)
           && words[i - 1].after < AFTER_COMMA)
        i--;
    return i ? words[i - 1].tag : (unsigned char) TAG_SO;
}

/* "The custard", "that batter", "your dough": a part by its name, as something that is there; "it
 * comes to a dough" only where its row says that it is "new". */
static struct text part_at(const struct builder *b, size_t i)
{
    const struct word *w = &b->r->words.at[i];
    const unsigned never = SCOPE_NOT_DONE | SCOPE_TITLE | SCOPE_YIELD;
    if (w->tag == TAG_ACTION && !(w->scope & never))
        return step_row(b, "forms", entry_value(w->entry)); /* "knead it" */
    if ((w->tag != TAG_PART && w->tag != TAG_FOOD) || w->scope & never)
        return TEXT_EMPTY;
    const unsigned char before = tag_before(b, w);
    if (before != TAG_THE && before != TAG_ARTICLE)
        return TEXT_EMPTY;
    const struct entry *part = w->tag == TAG_PART ? w->entry : NULL;
    if (!part && w->tag == TAG_FOOD && w->entry && !(w->entry->marks & MARK_OF(generic)))
        part = entry_as(pack_find(b->k, entry_words(w->entry), NULL), TAG_PART);
    if (!part)
        return TEXT_EMPTY;
    const struct text value = entry_value(part), how = step_text(b->k, "component", value);
    return how.length && (before == TAG_THE || text_is(how, "new")) ? value : TEXT_EMPTY;
}

/* Whether another vessel is begun with between the words: "in a bowl", "in another pan". */
static bool is_vessel_begun(const struct builder *b, size_t first, size_t last)
{
    for (size_t i = first; i + 1 < last; i++) {
        const struct word *w = &b->r->words.at[i];
        if (w->tag != TAG_INTO
            || (i > first && b->r->words.at[i - 1].after < AFTER_COMMA
                && b->r->words.at[i - 1].cue == w->cue))
            continue;
        for (size_t n = i + 1; n <= last && n <= i + 4; n++)
            if (b->r->words.at[n].tag == TAG_VESSEL)
                return true;
    }
    return false;
}

/* The lines from `n` backwards that went into the part that is named at word `at`. */
static size_t first_of_part(const struct builder *b, size_t n)
{
    const struct ingredient *lines = b->dish->ingredients.at;
    size_t first = n;
    while (first > 0 && !lines[first - 1].group.length && lines[first - 1].role == ROLE_INGREDIENT
           && lines[first - 1].words.last < lines[first].words.first
           && lines[first].words.first - lines[first - 1].words.last <= GAP_WORDS
           && !is_vessel_begun(b, lines[first - 1].words.last + 1, lines[first].words.first))
        first--;
    return first;
}

/* Nobody kneads but what has flour in it. */
static bool has_flour(const struct builder *b, size_t first, size_t last)
{
    for (size_t i = first; i < last; i++) {
        const struct entry *food = b->dish->ingredients.at[i].entry;
        if (food && food->marks & MARK_OF(flour))
            return true;
    }
    return false;
}

static void name_part(struct builder *b, struct text part, size_t at)
{
    struct ingredient *lines = b->dish->ingredients.at;
    size_t last = b->dish->ingredients.count;
    while (last > 0 && lines[last - 1].words.first >= at)
        last--;
    if (!last || lines[last - 1].group.length || lines[last - 1].role != ROLE_INGREDIENT
        || at - lines[last - 1].words.last > NAMED_WORDS)
        return;
    const size_t first = first_of_part(b, last - 1);
    if (last - first < PART_LINES
        || (b->r->words.at[at].tag == TAG_ACTION
            && (!has_flour(b, first, last) || b->dish->ingredients.count < last - first + 3)))
        return;
    for (size_t i = first; i < last; i++)
        lines[i].group = part;
}

void name_parts(struct builder *b)
{
    for (size_t n = 0; n < b->dish->spans.count; n++)
        for (size_t i = b->dish->spans.at[n].first; i <= b->dish->spans.at[n].last; i++) {
            const struct text part = part_at(b, i);
            if (part.length)
                name_part(b, part, i);
        }
}
