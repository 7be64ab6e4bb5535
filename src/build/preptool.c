/* build/preptool.c: the tool that a food goes over or through says what it becomes: "on the fine
 * grater", "I use the press for those".
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "build/instruction.h"
#include "build/wording.h"

/* Chunks that such words have at most. */
#define TOOL_CHUNKS 9

/* What may stand in such words before the tool. */
static bool may_lead(const struct builder *b, const struct chunk *c)
{
    switch (c->tag) {
    case TAG_THE:
    case TAG_THERE:
    case TAG_ARTICLE:
    case TAG_ME:
    case TAG_YOU:
    case TAG_WILL:
    case TAG_HAVE:
    case TAG_IT:
    case TAG_STATE:
    case TAG_SIZE:
    case TAG_FULLNESS:
    case TAG_MANNER:
    case TAG_OF:
    case TAG_INTO:
    case TAG_WITH:
    case TAG_PART:
    case TAG_SIDE:
    case TAG_AND:
    case TAG_OTHER:
        return true;
    case TAG_ACTION:
        return chunk_marks(c) & MARK_OF(light) || is_step_word(b, c, "uses");
    default:
        return false;
    }
}

/* "On", "with", "through", "I use": leads to the tool. */
static bool leads(const struct builder *b, const struct chunk *c)
{
    return c->tag == TAG_INTO || c->tag == TAG_WITH || is_step_word(b, c, "uses")
           || (c->tag == TAG_OTHER && is_step_word(b, c, "particle"));
}

struct prep_phrase tool_at(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    bool led = false;
    if (i && c->at[i - 1].tag == TAG_DONE)
        return (struct prep_phrase){0}; /* "shredded on the mandoline" says it itself */
    for (size_t k = i; k < c->count && k < i + TOOL_CHUNKS; k++) {
        const struct chunk *tool = &c->at[k];
        if (tool->match || tool->scope & SCOPE_NOT_DONE)
            break;
        bool named = led && (tool->tag == TAG_TOOL || tool->tag == TAG_ACTION) && k > i
                     && c->at[k - 1].tag != TAG_ME && c->at[k - 1].tag != TAG_YOU;
        struct text done =
            named ? step_text(b->k, "tool", b->r->words.at[tool->last].key) : TEXT_EMPTY;
        if (done.length)
            return (struct prep_phrase){done, k};
        if (!may_lead(b, tool) || b->r->words.at[tool->last].after >= AFTER_STOP)
            break;
        led |= leads(b, tool);
    }
    return (struct prep_phrase){0};
}
