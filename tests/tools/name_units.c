/* tools/name_units.c: what the weights of src/split/name.def are made from
 * (grammars/en/scripts/name_weights.py). name_units FILE: a line of FILE is a transcript's name, a
 * tab, and the number of each caption's dish, from 0, or "-" for none. A line a name that may be a
 * dish's: the transcript, the dish, the words, and what speaks for it (NAME=VALUE).
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "match/matcher.h"
#include "read/read.h"
#include "split/choose.h"
#include "split/feature.h"
#include "split/name.h"
#include "tag/misheard.h"
#include "tag/tag.h"
#include "words/words.h"
#include "read_file.h"

#define ARENA_BYTES ((size_t) 1 << 30)
#define LINE_BYTES 65536
#define DISHES_MOST 64

static const char *const TRAIT_NAMES[] = {
#define SAID(name, dish, food, foreign, other, what)
#define TRAIT(name, weight, what) #name,
#include "split/name.def"
#undef SAID
#undef TRAIT
};
static const char *const SAID_NAMES[] = {
#define SAID(name, dish, food, foreign, other, what) #name,
#define TRAIT(name, weight, what)
#include "split/name.def"
#undef SAID
#undef TRAIT
};
static const char KINDS[NAME_KINDS] = {'D', 'F', 'X', 'L'};

/* Whose names are printed. */
struct printing {
    const char *file;
    size_t dish;
};

static void print_name(void *to, const struct candidates *c, const struct candidate *n)
{
    const struct printing *p = to;
    double x[TRAITS];
    struct said_bits said;
    enum name_kind kind = name_traits(c, n, x, &said);
    printf("%s\t%zu\t", p->file, p->dish);
    for (size_t i = n->words.first; i <= n->words.last; i++)
        if (!c->r->words.at[i].filler)
            printf("%.*s ", TEXT(c->r->words.at[i].text));
    printf("\t");
    for (size_t i = 0; i < TRAITS; i++)
        if (x[i] < 0 || x[i] > 0)
            printf("%s=%.4g ", TRAIT_NAMES[i], x[i]);
    for (size_t i = 0; i < SAIDS; i++)
        if (said.at[i / 64] >> i % 64 & 1)
            printf("%c:%s=1 ", KINDS[kind], SAID_NAMES[i]);
    printf("\n");
}

static bool read_talk(struct recording *r, const struct pack *k, struct matcher *m, struct ear *ear,
                      struct text bytes, struct problems *p)
{
    return read_cues(r, bytes, p) && number_words(r, k, p) && tag_words(r, k, p)
           && hear_words(r, ear, p) && match_rules(r, k, m, p);
}

/* The dish of each caption; how many captions there are. */
static size_t read_labels(char *labels, size_t *dish, size_t most)
{
    size_t count = 0;
    for (char *at = strtok(labels, " \n"); at && count < most; at = strtok(NULL, " \n"))
        dish[count++] = *at == '-' ? NO_DISH : (size_t) strtoul(at, NULL, 10);
    return count;
}

/* Stretches of sentences whose first words are in captions of the same dish. */
static size_t find_stretches(const struct recording *r, const size_t *label, size_t labels,
                             struct stretch *s, size_t *dish)
{
    size_t count = 0;
    for (size_t i = 0; i < r->sentences.count; i++) {
        const struct sentence *sentence = &r->sentences.at[i];
        unsigned cue = r->words.at[(sentence->first + sentence->last) / 2].cue;
        size_t d = cue < labels ? label[cue] : NO_DISH;
        if (d == NO_DISH)
            continue;
        if (count && dish[count - 1] == d && s[count - 1].last + 1 == i) {
            s[count - 1].last = i;
            continue;
        }
        s[count] = (struct stretch){i, i, d};
        dish[count++] = d;
    }
    return count;
}

static void print_talk(struct recording *r, const struct pack *k, char *labels)
{
    static size_t label[LINE_BYTES];
    size_t count = read_labels(labels, label, LINE_BYTES);
    const struct feature *f = features_make(r, k);
    struct stretch *s = arena_alloc(r->arena, (r->sentences.count + 1) * sizeof *s);
    size_t *dish = arena_alloc(r->arena, (r->sentences.count + 1) * sizeof *dish);
    size_t stretches = find_stretches(r, label, count, s, dish);
    struct naming n = name_by_rules(r, f, s, stretches, dish, DISHES_MOST);
    struct candidates c = candidates_of_dishes(&n, k);
    for (size_t d = 0; d < DISHES_MOST; d++) {
        struct printing p = {r->file, d};
        tell_candidates(&n, &c, d, print_name, &p);
    }
}

static void print_line(struct arena *arena, const struct pack *k, struct matcher *m,
                       struct ear *ear, char *line, char *room)
{
    struct problems p = {0};
    struct recording r = {.arena = arena, .file = strtok(line, "\t")};
    char *const labels = strtok(NULL, "");
    if (!labels || !arena_open(arena))
        return;
    if (read_talk(&r, k, m, ear, read_file(r.file, room), &p))
        print_talk(&r, k, labels);
    arena_reset(arena);
}

int main(int argc, char **argv)
{
    struct pack *k = pack_builtin();
    struct matcher *m = matcher_new(k);
    struct ear *ear = ear_new(k);
    static char line[LINE_BYTES];
    char *room = malloc(FILE_BYTES);
    FILE *talks = argc > 1 ? fopen(argv[1], "r") : NULL;
    struct arena arena;
    arena_init(&arena, ARENA_BYTES);
    while (talks && k && m && ear && room && fgets(line, sizeof line, talks))
        print_line(&arena, k, m, ear, line, room);
    if (talks)
        fclose(talks);
    arena_release(&arena);
    ear_free(ear);
    matcher_free(m);
    pack_free(k);
    free(room);
    return 0;
}
