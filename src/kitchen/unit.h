/* kitchen/unit.h: what amounts are counted in: exact sizes, and which cup a kitchen means by "cup".
 * Made from grammars/common/units.tsv, kitchens.tsv and the language's unit-words.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_UNIT_H
#define DISHTAKE_KITCHEN_UNIT_H

#include "base/ratio.h"
#include "kitchen/rows.h"

enum dimension {
#define DIMENSION(name, word) DIMENSION_##name,
#include "kitchen/dimensions.def"
#undef DIMENSION
    DIMENSIONS
};

struct unit {
    struct text name; /* canonical, singular: "fluid-ounce" */
    enum dimension dimension;
    struct ratio
        factor;  /* in mL, g, cm, seconds or pieces; none where it depends on the food ("clove") */
    bool metric; /* written with decimals, not with fractions */
    bool habit;  /* its size is kitchen habit, or nominal, and no law's: pinch, dash */
    struct text source; /* of the factor */
    struct text one, many,
        brief; /* as the language writes it: "fluid ounce", "fluid ounces", "fl oz" */
};

/* Which unit a bare word means in one country's kitchen. */
struct meaning {
    const struct unit *said, *meant;
};
struct profile {
    struct text name; /* "us", "uk", "au", "metric" */
    LIST(struct meaning) meanings;
};

struct units {
    LIST(struct unit) all;
    struct names names; /* canonical names */
    struct names words; /* every way to write one, in this language */
    LIST(struct profile) profiles;
};

bool units_load(struct units *u, struct arena *a, const struct pack *k, struct problems *p);

/* NULL when there is no such unit. An empty name is a plain count. */
const struct unit *unit_find(const struct units *u, struct text name);
/* The same by any word of the language: "cups", "tbsp". */
const struct unit *unit_read(const struct units *u, struct text word);
/* NULL when there is no such kitchen. */
const struct profile *profile_find(const struct units *u, struct text name);
/* The unit itself, or what this kitchen means by its name; profile NULL changes nothing. */
const struct unit *unit_meant(const struct unit *unit, const struct profile *profile);

#endif
