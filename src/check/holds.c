/* check/holds.c
 * SPDX-License-Identifier: MIT */
#include "check/holds.h"

/* About half a minute of talk. */
#define NEAR_WORDS 70
/* A dish is summed up in so many words, which a border may leave to the next one. */
#define BORDER_WORDS 30

#define ANIMALS                                                                              \
    (MARK_OF(poultry) | MARK_OF(ground) | MARK_OF(meat) | MARK_OF(fish) | MARK_OF(shellfish) \
     | MARK_OF(egg))

/* What a list of names comes to, so that most foods are told apart from it at a glance. */
struct glance {
    uint64_t marks, shapes; /* bits of those that are marks; text_shape() of all */
};

static struct glance glance_at(struct text names)
{
    struct glance g = {0, 0};
    struct text name;
    uint64_t mark;
    while (text_part(&names, ' ', &name)) {
        g.marks |= mark_find(name, &mark) ? mark : 0;
        g.shapes |= text_shape(name);
    }
    return g;
}

/* "Cider vinegar" is a vinegar, "jasmine rice" a rice. */
static struct text last_word(struct text kind)
{
    size_t at = kind.length;
    while (at && kind.at[at - 1] != ' ')
        at--;
    return text_slice(kind, at, kind.length);
}

static bool may_be_one(const struct glance *g, uint64_t raw, struct text kind)
{
    return (raw & g->marks) | (text_shape(last_word(kind)) & g->shapes);
}

/* Whether food with these marks and that name is raw food of one of the names. */
static bool is_one(uint64_t raw, struct text kind, struct text marks)
{
    struct text name;
    while (text_part(&marks, ' ', &name))
        if ((text_equal(last_word(kind), name) || mark_named(raw, name))
            && (!(raw & MARK_OF(cooked)) || text_is(name, "cooked")))
            return true;
    return false;
}

/* "Chicken thighs. Twelve of them, so that's six people", said where the next dish has begun: the
 * dish before it has the same amount of it. */
static bool of_dish_before(const struct checker *c, const struct ingredient *line)
{
    if (!c->number || line->id > c->dish->words.first + BORDER_WORDS)
        return false;
    const struct dish *d = &c->r->dishes.at[c->number - 1];
    for (size_t n = 0; n < d->ingredients.count; n++) {
        const struct ingredient *other = &d->ingredients.at[n];
        if (text_equal(other->kind, line->kind) && other->amount.known
            && ratio_equal(other->amount.min, line->amount.min)
            && text_equal(other->amount.unit, line->amount.unit))
            return true;
    }
    return false;
}

/* "I've let the oven cool down from the chicken": it went into the dish before. */
static bool of_another(const struct checker *c, const struct dish *d, const struct ingredient *line)
{
    if (d != c->dish || line->id >= c->r->words.count)
        return false;
    return line->amount.known ? of_dish_before(c, line) : known_elsewhere(c, line);
}

const struct ingredient *food_of(const struct checker *c, const struct dish *d, struct text marks)
{
    const struct glance g = glance_at(marks);
    for (size_t i = 0; i < d->ingredients.count; i++) {
        const struct ingredient *line = &d->ingredients.at[i];
        uint64_t raw = line->entry ? line->entry->marks : 0;
        if (line->role != ROLE_SERVE_WITH && may_be_one(&g, raw, line->kind)
            && is_one(raw, line->kind, marks) && !of_another(c, d, line))
            return line;
    }
    return NULL;
}

/* "Two cups of cooked chicken", "a smoked turkey wing": said in the line, or right before it. */
bool cooked_before(const struct checker *c, struct text marks)
{
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        struct span where, words = {line->words.first, line->id};
        words.first -= words.first > 0;
        if (line->entry && is_one(line->entry->marks, line->kind, marks)
            && words.first <= words.last && words.last < c->r->words.count
            && said_find(&c->sayings, c->r, "ready_made", words, &where))
            return true;
    }
    return false;
}

/* The foods named before the word, from behind: `*i` begins as the word; NULL: no more so near. */
static const struct word *next_food(const struct checker *c, size_t word, size_t *i)
{
    while (*i > 0 && *i + NEAR_WORDS > word) {
        const struct word *w = &c->r->words.at[--*i];
        if (w->tag == TAG_FOOD && w->entry)
            return w;
    }
    return NULL;
}

/* The last food before the word that has one of the marks, or any where there are none; NULL when
 * there is none near. */
static const struct word *food_word_before(const struct checker *c, size_t word, uint64_t marks)
{
    size_t i = word;
    for (const struct word *w; (w = next_food(c, word, &i));)
        if (w->entry->marks & marks)
            return w;
    return NULL;
}

bool food_before(const struct checker *c, struct text marks, size_t word)
{
    size_t i = word;
    for (const struct word *w; (w = next_food(c, word, &i));)
        if (is_one(w->entry->marks, entry_value(w->entry), marks))
            return true;
    return false;
}

bool nearest_food_is(const struct checker *c, struct text marks, size_t word)
{
    size_t i = word;
    for (const struct word *w; (w = next_food(c, word, &i));)
        if (!(w->entry->marks & MARK_OF(water)))
            return is_one(w->entry->marks, entry_value(w->entry), marks);
    return false;
}

bool other_animal(const struct checker *c, struct text marks, size_t word)
{
    struct text rest = marks, name;
    while (text_part(&rest, ' ', &name))
        if (!mark_named(ANIMALS & ~MARK_OF(egg), name))
            return false;
    /* An egg binds ground meat. */
    const uint64_t others =
        text_has_part(marks, ' ', TEXT_OF("ground")) ? ANIMALS & ~MARK_OF(egg) : ANIMALS;
    const struct word *w = food_word_before(c, word, others);
    return w && !is_one(w->entry->marks, entry_value(w->entry), marks);
}
