/* tools/prep_units.c: what prep-odds.tsv, prep-foods.tsv and the weights of src/build/prepodds.def
 * are made from (grammars/en/scripts/prep_odds.py). prep_units TRANSCRIPT...: a line a word and a
 * food that it may be told of: the line's id, the preparation, 1 where the rules have it already or
 * 0, and what speaks for it and against it, each after a tab. A line "# NAME" begins a recording.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "build/beside.h"
#include "build/prepodds.h"
#include "recipe_reader.h"

static const char *const KINDS[] = {"DONE",      "ORDER",     "DOING",  "ROW_DONE",
                                    "ROW_ORDER", "ROW_DOING", "PIECES", "HOW"};
static const char *const WAYS[] = {"TOLD", "ORDERED", "NAMED"};
static const char *const WHERES[] = {"BEFORE_0", "BEFORE_1", "BEFORE_2", "BEHIND_0", "BEHIND_1"};
static const char *const SIDES[] = {"BEFORE", "BEHIND"};
static const struct {
    unsigned scope;
    const char *name;
} SCOPES[] = {{SCOPE_UNREAL, "UNREAL"}, {SCOPE_NEGATED, "NEGATED"},   {SCOPE_INSTEAD, "INSTEAD"},
              {SCOPE_UNTIL, "UNTIL"},   {SCOPE_OPTIONAL, "OPTIONAL"}, {SCOPE_TITLE, "TITLE"},
              {SCOPE_YIELD, "YIELD"},   {SCOPE_SUPPOSED, "SUPPOSED"}};

static void print_tag(const char *which, const char *way, unsigned char tag)
{
    if (tag == BESIDE_STOP || tag == BESIDE_COMMA)
        printf("\t%s %s BESIDE_%s", which, way, tag == BESIDE_STOP ? "STOP" : "COMMA");
    else
        printf("\t%s %s TAG_%s", which, way, tag_name(tag));
}

static void print_word(const struct prep_word *w)
{
    print_tag("BEFORE", WAYS[w->way], w->before);
    print_tag("BEHIND", WAYS[w->way], w->behind);
    printf("\tdone %.*s", TEXT(w->says));
    for (size_t n = 0; n < w->nears; n++)
        printf("\tnear %.*s", TEXT(w->near[n]));
    for (size_t n = 0; n < w->nexts; n++)
        printf("\tnext %.*s", TEXT(w->next[n]));
    for (size_t n = 0; n < sizeof SCOPES / sizeof *SCOPES; n++)
        if (w->scope & SCOPES[n].scope)
            printf("\tSCOPE %s", SCOPES[n].name);
}

static void print_foods(const struct prep_case *c)
{
    const uint64_t marks = c->line->entry ? c->line->entry->marks : 0;
    printf("\tany");
    for (int n = 0; n < MARK_COUNT; n++)
        if (marks & (uint64_t) 1 << n)
            printf("\tof %s", mark_name((enum mark_bit) n));
    printf("\tfood %.*s", TEXT(text_last_word(c->line->kind)));
}

/* Stand in for the library's: every verb may prepare a food, and nothing is likely. */
bool is_prep_row(const struct builder *b, struct text verb)
{
    (void) b;
    return verb.length > 0;
}

double prep_points(const struct builder *b, struct prep_word *w, const struct prep_case *c)
{
    const int stops = b->r->punctuated;
    const char *side = SIDES[c->side], *way = WAYS[w->way];
    printf("i%zu\t%.*s\t%d\tALWAYS\tWHERE %s %s\tDISTANCE %s %s %u", c->line->id, TEXT(c->done),
           c->given, WHERES[c->where], KINDS[w->kind], side, way, c->distance);
    printf("\tSTOPS %s %s %d %u\tCAPTIONS %s %d %u\tPREPS %u", side, way, stops,
           c->stops < 2 ? c->stops : 2, side, stops, c->captions < 3 ? c->captions : 3,
           c->line->prep.count < 2 ? (unsigned) c->line->prep.count : 2);
    if (c->line->amount.known)
        printf("\tKNOWN");
    if (w->inside)
        printf("\tINSIDE %s", WHERES[c->where]);
    if (c->taken)
        printf("\tTAKEN %s %d", WHERES[c->where], c->line->prep.count > 0);
    if (c->given)
        printf("\tGIVEN %s %s", side, way);
    print_word(w);
    print_foods(c);
    printf("\n");
    return -1; /* neither likely nor unlikely */
}

int main(int argc, char **argv)
{
    read_all_recipes(argc - 1, argv + 1, false);
    return 0;
}
