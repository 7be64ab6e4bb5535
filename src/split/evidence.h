/* split/evidence.h: what is counted at the border before each sentence.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_EVIDENCE_H
#define DISHTAKE_SPLIT_EVIDENCE_H

#include "split/feature.h"

/* The weight of an opening phrase with a name in it, and of a closing one that is no mere hint. */
#define ANNOUNCED 5.0
#define CLOSE_CLEAR 2.70

enum evidence {
#define EVIDENCE(name, new, back, what) name,
#include "split/border.def"
#undef EVIDENCE
    EVIDENCES
};

/* Where evidence is looked for: the features of `count` sentences. */
struct talk {
    const struct recording *r;
    const struct feature *f;
    size_t count;
    /* How many dishes the cook announces, and takes leave of, in 25 sentences; 1 at most. */
    double announces, takes_leave;
    double *chains; /* for each border, the weight of the things spoken of before and after it */
};

/* Arena. */
struct talk talk_make(const struct recording *r, const struct feature *f, size_t count);
/* Fills in x[EVIDENCES] for the border before sentence `i`. */
void find_evidence(const struct talk *t, size_t i, double *x);
/* How much room for dishes a talk of so many sentences has, of 1. */
double room(size_t count);

#endif
