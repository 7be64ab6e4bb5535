/* split/links.h: which dishes spoke before of the things that the next sentences name.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_LINKS_H
#define DISHTAKE_SPLIT_LINKS_H

#include "split/segment.h"
#include "split/standing.h"

/* Things are looked for in so many sentences, and each so often back. */
#define LINK_SENTENCES 8
#define LINK_TIMES 6
#define THINGS_MOST (LINK_SENTENCES * MENTIONS_MOST)

/* What is said at once tells more of what the talk turns to than what is said later. */
enum nearness { NOW, SOON, LATER, NEARNESSES };

/* A thing that a sentence to come names, and which sentences named it before. */
struct thing {
    uint32_t before[LINK_TIMES];
    uint32_t times;
    enum nearness nearness;
    float weight; /* milk, eggs, flour tell less than a main food */
    bool first;   /* the first of the sentences begins with it */
};

struct things {
    struct thing at[THINGS_MOST];
    size_t count;
    struct affinity about; /* what the first few of the sentences are about */
};

/* Whose they are in one way to share the sentences: the dish_bit of each dish that spoke of
 * the thing. */
struct links {
    uint64_t dishes[THINGS_MOST];
    uint64_t any; /* all of them */
    size_t on;    /* the dish that is on, or was last; NO_DISH: none so far */
    /* What they speak for that a dish goes on, once it was asked; that one begins. */
    double score[DISHES_KEPT], new_score;
    uint64_t scored; /* bits as above */
    bool new_scored;
};

/* The things of sentences [i, count) that were named before sentence `i`, and those that were not.
 */
void find_things(const struct feature *f, size_t count, size_t i, struct things *out);
/* Whose they are, of the dishes that are told apart. */
void find_links(const struct things *t, const struct segment *s, const struct standings *dishes,
                struct links *out);
/* Whether they speak alike. */
bool links_equal(const struct things *t, const struct links *a, const struct links *b);

#endif
