/* write/shown.h: a dish as it was asked for: scaled, and its amounts and temperatures in the wanted
 * units.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_SHOWN_H
#define DISHTAKE_WRITE_SHOWN_H

#include "kitchen/scale.h"
#include "write/write.h"

struct shown_dish {
    struct dish dish;      /* a copy, scaled; what is not scaled is borrowed */
    struct ratio factor;   /* 1 where it was not scaled */
    scale_note_list notes; /* what does not grow with it */
};

/* False, with a problem that names the dish, when it cannot be scaled so. */
bool shown_make(struct shown_dish *shown, const struct writing *w, const struct dish *d,
                struct problems *p);

/* The line's amount, or that of `sum` (may be NULL); empty where none was heard. */
struct text shown_amount(const struct writing *w, const struct ingredient *in,
                         const struct shopping_line *sum);
/* "Oven 350 °F (175 °C)", "Inside 74 °C (165 °F)", with "fan" where it was said of one; each heat
 * once, in whatever scales it was said: "Oven 200 °C (400 °F), 180 °C (350 °F) fan, gas mark 6".
 * Empty where the step has none. */
struct text shown_temperatures(const struct writing *w, const struct step *s);

#endif
