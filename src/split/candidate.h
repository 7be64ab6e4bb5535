/* split/candidate.h: the noun phrases of a recording that could be what a dish is called, and what
 * speaks for each.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_CANDIDATE_H
#define DISHTAKE_SPLIT_CANDIDATE_H

#include "split/border.h"
#include "split/plainword.h"

/* What stands around a name where it is said: bits. */
enum said {
#define SAID(name, dish, food, foreign, other, what) SAID_##name,
#define TRAIT(name, weight, what)
#include "split/name.def"
#undef SAID
#undef TRAIT
    SAIDS
};
struct said_bits {
    uint64_t at[2];
};

/* Of what kind its last word is: a column of name.def. */
enum name_kind { NAME_DISH, NAME_FOOD, NAME_FOREIGN, NAME_OTHER, NAME_KINDS };

/* What is counted of a name. */
enum trait {
#define SAID(name, dish, food, foreign, other, what)
#define TRAIT(name, weight, what) TRAIT_##name,
#include "split/name.def"
#undef SAID
#undef TRAIT
    TRAITS
};

/* The same words, wherever they are said, in the singular or the plural. */
struct candidate {
    uint64_t hash; /* of the stems of its words */
    size_t times;  /* in the recording */
    size_t dishes; /* in so many dishes */
    size_t last;   /* of these the last, plus one */
    bool capital;  /* somewhere its first word has a capital, though not first in its sentence */
    /* The dish for which it was last looked at, plus one, and what was found in that. */
    size_t dish;
    size_t home;           /* times */
    size_t barred;         /* of these, where no name ends (nameend.h) */
    size_t cut;            /* of these, as a part of a longer noun phrase */
    size_t away;           /* of these, where it is told of, or stands beside, and is not made */
    size_t fuller;         /* longer names that end with it, with what tells more before it */
    struct span words;     /* where it is said first there */
    struct said_bits said; /* of all these places */
};

/* Where a candidate is said. */
struct saying {
    struct span words, phrase; /* the phrase that it is a part of */
    size_t candidate;
};

struct candidates {
    const struct recording *r;
    const struct feature *f;
    const size_t *dish;           /* of each sentence; NO_DISH */
    const struct stretch *wholes; /* from each dish's first sentence to its last (choose.c) */
    LIST(struct saying) places;
    size_t *from; /* each sentence's first place; one more for the end */
    LIST(struct candidate) all;
    size_t *table, room;       /* by hash: a number of `all` plus one */
    struct plain_words plain;  /* words of the language */
    unsigned char *plain_kind; /* of each word, plus one; 0 where nobody asked yet */
    const struct table *goes_with;
    struct affinity about; /* what the dish that is looked at is about */
    double about_most;     /* how much the dish that is looked at is about one food, at most */
    /* What the rules of phrases chose for the dish that is looked at, and how sure they are. */
    struct span chosen; /* first > last: nothing */
    uint64_t chosen_hash;
    double chosen_weight;
};

/* All that is said in the recording. Arena. `dish` is borrowed. */
struct candidates candidates_find(const struct recording *r, const struct pack *k,
                                  const struct feature *f, const size_t *dish);
/* The same for "bun" and "buns". */
uint64_t name_hash(const struct recording *r, struct span words);
/* The number in `all` of the name with that hash, which it makes where there is none. */
size_t candidate_number(struct candidates *c, uint64_t hash);
/* NULL: nobody says it. */
const struct candidate *candidate_find(const struct candidates *c, uint64_t hash);

typedef void name_teller(void *to, const struct candidates *c, const struct candidate *n);
/* Looks at dish `d`, whose sentences are in `within`, and tells each candidate that is said there,
 * or right before or behind it and in no other. */
void candidates_of(struct candidates *c, size_t d, struct stretch within, name_teller *tell,
                   void *to);

/* Whether a word before the last makes a name tell more: "tea biscuits", never "hot biscuits". */
bool name_tells_more(const struct word *w);

/* What stands around all names of a sentence. */
#define SLOTS_MOST 16
struct surrounding {
    size_t sentence;
    struct said_bits said;
    size_t count;
    struct {
        struct span words;
        enum said said;
    } slots[SLOTS_MOST]; /* what goes in there, or is named */
};
struct surrounding said_there(const struct candidates *c, size_t i, struct stretch within);
/* What stands around the name in that place. */
struct said_bits said_of(const struct candidates *c, const struct saying *p,
                         const struct surrounding *there);

/* Fills in x[TRAITS], and what is said of it in all. */
enum name_kind name_traits(const struct candidates *c, const struct candidate *n, double *x,
                           struct said_bits *said);
/* How much speaks for it. */
double name_score(const struct candidates *c, const struct candidate *n);
/* ... for no name at all. */
double no_name_score(void);

#endif
