/* kitchen/title_rows.c: the tables that titles are made by.
 * SPDX-License-Identifier: MIT */
#include "kitchen/title.h"

#include "kitchen/rows.h"

/* Takes the next condition off the front, with its choices and the grams behind its ':' (0 without
 * any). False when there is no more. */
static bool next_condition(struct text *rest, struct text *choices, double *grams)
{
    struct text condition;
    if (!rest->length || !text_part(rest, '&', &condition))
        return false;
    size_t colon = text_find(condition, ':', 0);
    struct text least = text_slice(condition, colon + 1, condition.length);
    struct ratio number = ratio_read(least.at, least.length);
    *choices = text_trim(text_slice(condition, 0, colon));
    *grams = ratio_finite(number) ? ratio_double(number) : 0;
    return true;
}

static struct title_choices read_choices(struct arena *a, struct text cell)
{
    LIST(struct title_choice) list = {0};
    struct text word;
    if (cell.length)
        LIST_RESERVE(a, &list, text_parts(cell, '|'));
    while (cell.length && text_part(&cell, '|', &word)) {
        struct title_choice *choice = LIST_ADD(a, &list);
        choice->word = word;
        mark_find(word, &choice->mark);
    }
    return (struct title_choices){list.at, list.count, 0};
}

static condition_list read_conditions(struct arena *a, struct text cell)
{
    condition_list list = {0};
    struct text choices;
    double grams;
    if (cell.length)
        LIST_RESERVE(a, &list, text_parts(cell, '&'));
    while (next_condition(&cell, &choices, &grams)) {
        struct title_choices read = read_choices(a, choices);
        read.grams = grams;
        *LIST_ADD(a, &list) = read;
    }
    return list;
}

/* What a cell's words may be, and how a message calls them. */
struct vocabulary {
    const struct pack *pack;
    const struct foods *foods; /* whose groups are known too; NULL: none are */
    enum tag tag;
    bool marks;
    const char *called;
};

static bool is_group(const struct foods *f, struct text word)
{
    for (size_t i = 0; f && i < f->groups.count; i++)
        if (text_equal(f->groups.at[i], word))
            return true;
    return false;
}

/* Marks last, since they are looked for longest. */
static bool knows(const struct vocabulary *v, struct text word)
{
    uint64_t mark;
    return entry_as(pack_find(v->pack, word, NULL), v->tag) || is_group(v->foods, word)
           || (v->marks && mark_find(word, &mark));
}

/* Every word of the column's cell must be known, so that a slip of the pen is no silent rule. */
static bool check_cell(const struct rows *r, size_t row, size_t column, const struct vocabulary *v,
                       struct problems *p)
{
    struct text rest = rows_cell(r, row, column), choices, word;
    double grams;
    bool good = true;
    while (next_condition(&rest, &choices, &grams))
        while (text_part(&choices, '|', &word))
            if (!knows(v, word) && !text_is(word, "*"))
                good = problem(p, rows_place(r, row), "\"%.*s\" is no %s of this pack", TEXT(word),
                               v->called);
    return good;
}

/* Whether a title has a blank for a second food exactly when it is one for two. */
static bool blanks_fit(struct text title, size_t foods)
{
    bool seen[6] = {false};
    for (size_t i = 0; i + 2 < title.length; i++)
        if (title.at[i] == '{' && title.at[i + 2] == '}') {
            if (title.at[i + 1] < '1' || title.at[i + 1] > '5')
                return false;
            seen[title.at[i + 1] - '0'] = true;
        }
    return !title.length
           || ((seen[1] || seen[4]) == (foods > 0) && (seen[2] || seen[5]) == (foods > 1));
}

enum {
    RULE_SAID,
    RULE_FOODS,
    RULE_WITHOUT,
    RULE_ACTIONS,
    RULE_UNDONE,
    RULE_VESSELS,
    RULE_HEAT,
    RULE_BY,
    RULE_UNNAMED,
    RULE_TITLES
};
#define RULE_HEADS "said foods without actions undone vessels heat by unnamed none one two"

static bool check_words(const struct rows *r, size_t row, const struct foods *f,
                        const struct pack *k, struct problems *p)
{
    const struct vocabulary dish = {k, NULL, TAG_DISH, false, "dish's word"};
    const struct vocabulary food = {k, f, TAG_FOOD, true, "food, mark or group"};
    const struct vocabulary action = {k, NULL, TAG_ACTION, true, "action or mark"};
    const struct vocabulary vessel = {k, NULL, TAG_VESSEL, false, "vessel"};
    bool good = check_cell(r, row, RULE_SAID, &dish, p);
    good &= check_cell(r, row, RULE_FOODS, &food, p);
    good &= check_cell(r, row, RULE_WITHOUT, &food, p);
    good &= check_cell(r, row, RULE_UNNAMED, &food, p);
    good &= check_cell(r, row, RULE_ACTIONS, &action, p);
    good &= check_cell(r, row, RULE_UNDONE, &action, p);
    return check_cell(r, row, RULE_VESSELS, &vessel, p) && good;
}

/* A cell that holds one of two words. */
static bool check_either(const struct rows *r, size_t row, size_t column, const char *one,
                         const char *other, struct problems *p)
{
    struct text cell = rows_cell(r, row, column);
    return text_is(cell, one) || text_is(cell, other)
           || problem(p, rows_place(r, row), "\"%.*s\": %s or %s is needed", TEXT(cell), one,
                      other);
}

static bool load_rule(struct title_rule *rule, struct arena *a, const struct rows *r, size_t row,
                      struct problems *p)
{
    bool good =
        !rows_cell(r, row, RULE_HEAT).length || check_either(r, row, RULE_HEAT, "yes", "no", p);
    good &= check_either(r, row, RULE_BY, "savory", "sweet", p);
    rule->said = rows_cell(r, row, RULE_SAID);
    rule->foods = read_conditions(a, rows_cell(r, row, RULE_FOODS));
    rule->without = read_conditions(a, rows_cell(r, row, RULE_WITHOUT));
    rule->actions = read_conditions(a, rows_cell(r, row, RULE_ACTIONS));
    rule->undone = read_choices(a, rows_cell(r, row, RULE_UNDONE));
    rule->vessels = read_conditions(a, rows_cell(r, row, RULE_VESSELS));
    rule->heat = rows_cell(r, row, RULE_HEAT);
    rule->sweet = text_is(rows_cell(r, row, RULE_BY), "sweet");
    rule->unnamed = read_choices(a, rows_cell(r, row, RULE_UNNAMED));
    for (size_t i = 0; i <= TITLE_FOODS; i++) {
        rule->titles[i] = rows_cell(r, row, RULE_TITLES + i);
        if (!blanks_fit(rule->titles[i], i))
            good = problem(p, rows_place(r, row),
                           "the title \"%.*s\" needs blanks for %zu foods: {1} or {4} for the "
                           "first, {2} or {5} for the second",
                           TEXT(rule->titles[i]), i);
    }
    return good;
}

static bool load_rules(struct titles *t, const struct foods *f, struct arena *a,
                       const struct pack *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k, "title-rules", RULE_HEADS, p))
        return false;
    bool good = true;
    LIST_RESERVE(a, &t->rules, r.count);
    for (size_t row = 0; row < r.count; row++) {
        good &= check_words(&r, row, f, k, p);
        good &= load_rule(LIST_ADD(a, &t->rules), a, &r, row, p);
    }
    return good;
}

/* A number of 0 or more. */
static bool read_share(const struct rows *r, size_t row, size_t column, double *share,
                       struct problems *p)
{
    struct ratio number;
    if (!rows_number(r, row, column, &number, p))
        return false;
    *share = ratio_double(number);
    return *share >= 0 || problem(p, rows_place(r, row), "a number of 0 or more is missing");
}

static bool load_foods(struct titles *t, const struct foods *f, struct arena *a,
                       const struct pack *k, struct problems *p)
{
    const struct vocabulary food = {k, f, TAG_FOOD, true, "food, mark or group"};
    struct rows r;
    if (!rows_open(&r, k, "title-foods", "foods savory sweet usual shown", p))
        return false;
    bool good = true;
    LIST_RESERVE(a, &t->foods, r.count);
    for (size_t row = 0; row < r.count; row++) {
        struct title_food *to = LIST_ADD(a, &t->foods);
        *to = (struct title_food){.foods = read_choices(a, rows_cell(&r, row, 0)),
                                  .shown = rows_cell(&r, row, 4)};
        good &= check_cell(&r, row, 0, &food, p) && read_share(&r, row, 1, &to->savory, p)
                && read_share(&r, row, 2, &to->sweet, p) && read_share(&r, row, 3, &to->usual, p);
    }
    return good;
}

bool titles_load(struct titles *t, const struct foods *f, struct arena *a, const struct pack *k,
                 struct problems *p)
{
    bool good = load_foods(t, f, a, k, p);
    return load_rules(t, f, a, k, p) && good;
}
