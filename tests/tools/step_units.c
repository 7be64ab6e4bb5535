/* tools/step_units.c: what step-odds.tsv and the weights of src/build/told.def are made from
 * (grammars/en/scripts/step_odds.py). step_units TRANSCRIPT...: a line a verb, of the recording as
 * one dish: when it is said, the action it would be, 1 where the rules say that it tells what to do
 * or 0, and what speaks for it and against it, each after a tab. A line "# NAME" begins a
 * recording.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "build/instruction.h"
#include "build/stepjoin.h"
#include "build/told.h"
#include "recipe_reader.h"

static const char *const FACT_NAMES[] = {
#define TOLD(name, ordered, other, holds, what) #name,
#include "build/told.def"
};

static void print_told(const struct told *told)
{
    for (size_t n = 0; n < TOLD_FACTS; n++)
        if (told->is[n])
            printf("\t%s", FACT_NAMES[n]);
    if (told->before)
        printf("\tBEFORE %s", tag_name(told->before));
    if (told->behind)
        printf("\tBEHIND %s", tag_name(told->behind));
    for (int n = 0; n < MARK_COUNT; n++)
        if (told->marks & ((uint64_t) 1 << n))
            printf("\tMARKED %s", mark_name((enum mark_bit) n));
    printf("\tsays %.*s\tdoes %.*s", TEXT(told->says), TEXT(told->does));
    for (size_t n = 0; n < told->nears; n++)
        printf("\tnear %.*s", TEXT(told->near[n]));
    for (size_t n = 0; n < told->nexts; n++)
        printf("\tnext %.*s", TEXT(told->next[n]));
    if (told->behind)
        printf("\t%s %.*s", tag_name(told->behind), TEXT(told->does));
}

/* Of which file verbs were printed, and behind which word: when steps are written, verbs are asked
 * for again. */
static const char *file;
static size_t printed;

/* Stands in for the library's: the rules alone decide. */
bool is_told(const struct builder *b, size_t i, struct text does, bool ordered)
{
    struct told told;
    const size_t word = b->chunks.at[i].first;
    if (file == b->r->file && word < printed)
        return ordered;
    file = b->r->file;
    printed = word + 1;
    find_told(b, i, does, &told);
    const struct text action = action_here(b, i, verb_of(b, i));
    printf("%.2f\t%.*s\t%d", b->r->words.at[word].start, TEXT(action), ordered);
    print_told(&told);
    printf("\n");
    return ordered;
}

int main(int argc, char **argv)
{
    read_all_recipes(argc - 1, argv + 1, true);
    return 0;
}
