/* write/card.c
 * SPDX-License-Identifier: MIT */
#include "write/card.h"

#include "kitchen/allergen.h"
#include "kitchen/plural.h"
#include "kitchen/print.h"
#include "write/ingredient_line.h"

static void add_text(const struct writing *w, text_list *list, struct text t)
{
    *LIST_ADD(w->scratch, list) = t;
}

static void add_yield(const struct writing *w, struct card *c, const struct yield *y)
{
    struct amount count = {.known = y->known, .min = y->min, .max = y->max, .unit = TEXT_EMPTY};
    struct text number = print_amount(w->kitchen, w->scratch, &count, WORDS_WHOLE);
    if (!y->known)
        return;
    if (text_is(y->of, "serving")) { /* the canonical word, in every language */
        c->yield = PHRASE_1(w, card_serves, number);
    } else {
        bool many = ratio_compare(y->max, RATIO(1)) > 0;
        c->yield = PHRASE_2(w, card_makes, number,
                            many ? plural_of(w->kitchen->pack, w->scratch, y->of) : y->of);
    }
    add_text(w, &c->facts, c->yield);
}

static struct text time_text(const struct writing *w, const struct time_sum *t)
{
    return print_sum_of_times(w->kitchen, w->scratch, t);
}

static void add_times(const struct writing *w, struct card *c, const struct dish *d)
{
    if (d->active.known)
        add_text(w, &c->facts, PHRASE_1(w, card_active, time_text(w, &d->active)));
    if (d->cook.known)
        add_text(w, &c->facts, PHRASE_1(w, card_cook, time_text(w, &d->cook)));
    if (d->rest.known)
        add_text(w, &c->facts, PHRASE_1(w, card_rest, time_text(w, &d->rest)));
    if (d->total.known)
        add_text(w, &c->facts, PHRASE_1(w, card_total, time_text(w, &d->total)));
}

static bool texts_equal(const text_list *a, const text_list *b)
{
    if (a->count != b->count)
        return false;
    for (size_t i = 0; i < a->count; i++)
        if (!text_equal(a->at[i], b->at[i]))
            return false;
    return true;
}

/* Whether one line can stand for both. */
static bool same_look(const struct ingredient *a, const struct ingredient *b)
{
    return a->role == b->role && a->optional == b->optional && a->to_taste == b->to_taste
           && a->no_unit == b->no_unit && text_equal(a->food, b->food)
           && text_equal(a->group, b->group) && text_equal(a->size, b->size)
           && texts_equal(&a->prep, &b->prep) && texts_equal(&a->state, &b->state)
           && texts_equal(&a->alternatives, &b->alternatives);
}

static bool has_id(const id_list *list, size_t id)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->at[i] == id)
            return true;
    return false;
}

/* The food's sum, where all of its lines stand in one place and look alike, so that one line says
 * it all ("divided"). NULL otherwise: then each line keeps its own amount. */
static const struct shopping_line *sum_of(const struct dish *d, const struct ingredient *in)
{
    const struct shopping_line *s = NULL;
    for (size_t i = 0; i < d->shopping.count && !s; i++)
        if (has_id(&d->shopping.at[i].lines, in->id))
            s = &d->shopping.at[i];
    if (!s || s->lines.count < 2 || !s->parts.count)
        return NULL;
    for (size_t i = 0; i < s->lines.count; i++) {
        const struct ingredient *other = dish_ingredient(d, s->lines.at[i]);
        if (!other || !same_look(in, other))
            return NULL;
    }
    return s;
}

/* Adds the line, if it is not said by its sum already. */
static void add_line(const struct writing *w, struct card_part *part, const struct dish *d,
                     const struct ingredient *in)
{
    const struct shopping_line *sum = sum_of(d, in);
    if (!sum || sum->lines.at[0] == in->id)
        add_text(w, &part->lines, ingredient_line(w, in, sum));
}

static void add_part(const struct writing *w, struct card *c, const struct dish *d,
                     struct text heading, enum role role, struct text group)
{
    struct card_part part = {.heading = heading};
    for (size_t i = 0; i < d->ingredients.count; i++) {
        const struct ingredient *in = &d->ingredients.at[i];
        if (in->role == role && (role != ROLE_INGREDIENT || text_equal(in->group, group)))
            add_line(w, &part, d, in);
    }
    if (part.lines.count)
        *LIST_ADD(w->scratch, &c->parts) = part;
}

/* Whether a line before the `n`th has its group. */
static bool group_seen(const struct dish *d, size_t n)
{
    for (size_t i = 0; i < n; i++)
        if (d->ingredients.at[i].role == ROLE_INGREDIENT
            && text_equal(d->ingredients.at[i].group, d->ingredients.at[n].group))
            return true;
    return false;
}

/* The dish's own lines come first, since a line without heading would else seem to belong to the
 * part before it. */
static void add_parts(const struct writing *w, struct card *c, const struct dish *d)
{
    add_part(w, c, d, TEXT_EMPTY, ROLE_INGREDIENT, TEXT_EMPTY);
    for (size_t i = 0; i < d->ingredients.count; i++) {
        const struct ingredient *in = &d->ingredients.at[i];
        if (in->role == ROLE_INGREDIENT && in->group.length && !group_seen(d, i))
            add_part(w, c, d, PHRASE_1(w, card_part, in->group), ROLE_INGREDIENT, in->group);
    }
    add_part(w, c, d, PHRASE_0(w, card_finish), ROLE_GARNISH, TEXT_EMPTY);
    add_part(w, c, d, PHRASE_0(w, card_beside), ROLE_SERVE_WITH, TEXT_EMPTY);
}

bool shows_heat(const struct writing *w, const struct card_step *s)
{
    return s->heat.length && (s->unsaid || w->units != UNITS_SAID);
}

static void add_steps(const struct writing *w, struct card *c, const struct dish *d)
{
    struct text group = TEXT_EMPTY;
    for (size_t i = 0; i < d->steps.count; i++) {
        const struct step *s = &d->steps.at[i];
        struct card_step *out = LIST_ADD(w->scratch, &c->steps);
        *out = (struct card_step){.text = s->text,
                                  .heat = shown_temperatures(w, s),
                                  .unsaid = lacks_heat(w, s),
                                  .start = s->start,
                                  .end = s->end,
                                  .id = s->id};
        out->own = group.length && !s->group.length;
        if (s->group.length && !text_equal(s->group, group))
            out->heading = PHRASE_1(w, card_part, s->group);
        group = s->group;
    }
}

struct text step_heading(const struct writing *w, const struct card_step *s)
{
    return s->own ? PHRASE_0(w, card_dish) : s->heading;
}

/* What a maker may or may not put in, named apart: it is no statement that it is there. */
static struct text to_check(const struct writing *w, const struct dish *d)
{
    struct text list = TEXT_EMPTY;
    for (size_t i = 0; i < d->allergens.count; i++)
        if (d->allergens.at[i].check_label)
            list = listed(w, list, d->allergens.at[i].name);
    return list.length ? PHRASE_1(w, card_label, list) : list;
}

static void add_allergens(const struct writing *w, struct card *c, const struct dish *d)
{
    struct text contains = print_contains(w->kitchen, w->scratch, d, LAW_US | LAW_EU);
    struct text check = to_check(w, d);
    if (contains.length)
        add_text(w, &c->allergens, contains);
    if (check.length)
        add_text(w, &c->allergens, check);
    if (c->allergens.count)
        add_text(w, &c->allergens, PHRASE_0(w, labels));
}

static void add_cautions(const struct writing *w, struct card *c, const struct dish *d)
{
    for (size_t i = 0; i < d->cautions.count; i++) {
        const struct caution *n = &d->cautions.at[i];
        add_text(w, &c->cautions,
                 n->source.length ? PHRASE_2(w, card_caution, n->text, n->source) : n->text);
    }
}

static void add_notes(const struct writing *w, struct card *c)
{
    if (ratio_equal(c->shown.factor, RATIO(1)))
        return;
    add_text(w, &c->notes,
             PHRASE_1(w, card_times, print_number(w->scratch, c->shown.factor, false)));
    add_text(w, &c->notes, PHRASE_0(w, card_said));
    for (size_t i = 0; i < c->shown.notes.count; i++)
        add_text(w, &c->notes, c->shown.notes.at[i].note);
}

bool card_make(struct card *c, const struct recording *r, const struct writing *w, size_t dish,
               struct problems *p)
{
    *c = (struct card){.number = dish + 1, .open = open_findings(r, dish, LEVEL_ASK)};
    if (!shown_make(&c->shown, w, &r->dishes.at[dish], p))
        return false;
    const struct dish *d = &c->shown.dish;
    c->title = capital(w, d->title);
    c->draft = !d->approved;
    c->nutrition = estimate_nutrition(w->kitchen, w->scratch, d);
    add_yield(w, c, &d->yield);
    add_times(w, c, d);
    add_parts(w, c, d);
    add_steps(w, c, d);
    add_notes(w, c);
    add_allergens(w, c, d);
    add_cautions(w, c, d);
    return true;
}

bool cards_write(const struct recording *r, const struct writing *w, struct buffer *out,
                 struct problems *p, card_put *put)
{
    bool first = true;
    for (size_t i = 0; i < r->dishes.count; i++) {
        struct card c;
        if (!dish_wanted(w, i))
            continue;
        if (!card_make(&c, r, w, i, p))
            return false;
        put(out, r, w, &c, first);
        first = false;
    }
    if (first)
        problem_note(p, (struct place){.file = r->file},
                     "no dish was found in it, so there is no card; where one is cooked, "
                     "--as-one-dish takes all of it for one");
    return true;
}
