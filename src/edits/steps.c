/* edits/steps.c: the cook's changes to steps, and to the dish itself.
 * SPDX-License-Identifier: MIT */
#include "edits/run.h"

bool apply_step_set(struct change *c)
{
    struct dish *d = NULL;
    struct step *s = spot_step(c->r, &c->out->on, &d);
    if (!s)
        return no_place(c, "there is no such step");
    value_set_step(s, json_string_value(json_object_get(c->json, "field")),
                   json_object_get(c->json, "value"), c->r->arena);
    s->edited = true;
    c->out->dish = d->id;
    c->out->id = s->id;
    return true;
}

static size_t step_index(const struct dish *d, const struct step *s)
{
    return (size_t) (s - d->steps.at);
}

static void place_step(struct change *c, const struct dish *d, const struct step *after,
                       struct step *s)
{
    s->id = EDIT_ADDED_ID + c->number;
    s->words = (struct span){d->words.first, d->words.first};
    s->start = s->end = d->start;
    if (after) {
        s->words = (struct span){after->words.last, after->words.last};
        s->start = s->end = after->end;
        s->group = after->group;
    }
    s->edited = true;
}

bool apply_step_add(struct change *c)
{
    struct dish *d = spot_dish(c->r, &c->out->on), *other = NULL;
    struct step *after = c->out->to.placed ? spot_step(c->r, &c->out->to, &other) : NULL;
    const char *key;
    json_t *value;
    if (!d)
        return no_place(c, "there is no such dish");
    if (other != d)
        after = NULL;
    struct step neighbour = after ? *after : (struct step){0};
    size_t at = after ? step_index(d, after) + 1 : 0;
    struct step *s = LIST_INSERT(c->r->arena, &d->steps, at);
    place_step(c, d, after ? &neighbour : NULL, s);
    json_object_foreach(json_object_get(c->json, "value"), key, value)
        value_set_step(s, key, value, c->r->arena);
    c->out->dish = d->id;
    c->out->id = s->id;
    return true;
}

bool apply_step_remove(struct change *c)
{
    struct dish *d = NULL;
    struct step *s = spot_step(c->r, &c->out->on, &d);
    if (!s)
        return no_place(c, "there is no such step");
    c->out->dish = d->id;
    c->out->id = s->id;
    LIST_REMOVE(&d->steps, step_index(d, s));
    return true;
}

bool apply_step_move(struct change *c)
{
    struct dish *d = NULL, *other = NULL;
    struct step *s = spot_step(c->r, &c->out->on, &d), *before = NULL;
    bool last = !c->out->to.placed;
    if (!last)
        before = spot_step(c->r, &c->out->to, &other);
    if (!s || (!last && (!before || other != d || before == s)))
        return no_place(c, "there is no such step");
    struct step moved = *s;
    size_t from = step_index(d, s), to = last ? d->steps.count : step_index(d, before);
    LIST_REMOVE(&d->steps, step_index(d, s));
    *LIST_INSERT(c->r->arena, &d->steps, to > from ? to - 1 : to) = moved;
    c->out->dish = d->id;
    c->out->id = moved.id;
    return true;
}

/* NOLINTBEGIN(bugprone-macro-parentheses): a statement takes none */
#define ADD_ALL(arena, to, from)               \
    for (size_t i = 0; i < (from)->count; i++) \
    *LIST_ADD((arena), (to)) = (from)->at[i]
/* NOLINTEND(bugprone-macro-parentheses) */

static void add_step(struct recording *r, struct step *s, const struct step *other)
{
    s->text = arena_format(r->arena, "%.*s %.*s", TEXT(s->text), TEXT(other->text));
    ADD_ALL(r->arena, &s->actions, &other->actions);
    ADD_ALL(r->arena, &s->uses, &other->uses);
    ADD_ALL(r->arena, &s->temperatures, &other->temperatures);
    ADD_ALL(r->arena, &s->durations, &other->durations);
    if (other->until.length)
        s->until = other->until;
    s->vessel = s->vessel.length ? s->vessel : other->vessel;
    s->heat = s->heat.length ? s->heat : other->heat;
    s->words.first = s->words.first < other->words.first ? s->words.first : other->words.first;
    s->words.last = s->words.last > other->words.last ? s->words.last : other->words.last;
    s->start = s->start < other->start ? s->start : other->start;
    s->end = s->end > other->end ? s->end : other->end;
    s->edited = true;
}

bool apply_step_join(struct change *c)
{
    struct dish *d = NULL, *other_dish = NULL;
    struct step *s = spot_step(c->r, &c->out->on, &d),
                *other = spot_step(c->r, &c->out->to, &other_dish);
    if (!s || !other || s == other || d != other_dish)
        return no_place(c, "there are no two such steps");
    c->out->dish = d->id;
    c->out->id = s->id;
    add_step(c->r, s, other);
    LIST_REMOVE(&d->steps, step_index(d, other));
    return true;
}

bool apply_dish_set(struct change *c)
{
    struct dish *d = spot_dish(c->r, &c->out->on);
    if (!d)
        return no_place(c, "there is no such dish");
    c->out->dish = d->id;
    return value_set_dish(d, json_string_value(json_object_get(c->json, "field")),
                          json_object_get(c->json, "value"), c->r->arena);
}
