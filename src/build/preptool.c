/* build/preptool.c: the tool that a food goes over or through says what it becomes: "on the fine
 * grater", "I use the press for those".
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "build/instruction.h"
#include "build/wording.h"

/* Chunks that such words have at most. */
#define TOOL_CHUNKS 9

/* What may stand in such words before the tool. */
static const bool LEADS_TO_TOOL[TAG_CODES] = {
    [TAG_THE] = true,   [TAG_THERE] = true, [TAG_ARTICLE] = true,  [TAG_ME] = true,
    [TAG_YOU] = true,   [TAG_WILL] = true,  [TAG_HAVE] = true,     [TAG_IT] = true,
    [TAG_STATE] = true, [TAG_SIZE] = true,  [TAG_FULLNESS] = true, [TAG_MANNER] = true,
    [TAG_OF] = true,    [TAG_INTO] = true,  [TAG_WITH] = true,     [TAG_PART] = true,
    [TAG_SIDE] = true,  [TAG_AND] = true,   [TAG_OTHER] = true};

static bool may_lead(const struct builder *b, const struct chunk *c)
{
    return LEADS_TO_TOOL[c->tag]
           || (c->tag == TAG_ACTION
               && (chunk_marks(c) & MARK_OF(light) || is_step_word(b, c, "uses")));
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
