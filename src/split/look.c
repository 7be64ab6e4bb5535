/* split/look.c: the names that are said in a dish, and near it.
 * SPDX-License-Identifier: MIT */
#include "split/candidate.h"
#include "split/nameend.h"
#include "split/topic.h"

/* What is said so many sentences before or behind a dish, and in no other, is looked at too. */
#define AHEAD_SENTENCES 5
#define BEHIND_SENTENCES 3

/* A story, a supposition, what stands instead, what is served beside. */
#define AWAY_SCOPES (SCOPE_UNREAL | SCOPE_SUPPOSED | SCOPE_INSTEAD | SCOPE_BESIDE)

/* Whether sentence `i`, which is in no dish, stands right before or behind dish `d`. */
static bool is_near(const struct candidates *c, size_t d, size_t i)
{
    for (size_t n = 1; n <= AHEAD_SENTENCES && i + n < c->r->sentences.count; n++)
        if (c->dish[i + n] == d)
            return true;
    for (size_t n = 1; n <= BEHIND_SENTENCES && n <= i; n++)
        if (c->dish[i - n] == d)
            return true;
    return false;
}

static void begin_look(struct candidate *n, size_t d, struct span words)
{
    n->dish = d + 1;
    n->home = n->barred = n->cut = n->away = n->fuller = 0;
    n->words = words;
    n->said = (struct said_bits){{0, 0}};
}

static void look_at(struct candidates *c, size_t d, const struct saying *p, struct said_bits said)
{
    struct candidate *n = &c->all.at[p->candidate];
    if (n->dish != d + 1)
        begin_look(n, d, p->words);
    n->home++;
    n->barred += no_name_ends(c->r, p->words.last);
    n->away += (c->r->words.at[p->words.last].scope & AWAY_SCOPES) != 0;
    n->cut += p->words.first > p->phrase.first || p->words.last < p->phrase.last;
    n->said.at[0] |= said.at[0];
    n->said.at[1] |= said.at[1];
}

bool name_tells_more(const struct word *w)
{
    return w->tag == TAG_FOOD || w->tag == TAG_DISH || w->tag == TAG_OTHER || w->tag == TAG_INSIDE
           || (w->tag == TAG_DONE && w->entry && w->entry->marks & MARK_OF(heats));
}

/* What the names of a place say of the dish: how much it is about their food, and that there is a
 * fuller name than their last word. */
static void weigh_place(struct candidates *c, size_t d, const struct saying *p)
{
    const struct word *at = c->r->words.at, *end = &at[p->words.last];
    const struct candidate *n = &c->all.at[p->candidate];
    if (end->tag == TAG_FOOD && end->entry && n->dish == d + 1) {
        double about = telling(end->entry->marks) * (double) n->home;
        c->about_most = about > c->about_most ? about : c->about_most;
    }
    if (end->entry_first <= p->words.first || !name_tells_more(&at[end->entry_first - 1]))
        return;
    const struct candidate *last =
        candidate_find(c, name_hash(c->r, (struct span){end->entry_first, p->words.last}));
    if (last && last->dish == d + 1)
        c->all.at[last - c->all.at].fuller++;
}

/* What the rules of phrases chose is said elsewhere: "the soup and the salad, then" at the end of
 * the salad. */
static void tell_chosen(struct candidates *c, size_t d, name_teller *tell, void *to)
{
    if (span_is_empty(c->chosen))
        return;
    struct candidate *n = &c->all.at[candidate_number(c, c->chosen_hash)];
    if (n->dish == d + 1)
        return;
    begin_look(n, d, c->chosen);
    tell(to, c, n);
}

/* What is spoken of and done in dish `d`, in the sentences of [from, end). */
static struct affinity about_dish(const struct candidates *c, size_t d, size_t from, size_t end)
{
    struct affinity about = {0};
    for (size_t i = from; i < end; i++)
        if (c->dish[i] == d)
            affinity_join(&about, &c->f[i].about);
    return about;
}

void candidates_of(struct candidates *c, size_t d, struct stretch within, name_teller *tell,
                   void *to)
{
    size_t from = within.first > AHEAD_SENTENCES ? within.first - AHEAD_SENTENCES : 0;
    size_t end = within.last + BEHIND_SENTENCES + 1;
    if (end > c->r->sentences.count)
        end = c->r->sentences.count;
    for (size_t i = from; i < end; i++)
        if (c->from[i] < c->from[i + 1]
            && (c->dish[i] == d || (c->dish[i] == NO_DISH && is_near(c, d, i)))) {
            struct surrounding here = said_there(c, i, within);
            for (size_t n = c->from[i]; n < c->from[i + 1]; n++)
                look_at(c, d, &c->places.at[n], said_of(c, &c->places.at[n], &here));
        }
    c->about = about_dish(c, d, from, end);
    c->about_most = 0;
    for (size_t i = from; i < end; i++)
        for (size_t n = c->from[i]; n < c->from[i + 1]; n++)
            if (c->all.at[c->places.at[n].candidate].dish == d + 1)
                weigh_place(c, d, &c->places.at[n]);
    for (size_t i = from; i < end; i++)
        for (size_t n = c->from[i]; n < c->from[i + 1]; n++) {
            const struct candidate *name = &c->all.at[c->places.at[n].candidate];
            if (name->dish == d + 1 && name->barred < name->home
                && name->words.first == c->places.at[n].words.first
                && name->words.last == c->places.at[n].words.last)
                tell(to, c, name);
        }
    tell_chosen(c, d, tell, to);
}
