/* write/shopping.h: one list over the dishes of several recordings.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_SHOPPING_H
#define DISHTAKE_WRITE_SHOPPING_H

#include "kitchen/add.h"
#include "write/write.h"

/* The dishes of a list. Copies, so that recordings may go. */
struct shopping_basket {
    LIST(struct shop_dish) dishes;
    LIST(struct text) titles;      /* of each dish */
    const struct profile *profile; /* of the first recording */
};

/* Adds the wanted dishes, scaled as asked, as recording number `number`; everything is copied into
 * w->scratch, which here is the basket's own arena. False, with a problem, when one cannot be
 * scaled so: then none of this recording's is added. */
bool basket_add(struct shopping_basket *b, const struct recording *r, const struct writing *w,
                size_t number, struct problems *p);
/* The list: by aisle, what most kitchens have last; each item with the dishes it is for. */
void basket_put(const struct shopping_basket *b, const struct writing *w, bool html,
                struct buffer *out);

#endif
