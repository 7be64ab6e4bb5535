/* split/plainword.h: words of plain language, so that what is none may be a foreign dish's name.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_SPLIT_PLAINWORD_H
#define DISHTAKE_SPLIT_PLAINWORD_H

#include "pack/pack.h"

/* The tables that have them; NULL where a pack has none. Borrowed from the pack. */
struct plain_words {
    const struct table *sounding; /* those of which it is known how they sound */
    const struct table *ordinary; /* others that are said often */
    const struct table *rare;
    const struct table *names;  /* of persons and places */
    const struct table *titles; /* those of all these that stand in names of dishes, and where */
};

struct plain_words plain_words_of(const struct pack *k);
/* Whether the folded word, as far as an apostrophe ("what've"), is one of the language, a person's
 * or a place's name among them; false without tables. */
bool is_plain_word(const struct plain_words *plain, struct text key);
/* Whether it is one that is said often. */
bool is_common_word(const struct plain_words *plain, struct text key);
/* What the language has it as. */
enum plain_kind {
    NO_PLAIN_WORD,
    PLAIN_WORD,
    PROPER_NAME,   /* of a person, a place */
    BEGINS_TITLES, /* "Coronation chicken" */
    ENDS_TITLES,   /* "Oat bites" */
    IN_TITLES      /* either */
};
enum plain_kind plain_kind_of(const struct plain_words *plain, struct text key);

#endif
