/* split/join.c
 * SPDX-License-Identifier: MIT */
#include "split/join.h"

#include "base/arena.h"
#include "split/title.h"

/* So many foods with an amount are a dish though none is measured: "two onions, four eggs". */
#define UNMEASURED_LINES 3
/* Cooking, and foods with an amount, for each whole sentence. */
#define DENSITY_LEAST 1.20
#define LINE_DENSITY 3.12
static bool is_announced(const struct feature *f, struct stretch s)
{
    const struct feature *first = &f[s.first];
    return first->opens > 0
           && (first->order || first->opening_title.first <= first->opening_title.last);
}

/* A tour of the shop names foods and amounts too, but now and then. */
static bool is_talk(double cooking, size_t lines, double sentences)
{
    return cooking + LINE_DENSITY * (double) lines < DENSITY_LEAST * sentences;
}

/* What a dish's stretches come to. */
struct tally {
    double cooking, sentences;
    size_t lines, actions, measured;
    bool announced;   /* by name or by number: it may be told in few words */
    struct text kind; /* of the last thing named */
    bool several;     /* another one is named too */
};

static void count_thing(const struct mention *m, struct tally *t)
{
    t->several |= t->kind.length && !text_equal(t->kind, m->kind);
    t->kind = m->kind;
}

static void count_stretch(const struct feature *f, struct stretch s, struct tally *t)
{
    t->announced |= is_announced(f, s);
    for (size_t i = s.first; i <= s.last; i++) {
        t->cooking += f[i].cooking;
        t->sentences += f[i].weight;
        t->lines += f[i].lines;
        t->measured += f[i].measured;
        for (size_t n = 0; n < f[i].mentions_count; n++)
            count_thing(&f[i].mentions[n], t);
        t->actions += f[i].actions;
    }
}

/* Less is a tip or a mention. Whether it is a dish by itself or a part of another is told by what
 * both come to in all (unite.h). */
static bool is_dish(const struct tally *t)
{
    return t->announced
           || (t->several && (t->measured > 0 || t->lines >= UNMEASURED_LINES)
               && !is_talk(t->cooking, t->lines, t->sentences));
}

/* What comes first is no part of another, so that less is enough: where something is done in every
 * other sentence, or something goes in. */
#define DONE_SHARE 0.45
#define DONE_LEAST 3
#define IN_SHARE 0.5
#define FIRST_LINES 3

static bool is_first_dish(const struct tally *t)
{
    double actions = (double) t->actions, lines = (double) t->lines;
    bool done = t->actions >= DONE_LEAST && actions >= DONE_SHARE * t->sentences;
    return (done && t->lines >= FIRST_LINES - 1 && t->measured > 0)
           || (done && t->actions > DONE_LEAST && t->lines > FIRST_LINES)
           || (t->lines >= FIRST_LINES && t->measured > 1 && lines >= IN_SHARE * t->sentences);
}

/* Enough of a stretch to tell what it is about, so that time does not grow with the square. */
#define TELLING_SENTENCES 150
/* How many stretches back a dish is looked for. */
#define STRETCHES_BACK 40

static struct stretch first_part(struct stretch s)
{
    if (s.last - s.first >= TELLING_SENTENCES)
        s.last = s.first + TELLING_SENTENCES - 1;
    return s;
}

static bool names(const struct feature *f, struct stretch s, struct text kind)
{
    for (size_t i = s.first; i <= s.last; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++)
            if (text_equal(f[i].mentions[n].kind, kind))
                return true;
    return false;
}

/* How many times `now` speaks, without an amount, of things that `before` named. */
static size_t links(const struct feature *f, struct stretch before, struct stretch now)
{
    before = first_part(before);
    now = first_part(now);
    size_t found = 0;
    for (size_t i = now.first; i <= now.last; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++) {
            const struct mention *m = &f[i].mentions[n];
            found += !m->fresh && !(m->marks & PLAIN_MARKS) && names(f, before, m->kind);
        }
    return found;
}

/* A name is looked for in so many sentences at the stretch's end, and announced in so many at its
 * beginning. */
#define NAMED_SENTENCES 400
#define ANNOUNCED_SENTENCES 3

static const struct entry *last_dish_word(const struct recording *r, struct span name)
{
    for (size_t w = name.last + 1; w-- > name.first;)
        if (r->words.at[w].tag == TAG_DISH)
            return r->words.at[w].entry;
    return NULL;
}

/* The dish's word in a name said in the stretch: "soup" of "white bean soup"; the one it was
 * announced with before the last one, which may take leave of another dish too. */
static const struct entry *dish_word(const struct recording *r, const struct feature *f,
                                     struct stretch s)
{
    const struct entry *found = NULL;
    for (size_t i = s.first; !found && i <= s.last && i < s.first + ANNOUNCED_SENTENCES; i++)
        found = last_dish_word(r, f[i].opening_title);
    for (size_t i = s.last + 1; !found && i-- > s.first && s.last - i < NAMED_SENTENCES;) {
        found = last_dish_word(r, f[i].closing_title);
        if (!found)
            found = last_dish_word(r, f[i].opening_title);
    }
    return found;
}

static bool same_name(const struct recording *r, const struct feature *f, struct stretch a,
                      struct stretch b)
{
    const struct entry *one = dish_word(r, f, a), *other = dish_word(r, f, b);
    return one && other && text_equal(entry_value(one), entry_value(other));
}

/* The dish whose things stretch `k` speaks of most, of those before it; where it speaks of none,
 * the one just before it. */
static size_t nearest(const struct recording *r, const struct feature *f, const struct stretch *s,
                      size_t k, const size_t *dish)
{
    size_t best = NO_DISH, most = 0;
    for (size_t i = k > STRETCHES_BACK ? k - STRETCHES_BACK : 0; i < k; i++) {
        size_t found = dish[i] == NO_DISH ? 0 : links(f, s[i], s[k]) + same_name(r, f, s[i], s[k]);
        if (found > most) {
            most = found;
            best = dish[i];
        }
    }
    return best == NO_DISH && k > 0 ? dish[k - 1] : best;
}

size_t join_stretches(const struct recording *r, const struct feature *f, const struct stretch *s,
                      size_t count, size_t *dish)
{
    size_t dishes = 0, *number = arena_alloc(r->arena, (count + 1) * sizeof *number);
    struct tally *tallies = arena_alloc(r->arena, (count + 1) * sizeof *tallies);
    for (size_t k = 0; k < count; k++) {
        number[k] = NO_DISH;
        count_stretch(f, s[k], &tallies[s[k].thread]);
    }
    for (size_t k = 0; k < count; k++) {
        size_t t = s[k].thread;
        if (number[t] == NO_DISH
            && (is_dish(&tallies[t]) || (!dishes && is_first_dish(&tallies[t]))))
            number[t] = dishes++;
        dish[k] = number[t] != NO_DISH ? number[t] : nearest(r, f, s, k, dish);
    }
    return dishes;
}
