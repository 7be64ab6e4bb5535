/* tools/name_units.c: what the weights of src/split/name.def are made from
 * (grammars/en/scripts/name_weights.py). name_units FILE: a line of FILE is a transcript's name, a
 * tab, and SECONDS:DISH for each time from which on a dish is on, DISH from 0, "-" for none. A line
 * a name that may be a dish's: the transcript, the dish, the words, and what speaks for it
 * (NAME=VALUE; what stands around it has the letter of its column before it); behind those of a
 * dish the title that is made where none is taken, with NONE=1.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "build/build.h"
#include "build/untitled.h"
#include "kitchen/kitchen.h"
#include "split/choose.h"
#include "split/feature.h"
#include "split/name.h"
#include "split/title.h"
#include "split/topic.h"
#include "talk_reader.h"

#define LINE_BYTES 262144
#define DISHES_MOST 64
#define START_SLACK 0.05 /* seconds */

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
    struct recording *r;
    const struct kitchen *kitchen;
    struct stretch first; /* of the dish */
    size_t number;        /* in the recording */
};

/* What the title would be: "soup" is filled up with the dish's main food, or what is made of it. */
static void print_words(const struct printing *p, const struct candidates *c,
                        const struct candidate *n, bool kind)
{
    struct text title =
        kind ? fuller_name(p->r, c->f, p->first, n->words) : title_text(p->r, n->words);
    if (p->number != NO_DISH)
        title = said_title(p->r, p->kitchen, NULL, &p->r->dishes.at[p->number], title);
    printf("%.*s", TEXT(title));
}

static void print_name(void *to, const struct candidates *c, const struct candidate *n)
{
    const struct printing *p = to;
    double x[TRAITS];
    struct said_bits said;
    enum name_kind kind = name_traits(c, n, x, &said);
    printf("%s\t%zu\t", p->file, p->dish);
    print_words(p, c, n, x[TRAIT_DISH] > 0 && x[TRAIT_WORD] > 0);
    printf("\t");
    for (size_t i = 0; i < TRAITS; i++)
        if (x[i] < 0 || x[i] > 0)
            printf("%s=%.4g ", TRAIT_NAMES[i], x[i]);
    for (size_t i = 0; i < SAIDS; i++)
        if (said.at[i / 64] >> i % 64 & 1)
            printf("%c:%s=1 ", KINDS[kind], SAID_NAMES[i]);
    printf("\n");
}

/* From when on which dish is on. */
struct label {
    double start; /* seconds */
    size_t dish;
};

static size_t read_labels(char *labels, struct label *at, size_t most)
{
    size_t count = 0;
    char *rest;
    for (char *item = strtok_r(labels, " \n", &rest); item && count < most;
         item = strtok_r(NULL, " \n", &rest)) {
        char *end;
        at[count].start = strtod(item, &end);
        at[count++].dish = end[0] && end[1] != '-' ? (size_t) strtoul(end + 1, NULL, 10) : NO_DISH;
    }
    return count;
}

static size_t dish_at(const struct label *at, size_t count, double seconds)
{
    size_t dish = NO_DISH;
    for (size_t i = 0; i < count && at[i].start <= seconds + START_SLACK; i++)
        dish = at[i].dish;
    return dish;
}

/* Stretches of sentences whose middles are in the same dish. */
static size_t find_stretches(const struct recording *r, const struct label *at, size_t labels,
                             struct stretch *s, size_t *dish)
{
    size_t count = 0;
    for (size_t i = 0; i < r->sentences.count; i++) {
        const struct sentence *sentence = &r->sentences.at[i];
        const struct word *middle = &r->words.at[(sentence->first + sentence->last) / 2];
        size_t d = dish_at(at, labels, middle->start);
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

/* The dish of a stretch in the recording, which is new with its first one. */
static struct dish *recipe_of(struct recording *r, size_t *number, size_t first_word)
{
    if (*number == NO_DISH) {
        *number = r->dishes.count;
        *LIST_ADD(r->arena, &r->dishes) =
            (struct dish){.id = first_word, .words = {first_word, first_word}};
    }
    return &r->dishes.at[*number];
}

/* Makes recipes of the stretches, and leaves which is each dish's. */
static void make_recipes(struct recording *r, const struct pack *k, const struct feature *f,
                         const struct naming *n, size_t *number)
{
    struct problems problems = {0};
    size_t *dish = arena_alloc(r->arena, (n->count + 1) * sizeof *dish);
    for (size_t i = 0; i < n->count; i++) {
        const struct span words = {r->sentences.at[n->s[i].first].first,
                                   r->sentences.at[n->s[i].last].last};
        struct dish *d = recipe_of(r, &number[n->dish[i]], words.first);
        d->words.last = words.last;
        d->end = r->words.at[words.last].end;
        *LIST_ADD(r->arena, &d->spans) = words;
        dish[i] = number[n->dish[i]];
    }
    struct naming named = name_by_rules(r, f, n->s, n->count, dish, r->dishes.count);
    choose_names(&named, k);
    title_dishes(r, &named);
    build_recipes(r, k, &problems);
}

/* What a line asks for. */
struct asked {
    const struct kitchen *kitchen;
    char *labels; /* which are cut up where they are read */
};

static void print_talk(void *to, struct recording *r, const struct pack *k)
{
    const struct asked *asked = to;
    static struct label label[LINE_BYTES];
    size_t count = read_labels(asked->labels, label, LINE_BYTES);
    const struct feature *f = features_make(r, k);
    struct stretch *s = arena_alloc(r->arena, (r->sentences.count + 1) * sizeof *s);
    size_t *dish = arena_alloc(r->arena, (r->sentences.count + 1) * sizeof *dish);
    size_t stretches = find_stretches(r, label, count, s, dish);
    struct naming n = name_by_rules(r, f, s, stretches, dish, DISHES_MOST);
    struct candidates c = candidates_of_dishes(&n, k);
    size_t number[DISHES_MOST];
    for (size_t d = 0; d < DISHES_MOST; d++)
        number[d] = NO_DISH;
    make_recipes(r, k, f, &n, number);
    for (size_t d = 0; d < DISHES_MOST; d++) {
        struct printing p = {r->file, d, r, asked->kitchen, {0, 0, 0}, number[d]};
        for (size_t i = stretches; i-- > 0;)
            if (dish[i] == d)
                p.first = s[i];
        tell_candidates(&n, &c, d, print_name, &p);
        if (number[d] != NO_DISH)
            printf("%s\t%zu\t%.*s\tNONE=1\n", r->file, d,
                   TEXT(made_title(r, asked->kitchen, NULL, &r->dishes.at[number[d]])));
    }
}

static void print_line(struct talk_reader *reader, const struct kitchen *kitchen, char *line)
{
    struct asked asked = {.kitchen = kitchen};
    const char *name = strtok_r(line, "\t", &asked.labels);
    if (asked.labels[0])
        tell_talk(reader, name, print_talk, &asked);
}

int main(int argc, char **argv)
{
    static char line[LINE_BYTES];
    struct talk_reader reader;
    FILE *talks = argc > 1 ? fopen(argv[1], "r") : NULL;
    bool ready = talk_reader_open(&reader);
    struct kitchen *kitchen = ready ? kitchen_builtin(reader.pack) : NULL;
    while (talks && kitchen && fgets(line, sizeof line, talks))
        print_line(&reader, kitchen, line);
    if (talks)
        fclose(talks);
    kitchen_free(kitchen);
    talk_reader_close(&reader);
    return 0;
}
