/* edits/lines.c: the cook's changes to ingredient lines.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "edits/run.h"

#define FOLD_BYTES_MAX 512

/* The lexicon's food of that name, so that what is known of it holds for the cook's word too. */
static void look_up(struct change *c, struct ingredient *in)
{
    char key[FOLD_BYTES_MAX];
    if (in->food.length > sizeof key / 3)
        return;
    struct text folded = {key, fold_word(in->food, key, sizeof key)};
    in->entry = entry_as(pack_find(c->k, folded, NULL), TAG_FOOD);
    in->kind = in->entry ? entry_value(in->entry) : in->food;
}

static void settle(struct change *c, struct dish *d, struct ingredient *in, const char *field)
{
    in->edited = true;
    c->out->dish = d->id;
    c->out->id = in->id;
    if (strcmp(field, "food") == 0)
        look_up(c, in);
    if (strcmp(field, "amount") == 0) {
        in->vague = in->no_unit = false;
        in->to_taste &= !in->amount.known;
    }
}

bool apply_line_set(struct change *c)
{
    struct dish *d = NULL;
    struct ingredient *in = spot_line(c->r, &c->out->on, &d);
    const char *field = json_string_value(json_object_get(c->json, "field"));
    if (!in)
        return no_place(c, "there is no such ingredient line");
    value_set_line(in, field, json_object_get(c->json, "value"), c->r->arena);
    settle(c, d, in, field);
    return true;
}

static size_t line_index(const struct dish *d, const struct ingredient *in)
{
    return (size_t) (in - d->ingredients.at);
}

/* It stands where its neighbour was said, so that a click on it plays something. */
static void place_line(struct change *c, const struct dish *d, const struct ingredient *after,
                       struct ingredient *in)
{
    in->id = EDIT_ADDED_ID + c->number;
    in->words = (struct span){d->words.first, d->words.first};
    in->at = d->start;
    if (after) {
        in->words = after->words;
        in->at = after->at;
        in->group = after->group;
        in->role = after->role;
    }
    in->used = true;
}

bool apply_line_add(struct change *c)
{
    struct dish *d = spot_dish(c->r, &c->out->on), *other = NULL;
    struct ingredient *after = c->out->to.placed ? spot_line(c->r, &c->out->to, &other) : NULL;
    const char *key;
    json_t *value;
    if (!d)
        return no_place(c, "there is no such dish");
    if (other != d)
        after = NULL;
    struct ingredient neighbour = after ? *after : (struct ingredient){0};
    size_t at = after ? line_index(d, after) + 1 : 0;
    struct ingredient *in = LIST_INSERT(c->r->arena, &d->ingredients, at);
    place_line(c, d, after ? &neighbour : NULL, in);
    json_object_foreach(json_object_get(c->json, "value"), key, value)
    {
        value_set_line(in, key, value, c->r->arena);
        settle(c, d, in, key);
    }
    return true;
}

static void forget_use(struct dish *d, size_t id, size_t instead)
{
    for (size_t i = 0; i < d->steps.count; i++) {
        id_list *uses = &d->steps.at[i].uses;
        size_t kept = 0;
        for (size_t n = 0; n < uses->count; n++) {
            if (uses->at[n] == id && instead != EDIT_NOWHERE)
                uses->at[n] = instead;
            if (uses->at[n] != id || instead != EDIT_NOWHERE)
                uses->at[kept++] = uses->at[n];
        }
        LIST_CUT(uses, kept);
    }
}

bool apply_line_remove(struct change *c)
{
    struct dish *d = NULL;
    struct ingredient *in = spot_line(c->r, &c->out->on, &d);
    if (!in)
        return no_place(c, "there is no such ingredient line");
    c->out->dish = d->id;
    c->out->id = in->id;
    forget_use(d, in->id, EDIT_NOWHERE);
    LIST_REMOVE(&d->ingredients, line_index(d, in));
    return true;
}

/* It joins the component in which it comes to stand. */
bool apply_line_move(struct change *c)
{
    struct dish *d = NULL, *other = NULL;
    struct ingredient *in = spot_line(c->r, &c->out->on, &d), *before = NULL;
    bool last = !c->out->to.placed;
    if (!last)
        before = spot_line(c->r, &c->out->to, &other);
    if (!in || (!last && (!before || other != d || before == in)))
        return no_place(c, "there is no such ingredient line");
    struct ingredient moved = *in;
    size_t from = line_index(d, in), to = last ? d->ingredients.count : line_index(d, before);
    moved.group = d->ingredients.at[last ? to - 1 : to].group;
    LIST_REMOVE(&d->ingredients, line_index(d, in));
    *LIST_INSERT(c->r->arena, &d->ingredients, to > from ? to - 1 : to) = moved;
    c->out->dish = d->id;
    c->out->id = moved.id;
    return true;
}

/* False when the two are measured in ways that cannot be added. */
static bool add_amounts(struct ingredient *in, const struct ingredient *other)
{
    if (!other->amount.known)
        return true;
    if (!in->amount.known) {
        in->amount = other->amount;
        in->package = other->package;
        in->vague = other->vague;
        return true;
    }
    struct ratio min = ratio_add(in->amount.min, other->amount.min),
                 max = ratio_add(in->amount.max, other->amount.max);
    if (!text_equal(in->amount.unit, other->amount.unit) || !ratio_known(min) || !ratio_known(max))
        return false;
    in->amount.min = min;
    in->amount.max = max;
    in->amount.approx |= other->amount.approx;
    return true;
}

static void add_texts(struct arena *a, text_list *to, const text_list *from)
{
    for (size_t i = 0; i < from->count; i++) {
        bool known = false;
        for (size_t n = 0; n < to->count; n++)
            known |= text_equal(to->at[n], from->at[i]);
        if (!known)
            *LIST_ADD(a, to) = from->at[i];
    }
}

bool apply_line_join(struct change *c)
{
    struct dish *d = NULL, *other_dish = NULL;
    struct ingredient *in = spot_line(c->r, &c->out->on, &d),
                      *other = spot_line(c->r, &c->out->to, &other_dish);
    if (!in || !other || in == other || d != other_dish)
        return no_place(c, "there are no two such ingredient lines");
    if (!add_amounts(in, other))
        return no_place(
            c, "the two amounts cannot be added; give one of them in the other's unit first");
    add_texts(c->r->arena, &in->prep, &other->prep);
    add_texts(c->r->arena, &in->state, &other->state);
    add_texts(c->r->arena, &in->alternatives, &other->alternatives);
    in->optional = in->optional && other->optional;
    in->used |= other->used;
    settle(c, d, in, "");
    forget_use(d, other->id, in->id);
    LIST_REMOVE(&d->ingredients, line_index(d, other));
    return true;
}
