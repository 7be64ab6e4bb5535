/* build/untitled.h: titles for dishes that nobody names.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_UNTITLED_H
#define DISHTAKE_BUILD_UNTITLED_H

#include "kitchen/kitchen.h"
#include "model/recording.h"

/* What the dish would be called if nobody had named it, after build_recipes; empty where no row
 * makes a title. Arena. */
struct text made_title(const struct recording *r, const struct kitchen *k,
                       const struct profile *profile, const struct dish *d);
/* What it would be called where somebody called it so: "leek soup" for "soup". Arena. */
struct text said_title(struct recording *r, const struct kitchen *k, const struct profile *profile,
                       const struct dish *d, struct text said);
/* After build_recipes, since it is by what goes into a dish. A title that was said stays. */
bool title_recipes(struct recording *r, const struct kitchen *k, const struct profile *profile);

#endif
