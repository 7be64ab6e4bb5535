/* write/index_html.c: the first page of a published folder: the recording drawn as a band, the
 * dishes with their files, chapters, and what is still to be mended.
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "write/chapters.h"
#include "write/ingredient_line.h"
#include "write/pages.h"
#include "write/publish.h"

#define PHRASE_0(w, key) PHRASE_PLAIN((w)->kitchen, (w)->scratch, key)
#define PHRASE_1(w, key, one) PHRASE_TEXT((w)->kitchen, (w)->scratch, key, (one))
#define PHRASE_2(w, key, one, two) PHRASE_TEXT((w)->kitchen, (w)->scratch, key, (one), (two))

struct sheet {
    struct html *h;
    const struct recording *r;
    const struct writing *w;
};

/* ---- the band: times go from left to right in per cent, so that it is as wide as the page */

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

static struct text span_text(const struct sheet *s, double start, double end)
{
    return PHRASE_2(s->w, index_span, clock_text(s->w->scratch, start),
                    clock_text(s->w->scratch, end));
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
    html_end(s->h);
    html_line(s->h);
}

static struct text card_link(const struct sheet *s, size_t dish, const size_t *step)
{
    struct text file = dish_file(s->w, s->r, dish);
    return step ? arena_format(s->w->scratch, "%.*s.html#%c%zu", TEXT(file), ID_STEP, *step)
                : arena_format(s->w->scratch, "%.*s.html", TEXT(file));
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
    begin_box(s, card_link(s, dish, NULL),
              PHRASE_2(s->w, index_place, capital(s->w, d->title), span_text(s, start, end)));
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
        begin_box(s, card_link(s, dish, &first->id),
                  PHRASE_2(s->w, index_place, name, span_text(s, first->start, last)));
        put_box(s, "part", first->start, last, BAND_TOP + BAND_DISH + BAND_GAP, BAND_PART);
        end_box(s);
    }
}

static bool is_open(const struct finding *f)
{
    return !f->dismissed;
}

static struct text finding_anchor(const struct sheet *s, size_t i)
{
    return arena_format(s->w->scratch, "f%zu", i + 1);
}

static void put_marks(struct sheet *s)
{
    for (size_t i = 0; i < s->r->findings.count; i++) {
        const struct finding *f = &s->r->findings.at[i];
        if (!is_open(f))
            continue;
        struct text what = f->about.length ? f->about : f->kind;
        begin_box(
            s, arena_format(s->w->scratch, "#%.*s", TEXT(finding_anchor(s, i))),
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
        html_end(s->h);
        html_line(s->h);
    }
}

static void put_band(struct sheet *s)
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
    html_end(s->h);
    html_line(s->h);
}

/* ---- lists */

static void begin_part(struct sheet *s, struct text heading, const char *list)
{
    html_begin(s->h, "section");
    html_line(s->h);
    html_element(s->h, "h2", NULL, heading);
    html_begin(s->h, list);
    html_line(s->h);
}

static void end_part(struct sheet *s)
{
    html_end(s->h);
    html_line(s->h);
    html_end(s->h);
    html_line(s->h);
}

static void put_link(struct sheet *s, struct text url, struct text words)
{
    html_begin(s->h, "a");
    html_url(s->h, "href", url);
    html_put(s->h, words);
    html_end(s->h);
}

static void put_small(struct sheet *s, struct text words)
{
    html_put(s->h, TEXT_OF(" "));
    html_element(s->h, "small", NULL, words);
}

static struct text ending(struct text name)
{
    size_t dot = name.length;
    while (dot && name.at[dot - 1] != '.')
        dot--;
    return text_slice(name, dot, name.length);
}

/* The dish's other files, named by their endings. */
static void put_files_of(struct sheet *s, size_t dish)
{
    struct published f;
    for (size_t i = 0; published_at(s->r, i, &f); i++) {
        struct text name = arena_text(s->w->scratch, text_from(f.name));
        if (f.dish != dish + 1 || text_ends(name, ".html"))
            continue;
        html_put(s->h, TEXT_OF(" "));
        put_link(s, name, ending(name));
    }
}

static void put_dishes(struct sheet *s)
{
    begin_part(s, PHRASE_0(s->w, index_dishes), "ol");
    for (size_t i = 0; i < s->r->dishes.count; i++) {
        const struct dish *d = &s->r->dishes.at[i];
        html_begin(s->h, "li");
        put_link(s, card_link(s, i, NULL), capital(s->w, d->title));
        put_small(s, span_text(s, d->start, d->end));
        put_files_of(s, i);
        html_end(s->h);
        html_line(s->h);
    }
    end_part(s);
}

static void put_moment(struct sheet *s, double at)
{
    struct text url = moment_url(s->w, at), clock = clock_text(s->w->scratch, at);
    if (url.length)
        put_link(s, url, clock);
    else
        html_put(s->h, clock);
}

static void put_chapters(struct sheet *s, struct problems *p)
{
    chapter_list list;
    chapters_make(&list, s->r, s->w, p);
    begin_part(s, PHRASE_0(s->w, index_chapters), "ul");
    for (size_t i = 0; i < list.count; i++) {
        html_begin(s->h, "li");
        put_moment(s, list.at[i].start);
        html_put(s->h, TEXT_OF(" "));
        html_put(s->h, list.at[i].title);
        html_end(s->h);
        html_line(s->h);
    }
    html_end(s->h);
    html_line(s->h);
    if (list.notes.count)
        html_element(s->h, "h3", NULL, PHRASE_0(s->w, index_kept));
    for (size_t i = 0; i < list.notes.count; i++)
        html_element(s->h, "p", "soft", list.notes.at[i]);
    html_end(s->h);
    html_line(s->h);
}

static void put_finding(struct sheet *s, size_t i)
{
    const struct finding *f = &s->r->findings.at[i];
    html_begin(s->h, "li");
    html_attribute(s->h, "id", finding_anchor(s, i));
    html_begin(s->h, "b");
    html_attribute_string(s->h, "class", level_name(f->level));
    html_put(s->h, text_from(level_name(f->level)));
    html_end(s->h);
    html_put(s->h, TEXT_OF(" "));
    put_moment(s, f->at);
    html_put(s->h, TEXT_OF(" "));
    html_put(s->h, f->why);
    html_put(s->h, TEXT_OF(" "));
    html_put(s->h, f->suggest);
    if (f->source.length)
        put_small(s, f->source);
    html_end(s->h);
    html_line(s->h);
}

static void put_findings(struct sheet *s)
{
    size_t open = 0;
    begin_part(s, PHRASE_0(s->w, index_findings), "ul");
    for (int level = LEVEL_STOP; level >= LEVEL_NOTE; level--)
        for (size_t i = 0; i < s->r->findings.count; i++)
            if (is_open(&s->r->findings.at[i]) && (int) s->r->findings.at[i].level == level) {
                put_finding(s, i);
                open++;
            }
    if (!open)
        html_element(s->h, "li", NULL, PHRASE_0(s->w, index_none));
    end_part(s);
}

static void put_files(struct sheet *s)
{
    struct published f;
    begin_part(s, PHRASE_0(s->w, index_files), "ul");
    for (size_t i = 0; published_at(s->r, i, &f); i++) {
        if (f.dish || text_is(text_from(f.output), "index"))
            continue;
        html_begin(s->h, "li");
        put_link(s, text_from(f.name), text_from(f.name));
        html_end(s->h);
        html_line(s->h);
    }
    end_part(s);
    if (!s->w->stills_count)
        html_element(s->h, "p", "soft", PHRASE_0(s->w, index_stills));
}

/* Where it lay on somebody's disk is nobody's business. */
static struct text file_name(struct text path)
{
    size_t begin = path.length;
    while (begin && path.at[begin - 1] != '/')
        begin--;
    return text_slice(path, begin, path.length);
}

bool write_index_html(const struct recording *r, const struct writing *w, struct buffer *out,
                      struct problems *p)
{
    struct html h = {.out = out};
    struct sheet s = {&h, r, w};
    struct text title = PHRASE_1(w, index_title, file_name(text_from(r->file)));
    page_begin(&h, w, title, "base index");
    html_element(&h, "h1", NULL, title);
    put_band(&s);
    html_begin(&h, "div");
    html_attribute_string(&h, "class", "sides");
    html_line(&h);
    put_dishes(&s);
    put_chapters(&s, p);
    html_end(&h);
    html_line(&h);
    put_findings(&s);
    html_begin(&h, "div");
    html_attribute_string(&h, "class", "files");
    html_line(&h);
    put_files(&s);
    html_end(&h);
    html_line(&h);
    html_element(&h, "p", "soft", PHRASE_0(w, card_silence));
    page_end(&h);
    return true;
}
