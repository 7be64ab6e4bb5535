/* tests/kitchen/open.h: the kitchen that is built into the program.
 * SPDX-License-Identifier: MIT */
#ifndef TESTS_KITCHEN_OPEN_H
#define TESTS_KITCHEN_OPEN_H

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "kitchen/kitchen.h"
#include "kitchen/print.h"

struct open_kitchen {
    struct pack *pack;
    struct kitchen *kitchen;
    struct problems problems;
    struct arena arena;
};

static inline void open_show(const struct problems *p)
{
    for (size_t i = 0; i < p->count; i++)
        print_error("%s:%u: %s\n", p->at[i].at.file ? p->at[i].at.file : "", p->at[i].at.line,
                    p->at[i].message);
}

static inline int open_setup(void **state)
{
    struct open_kitchen *o = calloc(1, sizeof *o);
    o->pack = pack_builtin();
    o->kitchen = o->pack ? kitchen_builtin(o->pack) : NULL;
    open_show(&o->problems);
    arena_init(&o->arena, (size_t) 256 << 20);
    *state = o;
    return o->kitchen && o->problems.errors == 0 ? 0 : -1;
}

static inline int open_teardown(void **state)
{
    struct open_kitchen *o = *state;
    arena_release(&o->arena);
    kitchen_free(o->kitchen);
    pack_free(o->pack);
    problems_release(&o->problems);
    free(o);
    return 0;
}

static inline int open_reset(void **state)
{
    struct open_kitchen *o = *state;
    arena_reset(&o->arena);
    return 0;
}

/* The text with a NUL after it, for assert_string_equal. */
static inline const char *open_string(struct open_kitchen *o, struct text t)
{
    return arena_text(&o->arena, t).at;
}

static inline struct ratio open_ratio(const char *number)
{
    return ratio_read(number, strlen(number));
}

static inline struct amount open_amount(const char *min, const char *max, const char *unit)
{
    return (struct amount){
        .known = true, .min = open_ratio(min), .max = open_ratio(max), .unit = text_from(unit)};
}

#endif
