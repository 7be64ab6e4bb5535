/* build/steptake.c: whether a verb is done to the foods that were listed before it.
 * SPDX-License-Identifier: MIT */
#include "build/writer.h"

bool is_pronoun(const struct writer *w, size_t i, size_t end)
{
    if (i >= end)
        return false;
    unsigned char tag = w->b->chunks.at[i].tag,
                  after = i + 1 < end ? w->b->chunks.at[i + 1].tag : 0;
    bool thing = after == TAG_LINE || after == TAG_PART || after == TAG_DISH || after == TAG_VESSEL
                 || (after == TAG_OTHER && !is_step_word(w->b, &w->b->chunks.at[i + 1], "particle"))
                 || after == TAG_TOOL || after == TAG_STATE || after == TAG_DONE;
    const struct entry *e = w->b->chunks.at[i].entry;
    bool that = tag == TAG_THE && e && text_equal(entry_value(e), step_word(w->b->k, "that"));
    return tag == TAG_IT || (that && !thing);
}

bool is_into(const struct writer *w, size_t verb)
{
    const struct chunk *c = &w->b->chunks.at[verb];
    return c->last > c->first
           && entry_as(pack_find(w->b->k, w->b->r->words.at[c->last].key, NULL), TAG_INTO);
}

/* Whether the verb has an object of its own in the words behind it: "put the pan on the scales". */
static bool has_own_object(const struct writer *w, size_t i, size_t end)
{
    if (i >= end || is_pronoun(w, i, end))
        return false;
    unsigned char tag = w->b->chunks.at[i].tag;
    return tag == TAG_THE || tag == TAG_ARTICLE || tag == TAG_VESSEL || tag == TAG_AMOUNT
           || tag == TAG_NUMBER || tag == TAG_REST || tag == TAG_WHOLE || tag == TAG_TOOL;
}

bool takes_pending(const struct writer *w, size_t subject, size_t verb, size_t end)
{
    const uint64_t takes = MARK_OF(puts) | MARK_OF(mixes) | MARK_OF(cuts) | MARK_OF(heats)
                           | MARK_OF(prep) | MARK_OF(waits);
    uint64_t marks = chunk_marks(&w->b->chunks.at[verb]);
    if (!w->pending_count || marks & (MARK_OF(boils) | MARK_OF(changes)) || !(marks & takes))
        return false; /* what boils is the whole pot */
    if (says_tag(w, subject, verb, TAG_LINE)
        || (!is_into(w, verb) && has_own_object(w, verb + 1, end)))
        return false;
    return is_pronoun(w, verb + 1, end)
           || (!says_tag(w, verb, end, TAG_LINE) && !says_tag(w, verb, end, TAG_PART));
}
