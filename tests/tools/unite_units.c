/* tools/unite_units.c: what the weights of src/split/alike.def and talked.def are made from
 * (grammars/en/scripts/alike_weights.py, talked_weights.py). unite_units TRANSCRIPT...: behind a
 * line "# NAME" a line a stretch: the dish, when it begins and when it ends; and a line a pair of
 * dishes: "pair", both, and what speaks for it that they are one (NAME=VALUE); then "talked", and
 * what speaks for it that nothing is cooked.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdio.h>
#include <stdlib.h>

#include "split/join.h"
#include "split/snap.h"
#include "split/talked.h"
#include "split/thread.h"
#include "split/unite.h"
#include "talk_reader.h"

static const char *const NAMES[] = {
#define ALIKE(name, weight, what) #name,
#include "split/alike.def"
#undef ALIKE
};

static const char *const TALKED_NAMES[] = {
#define TALKED(name, weight, what) #name,
#include "split/talked.def"
#undef TALKED
};

static void print_stretches(const struct wholes *w)
{
    const struct recording *r = w->r;
    for (size_t k = 0; k < w->count; k++)
        if (w->dish[k] != NO_DISH)
            printf("%zu\t%.2f\t%.2f\n", w->dish[k],
                   r->words.at[r->sentences.at[w->s[k].first].first].start,
                   r->words.at[r->sentences.at[w->s[k].last].last].end);
}

static void print_pair(void *to, size_t a, size_t b, const double *x)
{
    (void) to;
    printf("pair\t%zu\t%zu\t", a, b);
    for (size_t n = 0; n < ALIKES; n++)
        if (x[n] < 0 || x[n] > 0)
            printf("%s=%.4g ", NAMES[n], x[n]);
    printf("\n");
}

static void print_talked(const struct wholes *w)
{
    double x[TALKEDS];
    if (!w->dishes)
        return;
    find_talked(w, x);
    printf("talked\t");
    for (size_t n = 0; n < TALKEDS; n++)
        printf("%s=%.4g ", TALKED_NAMES[n], x[n]);
    printf("\n");
}

static void print_talk(void *to, struct recording *r, const struct pack *k)
{
    (void) to;
    size_t count = r->sentences.count;
    const struct feature *f = features_make(r, k);
    struct stretch *s = arena_alloc(r->arena, (count + 1) * sizeof *s);
    size_t *dish = arena_alloc(r->arena, (count + 1) * sizeof *dish);
    const struct borders b = weigh_borders(r, f, count);
    struct wholes w = {.r = r, .k = k, .f = f, .b = &b, .s = s, .dish = dish};
    w.count = find_threads(r, f, &b, count, s);
    w.dishes = join_stretches(r, f, s, w.count, dish);
    snap_stretches(r, f, &b, s, w.count);
    wholes_make(&w);
    print_stretches(&w);
    tell_pairs(&w, print_pair, NULL);
    print_talked(&w);
}

int main(int argc, char **argv)
{
    tell_talks(argc - 1, argv + 1, print_talk, NULL);
    return 0;
}
