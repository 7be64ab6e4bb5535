/* split/feature.h: what each sentence says about where dishes begin and end.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_FEATURE_H
#define DISHTAKE_SPLIT_FEATURE_H

#include "model/recording.h"
#include "pack/pack.h"
#include "split/affinity.h"
#include "split/turnword.h"

/* A food, a part of a dish or a dish's word that a sentence names. */
struct mention {
    struct text kind; /* the entry's value: the same for "scallion" and "spring onion" */
    uint64_t marks;
    size_t before; /* the sentence that named it last, its own number when none did lately */
    size_t before_mention; /* its mention there */
    float lead; /* how often a common dish that has the food is made of it first of all, 0 to 1 */
    bool fresh; /* with an amount, or "another": it goes in here */
    bool dish;  /* a dish's word: "stew" */
    bool part;  /* no food: "the sauce", "the dough", "the stew" */
};

/* Less cooking in a sentence than this is talk. */
#define COOKING_LEAST 0.5

/* Salt, water, oil, spice: every dish has them. */
#define PLAIN_MARKS (MARK_OF(salt) | MARK_OF(water) | MARK_OF(fat) | MARK_OF(spice))
#define MENTIONS_MOST 12

/* What a sentence begins with. */
enum beginning { OF_OTHER, OF_THE, OF_ME, OF_ACTION, OF_DEPENDENT };

struct feature {
    double weight;        /* of its length: short cries and answers are half a sentence or less */
    double cooking;       /* instructions, amounts, times: how much of the sentence is cooking */
    double opens, closes; /* weight of phrases that announce or end a dish */
    bool announces_food; /* the opening title is a food's, and sure: "today we're making custard" */
    bool opens_food;     /* "now for the onions": a phrase that announces, and no sure name */
    double bare;         /* weight of a name that stands alone: it opens or ends one */
    bool finished;       /* a yield, or what it is served with, is said here */
    bool past;           /* the name is of what went before */
    bool weak;           /* the name is only told: "it's lemon couscous" */
    bool returns;        /* "back to the bread" */
    bool meanwhile;      /* "while that's going" */
    bool vessel;         /* "in the big pot" */
    bool vessel_first;   /* "now the big pot": what follows goes into it */
    bool other_bowl;     /* "in the other bowl": its dry things, its sauce */
    bool points;         /* "these", "here's" */
    bool timed;          /* says how long something takes */
    bool turns;          /* begins with "okay", "now", "right" */
    enum beginning beginning; /* what the sentence begins with, after a "so" or an "and" */
    bool order;               /* "number two" */
    size_t first_thing;       /* the mention within the first few words; MENTIONS_MOST: none */
    bool follows;             /* "then", "after that" */
    bool goes_on;             /* begins with "and" */
    bool heading;             /* a few words that name a thing: "Squash, squash, squash." */
    bool pronoun; /* "it" or "them" stands before any food: something spoken of before */
    /* The names said there; first > last for none. */
    struct span opening_title, closing_title, bare_title;
    struct span told_title;    /* less sure than those */
    struct span foreign_title; /* of words that the language has not: least sure */
    struct mention *mentions;  /* in spoken order, MENTIONS_MOST at most; arena */
    size_t mentions_count;
    size_t units;    /* cups, spoons, cloves */
    bool main_first; /* its first food is a main one: meat, fish, a vegetable */
    size_t lines;    /* foods with an amount */
    size_t measured; /* of these, by spoon, cup, weight: not "four jars of cinnamon" on a shelf */
    size_t actions;
    size_t early, late;      /* of these, such as a dish begins with, or ends with */
    struct affinity about;   /* its foods and what is done */
    struct turn_points turn; /* what the words around its beginning speak for */
    float talked;            /* how much its words speak for talk of which nothing is cooked */
    float sweet, savory;     /* how many foods are found in desserts only, and in none */
};

/* The sentence's mention of that kind; NULL: it names none. */
const struct mention *mention_of(const struct feature *f, struct text kind);
/* One feature a sentence; arena. */
struct feature *features_make(const struct recording *r, const struct pack *k);

/* The mention of the same thing before `m` of sentence `*i`, which becomes that one's sentence;
 * NULL: nobody named it lately. */
static inline const struct mention *mention_before(const struct feature *f, const struct mention *m,
                                                   size_t *i)
{
    if (m->before >= *i)
        return NULL;
    *i = m->before;
    return &f[m->before].mentions[m->before_mention];
}
/* The name of a dish that the sentence says; first > last for none. */
static inline struct span feature_name(const struct feature *f)
{
    return f->closing_title.first <= f->closing_title.last ? f->closing_title : f->opening_title;
}
static inline bool says_name(const struct feature *f)
{
    const struct span name = feature_name(f);
    return name.first <= name.last;
}

#endif
