/* build/partof.c: lines that went into a part of the dish which is named only when it is made:
 * "four eggs, a cup of milk ... pour the custard over".
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "build/wording.h"

/* Between two foods of one part stand so many words at most. */
#define GAP_WORDS 70
/* And so many behind the last one before the part is named. */
#define NAMED_WORDS 90
/* A part is of so many foods at least. */
#define PART_LINES 2

/* "The custard", "that batter", "your dough": a part by its name, as something that is there. */
static struct text part_at(const struct builder *b, size_t i)
{
    const struct word *w = &b->r->words.at[i];
    const unsigned never = SCOPE_NOT_DONE | SCOPE_TITLE | SCOPE_YIELD;
    if ((w->tag != TAG_PART && w->tag != TAG_FOOD) || w->scope & never || w->entry_first == 0
        || b->r->words.at[w->entry_first - 1].tag != TAG_THE)
        return TEXT_EMPTY;
    const struct entry *part = w->tag == TAG_PART ? w->entry : NULL;
    if (!part && w->tag == TAG_FOOD && w->entry && !(w->entry->marks & MARK_OF(generic)))
        part = entry_as(pack_find(b->k, entry_words(w->entry), NULL), TAG_PART);
    if (!part)
        return TEXT_EMPTY;
    const struct text value = entry_value(part);
    return step_words_list(b->k, "component", value) ? value : TEXT_EMPTY;
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
    if (last - first < PART_LINES)
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
