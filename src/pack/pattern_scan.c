/* pack/pattern_scan.c: a pattern sign by sign, and what is written of it.
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <string.h>

#include "pack/pattern.h"

static bool pattern_wrong(struct pattern *x, const char *at, const char *message)
{
    x->broken = true;
    return problem(x->problems, line_place(x->line, at), "%s", message);
}

void pattern_stop(struct pattern *x, const char *at, const char *message)
{
    if (!x->stopped)
        pattern_wrong(x, at, message);
    x->stopped = true;
}

void pattern_put(struct pattern *x, const char *string)
{
    size_t n = strlen(string);
    if (n >= PATTERN_BYTES - x->length) {
        pattern_stop(x, x->at, "the pattern is too long; make it two rules");
        return;
    }
    memcpy(x->out + x->length, string, n + 1);
    x->length += n;
}

void pattern_put_unit(struct pattern *x, unsigned char unit)
{
    char escaped[8];
    snprintf(escaped, sizeof escaped, "\\x{%02x}", unit);
    pattern_put(x, escaped);
}

void pattern_skip(struct pattern *x)
{
    while (x->at < x->end && (*x->at == ' ' || *x->at == '\t'))
        x->at++;
}

char pattern_peek(struct pattern *x)
{
    pattern_skip(x);
    return x->at < x->end ? *x->at : '\0';
}

bool pattern_take(struct pattern *x, const char *string)
{
    size_t n = strlen(string);
    pattern_skip(x);
    if ((size_t) (x->end - x->at) < n || memcmp(x->at, string, n) != 0)
        return false;
    x->at += n;
    return true;
}

bool is_name_letter(char c)
{
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
}

struct text pattern_take_name(struct pattern *x)
{
    const char *begin = x->at;
    while (x->at < x->end && is_name_letter(*x->at))
        x->at++;
    return (struct text){begin, (size_t) (x->at - begin)};
}

bool pattern_class(struct pattern *x, struct text name, unsigned char *tag)
{
    if (tag_find(name, tag))
        return true;
    x->broken = true;
    return problem(x->problems, line_place(x->line, name.at),
                   "unknown class \"%.*s\"; tags.def lists them", QUOTE(name));
}
