/* build/timehere.c
 * SPDX-License-Identifier: MIT */
#include "build/timehere.h"

/* "Not an hour", "not for an hour": the time itself is denied. */
static bool is_denied_itself(const struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    while (index-- > 0) {
        unsigned char tag = b->chunks.at[index].tag;
        if (tag == TAG_NOT || b->r->words.at[b->chunks.at[index].last].after >= AFTER_COMMA)
            return tag == TAG_NOT;
        if (tag != TAG_FOR && tag != TAG_HEDGE && tag != TAG_THE && tag != TAG_INTO)
            break;
    }
    return b->r->words.at[c->first].tag == TAG_NOT;
}

/* Where captions have no stops a story reaches too far: so many chunks behind what tells it, and
 * behind what says that the time is over, it is told no more where another clause began. */
#define STORY_CHUNKS 6

static bool begins_clause(unsigned char tag)
{
    return tag == TAG_AND || tag == TAG_SO || tag == TAG_YOU || tag == TAG_WILL;
}

static bool is_behind_story(const struct builder *b, size_t index)
{
    if (b->r->punctuated)
        return false;
    bool clause = false;
    for (size_t i = index; i-- > 0 && (index - i <= STORY_CHUNKS || !clause);) {
        unsigned char tag = b->chunks.at[i].tag;
        clause |= begins_clause(tag);
        if (tag == TAG_STORY || tag == TAG_HAVE || tag == TAG_THERE || tag == TAG_RETURN
            || tag == TAG_ME)
            return false;
    }
    return index > 0;
}

bool is_time_here(const struct builder *b, size_t index)
{
    unsigned scope = b->chunks.at[index].scope & SCOPE_NOT_DONE;
    return !(scope & SCOPE_INSTEAD) && (!(scope & SCOPE_UNREAL) || is_behind_story(b, index))
           && (!(scope & SCOPE_NEGATED) || !is_denied_itself(b, index));
}
