/* pack/sieve.h: a rule's sieve: its pattern in codes that are walked for all begins of a match at
 * once, to tell whether there is one (match/sieve.h). Made beside the pattern's text.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PACK_SIEVE_H
#define DISHTAKE_PACK_SIEVE_H

#include "base/text.h"

/* Codes one after another: each is followed by what stands here. Lengths take two bytes, the lower
 * first. What is in a look ahead stands in reverse order, since it is walked from its end. */
enum sieve_code {
    SIEVE_UNITS,       /* count, units: an entry of one of these classes */
    SIEVE_ANY,         /* an entry of any class */
    SIEVE_BEHIND,      /* count, units: one of them stands before */
    SIEVE_NOT_BEHIND,  /* count, units: none of them stands before */
    SIEVE_SOME_BEHIND, /* the end of any entry stands before */
    SIEVE_NONE_BEHIND, /* nothing stands before */
    SIEVE_AHEAD,       /* length, codes: these follow */
    SIEVE_NOT_AHEAD,   /* length, codes: these do not follow */
    SIEVE_BEGIN,       /* of the sentence */
    SIEVE_END,
    SIEVE_CHOICES,    /* count, as many lengths, as many runs of codes: one of them */
    SIEVE_REPEAT,     /* least, most, length, codes: as often as it can */
    SIEVE_REPEAT_FEW, /* ... as seldom as it can */
    SIEVE_OPEN,       /* a slot's number: it begins here; not in a look ahead */
    SIEVE_CLOSE       /* a slot's number: it ends here */
};

#define SIEVE_BYTES 2048
#define SIEVE_LIST_MOST 255 /* of a count */

/* Zeroed is empty. A pattern that is too long for it, which none is, gets no sieve. */
struct sieve {
    unsigned char codes[SIEVE_BYTES];
    size_t length;
    bool full;
};

void sieve_put(struct sieve *s, enum sieve_code code);
void sieve_put_slot(struct sieve *s, enum sieve_code code, size_t slot);
/* A code with a list of units; UNITS, BEHIND or NOT_BEHIND. */
void sieve_put_list(struct sieve *s, enum sieve_code code, const unsigned char *units,
                    size_t count);
/* All codes from `begin` on become the part of a look ahead, or of a repeat. */
void sieve_wrap_look(struct sieve *s, size_t begin, enum sieve_code code);
void sieve_wrap_repeat(struct sieve *s, size_t begin, enum sieve_code code, unsigned least,
                       unsigned most);
/* They become choices, of which each ends at one of `ends`; classes alone become one list. */
void sieve_wrap_choices(struct sieve *s, size_t begin, const size_t *ends, size_t count);
/* Codes [begin, middle) and those behind change places. */
void sieve_swap(struct sieve *s, size_t begin, size_t middle);
/* The same without its slots: a sieve is walked far more often than slots are asked for. */
void sieve_strip(struct sieve *out, const struct sieve *from);
/* The codes; empty when they did not fit. Borrowed. */
struct text sieve_text(const struct sieve *s);

#endif
