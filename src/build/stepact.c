/* build/stepact.c: the actions by which a step is laid out and worded, and those that a recipe has.
 * SPDX-License-Identifier: MIT */
#include "build/builder.h"

#include "base/arena.h"
#include "build/stepjoin.h"

static bool has(const text_list *actions, struct text action)
{
    for (size_t i = 0; i < actions->count; i++)
        if (text_equal(actions->at[i], action))
            return true;
    return false;
}

bool step_has(const struct step *s, struct text action)
{
    return has(&s->actions, action);
}

bool is_full(const struct step *s, struct text action, bool told)
{
    return (s->actions.count >= STEP_ACTIONS && !has(&s->actions, action))
           || (told && s->told.count >= STEP_ACTIONS && !has(&s->told, action));
}

bool is_worked(const struct step *list)
{
    return list->told.count > list->actions.count;
}

static void add_once(struct builder *b, text_list *actions, struct text action)
{
    if (!has(actions, action))
        *LIST_ADD(b->r->arena, actions) = action;
}

void put_action(struct builder *b, struct step *s, struct text action, bool ruled, bool told)
{
    if (ruled)
        add_once(b, &s->actions, action);
    if (told)
        add_once(b, &s->told, action);
}

void settle_actions(struct builder *b, struct step *s)
{
    const size_t count = s->actions.count ? 0 : s->told.count;
    for (size_t i = 0; i < count && i < STEP_ACTIONS; i++)
        *LIST_ADD(b->r->arena, &s->actions) = s->told.at[i];
}

void keep_told(struct dish *d)
{
    for (size_t i = 0; i < d->steps.count; i++) {
        struct step *s = &d->steps.at[i];
        if (s->actions.count && !s->told.count)
            s->text = TEXT_EMPTY;
        s->actions = s->told;
        s->told = (text_list){NULL, 0, 0};
    }
}
