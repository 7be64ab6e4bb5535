/* kitchen/kitchen.h: the pack's tables of kitchen arithmetic, ready for look-up. Knows no
 * transcript. Made once for a pack; read-only afterwards, and shared by all threads.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_KITCHEN_H
#define DISHTAKE_KITCHEN_KITCHEN_H

#include "kitchen/aisle.h"
#include "kitchen/allergen.h"
#include "kitchen/caution.h"
#include "kitchen/food.h"
#include "kitchen/measure.h"
#include "kitchen/title.h"
#include "kitchen/unit.h"
#include "pack/ready.h"

enum phrase_key {
#define PHRASE(key, blanks) PHRASE_##key,
#include "kitchen/phrases.def"
#undef PHRASE
    PHRASES
};

/* What a kitchen takes for a US measure when it measures in metric: 240 mL for a cup (NIST, not the
 * exact size). */
struct household {
    const struct unit *unit, *metric;
    struct ratio amount;
    struct text source;
};

struct oven_mark {
    struct ratio mark, fahrenheit;
};

/* What to say when a dish is scaled: a row of scaling-notes.tsv. */
struct scale_rule {
    struct text by, what; /* "food", "salt"; "action", "bake"; "mark", "leavening"; "always" */
    bool whole; /* not a warning: this food is counted whole, and `note` says how to split one */
    struct ratio from, to; /* it is said for factors from `from` up, and from `to` down */
    struct text
        note; /* {1} the factor, {2} its square root; of a whole food: {1} the next whole count */
};

/* What the time of an action counts as; the first three are what a dish's time is made of. */
enum counts {
    COUNTS_ACTIVE,
    COUNTS_COOK,
    COUNTS_REST,
    COUNTS_BESIDE /* heating an oven: runs while something else does */
};
#define COUNTS_SUMMED 3

/* A row of action-times.tsv. */
struct time_rule {
    struct text by, word; /* "action", "bake"; "each", "side" */
    enum counts counts;   /* of an action */
    size_t times;         /* of an "each": how often; 0 as often as there are batches */
};

struct kitchen {
    struct arena memory;     /* of all that follows, and of itself: it begins the one block */
    const struct pack *pack; /* borrowed */
    struct units units;
    struct foods foods;
    struct aisles aisles;
    struct allergens allergens;
    struct cautions cautions;
    struct titles titles;
    struct ladders ladders;
    LIST(struct scale_rule) scale_rules;
    LIST(struct time_rule) time_rules;
    LIST(struct household) households;
    LIST(struct oven_mark) marks; /* gas marks, by heat */
    struct text phrases[PHRASES];
};

/* NULL when a table is missing or wrong; every problem is in `p`. kitchen_free frees. The pack must
 * outlive it. */
struct kitchen *kitchen_new(const struct pack *pack, struct problems *p);
/* The same, of that image. NULL: no memory. */
struct kitchen *kitchen_open(const struct ready *image, const struct pack *pack);
/* The same of the pack that is built in, ready-made. NULL: no memory. */
struct kitchen *kitchen_builtin(const struct pack *pack);
void kitchen_free(struct kitchen *k);

/* A phrase of the language with its blanks filled in; `PHRASE_TEXT(k, a, range, low, high)`. In the
 * arena. */
struct text phrase(const struct kitchen *k, struct arena *a, enum phrase_key key,
                   const struct text *blanks, size_t count);
/* A list with one more, "milk, wheat"; what is empty leaves no trace. */
struct text phrase_listed(const struct kitchen *k, struct arena *a, struct text list,
                          struct text next);
/* All parts in one list, in that order; empty ones are left out. Each is copied as often as `count`
 * can be halved, so that a long list does not take the square of its length. Arena. */
struct text phrase_all_listed(const struct kitchen *k, struct arena *a, const struct text *parts,
                              size_t count);
/* Blanks filled in as in a phrase, in words that a table gives. */
struct text fill_blanks(struct arena *a, struct text words, const struct text *blanks,
                        size_t count);
#define PHRASE_TEXT(k, a, key, ...)                                    \
    phrase((k), (a), PHRASE_##key, (const struct text[]){__VA_ARGS__}, \
           sizeof(const struct text[]){__VA_ARGS__} / sizeof(struct text))
#define PHRASE_PLAIN(k, a, key) phrase((k), (a), PHRASE_##key, NULL, 0)

#endif
