/* split/snap.c
 * SPDX-License-Identifier: MIT */
#include "split/snap.h"

#include "split/start.h"

/* How many sentences of talk may stand between a dish's last instruction and its name or yield. */
#define FAREWELL_SENTENCES 6

static bool names_dish(const struct recording *r, const struct sentence *s)
{
    for (size_t i = s->first + 1; i <= s->last; i++) {
        const struct word *w = &r->words.at[i], *before = w - 1;
        bool said = !(w->scope & (SCOPE_UNREAL | SCOPE_BESIDE | SCOPE_SUPPOSED));
        if (said && w->tag == TAG_DISH && (before->tag == TAG_FOOD || before->tag == TAG_DONE))
            return true;
    }
    return false;
}

static size_t farewell(const struct recording *r, const struct feature *f, struct stretch s,
                       size_t next)
{
    size_t end = s.first;
    for (size_t i = s.first; i < next && i <= s.last + FAREWELL_SENTENCES; i++) {
        bool speaks = f[i].closes > 0 || names_dish(r, &r->sentences.at[i]);
        if (i > s.last && f[i].opens > 0)
            break;
        if (speaks || (i <= s.last && f[i].cooking >= COOKING_LEAST))
            end = i;
    }
    return end;
}

void snap_stretches(const struct recording *r, const struct feature *f, const struct borders *b,
                    struct stretch *s, size_t count)
{
    size_t floor = 0;
    for (size_t k = 0; k < count; k++) {
        size_t next = k + 1 < count ? s[k + 1].first : r->sentences.count;
        size_t last = farewell(r, f, s[k], next);
        s[k].first = find_start(f, b, floor, s[k]);
        s[k].last = last > s[k].first ? last : s[k].first;
        floor = s[k].last + 1;
    }
}
