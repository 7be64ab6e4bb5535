/* write/check_text.c: findings as FILE:LINE:COLUMN: level: kind: message (at 1:02:33), which
 * editors can follow. Line and column are the caption file's own; the clock stands in the message,
 * since FILE:1:02:33 would read as a line.
 * SPDX-License-Identifier: MIT */
#include "write/place.h"
#include "write/write.h"

static void put_finding(struct buffer *b, const struct recording *r, const struct writing *w,
                        const struct finding *f)
{
    unsigned line = 0, column = 0;
    buffer_put_string(b, r->file);
    if (finding_place(r, f, &line, &column))
        buffer_format(b, ":%u:%u", line, column);
    struct text message =
        f->suggest.length ? arena_format(w->scratch, "%.*s %.*s", TEXT(f->why), TEXT(f->suggest))
                          : f->why;
    struct text whole = PHRASE_2(w, finding_at, message, clock_text(w->scratch, f->at));
    buffer_format(b, ": %s: %.*s: %.*s\n", level_name(f->level), TEXT(f->kind), TEXT(whole));
}

bool write_check_text(const struct recording *r, const struct writing *w, struct buffer *out,
                      struct problems *p)
{
    (void) p;
    for (size_t i = 0; i < r->findings.count; i++)
        if (!r->findings.at[i].dismissed && dish_wanted(w, r->findings.at[i].dish))
            put_finding(out, r, w, &r->findings.at[i]);
    return true;
}
