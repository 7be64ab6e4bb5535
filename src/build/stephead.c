/* build/stephead.c
 * SPDX-License-Identifier: MIT */
#include "build/stephead.h"

#include "build/implied.h"

/* Whether the words stand in what was written from byte `head` on. */
bool is_written_from(const struct writer *w, size_t head, struct text words)
{
    for (size_t i = head; words.length && i + words.length <= w->p.length; i++)
        if (memcmp(w->p.at + i, words.at, words.length) == 0)
            return true;
    return false;
}

static struct text last_written(const struct writer *w, size_t head)
{
    return text_last_word((struct text){w->p.at + head, w->p.length - head});
}

/* "Let it sit": what the verb is done to stands in it. */
static bool has_pronoun(const struct writer *w, size_t head)
{
    struct text rest = {w->p.at + head, w->p.length - head}, word;
    while (text_part(&rest, ' ', &word)) {
        const struct entry *e = pack_find(w->b->k, word, NULL);
        if (e && e->tag == TAG_IT)
            return true;
    }
    return false;
}

/* "On the hob, low heat" */
static bool is_at_stove(unsigned char tag)
{
    return tag == TAG_THE || tag == TAG_OVEN || tag == TAG_PLACE || tag == TAG_VESSEL;
}

size_t skip_said(const struct writer *w, size_t rest, size_t end, size_t head)
{
    if (w->p.length == head)
        return rest;
    if (is_pronoun(w, rest, end) && has_pronoun(w, head))
        return rest + 1;
    size_t heat = rest;
    while (heat < end && is_at_stove(w->b->chunks.at[heat].tag))
        heat++;
    bool said = heat < end && w->b->chunks.at[heat].tag == TAG_HEAT;
    return said && is_written_from(w, head, w->s->heat) ? heat + 1 : rest;
}

bool ends_in_place(const struct writer *w, size_t head)
{
    const struct entry *e = pack_find(w->b->k, last_written(w, head), NULL);
    return e && e->tag == TAG_INTO;
}

bool is_whole(const struct writer *w, const struct chunk *c, size_t head)
{
    return (c->entry && step_words_list(w->b->k, "leads", entry_words(c->entry)))
           || is_written_from(w, head, w->s->heat);
}

bool say_added(struct writer *w, size_t *rest, size_t end)
{
    size_t food = *rest;
    while (food < end
           && (w->b->chunks.at[food].tag == TAG_AND || w->b->chunks.at[food].tag == TAG_THE))
        food++;
    if (food == end || w->b->chunks.at[food].tag != TAG_LINE || !is_food(&w->b->chunks.at[food]))
        return false;
    prose_comma(&w->p);
    prose_word(&w->p, step_word(w->b->k, "and"), true);
    prose_word(&w->p, implied_list(w->b->k), false);
    *rest = food;
    return true;
}

bool is_lead_place(const struct writer *w, size_t begin, size_t i)
{
    const struct chunk *at = w->b->chunks.at;
    if (at[i].tag != TAG_VESSEL)
        return false;
    while (i > begin
           && (at[i - 1].tag == TAG_ARTICLE || at[i - 1].tag == TAG_THE || at[i - 1].tag == TAG_SIZE
               || at[i - 1].tag == TAG_STATE || at[i - 1].tag == TAG_DONE))
        i--;
    return i > begin && at[i - 1].tag == TAG_INTO;
}
