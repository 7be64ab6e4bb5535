/* split/rename.c
 * SPDX-License-Identifier: MIT */
#include "split/rename.h"

#include "split/title.h"

bool renames(const struct recording *r, const struct feature *f, const struct standing *dish,
             size_t i)
{
    return dish->named && !titles_alike(r, feature_name(&f[dish->named - 1]), feature_name(&f[i]));
}
