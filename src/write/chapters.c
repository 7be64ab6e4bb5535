/* write/chapters.c: one chapter a stretch of a dish, in the order of the video; then what hosts ask
 * for.
 * SPDX-License-Identifier: MIT */
#include "write/chapters.h"

#include <math.h>
#include <stdlib.h>

#include "write/ingredient_line.h"
#include "write/wrap.h"

/* Silence or chat after the last dish that is worth a marker of its own. */
#define END_SECONDS 20

/* At most CHAPTER_TITLE_LETTERS, cut at a space, with "…". */
static struct text short_title(const struct writing *w, struct text title)
{
    if (text_letters(title) <= CHAPTER_TITLE_LETTERS)
        return title;
    size_t columns = 0, cut = 0, at = 0;
    for (; at < title.length && columns < CHAPTER_TITLE_LETTERS - 1; at++) {
        if (title.at[at] == ' ')
            cut = at;
        columns += !byte_goes_on(title.at[at]);
    }
    while (!cut && at < title.length && byte_goes_on(title.at[at]))
        at++;
    return arena_format(w->scratch, "%.*s…", TEXT(text_slice(title, 0, cut ? cut : at)));
}

static void add(chapter_list *list, const struct writing *w, double start, struct text title,
                bool added)
{
    *LIST_ADD(w->scratch, list) = (struct chapter){floor(start), 0, title, added};
}

static void add_dishes(chapter_list *list, const struct recording *r, const struct writing *w)
{
    for (size_t i = 0; i < r->dishes.count; i++) {
        const struct dish *d = &r->dishes.at[i];
        struct text title = short_title(w, capital(w, d->title));
        if (!d->spans.count)
            add(list, w, d->start, title, false);
        for (size_t n = 0; n < d->spans.count; n++)
            if (d->spans.at[n].first < r->words.count)
                add(list, w, n ? r->words.at[d->spans.at[n].first].start : d->start, title, false);
    }
}

/* A component begins at its first step, and again where it was left; behind it the dish goes on. */
static void add_parts(chapter_list *list, const struct recording *r, const struct writing *w)
{
    for (size_t i = 0; i < r->dishes.count; i++) {
        const struct dish *d = &r->dishes.at[i];
        struct text group = TEXT_EMPTY, dish = capital(w, d->title);
        for (size_t n = 0; n < d->steps.count; n++) {
            const struct step *s = &d->steps.at[n];
            struct text title = s->group.length ? PHRASE_2(w, chapter_part, dish, s->group) : dish;
            if (!text_equal(s->group, group))
                add(list, w, s->start, short_title(w, title), false);
            group = s->group;
        }
    }
}

static bool was_told(const struct problems *p, struct text t)
{
    for (size_t i = 0; i < p->count; i++)
        if (text_is(t, p->at[i].message))
            return true;
    return false;
}

static void tell(chapter_list *list, const struct recording *r, const struct writing *w,
                 struct problems *p, struct text t)
{
    *LIST_ADD(w->scratch, &list->notes) = t;
    if (!was_told(p, t))
        problem_note(p, (struct place){.file = r->file}, "%.*s", TEXT(t));
}
#define TELL(list, r, w, p, ...) tell(list, r, w, p, arena_format((w)->scratch, __VA_ARGS__))

static int by_start(const void *a, const void *b)
{
    const struct chapter *x = a, *y = b;
    int order = (x->start > y->start) - (x->start < y->start);
    return order ? order : text_compare(x->title, y->title); /* the same in every run */
}

/* Talk before the first dish is the intro; too short a one belongs to the first dish. */
static void begin_at_zero(chapter_list *list, const struct recording *r, const struct writing *w,
                          struct problems *p)
{
    if (list->count && list->at[0].start < CHAPTER_SECONDS) {
        list->at[0].start = 0;
        return;
    }
    *LIST_INSERT(w->scratch, list, 0) = (struct chapter){0, 0, PHRASE_0(w, chapter_intro), true};
    TELL(list, r, w, p, "chapters begin at 0:00, so \"%.*s\" was added there",
         TEXT(list->at[0].title));
}

static void add_end(chapter_list *list, const struct recording *r, const struct writing *w,
                    struct problems *p)
{
    double end = 0;
    for (size_t i = 0; i < r->dishes.count; i++)
        end = fmax(end, ceil(r->dishes.at[i].end));
    if (!r->dishes.count || r->length - end < END_SECONDS)
        return;
    add(list, w, end, PHRASE_0(w, chapter_end), true);
    TELL(list, r, w, p, "\"%.*s\" was added for the talk after the last dish",
         TEXT(list->at[list->count - 1].title));
}

/* A chapter that is too short goes into the one before it; the first takes in the next. */
static void join_short(chapter_list *list, const struct recording *r, const struct writing *w,
                       struct problems *p)
{
    for (size_t i = 1; i < list->count;) {
        double end = i + 1 < list->count ? list->at[i + 1].start : r->length;
        bool too_short = list->at[i].start - list->at[i - 1].start < CHAPTER_SECONDS
                         || end - list->at[i].start < CHAPTER_SECONDS;
        bool same = text_equal(list->at[i].title, list->at[i - 1].title);
        if (too_short && !same)
            TELL(
                list, r, w, p,
                "the chapter \"%.*s\" at %.*s would be under %d seconds; it was joined to \"%.*s\"",
                TEXT(list->at[i].title), TEXT(clock_text(w->scratch, list->at[i].start)),
                CHAPTER_SECONDS, TEXT(list->at[i - 1].title));
        if (too_short || same)
            LIST_REMOVE(list, i);
        else
            i++;
    }
}

/* Where a chapter could be cut in two: at the first step of a component. */
struct cut {
    size_t chapter;
    double start, shorter; /* seconds: the cut, and the shorter of the two halves */
    struct text dish, part;
};

static void weigh_cut(struct cut *best, const chapter_list *list, const struct recording *r,
                      const struct dish *d, const struct step *s)
{
    double start = floor(s->start);
    for (size_t i = 0; i < list->count; i++) {
        double end = i + 1 < list->count ? list->at[i + 1].start : r->length;
        double shorter = fmin(start - list->at[i].start, end - start);
        if (shorter >= CHAPTER_SECONDS && shorter > best->shorter)
            *best = (struct cut){i, start, shorter, d->title, s->group};
    }
}

/* Cuts one chapter where both halves stay longest; false when none can be cut. */
static bool cut_one(chapter_list *list, const struct recording *r, const struct writing *w)
{
    struct cut best = {.shorter = 0};
    for (size_t i = 0; i < r->dishes.count; i++) {
        const struct dish *d = &r->dishes.at[i];
        for (size_t n = 1; n < d->steps.count; n++) {
            const struct step *s = &d->steps.at[n];
            if (s->group.length && !text_equal(s->group, d->steps.at[n - 1].group))
                weigh_cut(&best, list, r, d, s);
        }
    }
    if (best.shorter <= 0)
        return false;
    struct text title = PHRASE_2(w, chapter_part, capital(w, best.dish), best.part);
    *LIST_INSERT(w->scratch, list, best.chapter + 1) =
        (struct chapter){best.start, 0, short_title(w, title), true};
    return true;
}

static void reach_least(chapter_list *list, const struct recording *r, const struct writing *w,
                        struct problems *p)
{
    size_t had = list->count;
    while (list->count < CHAPTERS_LEAST && cut_one(list, r, w))
        ;
    if (list->count > had)
        TELL(list, r, w, p,
             "video hosts ask for %d chapters at least, so a dish was cut by its parts",
             CHAPTERS_LEAST);
    if (list->count < CHAPTERS_LEAST)
        TELL(list, r, w, p, "chapters found: %zu; video hosts ask for %d at least", list->count,
             CHAPTERS_LEAST);
}

/* Titles are unique: a dish that is returned to is told apart by a number. */
static void number_returns(chapter_list *list, const struct writing *w)
{
    for (size_t i = list->count; i-- > 1;) {
        size_t before = 0;
        for (size_t n = 0; n < i; n++)
            before += text_equal(list->at[n].title, list->at[i].title);
        if (before)
            list->at[i].title = PHRASE_2(w, chapter_again, list->at[i].title,
                                         arena_format(w->scratch, "%zu", before + 1));
    }
}

void chapters_make(chapter_list *list, const struct recording *r, const struct writing *w,
                   struct problems *p)
{
    *list = (chapter_list){0};
    add_dishes(list, r, w);
    if (w->detail)
        add_parts(list, r, w);
    if (list->count)
        qsort(list->at, list->count, sizeof *list->at, by_start);
    begin_at_zero(list, r, w, p);
    add_end(list, r, w, p);
    join_short(list, r, w, p);
    reach_least(list, r, w, p);
    number_returns(list, w);
    for (size_t i = 0; i < list->count; i++)
        list->at[i].end = i + 1 < list->count ? list->at[i + 1].start : r->length;
    if (list->count) /* no form has a chapter that ends before it begins */
        list->at[list->count - 1].end = fmax(r->length, list->at[list->count - 1].start + 1);
}
