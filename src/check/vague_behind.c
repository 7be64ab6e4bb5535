/* check/vague_behind.c: a vague amount that stands behind its food.
 * SPDX-License-Identifier: MIT */
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

bool vague_behind(const struct checker *c, const struct ingredient *line, struct span *where)
{
    const size_t last = c->dish->words.last;
    const size_t most = line->id + VAGUE_WORDS < last ? line->id + VAGUE_WORDS : last;
    if (told_behind(c, line, most, where))
        return true;
    for (size_t i = line->id + 1; i <= most; i++) {
        const struct word *w = &c->r->words.at[i];
        unsigned char next = i < last ? w[1].tag : TAG_OTHER;
        if (names_other(w, line))
            return false;
        if (w->tag != TAG_VAGUE)
            continue;
        *where = (struct span){line->id, i};
        return w->after >= AFTER_COMMA || next == TAG_DOWN || next == TAG_FOR || next == TAG_INTO;
    }
    return false;
}
