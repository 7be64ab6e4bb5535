/* check/vague_behind.c: a vague amount that stands behind its food.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "check/report.h"

/* "Black pepper. Plenty.", "pearl sugar on the top, a little bit", "salt, by eye": what is vague
 * stands behind. */
#define VAGUE_WORDS 8

static bool names_other(const struct word *w, const struct ingredient *line)
{
    bool again =
        w->tag == TAG_FOOD && w->entry && text_share_part(entry_shown(w->entry), line->food, ' ');
    return !again && (w->tag == TAG_FOOD || w->tag == TAG_PART || w->tag == TAG_UNIT);
}

/* The words of "vague_after" behind the line's food, where no other food is named before them. */
static bool told_behind(const struct checker *c, const struct ingredient *line, size_t most,
                        struct span *where)
{
    struct span behind = {line->id + 1, most};
    if (behind.first > most || !said_find(&c->sayings, c->r, "vague_after", behind, where))
        return false;
    for (size_t i = behind.first; i < where->first; i++)
        if (names_other(&c->r->words.at[i], line))
            return false;
    where->first = line->id;
    return true;
}

/* "A little, and tip it out", "some on top": what follows is no food of which it is some. */
static bool ends_there(const struct checker *c, size_t word)
{
    static const unsigned char NEXT[] = {TAG_DOWN, TAG_FOR, TAG_INTO, TAG_AND, TAG_SO, TAG_THERE};
    const struct word *w = &c->r->words.at[word];
    return w->after >= AFTER_COMMA || word + 1 >= c->r->words.count
           || memchr(NEXT, w[1].tag, sizeof NEXT);
}

bool vague_behind(const struct checker *c, const struct ingredient *line, struct span *where)
{
    const size_t last = c->dish->words.last;
    const size_t most = line->id + VAGUE_WORDS < last ? line->id + VAGUE_WORDS : last;
    if (told_behind(c, line, most, where))
        return true;
    for (size_t i = line->id + 1; i <= most; i++) {
        const struct word *w = &c->r->words.at[i];
        if (names_other(w, line))
            return false;
        if (w->tag != TAG_VAGUE)
            continue;
        *where = (struct span){line->id, i};
        return ends_there(c, i);
    }
    return false;
}

/* "Do you want flour on the table? A dusting.", "flour on the board, a little". */
#define DUST_WORDS 4
bool dusted_vaguely(const struct checker *c, size_t last)
{
    struct span where, behind = {last + 1, last + DUST_WORDS};
    if (behind.last >= c->r->words.count)
        return false;
    for (size_t i = behind.first; i <= behind.last && c->r->words.at[i].tag != TAG_FOOD; i++)
        if (c->r->words.at[i].tag == TAG_VAGUE)
            return ends_there(c, i);
    return said_find(&c->sayings, c->r, "vague_after", behind, &where);
}
