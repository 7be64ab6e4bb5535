/* write/write.c: the table of formats, and what several of them share.
 * SPDX-License-Identifier: MIT */
#include "write/write.h"

#include <string.h>

static const struct format FORMATS[] = {
#define FORMAT(output, as, write, about) {output, as, about, write},
#include "write/formats.def"
#undef FORMAT
};

const struct format *format_at(size_t i)
{
    return i < sizeof FORMATS / sizeof *FORMATS ? &FORMATS[i] : NULL;
}

const struct format *format_find(const char *output, const char *as)
{
    const struct format *f;
    for (size_t i = 0; (f = format_at(i)); i++)
        if (strcmp(f->output, output) == 0 && strcmp(f->as, as) == 0)
            return f;
    return NULL;
}

bool dish_wanted(const struct writing *w, size_t dish)
{
    return !w->dish || w->dish == dish + 1;
}

size_t open_findings(const struct recording *r, size_t dish, enum finding_level level)
{
    size_t n = 0;
    for (size_t i = 0; i < r->findings.count; i++) {
        const struct finding *f = &r->findings.at[i];
        n += f->dish == dish && f->level >= level && !f->dismissed;
    }
    return n;
}

struct text clock_text(struct arena *a, double seconds)
{
    unsigned long whole = seconds > 0 ? (unsigned long) seconds : 0;
    if (whole >= 3600)
        return arena_format(a, "%lu:%02lu:%02lu", whole / 3600, whole / 60 % 60, whole % 60);
    return arena_format(a, "%lu:%02lu", whole / 60, whole % 60);
}
