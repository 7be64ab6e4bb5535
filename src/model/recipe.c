/* model/recipe.c
 * SPDX-License-Identifier: MIT */
#include "model/recipe.h"

/* As files write them; in the order of the roles. */
static const char *const ROLES[] = {"ingredient", "garnish", "serve-with"};

const char *role_name(enum role role)
{
    return ROLES[role];
}

bool role_read(struct text name, enum role *role)
{
    for (int i = ROLE_INGREDIENT; i <= ROLE_SERVE_WITH; i++)
        if (text_is(name, ROLES[i])) {
            *role = (enum role) i;
            return true;
        }
    return false;
}
