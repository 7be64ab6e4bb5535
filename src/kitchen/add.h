/* kitchen/add.h: the same food's amounts added up, in a dish and across dishes and recordings.
 * The result does not depend on the order in which lines come: what is equal is added exactly, ids
 * are sorted.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_KITCHEN_ADD_H
#define DISHTAKE_KITCHEN_ADD_H

#include "kitchen/weight.h"

/* Fills dish->shopping from its ingredients, in the order in which foods first come; serve-with
 * lines are left out. */
void add_dish(const struct kitchen *k, struct arena *a, const struct profile *profile,
              struct dish *dish);

/* Where a part of a shopping item comes from. */
struct shop_part {
    size_t recording, dish, line; /* index, dish id, ingredient id */
};
struct shop_item {
    struct text key, food; /* food: as first said */
    struct text aisle;     /* in the language's words */
    size_t aisle_order;    /* of the aisle, as the table lists them */
    bool pantry;           /* a staple that most kitchens have: listed apart */
    LIST(struct packed_amount)
    amounts;                      /* one where all could be added; empty where none was said */
    bool plus_more;               /* some of it was not measured */
    LIST(struct shop_part) parts; /* by recording, dish, line */
};
struct shop_list {
    LIST(struct shop_item) items; /* by aisle, then by food; pantry last */
};

/* One dish of a list, with the number of its recording. */
struct shop_dish {
    const struct dish *dish;
    size_t recording;
};
/* Appends to `list`; its texts are copied, so the dishes' arenas may go. What a shop does not sell,
 * water, is left out. */
void add_dishes(const struct kitchen *k, struct arena *a, const struct profile *profile,
                const struct shop_dish *dishes, size_t count, struct shop_list *list);

#endif
