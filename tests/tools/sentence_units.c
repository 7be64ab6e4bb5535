/* tools/sentence_units.c: what sentence-ends.tsv is made from
 * (grammars/en/scripts/sentence_ends.py): the units of punctuated captions, as the program would
 * see them without punctuation, and where their sentences end. sentence_units TRANSCRIPT... A line
 * a unit: its first word, its last, its class, how many words it has, and `end`, `comma` or `-` for
 * what stands behind it. A line "# NAME" begins a recording. Captions without full stops are left
 * out.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdio.h>
#include <stdlib.h>

#include "read/read.h"
#include "words/ending.h"
#include "words/words.h"
#include "read_file.h"

#define ARENA_BYTES ((size_t) 256 << 20)

enum behind { NOTHING, COMMA, END };

/* What stands behind each word; then takes all punctuation away. */
static enum behind *take_punctuation(struct recording *r)
{
    enum behind *behind = arena_alloc(r->arena, r->words.count * sizeof *behind);
    for (size_t i = 0; i < r->words.count; i++) {
        struct word *w = &r->words.at[i];
        behind[i] = w->after == AFTER_COMMA ? COMMA : NOTHING;
        if (w->after != AFTER_HYPHEN)
            w->after = AFTER_SPACE;
    }
    for (size_t i = 0; i < r->sentences.count; i++)
        behind[r->sentences.at[i].last] = END;
    return behind;
}

static enum behind most_behind(const enum behind *behind, size_t first, size_t last)
{
    enum behind most = behind[last];
    for (size_t i = first; i < last; i++)
        most = behind[i] == END ? END : most;
    return most;
}

static void print_units(struct recording *r, const struct pack *k)
{
    static const char *const NAMES[] = {"-", "comma", "end"};
    enum behind *behind = take_punctuation(r);
    struct endings e;
    endings_make(&e, r, k);
    printf("# %s\n", r->file);
    for (size_t i = 0; i < e.units.count; i++) {
        const struct unit_of_words *u = &e.units.at[i];
        printf("%.*s\t%.*s\t%s\t%zu\t%s\n", TEXT(u->head), TEXT(u->tail), tag_name(u->tag),
               u->words, NAMES[most_behind(behind, u->last + 1 - u->words, u->last)]);
    }
}

int main(int argc, char **argv)
{
    struct problems p = {0};
    struct pack *k = pack_builtin();
    char *room = malloc(FILE_BYTES);
    struct arena arena;
    arena_init(&arena, ARENA_BYTES);
    for (int n = 1; n < argc && k && room && arena_open(&arena); n++) {
        struct recording r = {.arena = &arena, .file = argv[n]};
        if (read_cues(&r, read_file(argv[n], room), &p) && number_words(&r, k, &p) && r.punctuated)
            print_units(&r, k);
        arena_reset(&arena);
    }
    return 0;
}
