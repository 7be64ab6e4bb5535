/* split/settle.c
 * SPDX-License-Identifier: MIT */
#include "split/settle.h"

/* Amounts in so many whole sentences after a name that stands alone make it the beginning of that
 * dish. */
#define BARE_SENTENCES 5.0
#define BARE_LINES 3

/* "White bean soup. One onion, two carrots ...": the name opens; with no amounts behind it, it ends
 * a dish. */
void settle_bare(const struct recording *r, struct feature *f, size_t i)
{
    size_t count = r->sentences.count;
    size_t lines = 0;
    double seen = 0;
    for (size_t n = i + 1; n < count && seen < BARE_SENTENCES; n++) {
        lines += f[n].lines;
        seen += f[n].weight;
    }
    if (f[i].bare == 0 || lines < BARE_LINES || f[i].finished || f[i].past
        || f[i].bare_title.last < r->sentences.at[i].last)
        return;
    f[i].opens = f[i].opens > f[i].bare ? f[i].opens : f[i].bare;
    f[i].closes = 0;
    f[i].opening_title = f[i].bare_title;
    f[i].closing_title = NO_WORDS;
}

/* How many sentences before and after a name are searched for what it names. */
#define NAME_BEFORE 20
#define NAME_AFTER 12

/* How often the entry's food or dish is said where something is cooked, in sentences [first, last].
 */
static size_t times_said(const struct recording *r, const struct feature *f, size_t first,
                         size_t last, const struct entry *e)
{
    size_t times = 0;
    for (size_t s = first; s <= last; s++) {
        for (size_t i = r->sentences.at[s].first; f[s].cooking > 0 && i <= r->sentences.at[s].last;
             i++) {
            const struct word *w = &r->words.at[i];
            times +=
                w->tag == e->tag && w->entry && text_equal(entry_value(w->entry), entry_value(e));
        }
    }
    return times;
}

/* How often what a name says is spoken of before sentence `i`, and after it. */
struct lean {
    size_t before, after;
};

static struct lean lean_of(const struct recording *r, const struct feature *f, size_t i,
                           struct span title)
{
    struct lean lean = {0, 0};
    size_t last = i + NAME_AFTER;
    unsigned char tag = span_has_tag(r, title, TAG_FOOD)
                            ? TAG_FOOD
                            : TAG_DISH; /* the food tells more than "traybake" */
    if (last >= r->sentences.count)
        last = r->sentences.count - 1;
    for (size_t w = title.first; w <= title.last; w++) {
        const struct entry *e = r->words.at[w].entry;
        if (!e || e->tag != tag || r->words.at[w].tag != tag)
            continue;
        if (i > 0)
            lean.before += times_said(r, f, i > NAME_BEFORE ? i - NAME_BEFORE : 0, i - 1, e);
        if (i < last)
            lean.after += times_said(r, f, i + 1, last, e);
    }
    return lean;
}

/* "It's lemon couscous": a name of what comes is an opening, a name of what was is a closing. */
void settle_name(const struct recording *r, struct feature *f, size_t i)
{
    struct span title = f[i].closing_title;
    struct lean lean = lean_of(r, f, i, title);
    f[i].past = lean.before > 0 && lean.after <= lean.before;
    if (lean.after <= lean.before) {
        if (f[i].weak) {
            f[i].closes = 0;
            f[i].closing_title = NO_WORDS;
        }
        return;
    }
    if (f[i].opens < f[i].closes)
        f[i].opens = f[i].closes;
    f[i].closes = 0;
    f[i].opening_title = title;
    f[i].closing_title = NO_WORDS;
}
