/* cli/dishes.c: how many dishes there are, as told by who cooked them.
 * SPDX-License-Identifier: MIT */
#include "cli/cli.h"
#include "dishtake.h"

bool cli_dishes(struct cli *c)
{
    if (!cli_whole(c, OPTION_DISHES, 1, &c->dishes))
        return false;
    if (c->dishes > DISHTAKE_DISHES_MOST) {
        cli_usage("--dishes %zu: at most %d are told apart", c->dishes, DISHTAKE_DISHES_MOST);
        return false;
    }
    if (c->dishes && c->values[OPTION_ONE_DISH]) {
        cli_usage(
            "--dishes and --as-one-dish say both how many dishes there are; give one of them");
        return false;
    }
    return true;
}
