/* model/finding.c
 * SPDX-License-Identifier: MIT */
#include "model/finding.h"

/* As files and commands write them; in the order of the levels. */
static const char *const NAMES[] = {"note", "ask", "fix", "stop"};

const char *level_name(enum finding_level level)
{
    return NAMES[level];
}

bool level_read(struct text name, enum finding_level *level)
{
    for (int i = LEVEL_NOTE; i <= LEVEL_STOP; i++)
        if (text_is(name, NAMES[i])) {
            *level = (enum finding_level) i;
            return true;
        }
    return false;
}
