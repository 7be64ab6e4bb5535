/* write/index_band.c: the recording drawn as a band. Times go from left to right in per cent, so
 * that it is as wide as the page.
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "write/index.h"
#include "write/ingredient_line.h"
#include "write/publish.h"

/* Rows of the drawing, in pixels. */
#define BAND_TOP 4
#define BAND_DISH 34
#define BAND_PART 12
#define BAND_GAP 6
#define BAND_MARK 22
#define BAND_AXIS 20

static struct text percent(const struct sheet *s, double seconds)
{
    double length = fmax(s->r->length, 1);
    double share = fmin(fmax(seconds / length, 0), 1) * 100;
    unsigned long parts = (unsigned long) lround(share * 1000);
    return arena_format(s->w->scratch, "%lu.%03lu%%", parts / 1000, parts % 1000);
}

static void put_number(struct sheet *s, const char *name, int pixels)
{
    html_attribute(s->h, name, arena_format(s->w->scratch, "%d", pixels));
}

/* A linked box; what it is stands in its label and, for a pointer, in its title. */
static void begin_box(struct sheet *s, struct text link, struct text label)
{
    html_begin(s->h, "a");
    html_url(s->h, "href", link);
    html_attribute(s->h, "aria-label", label);
    html_element(s->h, "title", NULL, label);
}

static void put_box(struct sheet *s, const char *class, double start, double end, int top,
                    int height)
{
    html_begin(s->h, "rect");
    html_attribute_string(s->h, "class", class);
    html_attribute(s->h, "x", percent(s, start));
    html_attribute(s->h, "width", percent(s, fmax(end - start, s->r->length / 400)));
    put_number(s, "y", top);
    put_number(s, "height", height);
    html_end(s->h);
}

static void end_box(struct sheet *s)
{
    html_end_line(s->h);
}

static void span_times(const struct sheet *s, const struct dish *d, size_t n, double *start,
                       double *end)
{
    size_t first = d->spans.at[n].first, last = d->spans.at[n].last;
    *start = n && first < s->r->words.count ? s->r->words.at[first].start : d->start;
    *end = last < s->r->words.count ? s->r->words.at[last].end : d->end;
}

/* A number in the box of a dish, where it is wide enough to be read on a narrow screen too. */
static void put_dish_span(struct sheet *s, size_t dish, size_t n)
{
    static const char *const shades[] = {"dish a", "dish b", "dish c"};
    const struct dish *d = &s->r->dishes.at[dish];
    double start, end;
    span_times(s, d, n, &start, &end);
    begin_box(s, index_card_link(s, dish, NULL),
              PHRASE_2(s->w, index_place, capital(s->w, d->title), index_span_text(s, start, end)));
    put_box(s, shades[dish % 3], start, end, BAND_TOP, BAND_DISH);
    if (end - start > s->r->length / 20) {
        html_begin(s->h, "text");
        html_attribute(s->h, "x", percent(s, (start + end) / 2));
        put_number(s, "y", BAND_TOP + 23);
        html_put(s->h, arena_format(s->w->scratch, "%zu", dish + 1));
        html_end(s->h);
    }
    end_box(s);
}

/* A component: the steps that follow one another in it. */
static void put_parts(struct sheet *s, size_t dish)
{
    const struct dish *d = &s->r->dishes.at[dish];
    for (size_t i = 0, end; i < d->steps.count; i = end) {
        const struct step *first = &d->steps.at[i];
        end = i + 1;
        while (end < d->steps.count && text_equal(d->steps.at[end].group, first->group))
            end++;
        if (!first->group.length)
            continue;
        double last = d->steps.at[end - 1].end;
        struct text name = PHRASE_2(s->w, chapter_part, capital(s->w, d->title), first->group);
        begin_box(s, index_card_link(s, dish, &first->id),
                  PHRASE_2(s->w, index_place, name, index_span_text(s, first->start, last)));
        put_box(s, "part", first->start, last, BAND_TOP + BAND_DISH + BAND_GAP, BAND_PART);
        end_box(s);
    }
}

static void put_marks(struct sheet *s)
{
    for (size_t i = 0; i < s->r->findings.count; i++) {
        const struct finding *f = &s->r->findings.at[i];
        if (f->dismissed)
            continue;
        struct text what = f->about.length ? f->about : f->kind;
        begin_box(
            s, arena_format(s->w->scratch, "#%.*s", TEXT(index_anchor(s, i))),
            PHRASE_2(s->w, index_place,
                     arena_format(s->w->scratch, "%s: %.*s", level_name(f->level), TEXT(what)),
                     clock_text(s->w->scratch, f->at)));
        put_box(s, level_name(f->level), f->at, f->at,
                BAND_TOP + BAND_DISH + BAND_PART + 2 * BAND_GAP, BAND_MARK);
        end_box(s);
    }
}

/* So many seconds that at most six clock times stand under the band. */
static double axis_step(double length)
{
    static const double steps[] = {10, 30, 60, 300, 600, 1800, 3600, 7200};
    for (size_t i = 0; i < sizeof steps / sizeof *steps; i++)
        if (length / steps[i] <= 6)
            return steps[i];
    return ceil(length / 6 / 3600) * 3600;
}

static void put_axis(struct sheet *s, int top)
{
    double step = axis_step(s->r->length);
    size_t count = (size_t) ceil(s->r->length * 0.95 / step);
    for (size_t i = 0; i < count; i++) {
        double at = (double) i * step;
        html_begin(s->h, "text");
        html_attribute_string(s->h, "class", "clock");
        html_attribute(s->h, "x", percent(s, at));
        put_number(s, "y", top);
        html_put(s->h, clock_text(s->w->scratch, at));
        html_end_line(s->h);
    }
}

void index_put_band(struct sheet *s)
{
    int height = BAND_TOP + BAND_DISH + BAND_PART + 2 * BAND_GAP + BAND_MARK + BAND_AXIS;
    html_begin(s->h, "svg");
    html_attribute_string(s->h, "class", "band");
    html_attribute_string(s->h, "role", "group");
    html_attribute(s->h, "aria-label", PHRASE_0(s->w, index_band));
    html_attribute_string(s->h, "width", "100%");
    put_number(s, "height", height);
    html_line(s->h);
    put_box(s, "ground", 0, s->r->length, BAND_TOP, BAND_DISH);
    html_line(s->h);
    for (size_t i = 0; i < s->r->dishes.count; i++) {
        for (size_t n = 0; n < s->r->dishes.at[i].spans.count; n++)
            put_dish_span(s, i, n);
        put_parts(s, i);
    }
    put_marks(s);
    put_axis(s, height - 5);
    html_end_line(s->h);
}
