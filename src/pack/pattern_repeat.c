/* pack/pattern_repeat.c: how often what stands before it may come: ? * + {2,4}.
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <string.h>

#include "pack/pattern.h"

/* The number at hand; -1 when there is none. */
static int take_count(struct pattern *x)
{
    int n = -1;
    pattern_skip(x);
    while (x->at < x->end && *x->at >= '0' && *x->at <= '9') {
        n = (n < 0 ? 0 : n) * 10 + (*x->at++ - '0');
        if (n > REPEAT_MOST)
            n = REPEAT_MOST + 1;
    }
    return n;
}

/* `{m}`, `{m,}` or `{m,n}`, the brace already taken. */
static void read_braces(struct pattern *x, const char *at, int *least, int *most)
{
    char text[32];
    *least = *most = take_count(x);
    if (pattern_take(x, ",")) {
        *most = take_count(x);
        *most = *most < 0 ? REPEAT_MOST : *most;
    }
    if (*least < 0 || !pattern_take(x, "}"))
        pattern_stop(x, at, "a repeat is written {2}, {2,} or {2,4}");
    else if (*least > *most || *most > REPEAT_MOST || *most == 0)
        pattern_stop(x, at, "a repeat goes from fewer to more, and to 64 at most");
    snprintf(text, sizeof text, "{%d,%d}", *least, *most);
    pattern_put(x, text);
}

bool pattern_repeat(struct pattern *x, enum atom atom, size_t begin)
{
    char c = pattern_peek(x);
    const char *at = x->at;
    int least = 0, most = REPEAT_MOST;
    if (!c || !strchr("?*+{", c))
        return true;
    if (atom == ATOM_PLACE) {
        pattern_stop(x, at, "a repeat must follow a class or a group");
        return true;
    }
    x->at++;
    if (c == '{') {
        read_braces(x, at, &least, &most);
    } else {
        pattern_put(x, (char[]){c, '\0'});
        least = c == '+';
        most = c == '?' ? 1 : REPEAT_MOST;
    }
    if (atom == ATOM_SLOT && most > 1)
        pattern_stop(x, at,
                     "a slot holds one stretch of words; put the repeat inside it: <food:FOOD+>");
    const bool few = pattern_take(x, "?"); /* as few as it can */
    if (few)
        pattern_put(x, "?");
    if (!x->stopped)
        sieve_wrap_repeat(x->sieve, begin, few ? SIEVE_REPEAT_FEW : SIEVE_REPEAT, (unsigned) least,
                          (unsigned) most);
    return least > 0;
}
