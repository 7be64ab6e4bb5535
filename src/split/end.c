/* split/end.c: what is left in the oven comes out while another dish is on, and what is said of it
 * then is short, or talk. It speaks of the dish all the same.
 * SPDX-License-Identifier: MIT */
#include "split/end.h"

#include <math.h>
#include <strings.h>

#include "base/arena.h"
#include "split/topic.h"

/* So often back a thing is looked for; and so often a dish names its own things at least. */
#define BACK_TIMES 16
#define OWN_TIMES 2
/* Less than this says nothing of a dish: salt, milk. */
#define TELLING_LEAST 0.5
/* A name is looked for among so many dishes that began before the sentence. */
#define NAMED_DISHES 16
/* So near its end a dish is finished. */
#define LAST_SENTENCES 6

struct ending {
    struct recording *r;
    const struct feature *f;
    size_t *dish;     /* of each sentence, or NO_DISH */
    bool *unfinished; /* of each dish: it was left without a yield, a garnish or a leave */
};

static void spoken_of(const struct recording *r, struct dish *d, size_t i)
{
    const struct sentence *s = &r->sentences.at[i];
    if (s->first > d->words.last)
        d->end = fmax(d->end, r->words.at[s->last].end);
}

/* "So that's your parkin." */
static void end_named(struct ending *e, size_t i)
{
    const struct sentence *s = &e->r->sentences.at[i];
    const struct feature *f = &e->f[i];
    struct dish *d = s->names && f->closing_title.first <= f->closing_title.last
                         ? dish_with_id(e->r, s->names - 1)
                         : NULL;
    if (d)
        spoken_of(e->r, d, i);
}

/* The dish that named the thing last, when it did so more than once and the one that is on did not;
 * else NO_DISH. */
static size_t whose(const struct ending *e, size_t i, const struct mention *m)
{
    size_t here = e->dish[i], found = NO_DISH, times = 0;
    for (size_t n = 0; n < BACK_TIMES && m && m->before < i; n++) {
        i = m->before;
        m = mention_of(&e->f[i], m->kind);
        if (e->dish[i] == NO_DISH)
            continue;
        if (e->dish[i] == here)
            return NO_DISH;
        if (found == NO_DISH)
            found = e->dish[i];
        times += e->dish[i] == found;
    }
    return times >= OWN_TIMES ? found : NO_DISH;
}

static void end_mentioned(struct ending *e, size_t i)
{
    for (size_t n = 0; n < e->f[i].mentions_count; n++) {
        const struct mention *m = &e->f[i].mentions[n];
        size_t dish = m->fresh || telling(m->marks) < TELLING_LEAST ? NO_DISH : whose(e, i, m);
        if (dish != NO_DISH && e->unfinished[dish])
            spoken_of(e->r, &e->r->dishes.at[dish], i);
    }
}

static bool says_word(const struct recording *r, const struct sentence *s, struct text word)
{
    for (size_t i = s->first; i <= s->last; i++) {
        struct text said = r->words.at[i].text;
        if (said.length == word.length && strncasecmp(said.at, word.at, word.length) == 0)
            return true;
    }
    return false;
}

/* Whether it says all words of a name, which is of more than one: "and the plum crumble can wait".
 */
static bool says_title(const struct recording *r, const struct sentence *s, struct text title)
{
    struct text rest = title, word;
    size_t words = 0;
    for (; text_part(&rest, ' ', &word); words++)
        if (!says_word(r, s, word))
            return false;
    return words > 1;
}

/* `begun` dishes began before sentence `i`. */
static void end_titled(struct ending *e, size_t i, size_t begun)
{
    const struct sentence *s = &e->r->sentences.at[i];
    if (s->flags & SENTENCE_STORY)
        return;
    for (size_t d = begun > NAMED_DISHES ? begun - NAMED_DISHES : 0; d < begun; d++) {
        struct dish *dish = &e->r->dishes.at[d];
        if (d != e->dish[i] && dish->title_said && says_title(e->r, s, dish->title))
            spoken_of(e->r, dish, i);
    }
}

static bool is_unfinished(const struct recording *r, const struct feature *f, const struct dish *d)
{
    size_t last = sentence_from(r, d->words.last);
    for (size_t i = last + 1; i-- > 0 && last - i < LAST_SENTENCES;)
        if (r->sentences.at[i].first >= d->id && (f[i].closes > 0 || f[i].finished || f[i].late))
            return false;
    return true;
}

static void share_sentences(struct ending *e, const struct stretch *s, size_t count,
                            const size_t *dish)
{
    for (size_t i = 0; i < e->r->sentences.count; i++)
        e->dish[i] = NO_DISH;
    for (size_t k = 0; k < count; k++)
        for (size_t i = s[k].first; i <= s[k].last; i++)
            e->dish[i] = dish[k];
}

void find_ends(struct recording *r, const struct feature *f, const struct stretch *s, size_t count,
               const size_t *dish)
{
    struct ending e = {.r = r, .f = f};
    e.dish = arena_alloc(r->arena, (r->sentences.count + 1) * sizeof *e.dish);
    e.unfinished = arena_alloc(r->arena, (r->dishes.count + 1) * sizeof *e.unfinished);
    share_sentences(&e, s, count, dish);
    for (size_t d = 0; d < r->dishes.count; d++)
        e.unfinished[d] = is_unfinished(r, f, &r->dishes.at[d]);
    for (size_t i = 0, begun = 0; i < r->sentences.count; i++) {
        while (begun < r->dishes.count && r->dishes.at[begun].id <= r->sentences.at[i].first)
            begun++;
        end_titled(&e, i, begun);
        end_named(&e, i);
        end_mentioned(&e, i);
    }
}
