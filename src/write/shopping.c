/* write/shopping.c
 * SPDX-License-Identifier: MIT */
#include "write/shopping.h"

#include "kitchen/measure.h"
#include "kitchen/print.h"
#include "write/ingredient_line.h"
#include "write/pages.h"
#include "write/shown.h"
#include "write/wrap.h"

static struct text title_of(const struct shopping_basket *b, const struct shop_part *part)
{
    for (size_t i = 0; i < b->dishes.count; i++)
        if (b->dishes.at[i].recording == part->recording && b->dishes.at[i].dish->id == part->dish)
            return b->titles.at[i];
    return TEXT_EMPTY;
}

static bool same_dish(const struct shop_part *a, const struct shop_part *b)
{
    return a->recording == b->recording && a->dish == b->dish;
}

/* "for soup, skewers"; empty where there is only one dish anyway. */
static struct text dishes_of(const struct writing *w, const struct shop_item *item,
                             const struct shopping_basket *b)
{
    struct text names = TEXT_EMPTY;
    for (size_t i = 0; b->dishes.count > 1 && i < item->parts.count; i++) {
        const struct shop_part *part = &item->parts.at[i];
        if (!i || !same_dish(part, part - 1))
            names = listed(w, names, title_of(b, part));
    }
    return names.length ? PHRASE_1(w, shop_for, names) : names;
}

static const struct ingredient *line_of(const struct shopping_basket *b,
                                        const struct shop_part *part)
{
    for (size_t i = 0; i < b->dishes.count; i++)
        if (b->dishes.at[i].recording == part->recording && b->dishes.at[i].dish->id == part->dish)
            return dish_ingredient(b->dishes.at[i].dish, part->line);
    return NULL;
}

/* In the plural where the sum is counted, or where it was said so: "1½ cups red lentils". */
static struct text item_food(const struct writing *w, const struct shop_item *item,
                             const struct shopping_basket *b)
{
    static const struct amount none = {.unit = {"", 0}};
    const struct amount *sum = item->amounts.count == 1 ? &item->amounts.at[0].amount : &none;
    for (size_t i = 0; i < item->parts.count; i++) {
        const struct ingredient *in = line_of(b, &item->parts.at[i]);
        if (!in)
            continue;
        struct ingredient plain = *in;
        plain.alternatives.count = 0;
        struct text name = food_name(w, &plain, sum);
        if (!text_equal(name, food_written(w, in->food)))
            return name;
    }
    return food_written(w, item->food);
}

/* A sum may be an amount that nobody can measure: "1.0625 teaspoons". */
static struct text item_amount(const struct writing *w, const struct shop_item *item)
{
    struct text done = TEXT_EMPTY;
    for (size_t i = 0; i < item->amounts.count; i++) {
        const struct packed_amount *a = &item->amounts.at[i];
        struct text part =
            a->package.known
                ? print_packed(w->kitchen, w->scratch, &a->amount, &a->package, WORDS_WHOLE)
                : print_measurable(w->kitchen, w->scratch, NULL, &a->amount, NULL);
        done = done.length ? PHRASE_2(w, and, done, part) : part;
    }
    return done;
}

static bool lacks_unit(const struct shop_item *item, const struct shopping_basket *b)
{
    for (size_t i = 0; i < item->parts.count; i++) {
        const struct ingredient *in = line_of(b, &item->parts.at[i]);
        if (in && in->no_unit)
            return true;
    }
    return false;
}

static struct text item_text(const struct writing *w, const struct shop_item *item,
                             const struct shopping_basket *b)
{
    struct text much = item_amount(w, item), food = item_food(w, item, b);
    if (!much.length)
        return capital(w, PHRASE_1(w, shop_unmeasured, food));
    struct text line = PHRASE_2(w, amount_of, much, food);
    if (lacks_unit(item, b))
        line = PHRASE_1(w, card_no_unit, line);
    return capital(w, item->plus_more ? PHRASE_1(w, plus_more, line) : line);
}

/* The heading that begins at an item; empty where the last one goes on. */
static struct text heading_at(const struct writing *w, const struct shop_list *list, size_t i)
{
    const struct shop_item *item = &list->items.at[i], *before = i ? item - 1 : NULL;
    if (item->pantry)
        return before && before->pantry ? TEXT_EMPTY : PHRASE_0(w, shop_pantry);
    return before && text_equal(before->aisle, item->aisle) ? TEXT_EMPTY : item->aisle;
}

static void put_text(const struct writing *w, const struct shop_list *list,
                     const struct shopping_basket *b, struct buffer *out)
{
    struct text title = PHRASE_0(w, shop_title);
    buffer_format(out, "%.*s\n", TEXT(title));
    put_rule(out, '=', text_letters(title));
    for (size_t i = 0; i < list->items.count; i++) {
        struct text heading = heading_at(w, list, i);
        struct text line = item_text(w, &list->items.at[i], b);
        struct text dishes = dishes_of(w, &list->items.at[i], b);
        if (heading.length)
            buffer_format(out, "\n%.*s\n", TEXT(heading));
        if (dishes.length)
            line = PHRASE_2(w, packed_in, line, dishes);
        put_wrapped(out, "  [ ] ", line);
    }
}

static void put_item(struct html *h, const struct writing *w, const struct shop_item *item,
                     const struct shopping_basket *b)
{
    struct text dishes = dishes_of(w, item, b);
    html_begin(h, "li");
    html_put(h, item_text(w, item, b));
    if (dishes.length) {
        html_put(h, TEXT_OF(" "));
        html_element(h, "small", NULL, dishes);
    }
    html_end_line(h);
}

static void put_html(const struct writing *w, const struct shop_list *list,
                     const struct shopping_basket *b, struct buffer *out)
{
    struct html h = {.out = out};
    page_begin(&h, w, PHRASE_0(w, shop_title), "base shopping");
    html_element(&h, "h1", NULL, PHRASE_0(w, shop_title));
    for (size_t i = 0; i < list->items.count; i++) {
        struct text heading = heading_at(w, list, i);
        if (heading.length) {
            if (i) {
                html_end(&h);
                html_end_line(&h);
            }
            html_begin(&h, "section");
            html_line(&h);
            html_element(&h, "h2", NULL, heading);
            html_begin(&h, "ul");
            html_line(&h);
        }
        put_item(&h, w, &list->items.at[i], b);
    }
    page_end(&h);
}

void basket_put(const struct shopping_basket *b, const struct writing *w, bool html,
                struct buffer *out)
{
    struct shop_list list = {.items = {NULL, 0, 0}};
    add_dishes(w->kitchen, w->scratch, b->profile, b->dishes.at, b->dishes.count, &list);
    if (html)
        put_html(w, &list, b, out);
    else
        put_text(w, &list, b, out);
}

/* ---- copies */

static void copy_texts(struct arena *a, text_list *list)
{
    text_list copy = {NULL, 0, 0};
    for (size_t i = 0; i < list->count; i++)
        *LIST_ADD(a, &copy) = arena_text(a, list->at[i]);
    *list = copy;
}

/* What adding up and weighing look at; an entry is the pack's and stays. */
static void copy_line(struct arena *a, struct ingredient *in)
{
    struct text *const texts[] = {&in->said,        &in->food,         &in->kind,
                                  &in->amount.unit, &in->package.unit, &in->size,
                                  &in->group,       &in->rule,         &in->weight.source};
    for (size_t i = 0; i < sizeof texts / sizeof *texts; i++)
        *texts[i] = arena_text(a, *texts[i]);
    copy_texts(a, &in->prep);
    copy_texts(a, &in->state);
    copy_texts(a, &in->alternatives);
}

static const struct dish *copy_dish(struct arena *a, const struct dish *d)
{
    struct dish *copy = arena_alloc(a, sizeof *copy);
    copy->id = d->id;
    for (size_t i = 0; i < d->ingredients.count; i++) {
        struct ingredient *in = LIST_ADD(a, &copy->ingredients);
        *in = d->ingredients.at[i];
        copy_line(a, in);
    }
    return copy;
}

bool basket_add(struct shopping_basket *b, const struct recording *r, const struct writing *w,
                size_t number, struct problems *p)
{
    size_t before = b->dishes.count;
    if (!before)
        b->profile = w->profile;
    for (size_t i = 0; i < r->dishes.count; i++) {
        struct shown_dish shown;
        if (!dish_wanted(w, i))
            continue;
        if (!shown_make(&shown, w, &r->dishes.at[i], p)) {
            LIST_CUT(&b->dishes, before);
            LIST_CUT(&b->titles, before);
            return false;
        }
        *LIST_ADD(w->scratch, &b->dishes) =
            (struct shop_dish){copy_dish(w->scratch, &shown.dish), number};
        *LIST_ADD(w->scratch, &b->titles) = arena_text(w->scratch, capital(w, shown.dish.title));
    }
    return true;
}

/* ---- of one recording */

static bool write_list(const struct recording *r, const struct writing *w, bool html,
                       struct buffer *out, struct problems *p)
{
    struct shopping_basket b = {.profile = w->profile};
    if (!basket_add(&b, r, w, 0, p))
        return false;
    basket_put(&b, w, html, out);
    return true;
}

bool write_shopping_text(const struct recording *r, const struct writing *w, struct buffer *out,
                         struct problems *p)
{
    return write_list(r, w, false, out, p);
}

bool write_shopping_html(const struct recording *r, const struct writing *w, struct buffer *out,
                         struct problems *p)
{
    return write_list(r, w, true, out, p);
}
