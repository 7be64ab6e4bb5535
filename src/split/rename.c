/* split/rename.c
 * SPDX-License-Identifier: MIT */
#include "split/rename.h"

#include "base/arena.h"
#include "split/title.h"

static struct span name_in(const struct feature *f)
{
    return f->closing_title.first <= f->closing_title.last ? f->closing_title : f->opening_title;
}

bool says_name(const struct feature *f)
{
    struct span name = name_in(f);
    return name.first <= name.last;
}

const size_t *sentences_named(const struct recording *r, const struct feature *f, size_t count)
{
    size_t *named = arena_alloc(r->arena, (count + 1) * sizeof *named), last = 0;
    for (size_t i = 0; i < count; i++)
        named[i] = last = says_name(&f[i]) ? i + 1 : last;
    return named;
}

bool renames(const struct recording *r, const struct feature *f, const size_t *named,
             const struct segment *at, size_t i, size_t dish)
{
    struct span name = name_in(&f[i]);
    if (name.first > name.last || dish == NO_DISH)
        return false;
    size_t before = segment_named(at, dish, i, named);
    return before != SIZE_MAX && !titles_alike(r, name_in(&f[before]), name);
}
