/* kitchen/title.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/title.h"

#include "kitchen/kitchen.h"
#include "kitchen/plural.h"
#include "kitchen/time.h"
#include "kitchen/weight.h"

/* A second food is in the title when the dish is about it so much, beside the first. */
#define SECOND_SHARE 0.4
/* What goes into a sauce, or on top at the end, says less about the dish. */
#define GROUP_SHARE 0.3
#define GARNISH_SHARE 0.2
/* "The fish", where trout stands beside it, is the trout. */
#define GENERIC_SHARE 0.3
/* Grams of a food that says much: with less of everything a dish is about nothing. */
#define ABOUT_LEAST 5.0
/* The cook's own word is filled up by no less: 150 g of a vegetable, 50 g of meat. */
#define ABOUT_CLEARLY 150.0
/* Enough of a dish to tell what it is, so that time does not grow with the square of a long one. */
#define LINES_MOST 200
#define STEPS_MOST 200

/* A food of the dish and how much the dish is about it. */
struct topic {
    const struct ingredient *line; /* the first of it; NULL: none */
    struct text shown;
    double about;
};

/* An ingredient with what was looked up for it once. */
struct told {
    const struct ingredient *line;
    struct text words, kind; /* of its food, as the tables write them: "self rising flour" */
    const struct food *food; /* that it is weighed as; NULL: none */
    const struct title_food *as;
    double grams;
};

/* An action of the dish, once, with what the lexicon says of it. */
struct deed {
    struct text action;
    uint64_t marks;
};

/* What the title is made from. */
struct naming {
    const struct kitchen *k;
    struct arena *a;
    const struct dish *dish;
    LIST(struct told) foods;
    LIST(struct deed) deeds;
    LIST(struct text) vessels; /* each once */
    bool cooks;
    struct dish_word said;
    bool named;
    const struct title_rule *rule;
};

static bool ends_with_words(struct text whole, struct text end)
{
    if (whole.length <= end.length)
        return text_equal(whole, end);
    size_t begin = whole.length - end.length;
    return whole.at[begin - 1] == ' ' && text_equal(text_slice(whole, begin, whole.length), end);
}

/* "Lentil" fits red lentils. */
static bool is_one_of(const struct told *t, const struct title_choices *choices)
{
    uint64_t marks = t->line->entry ? t->line->entry->marks : 0;
    for (size_t i = 0; i < choices->count; i++) {
        const struct title_choice *c = &choices->at[i];
        if (marks & c->mark || ends_with_words(t->words, c->word)
            || ends_with_words(t->kind, c->word)
            || (t->food && text_equal(t->food->group, c->word)))
            return true;
    }
    return false;
}

static const struct title_food *title_food(const struct kitchen *k, const struct told *t)
{
    static const struct title_food none = {.shown = {"", 0}};
    for (size_t i = 0; i < k->titles.foods.count; i++) {
        const struct title_food *f = &k->titles.foods.at[i];
        if (!f->foods.count || is_one_of(t, &f->foods))
            return f;
    }
    return &none;
}

/* Grams, as good as a title needs them: what has no published weight is as heavy as water, or as
 * much as is usual. */
static double roughly_weighs(const struct naming *n, const struct told *t,
                             const struct profile *profile)
{
    struct weight w = weigh(n->k, n->a, profile, t->line, NULL);
    const struct amount *a = &t->line->amount;
    const struct unit *unit = unit_meant(unit_find(&n->k->units, a->unit), profile);
    if (w.known)
        return (w.min + w.max) / 2;
    if (!a->known || !ratio_finite(a->min) || !unit || unit->dimension != DIMENSION_VOLUME)
        return t->as->usual;
    return ratio_double(ratio_multiply(a->min, unit->factor));
}

static struct text folded(struct arena *a, struct text words)
{
    char room[FOLD_BYTES];
    return arena_text(a, name_fold(words, room));
}

static struct told tell(const struct naming *n, const struct profile *profile,
                        const struct ingredient *line)
{
    struct told t = {.line = line,
                     .words = folded(n->a, line->food),
                     .kind = folded(n->a, line->kind),
                     .food = weighed_as(n->k, line)};
    t.as = title_food(n->k, &t);
    t.grams = roughly_weighs(n, &t, profile);
    return t;
}

static double grams_among(const struct naming *n, const struct title_choices *choices)
{
    double grams = 0;
    for (size_t i = 0; i < n->foods.count; i++) {
        const struct told *t = &n->foods.at[i];
        if (t->line->role == ROLE_INGREDIENT && is_one_of(t, choices))
            grams += t->grams;
    }
    return grams;
}

static bool foods_fit(const struct naming *n)
{
    for (size_t i = 0; i < n->rule->foods.count; i++) {
        const struct title_choices *c = &n->rule->foods.at[i];
        double grams = grams_among(n, c);
        if (grams <= 0 || grams < c->grams)
            return false;
    }
    return true;
}

/* Whether there is none, or less than the grams given, of what the row must be without. */
static bool lacks_foods(const struct naming *n)
{
    for (size_t i = 0; i < n->rule->without.count; i++) {
        const struct title_choices *c = &n->rule->without.at[i];
        double grams = grams_among(n, c);
        if (grams > 0 && grams >= c->grams)
            return false;
    }
    return true;
}

static bool does_one_of(const struct naming *n, const struct title_choices *choices)
{
    for (size_t i = 0; i < choices->count; i++)
        for (size_t j = 0; j < n->deeds.count; j++)
            if (n->deeds.at[j].marks & choices->at[i].mark
                || text_equal(n->deeds.at[j].action, choices->at[i].word))
                return true;
    return false;
}

/* "Loaf tin" is one of "a greased loaf tin". */
static bool uses_one_of(const struct naming *n, const struct title_choices *choices)
{
    for (size_t i = 0; i < choices->count; i++)
        for (size_t j = 0; j < n->vessels.count; j++)
            if (ends_with_words(n->vessels.at[j], choices->at[i].word))
                return true;
    return false;
}

/* Whether each of the conditions has a choice of which `holds` is true. */
static bool all_hold(const struct naming *n, const condition_list *conditions,
                     bool (*holds)(const struct naming *, const struct title_choices *))
{
    for (size_t i = 0; i < conditions->count; i++)
        if (!holds(n, &conditions->at[i]))
            return false;
    return true;
}

static bool rule_fits(const struct naming *n)
{
    const struct title_rule *rule = n->rule;
    struct text said = n->said.kind;
    if (rule->said.length
        && !(said.length && (text_is(rule->said, "*") || text_has_part(rule->said, '|', said))))
        return false;
    if (rule->heat.length && text_is(rule->heat, "yes") != n->cooks)
        return false;
    return all_hold(n, &rule->actions, does_one_of) && all_hold(n, &rule->vessels, uses_one_of)
           && !does_one_of(n, &rule->undone) && foods_fit(n) && lacks_foods(n);
}

/* "Pepper" and "red pepper": never both in a title. */
static bool is_same_food(struct text a, struct text b)
{
    return text_equal(a, b) || text_has_part(a, ' ', b) || text_has_part(b, ' ', a);
}

static double about_food(const struct naming *n, const struct told *t)
{
    double share = t->line->role == ROLE_GARNISH ? GARNISH_SHARE
                   : t->line->group.length       ? GROUP_SHARE
                                                 : 1;
    if (t->line->role == ROLE_SERVE_WITH || is_one_of(t, &n->rule->unnamed))
        return 0;
    if (t->line->entry && t->line->entry->marks & MARK_OF(generic))
        share *= GENERIC_SHARE;
    return (n->rule->sweet ? t->as->sweet : t->as->savory) * share * t->grams;
}

/* "Potato" for "yukon gold potato". */
static struct text plain_food(const struct ingredient *line)
{
    return line->kind.length && ends_with_words(line->food, line->kind) ? line->kind : line->food;
}

static struct text shown_food(const struct told *t)
{
    return t->as->shown.length ? t->as->shown : plain_food(t->line);
}

/* The food of line `i` with all its later lines. */
static struct topic topic_at(const struct naming *n, size_t i)
{
    const struct told *all = n->foods.at;
    struct topic t = {all[i].line, shown_food(&all[i]), about_food(n, &all[i])};
    for (size_t j = i + 1; t.about > 0 && j < n->foods.count; j++)
        if (is_same_food(t.shown, shown_food(&all[j])))
            t.about += about_food(n, &all[j]);
    return t;
}

/* The food that the dish is most about, but for `but`. */
static struct topic main_topic(const struct naming *n, const struct topic *but)
{
    struct topic best = {NULL, TEXT_EMPTY, n->said.kind.length ? ABOUT_CLEARLY : ABOUT_LEAST};
    for (size_t i = 0; i < n->foods.count; i++) {
        struct topic t = topic_at(n, i);
        if (t.about > best.about && !(but && is_same_food(t.shown, but->shown)))
            best = t;
    }
    return best;
}

static struct text topic_counted(const struct naming *n, const struct topic *t)
{
    struct text counted =
        t->line ? food_counted(n->k->pack, n->a, t->line, &t->line->amount) : TEXT_EMPTY;
    return t->line && !text_equal(counted, t->line->food)
                   && ends_with_words(t->line->food, t->shown)
               ? plural_of(n->k->pack, n->a, t->shown)
               : t->shown;
}

/* "Toor dal dal": a food whose name ends as the title goes on. */
static struct text without_doubles(struct arena *a, struct text title)
{
    struct text done = TEXT_EMPTY, last = TEXT_EMPTY, word;
    while (title.length && text_part(&title, ' ', &word)) {
        if (!text_equal(word, last))
            done = arena_format(a, "%.*s%s%.*s", TEXT(done), done.length ? " " : "", TEXT(word));
        last = word;
    }
    return done;
}

static struct text fill_title(const struct naming *n)
{
    struct topic one = main_topic(n, NULL), two = main_topic(n, &one);
    size_t foods = !one.line ? 0 : two.line && two.about >= SECOND_SHARE * one.about ? 2 : 1;
    if (n->named && foods)
        foods = 1;
    while (foods && !n->rule->titles[foods].length)
        foods--;
    const struct text blanks[] = {one.shown, two.shown, n->said.words, topic_counted(n, &one),
                                  topic_counted(n, &two)};
    return without_doubles(
        n->a, fill_blanks(n->a, n->rule->titles[foods], blanks, sizeof blanks / sizeof *blanks));
}

static void add_deed(struct naming *n, struct text action)
{
    for (size_t i = 0; i < n->deeds.count; i++)
        if (text_equal(n->deeds.at[i].action, action))
            return;
    const struct entry *e = entry_as(pack_find(n->k->pack, action, NULL), TAG_ACTION);
    *LIST_ADD(n->a, &n->deeds) = (struct deed){action, e ? e->marks : 0};
}

static void add_vessel(struct naming *n, struct text vessel)
{
    for (size_t i = 0; i < n->vessels.count; i++)
        if (text_equal(n->vessels.at[i], vessel))
            return;
    *LIST_ADD(n->a, &n->vessels) = vessel;
}

/* "An hour at two hundred": baked, with no verb that says so. */
static void add_heat(struct naming *n, const struct temperature *t)
{
    if (!text_is(t->of, "oven"))
        return;
    n->cooks = true;
    *LIST_ADD(n->a, &n->deeds) = (struct deed){TEXT_EMPTY, MARK_OF(ovens) | MARK_OF(heats)};
}

static void tell_steps(struct naming *n)
{
    for (size_t i = 0; i < n->dish->steps.count && i < STEPS_MOST; i++) {
        const struct step *s = &n->dish->steps.at[i];
        for (size_t j = 0; j < s->actions.count; j++)
            add_deed(n, s->actions.at[j]);
        add_vessel(n, s->vessel);
        for (size_t j = 0; j < s->temperatures.count; j++)
            add_heat(n, &s->temperatures.at[j]);
    }
}

struct text make_title(const struct kitchen *k, struct arena *a, const struct profile *profile,
                       const struct dish *d, struct dish_word said, bool named)
{
    struct naming n = {
        .k = k, .a = a, .dish = d, .cooks = dish_cooks(k, d), .said = said, .named = named};
    for (size_t i = 0; i < d->ingredients.count && i < LINES_MOST; i++)
        *LIST_ADD(a, &n.foods) = tell(&n, profile, &d->ingredients.at[i]);
    tell_steps(&n);
    for (size_t i = 0; i < k->titles.rules.count; i++) {
        n.rule = &k->titles.rules.at[i];
        struct text title = rule_fits(&n) ? fill_title(&n) : TEXT_EMPTY;
        if (title.length)
            return title;
    }
    return TEXT_EMPTY;
}
