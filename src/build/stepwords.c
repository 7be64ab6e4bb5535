/* build/stepwords.c
 * SPDX-License-Identifier: MIT */
#include "build/stepwords.h"

struct text step_cell(const struct table *t, struct text kind, struct text key)
{
    return t ? table_cell(t, table_find_pair(t, kind, key), STEP_TEXT) : TEXT_EMPTY;
}
