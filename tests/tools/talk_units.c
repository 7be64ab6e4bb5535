/* tools/talk_units.c: what turn-words.tsv and the weights of src/split/border.def and move.def are
 * made from (grammars/en/scripts/turn_words.py).
 * talk_units TRANSCRIPT...: a line a sentence: when it begins, its evidence for a border
 * (NAME=VALUE), and its words as src/split/turnword.c sees them.
 * talk_units --labels FILE TRANSCRIPT...: a line for each sentence and each dish that could go on
 * with it, "new" for one that begins: the sentence, the dish, and what speaks for it (NAME=VALUE).
 * FILE has, recording by recording, the dish of each sentence, "-" for none, "?" where nobody
 * knows. A line "# NAME" begins a recording.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "split/evidence.h"
#include "split/feature.h"
#include "split/move.h"
#include "talk_reader.h"

static const char *const NAMES[] = {
#define EVIDENCE(name, new, back, what) #name,
#include "split/border.def"
#undef EVIDENCE
};

static const char *const MOVE_NAMES[] = {
#define MOVE(name, new, back, what) #name,
#include "split/move.def"
#undef MOVE
};

static void print_unit(void *to, struct text unit)
{
    (void) to;
    printf("%.*s ", TEXT(unit));
}

static void print_sentence(const struct talk *t, const struct pack *k, size_t i)
{
    double x[EVIDENCES];
    find_evidence(t, i, x);
    printf("%.2f\t", t->r->words.at[t->r->sentences.at[i].first].start);
    for (size_t n = 0; n < EVIDENCES; n++)
        if (x[n] != 0)
            printf("%s=%.4g ", NAMES[n], x[n]);
    printf("\t");
    turn_units_tell(t->r, k, &t->r->sentences.at[i], print_unit, NULL);
    printf("\n");
}

/* ---- moves */

enum { OUTSIDE_LABEL = -1, UNKNOWN_LABEL = -2 };

static int read_label(FILE *labels)
{
    char text[16] = "";
    if (fscanf(labels, "%15s", text) != 1)
        return UNKNOWN_LABEL;
    return text[0] == '-'   ? OUTSIDE_LABEL
           : text[0] == '?' ? UNKNOWN_LABEL
                            : (int) strtol(text, NULL, 10);
}

static void print_move(const struct move_base *base, const struct links *links, size_t dish)
{
    double x[MOVES];
    find_moves(base, links, dish, x);
    if (dish == NO_DISH)
        printf("%zu\tnew\t", base->i);
    else
        printf("%zu\t%zu\t", base->i, dish);
    for (size_t n = 0; n < MOVES; n++)
        if (x[n] != 0)
            printf("%s=%.4g ", MOVE_NAMES[n], x[n]);
    printf("\n");
}

/* The moves that could be made at each sentence whose dish is known, after those that were. */
static void print_moves(const struct recording *r, const struct feature *f, FILE *labels)
{
    size_t count = r->sentences.count;
    const struct segment nothing = {.dish = NO_DISH};
    const struct segment *chain = &nothing;
    struct standings s;
    static struct logs logs;
    static const float both[BOTHS]; /* their weights are not asked */
    logs_make(&logs, count + 1);
    standings_init(&s);
    for (size_t i = 0; i < count; i++) {
        int label = read_label(labels);
        struct things things;
        struct links links;
        if (label == UNKNOWN_LABEL)
            continue;
        find_things(f, count, i, &things);
        find_links(&things, chain, &s, &links);
        const struct move_base base =
            find_base(&s, &(struct move_place){f, &things, &logs, both, i, count});
        print_move(&base, &links, NO_DISH);
        for (size_t d = first_kept(&s); d < s.dishes; d++)
            if (d != s.on)
                print_move(&base, &links, d);
        size_t dish = label < 0 ? NO_DISH : (size_t) label;
        if (dish != chain->dish) {
            struct segment *next = arena_alloc(r->arena, sizeof *next);
            *next = segment_after(chain, i, dish, 0);
            chain = next;
        }
        if (dish != NO_DISH)
            stand(&s, f, i, dish, true);
    }
}

/* Its moves where there are labels, else its sentences. */
static void print_talk(void *labels, struct recording *r, const struct pack *k)
{
    size_t count = r->sentences.count;
    const struct feature *f = features_make(r, k);
    const struct talk t = talk_make(r, f, count);
    if (labels) {
        print_moves(r, f, labels);
        return;
    }
    for (size_t i = 0; i < count; i++)
        print_sentence(&t, k, i);
}

int main(int argc, char **argv)
{
    bool moves = argc > 2 && strcmp(argv[1], "--labels") == 0;
    FILE *labels = moves ? fopen(argv[2], "r") : NULL;
    int first = moves ? 3 : 1;
    tell_talks(argc - first, argv + first, print_talk, labels);
    if (labels)
        fclose(labels);
    return 0;
}
