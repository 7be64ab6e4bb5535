/* build/prose.h: a written sentence as it grows: spaces, commas, capitals, no loose end.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_PROSE_H
#define DISHTAKE_BUILD_PROSE_H

#include <stdbool.h>

#include "base/arena.h"

/* One step's words never need more; a longer one is cut at a word. */
#define PROSE_BYTES 800

/* Zeroed is empty. */
struct prose {
    char at[PROSE_BYTES];
    size_t length;
    size_t kept;   /* the length after the last word that may end a sentence */
    size_t begun;  /* where the sentence that is being written begins */
    size_t before; /* where the one before it began */
    bool glued;    /* the next word follows without a space, after a hyphen */
};

/* One word or several; `joins`: no sentence ends on it ("and", "of", "the"). */
void prose_word(struct prose *p, struct text word, bool joins);
void prose_hyphen(struct prose *p);
/* A comma, unless a sentence begins here or one stands already. */
void prose_comma(struct prose *p);
/* Text as it is, with no space before it; false where it does not fit, which leaves it out. */
bool prose_add(struct prose *p, struct text t);
/* Whole sentences that were written before. */
void prose_put(struct prose *p, struct text written);
/* Takes the comma at the end back, if there is one. */
void prose_uncomma(struct prose *p);
/* Drops the loose end and closes the sentence, if there is one, with a full stop. */
void prose_stop(struct prose *p);
/* Goes on with the sentence that was just closed. */
void prose_reopen(struct prose *p);
bool prose_begins(const struct prose *p);
/* All of it; arena. */
struct text prose_text(const struct prose *p, struct arena *a);

#endif
