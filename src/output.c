/* output.c: what the handle holds, or can work out, as bytes for whoever asked.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "handle.h"
#include "kitchen/calculate.h"
#include "write/html.h"
#include "write/publish.h"

/* A function of its own, so that no local variable changes between setjmp and the jump. */
static bool write_within_arena(struct dishtake *d, const struct format *f, const struct writing *w)
{
    struct problems *p = &d->problems;
    if (arena_open(&d->scratch)) {
        if (!f->write(&d->recording, w, &d->out, p))
            return false;
        if (!d->out.failed)
            return true;
    }
    return problem(p, (struct place){.file = d->recording.file},
                   "too large: no memory is left to write %s", f->output);
}

static bool write_output(struct dishtake *d, const char *output, const char *as,
                         const struct writing *w)
{
    struct place here = {.file = d->recording.file};
    struct problems *p = &d->problems;
    const struct format *f = format_find(output, as);
    buffer_clear(&d->out);
    arena_reset(&d->scratch);
    if (!d->read)
        return problem(p, here, "nothing was read");
    if (!f)
        return problem(p, here, "%s cannot be written as %s", output, as);
    if (w->dish > d->recording.dishes.count)
        return problem(p, here, "there is no dish %zu; the recording has %zu", w->dish,
                       d->recording.dishes.count);
    return write_within_arena(d, f, w);
}

/* In the order of enum units_shown; the first has no name, since it is what is not asked for. */
static bool read_units(const char *name, enum units_shown *units, struct problems *p)
{
    static const char *const names[] = {"", "us", "metric", "both"};
    for (int i = UNITS_US; name && i <= UNITS_BOTH; i++)
        if (strcmp(name, names[i]) == 0) {
            *units = (enum units_shown) i;
            return true;
        }
    return !name
           || problem(p, (struct place){0}, "units \"%s\": us, metric or both is needed", name);
}

static bool read_number(const char *typed, const char *what, struct ratio *n, struct problems *p)
{
    if (!typed)
        return true;
    *n = ratio_read(typed, strlen(typed));
    return (ratio_finite(*n) && n->over > 0)
           || problem(p, (struct place){0},
                      "%s \"%s\": a number above 0 is needed, as 12, 1/2 or 1.5", what, typed);
}

bool writing_read(struct writing *w, const struct dishtake_write_options *options,
                  struct problems *p)
{
    struct dishtake_write_options o;
    options_take(&o, sizeof o, options);
    w->dish = o.dish;
    w->at = o.at;
    w->one_line = o.one_line;
    w->style = (struct text){o.style ? o.style : "", o.style_length};
    w->video_url = text_from(o.video_url);
    w->detail = o.detail;
    w->reflow = o.reflow;
    w->letters = o.letters;
    w->stills = o.stills;
    w->stills_count = o.stills_count;
    if (!url_is_plain(w->video_url))
        return problem(p, (struct place){0},
                       "video address \"%s\": http://..., https://... or a path is needed",
                       o.video_url);
    return read_units(o.units, &w->units, p) && read_number(o.serves, "serves", &w->serves, p)
           && read_number(o.times, "times", &w->times, p);
}

const char *dishtake_write(struct dishtake *d, const char *output, const char *as,
                           const struct dishtake_write_options *options, size_t *length)
{
    struct writing w = {.kitchen = d->grammar->kitchen,
                        .scratch = &d->scratch,
                        .at = -1,
                        .profile = d->means.profile};
    if (options && !writing_read(&w, options, &d->problems))
        return NULL;
    if (!write_output(d, output, as, &w))
        return NULL;
    *length = d->out.length;
    return buffer_text(&d->out).at;
}

static void put_calculation(struct buffer *out, const struct calculation *c)
{
    const struct text parts[] = {c->line, c->source, c->rounding};
    for (size_t i = 0; i < sizeof parts / sizeof *parts; i++)
        if (parts[i].length)
            buffer_format(out, "%s%.*s\n", i ? "  " : "", TEXT(parts[i]));
}

/* A function of its own, so that no local variable changes between setjmp and the jump. */
static bool calculate_within_arena(struct dishtake *d, const struct profile *profile,
                                   struct text input, struct text to)
{
    const struct asked asked = {d->grammar->kitchen, &d->scratch, profile, &d->problems};
    struct calculation c = {0};
    if (!arena_open(&d->scratch))
        return problem(&d->problems, (struct place){0}, "no memory is left");
    if (!calculate(&asked, input, to, &c))
        return false;
    put_calculation(&d->out, &c);
    return !d->out.failed || problem(&d->problems, (struct place){0}, "no memory is left");
}

const char *dishtake_measure(struct dishtake *d, const char *amount, const char *unit,
                             const char *kitchen, size_t *length)
{
    const struct profile *profile = NULL;
    if (!dishtake_ready(d))
        return NULL;
    handle_forget(d);
    arena_reset(&d->scratch);
    buffer_clear(&d->out);
    if (kitchen)
        profile = handle_profile(d, kitchen);
    if ((kitchen && !profile)
        || !calculate_within_arena(d, profile, text_from(amount), text_from(unit)))
        return NULL;
    *length = d->out.length;
    return buffer_text(&d->out).at;
}

bool dishtake_format(size_t i, struct dishtake_format *format)
{
    const struct format *f = format_at(i);
    if (f)
        *format = (struct dishtake_format){f->output, f->as, f->about};
    return f != NULL;
}

bool dishtake_published(const struct dishtake *d, size_t i, struct dishtake_published *file)
{
    struct published f;
    if (!d->read || !published_at(&d->recording, i, &f))
        return false;
    *file = (struct dishtake_published){"", f.output, f.as, f.dish};
    memcpy(file->name, f.name, sizeof file->name);
    return true;
}

bool dishtake_still(const struct dishtake *d, size_t i, struct dishtake_still *still)
{
    struct still s;
    if (!d->read || !still_at(&d->recording, i, &s))
        return false;
    *still = (struct dishtake_still){"", s.at};
    memcpy(still->name, s.name, sizeof still->name);
    return true;
}

_Static_assert(FILE_NAME_BYTES == DISHTAKE_NAME_BYTES, "names are copied whole");
