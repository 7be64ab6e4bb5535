/* pack/pattern.h: what the files share that read a rule's pattern; nobody outside src/pack includes
 * it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PACK_PATTERN_H
#define DISHTAKE_PACK_PATTERN_H

#include "pack/load.h"
#include "pack/sieve.h"

/* A pattern being read. */
struct pattern {
    struct problems *problems;
    const struct source_line *line;
    struct rule *rule;
    const char *at, *end;
    char *out; /* PATTERN_BYTES */
    size_t length;
    struct sieve *sieve;
    bool ahead; /* in a look ahead, whose part of the sieve stands in reverse order */
    unsigned depth;
    unsigned refusing; /* how many (?! ) are open */
    bool broken;       /* something was wrong; reading goes on where it can */
    bool stopped;      /* reading cannot go on */
};

/* For a mistake after which nothing that follows makes sense. */
void pattern_stop(struct pattern *x, const char *at, const char *message);
/* Behind what is written so far; a pattern that is too long stops. */
void pattern_put(struct pattern *x, const char *string);
/* Every unit is escaped, since many are signs that PCRE2 reads as its own. */
void pattern_put_unit(struct pattern *x, unsigned char unit);
void pattern_skip(struct pattern *x); /* blanks */
/* The sign at hand, blanks before it skipped; '\0' at the end. */
char pattern_peek(struct pattern *x);
/* Takes the signs, if they are what comes next. */
bool pattern_take(struct pattern *x, const char *string);
/* A run of letters, digits and '_'; may be empty. */
struct text pattern_take_name(struct pattern *x);
bool is_name_letter(char c);
/* The tag of a class name; reports an unknown one. */
bool pattern_class(struct pattern *x, struct text name, unsigned char *tag);

/* What an atom may be followed by. */
enum atom {
    ATOM_NONE, /* the end of what is being read */
    ATOM_PART, /* may repeat */
    ATOM_SLOT, /* may be left out, but holds one stretch of words only */
    ATOM_PLACE /* takes no words */
};

/* pattern_repeat.c. The repeat after an atom, whose part of the sieve begins at `begin`; says
 * whether the atom must be there. */
bool pattern_repeat(struct pattern *x, enum atom atom, size_t begin);

/* The text of the PCRE2 pattern, and rule->needed and slots. False when it was refused. */
bool pattern_translate(struct problems *p, const struct source_line *line, struct text t,
                       struct rule *rule, char regex[PATTERN_BYTES], struct sieve *sieve);

#endif
