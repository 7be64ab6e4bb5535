/* model/finding.h: something the cook should mend, confirm or know before publishing.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MODEL_FINDING_H
#define DISHTAKE_MODEL_FINDING_H

#include "model/match.h"

/* In rising order of weight. */
enum finding_level {
    LEVEL_NOTE, /* taste, or already settled */
    LEVEL_ASK,  /* two readings */
    LEVEL_FIX,  /* a gap, or implausible */
    LEVEL_STOP  /* unsafe as heard */
};
const char *level_name(enum finding_level level); /* "note", "ask", "fix", "stop" */
/* Reads "fix"; false, with `level` untouched, when it is none. */
bool level_read(struct text name, enum finding_level *level);

struct finding {
    struct text kind; /* "no-amount": a row of grammars/<language>/findings.tsv */
    enum finding_level level;
    size_t dish;         /* index into recording.dishes; FINDING_NO_DISH when it belongs to none */
    double at;           /* seconds */
    struct span words;   /* what was said; first > last when nothing was */
    struct text about;   /* "paprika" */
    struct text said;    /* the words, quoted */
    struct text why;     /* in the cook's words */
    struct text suggest; /* what to do */
    struct text source;  /* the published rule; empty when there is none */
    bool dismissed;      /* the cook has answered it: it is open no longer */
    bool accepted;       /* and said that it is so and stays so; else that it is mistaken */
    struct text reason;  /* in the cook's words; empty when none was given */
};

#define FINDING_NO_DISH ((size_t) -1)

#endif
