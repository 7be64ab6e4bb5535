/* build/prepodds.h: which words tell what was done to which food, by what was learned of how cooks
 * talk. What the rules of prep.h found is a part of that.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_PREPODDS_H
#define DISHTAKE_BUILD_PREPODDS_H

#include "build/prep.h"

/* How the words tell it. The rows' verbs are preparations of some foods only: "toast the nuts". */
enum prep_kind {
    PREP_DONE,      /* "chopped" */
    PREP_ORDER,     /* "chop" */
    PREP_DOING,     /* "chopping" */
    PREP_ROW_DONE,  /* "toasted" */
    PREP_ROW_ORDER, /* "toast" */
    PREP_ROW_DOING, /* "toasting" */
    PREP_PIECES,    /* "rounds" */
    PREP_HOW,       /* "fine" */
    PREP_KINDS
};

/* The same, roughly: told, ordered, only named. */
enum prep_way { PREP_TOLD, PREP_ORDERED, PREP_NAMED, PREP_WAYS };

/* Where the food stands: so many lines before the word, or behind it. */
enum prep_where {
    PREP_BEFORE_0,
    PREP_BEFORE_1,
    PREP_BEFORE_2,
    PREP_BEHIND_0,
    PREP_BEHIND_1,
    PREP_WHERES
};
enum prep_side { PREP_SIDE_BEFORE, PREP_SIDE_BEHIND, PREP_SIDES };

/* Words between are counted as powers of two: none, one, two, up to four ... */
#define PREP_DISTANCES 8

#define PREP_NEAR 2 /* words before it that are looked at */
#define PREP_NEXT 1 /* and behind it */

struct prep_word {
    size_t first, last;
    enum prep_kind kind;
    enum prep_way way;
    struct text says;             /* the verb, the pieces: "chop", "rounds" */
    struct text done;             /* "chopped"; empty where it depends on the food */
    unsigned char before, behind; /* the tags beside it, or BESIDE_COMMA, BESIDE_STOP */
    unsigned scope;
    bool inside; /* it stands among the words of a food */
    bool bare;   /* a verb that says little without the pieces: "cut" */
    struct text near[PREP_NEAR], next[PREP_NEXT];
    size_t nears, nexts;
    bool weighed; /* what is learned of all this has been added up */
    double points;
    struct text row_of; /* the preparation of which `row` is that of prep-foods */
    size_t row;
};

/* What is learned of a line, whatever is told of it. */
struct prep_food {
    struct ingredient *line;
    bool weighed;
    double points;
};

/* A word and a food that it may be said of. */
struct prep_case {
    struct ingredient *line;
    struct prep_food *food; /* of that line */
    struct text done;       /* "chopped", of this food */
    enum prep_where where;
    enum prep_side side;
    unsigned distance;        /* words between: less than PREP_DISTANCES */
    unsigned stops, captions; /* between: full stops, captions' ends */
    bool given;               /* the rules have it for the food */
    bool taken;               /* they have it for another food there */
};

/* prepfact.c. Calls `weigh` for each word of the dish that may tell a preparation, and each food
 * that it may be told of. */
typedef void prep_weigh(struct builder *b, struct prep_word *w, const struct prep_case *c,
                        void *with);
void each_prep_case(struct builder *b, prep_weigh *weigh, void *with);
/* prepword.c. Whether one says what the other does: "thinly sliced", "sliced". */
bool preps_alike(struct text a, struct text b);

/* Whether the verb is a preparation of some foods: the table prep-odds has a row for it. */
bool is_prep_row(const struct builder *b, struct text verb);
/* Log odds that the word tells it of the food. */
double prep_points(const struct builder *b, struct prep_word *w, const struct prep_case *c);
/* prepguess.c. Adds to the dish's lines what is likely, and takes from them what is not. */
void guess_preps(struct builder *b);

#endif
