/* edits/borders.c: which words belong to which dish. A border stands between sentences, since a
 * sentence is read as one.
 * SPDX-License-Identifier: MIT */
#include "edits/run.h"

typedef LIST(struct span) span_list;

/* What is left of the stretches without these words. */
static size_t subtract(struct arena *a, const struct span *from, size_t count, struct span words,
                       span_list *left)
{
    for (size_t i = 0; i < count; i++) {
        struct span s = from[i];
        if (s.first < words.first)
            *LIST_ADD(a, left) =
                (struct span){s.first, s.last < words.first ? s.last : words.first - 1};
        if (s.last > words.last)
            *LIST_ADD(a, left) =
                (struct span){s.first > words.last ? s.first : words.last + 1, s.last};
    }
    return left->count;
}

static void set_spans(struct recording *r, struct dish *d, const struct span *spans, size_t count)
{
    LIST_CUT(&d->spans, 0);
    for (size_t i = 0; i < count; i++) {
        struct span *last = d->spans.count ? &d->spans.at[d->spans.count - 1] : NULL;
        if (last && spans[i].first <= last->last + 1)
            last->last = spans[i].last > last->last ? spans[i].last : last->last;
        else
            *LIST_ADD(r->arena, &d->spans) = spans[i];
    }
    d->words = (struct span){d->spans.at[0].first, d->spans.at[d->spans.count - 1].last};
    d->start = r->words.at[d->words.first].start;
    d->end = r->words.at[d->words.last].end;
}

/* Takes the words away from a dish. False, with nothing changed, when nothing would be left of it.
 */
static bool take_from(struct recording *r, struct dish *d, struct span words)
{
    span_list left = {0};
    if (!subtract(r->arena, d->spans.at, d->spans.count, words, &left))
        return false;
    set_spans(r, d, left.at, left.count);
    return true;
}

static bool can_take(struct recording *r, const struct dish *except, struct span words)
{
    for (size_t i = 0; i < r->dishes.count; i++) {
        const struct dish *d = &r->dishes.at[i];
        span_list left = {0};
        if (d != except && !subtract(r->arena, d->spans.at, d->spans.count, words, &left))
            return false;
    }
    return true;
}

static void take_from_all(struct recording *r, const struct dish *except, struct span words)
{
    for (size_t i = 0; i < r->dishes.count; i++)
        if (&r->dishes.at[i] != except)
            take_from(r, &r->dishes.at[i], words);
}

static int span_compare(struct span a, struct span b)
{
    return a.first < b.first ? -1 : a.first > b.first;
}

static void give(struct recording *r, struct dish *d, const struct span *spans, size_t count)
{
    span_list all = {0};
    size_t i = 0, n = 0;
    while (i < d->spans.count || n < count) {
        bool own = n == count || (i < d->spans.count && span_compare(d->spans.at[i], spans[n]) < 0);
        *LIST_ADD(r->arena, &all) = own ? d->spans.at[i++] : spans[n++];
    }
    set_spans(r, d, all.at, all.count);
}

/* Dishes stand in the order in which they begin. */
static void sort_dishes(struct recording *r)
{
    for (size_t i = 1; i < r->dishes.count; i++) {
        struct dish d = r->dishes.at[i];
        size_t n = i;
        for (; n && r->dishes.at[n - 1].words.first > d.words.first; n--)
            r->dishes.at[n] = r->dishes.at[n - 1];
        r->dishes.at[n] = d;
    }
}

static void remove_dish(struct recording *r, const struct dish *d)
{
    LIST_REMOVE(&r->dishes, (size_t) (d - r->dishes.at));
}

static struct dish *new_dish(struct change *c, const struct span *spans, size_t count,
                             struct text title)
{
    struct text given = text_trim(json_text(json_object_get(c->json, "value")));
    struct dish *d = LIST_ADD(c->r->arena, &c->r->dishes);
    size_t id = spans[0].first;
    while (dish_with_id(c->r, id))
        id++;
    d->id = id;
    d->title_given = given.length > 0;
    d->title = given.length ? arena_text(c->r->arena, given) : title;
    set_spans(c->r, d, spans, count);
    c->out->dish = id;
    return d;
}

/* `none_left`: why not, where another dish would lose all its words. */
static bool gain(struct change *c, struct dish *d, struct span words, const char *none_left)
{
    if (!can_take(c->r, d, words))
        return no_place(c, none_left);
    take_from_all(c->r, d, words);
    give(c->r, d, &words, 1);
    return true;
}

static bool lose(struct change *c, struct dish *d, struct span words)
{
    return take_from(c->r, d, words) || no_place(c, "nothing would be left of the dish");
}

static bool move_start(struct change *c, struct dish *d, size_t word)
{
    const struct sentence *s = sentence_of(c->r, word);
    size_t first = s ? s->first : word, old = d->words.first;
    if (first == old)
        return true;
    if (first > old)
        return lose(c, d, (struct span){old, first - 1});
    return gain(c, d, (struct span){first, old - 1}, "nothing would be left of the dish before it");
}

static bool move_end(struct change *c, struct dish *d, size_t word)
{
    const struct sentence *s = sentence_of(c->r, word);
    size_t last = s ? s->last : word, old = d->words.last;
    if (last == old)
        return true;
    if (last < old)
        return lose(c, d, (struct span){last + 1, old});
    return gain(c, d, (struct span){old + 1, last}, "nothing would be left of the dish after it");
}

bool apply_dish_border(struct change *c)
{
    struct dish *d = spot_dish(c->r, &c->out->on);
    if (!d)
        return no_place(c, "there is no such dish");
    c->out->dish = d->id;
    bool start = text_is(json_text(json_object_get(c->json, "field")), "start");
    bool done =
        start ? move_start(c, d, c->out->to.words.first) : move_end(c, d, c->out->to.words.first);
    sort_dishes(c->r);
    return done;
}

bool apply_dish_cut(struct change *c)
{
    struct dish *d = spot_dish(c->r, &c->out->on);
    const struct sentence *s = sentence_of(c->r, c->out->to.words.first);
    if (!d || !s || s->first <= d->words.first || s->first > d->words.last)
        return no_place(c, "that word is not inside the dish");
    span_list later = {0};
    struct text title = d->title;
    struct span tail = {s->first, d->words.last};
    subtract(c->r->arena, d->spans.at, d->spans.count, (struct span){0, s->first - 1}, &later);
    if (!later.count || !take_from(c->r, d, tail))
        return no_place(c, "nothing would be left of one of the two");
    new_dish(c, later.at, later.count, title);
    sort_dishes(c->r);
    return true;
}

bool apply_dish_join(struct change *c)
{
    struct dish *d = spot_dish(c->r, &c->out->on), *other = spot_dish(c->r, &c->out->to);
    if (!d || !other || d == other)
        return no_place(c, "there are no two such dishes");
    c->out->dish = d->id;
    give(c->r, d, other->spans.at, other->spans.count);
    remove_dish(c->r, other);
    sort_dishes(c->r);
    return true;
}

bool apply_dish_remove(struct change *c)
{
    struct dish *d = spot_dish(c->r, &c->out->on);
    if (!d)
        return no_place(c, "there is no such dish");
    remove_dish(c->r, d);
    return true;
}

bool apply_dish_add(struct change *c)
{
    const struct sentence *first = sentence_of(c->r, c->out->on.words.first);
    const struct sentence *last = sentence_of(c->r, c->out->to.words.first);
    if (!first || !last || last->last < first->first)
        return no_place(c, "it would have no words");
    struct span words = {first->first, last->last};
    if (!can_take(c->r, NULL, words))
        return no_place(c, "nothing would be left of another dish");
    take_from_all(c->r, NULL, words);
    new_dish(c, &words, 1, TEXT_OF("?"));
    sort_dishes(c->r);
    return true;
}
