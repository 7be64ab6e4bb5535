/* tools/talk_units.c: what turn-words.tsv and the weights of src/split/border.def are made from
 * (grammars/en/scripts/turn_words.py). talk_units TRANSCRIPT... A line a sentence: when it begins,
 * its evidence for a border (NAME=VALUE), and its words as src/split/turnword.c sees them. A line
 * "# NAME" begins a recording.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdio.h>
#include <stdlib.h>

#include "match/matcher.h"
#include "read/read.h"
#include "split/evidence.h"
#include "split/feature.h"
#include "tag/misheard.h"
#include "tag/tag.h"
#include "words/words.h"
#include "read_file.h"

#define ARENA_BYTES ((size_t) 1 << 30)

static const char *const NAMES[] = {
#define EVIDENCE(name, new, back, what) #name,
#include "split/border.def"
#undef EVIDENCE
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

static bool read_talk(struct recording *r, const struct pack *k, struct matcher *m, struct ear *ear,
                      struct text bytes, struct problems *p)
{
    return read_cues(r, bytes, p) && number_words(r, k, p) && tag_words(r, k, p)
           && hear_words(r, ear, p) && match_rules(r, k, m, p);
}

static void print_talk(const struct recording *r, const struct pack *k)
{
    size_t count = r->sentences.count;
    const struct feature *f = features_make(r, k);
    const struct talk t = talk_make(r, f, count);
    printf("# %s\n", r->file);
    for (size_t i = 0; i < count; i++)
        print_sentence(&t, k, i);
}

int main(int argc, char **argv)
{
    struct problems p = {0};
    struct pack *k = pack_builtin();
    struct matcher *m = matcher_new(k);
    struct ear *ear = ear_new(k);
    char *room = malloc(FILE_BYTES);
    struct arena arena;
    arena_init(&arena, ARENA_BYTES);
    for (int n = 1; n < argc && k && m && ear && room && arena_open(&arena); n++) {
        struct recording r = {.arena = &arena, .file = argv[n]};
        if (read_talk(&r, k, m, ear, read_file(argv[n], room), &p))
            print_talk(&r, k);
        arena_reset(&arena);
    }
    arena_release(&arena);
    ear_free(ear);
    matcher_free(m);
    pack_free(k);
    free(room);
    return 0;
}
