/* build/lineodds.h: which of the foods that were spoken of are lines of the recipe, by what was
 * learned of how cooks talk. What the rules of line.h say of them is a part of that.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_LINEODDS_H
#define DISHTAKE_BUILD_LINEODDS_H

#include "build/builder.h"

/* How the rules have it; each has weights of its own. */
enum line_way {
    LINE_KNOWN, /* so much of it goes in */
    LINE_BARE,  /* it goes in, and nobody says how much */
    LINE_ASKED, /* it was spoken of, and nothing says that it goes in */
    LINE_WAYS
};

enum line_fact {
#define FACT(name, known, bare, asked, holds, what) LINE_FACT_##name,
#include "build/lineodds.def"
    LINE_FACTS
};

#define LINE_NEAR 2 /* words before it that are looked at, and behind it */

/* What there is to know of a food that was spoken of. */
struct line_case {
    const struct ingredient *line;
    enum line_way way;
    bool is[LINE_FACTS];
    unsigned char before, behind; /* the tags beside it, or BESIDE_STOP, BESIDE_COMMA */
    unsigned scope;               /* enum scope bits of its food's last word */
    struct text near[LINE_NEAR], next[LINE_NEAR]; /* the words beside it, the nearest first */
    size_t nears, nexts;
};

/* linefact.c. What there is to know of the dish's line `index`. */
void find_line_case(const struct builder *b, size_t index, struct line_case *out);

/* lineodds.c. Leaves what is unlikely to be a line of the dish to drop_questions(), and takes from
 * it what is likely. */
void judge_lines(struct builder *b);

#endif
