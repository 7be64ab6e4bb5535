/* tag/misheard.c: the walk through a recording.
 * SPDX-License-Identifier: MIT */
#include "tag/misheard.h"

#include "tag/heardname.h"
#include "tag/hearing.h"
#include "tag/listen.h"
#include "tag/longname.h"

static void hear_all(struct hearing *h)
{
    for (size_t i = 0; i < h->r->sentences.count; i++) {
        const struct sentence *s = &h->r->sentences.at[i];
        hear_names(h, s);
        hear_units(h, s, false);
        hear_long_names(h, s);
    }
}

bool hear_words(struct recording *r, struct ear *ear, struct problems *p)
{
    size_t errors = p->errors;
    switch (ear_ready(ear, p)) {
    case EAR_DEAF:
        return p->errors == errors;
    case EAR_NO_MEMORY:
        longjmp(r->arena->full, 1);
    case EAR_READY:
        break;
    }
    struct hearing *h = hearing_begin(r, ear);
    hear_all(h);
    if (h->wary && many_wrong(h)) {
        h->wary = false;
        hear_all(h);
    }
    for (size_t i = 0; i < r->sentences.count; i++)
        hear_units(h, &r->sentences.at[i], true);
    return true;
}
