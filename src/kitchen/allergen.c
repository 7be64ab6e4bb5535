/* kitchen/allergen.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/allergen.h"

#include "kitchen/kitchen.h"

static bool load_names(struct allergens *s, struct arena *a, const struct pack *k,
                       struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k, "allergen-names", "us eu shown kind", p))
        return false;
    for (size_t row = 0; row < r.count; row++) {
        struct allergen_name *name = LIST_ADD(a, &s->list);
        name->us = rows_cell(&r, row, 0);
        name->eu = rows_cell(&r, row, 1);
        name->shown = rows_cell(&r, row, 2);
        name->food = text_is(rows_cell(&r, row, 3), "name");
    }
    return true;
}

bool allergens_load(struct allergens *s, struct arena *a, const struct pack *k, struct problems *p)
{
    struct rows r;
    if (!load_names(s, a, k, p)
        || !rows_open(&r, k, "allergens", "food us eu us_check eu_check ask", p))
        return false;
    LIST_RESERVE(a, &s->foods, r.count);
    LIST_RESERVE(a, &s->names.rows, r.count);
    for (size_t row = 0; row < r.count; row++) {
        names_add(a, &s->names, name_kept(a, rows_cell(&r, row, 0)), s->foods.count);
        struct allergen_food *food = LIST_ADD(a, &s->foods);
        food->us = rows_ref(&r, row, 1);
        food->eu = rows_ref(&r, row, 2);
        food->us_check = rows_ref(&r, row, 3);
        food->eu_check = rows_ref(&r, row, 4);
        food->ask = text_is(rows_cell(&r, row, 5), "ask");
    }
    return names_ready(a, &s->names, r.table->file, p);
}

/* By its name, else by the published food that it is only another name of; a food of about the same
 * weight ("cider" weighed as beer) says nothing about allergens. */
static const struct allergen_food *find_food(const struct kitchen *k, struct text name)
{
    size_t n;
    char room[FOLD_BYTES];
    if (!name.length)
        return NULL;
    if (food_name_in(&k->foods, &k->allergens.names, name, &n))
        return &k->allergens.foods.at[n];
    const struct food_name *known = food_find(&k->foods, name);
    if (known && known->fit == FIT_SAME
        && names_find(&k->allergens.names, name_fold(known->food->name, room), &n))
        return &k->allergens.foods.at[n];
    return NULL;
}

/* "tree nuts (almond)": "tree nuts" and "almond". */
struct item {
    struct text whole, name, detail;
};

static bool next_item(struct text *rest, struct item *item)
{
    if (!rest->length || !text_part(rest, ';', &item->whole))
        return false;
    item->whole = text_trim(item->whole);
    size_t open = text_find(item->whole, '(', 0);
    item->name = text_trim(text_slice(item->whole, 0, open));
    item->detail = text_slice(item->whole, open + 1, text_find(item->whole, ')', open));
    return true;
}

/* Whether a law's list has this allergen: "gluten (wheat)" as it stands, or "nuts" with the same
 * detail. */
static bool has_item(struct text list, struct text name, struct text detail)
{
    struct item item;
    while (next_item(&list, &item))
        if (text_equal(item.whole, name)
            || (text_equal(item.name, name) && text_equal(item.detail, detail)))
            return true;
    return false;
}

/* The row whose EU name is the whole item ("gluten (wheat)"), else the one whose name it begins
 * with ("gluten"). */
static const struct allergen_name *name_of(const struct allergens *s, const struct item *item,
                                           bool us)
{
    const struct allergen_name *found = NULL;
    for (size_t i = 0; i < s->list.count; i++) {
        struct text name = us ? s->list.at[i].us : s->list.at[i].eu;
        if (name.length && text_equal(name, item->whole))
            return &s->list.at[i];
        if (name.length && text_equal(name, item->name))
            found = &s->list.at[i];
    }
    return found;
}

static struct text shown_name(const struct kitchen *k, struct arena *a,
                              const struct allergen_name *name, const struct item *item,
                              struct text food)
{
    /* "gluten (wheat)" is a name by itself; the "almond" of "nuts (almond)" is the food. */
    bool whole = item->detail.length && text_equal(name->eu, item->whole);
    struct text detail = item->detail.length || !name->food ? item->detail : food;
    return whole || !detail.length ? name->shown : PHRASE_TEXT(k, a, kind_of, name->shown, detail);
}

static struct text law_words(const struct kitchen *k, struct arena *a, unsigned laws)
{
    if (laws == LAW_US)
        return PHRASE_PLAIN(k, a, law_us);
    return laws == LAW_EU ? PHRASE_PLAIN(k, a, law_eu) : PHRASE_PLAIN(k, a, law_both);
}

static unsigned laws_of(const struct kitchen *k, struct text words)
{
    if (text_equal(words, k->phrases[PHRASE_law_us]))
        return LAW_US;
    return text_equal(words, k->phrases[PHRASE_law_eu]) ? LAW_EU : LAW_US | LAW_EU;
}

static void add_because(struct arena *a, struct allergen *allergen, size_t id)
{
    if (!allergen->because.count || allergen->because.at[allergen->because.count - 1] != id)
        *LIST_ADD(a, &allergen->because) = id;
}

/* A food whose allergens go to the dish's. */
struct eaten {
    const struct kitchen *k;
    struct arena *a;
    struct dish *dish;
    struct text food;
    size_t id; /* the line's */
};

static void add_allergen(const struct eaten *e, struct text shown, unsigned laws, bool check)
{
    for (size_t i = 0; i < e->dish->allergens.count; i++) {
        struct allergen *old = &e->dish->allergens.at[i];
        if (!text_equal(old->name, shown) || old->check_label != check)
            continue;
        old->law = law_words(e->k, e->a, laws_of(e->k, old->law) | laws);
        add_because(e->a, old, e->id);
        return;
    }
    struct allergen *made = LIST_ADD(e->a, &e->dish->allergens);
    *made =
        (struct allergen){.name = shown, .law = law_words(e->k, e->a, laws), .check_label = check};
    add_because(e->a, made, e->id);
}

static void add_lists(const struct eaten *e, struct text us, struct text eu, bool check)
{
    struct item item;
    struct text rest = us;
    while (next_item(&rest, &item)) {
        const struct allergen_name *name = name_of(&e->k->allergens, &item, true);
        if (name)
            add_allergen(e, shown_name(e->k, e->a, name, &item, e->food),
                         has_item(eu, name->eu, item.detail) ? LAW_US | LAW_EU : LAW_US, check);
    }
    rest = eu;
    while (next_item(&rest, &item)) {
        const struct allergen_name *name = name_of(&e->k->allergens, &item, false);
        struct text detail = name && text_equal(name->eu, item.whole) ? TEXT_EMPTY : item.detail;
        if (name && !(name->us.length && has_item(us, name->us, detail)))
            add_allergen(e, shown_name(e->k, e->a, name, &item, e->food), LAW_EU, check);
    }
}

/* False when the food is not in the table. */
static bool add_food(const struct eaten *e, bool *asked)
{
    const struct allergen_food *row = find_food(e->k, e->food);
    if (!row)
        return false;
    add_lists(e, ref_text(row->us), ref_text(row->eu), false);
    add_lists(e, ref_text(row->us_check), ref_text(row->eu_check), true);
    *asked |= row->ask;
    return true;
}

static bool is_contained(const struct dish *dish, struct text name)
{
    for (size_t i = 0; i < dish->allergens.count; i++)
        if (!dish->allergens.at[i].check_label && text_equal(dish->allergens.at[i].name, name))
            return true;
    return false;
}

/* What is in the dish in any case needs no look at a label. */
static void drop_settled(struct dish *dish)
{
    size_t kept = 0;
    for (size_t i = 0; i < dish->allergens.count; i++)
        if (!dish->allergens.at[i].check_label || !is_contained(dish, dish->allergens.at[i].name))
            dish->allergens.at[kept++] = dish->allergens.at[i];
    LIST_CUT(&dish->allergens, kept);
}

/* "Walnut mayonnaise": the sort of it is a food, too, where the lexicon has only the mayonnaise. */
static struct text sort_of(const struct ingredient *line)
{
    struct text listed = line->entry ? entry_shown(line->entry) : TEXT_EMPTY;
    if (!listed.length || line->food.length <= listed.length + 1)
        return TEXT_EMPTY;
    size_t front = line->food.length - listed.length;
    bool ends = text_equal(text_slice(line->food, front, line->food.length), listed);
    return ends ? text_slice(line->food, 0, front - 1) : TEXT_EMPTY;
}

void find_allergens(const struct kitchen *k, struct arena *a, struct dish *dish, id_list *ask)
{
    LIST_CUT(&dish->allergens, 0);
    for (size_t i = 0; i < dish->ingredients.count; i++) {
        const struct ingredient *line = &dish->ingredients.at[i];
        bool asked = line->entry && line->entry->marks & MARK_OF(generic);
        if (line->role == ROLE_SERVE_WITH)
            continue;
        struct eaten eaten = {k, a, dish, line->food, line->id};
        if (!add_food(&eaten, &asked)) {
            eaten.food = line->kind;
            add_food(&eaten, &asked);
        }
        eaten.food = sort_of(line);
        add_food(&eaten, &asked);
        for (size_t n = 0; n < line->alternatives.count; n++) {
            eaten.food = line->alternatives.at[n];
            add_food(&eaten, &asked);
        }
        if (asked && ask)
            *LIST_ADD(a, ask) = line->id;
    }
    drop_settled(dish);
}

static bool is_told(const struct kitchen *k, const struct allergen *allergen, unsigned laws)
{
    return !allergen->check_label && laws_of(k, allergen->law) & laws;
}

/* The details of all allergens from the `at`th on that have its name: "cod, haddock" of fish. What
 * has none, or was listed with one before, is empty. */
static struct text details_from(const struct kitchen *k, struct arena *a, const struct dish *dish,
                                unsigned laws, size_t at)
{
    struct text own = dish->allergens.at[at].name, done = TEXT_EMPTY;
    struct item item, other;
    next_item(&own, &item);
    for (size_t i = 0; item.detail.length && i < dish->allergens.count; i++) {
        struct text name = dish->allergens.at[i].name;
        if (!is_told(k, &dish->allergens.at[i], laws) || !next_item(&name, &other)
            || !other.detail.length || !text_equal(other.name, item.name))
            continue;
        if (i < at)
            return TEXT_EMPTY;
        done = phrase_listed(k, a, done, other.detail);
    }
    return done;
}

/* "fish (cod, haddock)", once. */
static struct text with_details(const struct kitchen *k, struct arena *a, const struct dish *dish,
                                unsigned laws, size_t at)
{
    struct text name = dish->allergens.at[at].name;
    struct item item;
    if (!next_item(&name, &item) || !item.detail.length)
        return dish->allergens.at[at].name;
    struct text details = details_from(k, a, dish, laws, at);
    return details.length ? PHRASE_TEXT(k, a, kind_of, item.name, details) : TEXT_EMPTY;
}

struct text print_contains(const struct kitchen *k, struct arena *a, const struct dish *dish,
                           unsigned laws)
{
    struct text done = TEXT_EMPTY;
    for (size_t i = 0; i < dish->allergens.count; i++)
        if (is_told(k, &dish->allergens.at[i], laws))
            done = phrase_listed(k, a, done, with_details(k, a, dish, laws, i));
    return done.length ? PHRASE_TEXT(k, a, contains, done) : done;
}
