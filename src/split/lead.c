/* split/lead.c
 * SPDX-License-Identifier: MIT */
#include "split/lead.h"

#include "base/arena.h"

static bool is_talk(const struct feature *f, struct stretch s)
{
    for (size_t i = s.first; i <= s.last; i++)
        if (f[i].cooking > 0)
            return false;
    return true;
}

/* "Okay, last one, something sweet." leads to the dish that begins behind it, and is neither
 * another one nor a return. */
static bool is_lead(const struct feature *f, const struct stretch *s, size_t k, size_t count,
                    size_t begun)
{
    return k + 1 < count && s[k + 1].thread >= begun && s[k + 1].thread != s[k].thread
           && s[k + 1].first == s[k].last + 1 && is_talk(f, s[k]);
}

size_t drop_leads(const struct recording *r, const struct feature *f, struct stretch *s,
                  size_t count)
{
    size_t *number = arena_alloc(r->arena, (count + 1) * sizeof *number);
    size_t kept = 0, begun = 0, dishes = 0; /* threads there were so far, and are */
    for (size_t k = 0; k < count; k++)
        number[k] = NO_DISH;
    for (size_t k = 0; k < count; k++) {
        size_t thread = s[k].thread;
        begun = thread < begun ? begun : thread + 1;
        if (is_lead(f, s, k, count, begun))
            continue;
        if (number[thread] == NO_DISH)
            number[thread] = dishes++;
        s[kept++] = (struct stretch){s[k].first, s[k].last, number[thread]};
    }
    return kept;
}
