/* tools/line_units.c: what line-odds.tsv and the weights of src/build/lineodds.def are made from
 * (grammars/en/scripts/line_odds.py). line_units TRANSCRIPT...: a line a food that was spoken of:
 * the line's id, when it was said, the food, how the rules have it, and what speaks for it and
 * against it, each after a tab. A line "# NAME" begins a recording, and one "T" counts its tags.
 * SPDX-License-Identifier: MIT */
#include <limits.h>
#include <setjmp.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "build/beside.h"
#include "build/lineodds.h"
#include "recipe_reader.h"
#include "split/talked.h"

static const char *const FACT_NAMES[] = {
#define FACT(name, known, bare, asked, holds, what) #name,
#include "build/lineodds.def"
};
static const char *const WAYS[] = {"known", "bare", "asked"};
static const struct {
    unsigned scope;
    const char *name;
} SCOPES[] = {{SCOPE_UNREAL, "UNREAL"}, {SCOPE_NEGATED, "NEGATED"},   {SCOPE_INSTEAD, "INSTEAD"},
              {SCOPE_UNTIL, "UNTIL"},   {SCOPE_OPTIONAL, "OPTIONAL"}, {SCOPE_TITLE, "TITLE"},
              {SCOPE_YIELD, "YIELD"},   {SCOPE_SUPPOSED, "SUPPOSED"}, {SCOPE_TASTE, "TASTE"},
              {SCOPE_BESIDE, "BESIDE"}, {SCOPE_GARNISH, "GARNISH"}};

static void print_tag(const char *which, unsigned char tag)
{
    if (tag == BESIDE_STOP || tag == BESIDE_COMMA)
        printf("\t%s BESIDE_%s", which, tag == BESIDE_STOP ? "STOP" : "COMMA");
    else
        printf("\t%s TAG_%s", which, tag_name(tag));
}

static void print_words(const struct line_case *c)
{
    for (size_t n = 0; n < c->nears; n++)
        printf("\tnear %.*s", TEXT(c->near[n]));
    for (size_t n = 0; n < c->nexts; n++)
        printf("\tnext %.*s", TEXT(c->next[n]));
    printf("\tfood %.*s\trule %.*s\n", TEXT(text_last_word(c->line->kind)), TEXT(c->line->rule));
}

static void print_case(const struct line_case *c)
{
    const uint64_t marks = c->line->entry ? c->line->entry->marks : 0;
    printf("i%zu\t%.2f\t%.*s\t%s\t%d", c->line->id, c->line->at, TEXT(c->line->food), WAYS[c->way],
           c->line->role == ROLE_SERVE_WITH);
    for (size_t n = 0; n < LINE_FACTS; n++)
        if (c->is[n])
            printf("\t%s", FACT_NAMES[n]);
    print_tag("BEFORE", c->before);
    print_tag("BEHIND", c->behind);
    for (size_t n = 0; n < sizeof SCOPES / sizeof *SCOPES; n++)
        if (c->scope & SCOPES[n].scope)
            printf("\tSCOPE %s", SCOPES[n].name);
    for (int n = 0; n < MARK_COUNT; n++)
        if (marks & (uint64_t) 1 << n)
            printf("\tSORT %s", mark_name((enum mark_bit) n));
    print_words(c);
}

/* How many of the recording's words have each tag. */
static void print_tags(const struct recording *r)
{
    size_t counts[UCHAR_MAX + 1] = {0};
    for (size_t i = 0; i < r->words.count; i++)
        counts[r->words.at[i].tag]++;
    printf("T\t%zu", r->words.count);
    for (int t = 2; t <= UCHAR_MAX; t++)
        if (counts[t] && t != TAG_INSIDE)
            printf("\t%s %zu", tag_name((unsigned char) t), counts[t]);
    printf("\n");
}

/* Stands in for the library's: the rules alone decide. */
void judge_lines(struct builder *b)
{
    for (size_t n = 0; n < b->dish->ingredients.count; n++) {
        struct line_case c;
        find_line_case(b, n, &c);
        print_case(&c);
        b->dish->ingredients.at[n].questioned = c.way == LINE_ASKED;
    }
}

/* Stands in for the library's: what foods are like in mere talk is to be learned too. */
bool is_only_talk(const struct wholes *w)
{
    (void) w;
    return false;
}

/* Also one in which no dish is found tells how talk has its words. */
static void print_recording(void *one_dish, struct recording *r, const struct pack *k)
{
    print_tags(r);
    build_all(one_dish, r, k);
}

int main(int argc, char **argv)
{
    bool one_dish = false;
    tell_talks(argc - 1, argv + 1, print_recording, &one_dish);
    return 0;
}
