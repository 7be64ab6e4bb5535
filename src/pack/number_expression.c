/* pack/number_expression.c: "hundreds*100+tens+ones" -> postfix steps.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "pack/load.h"

struct expression {
    struct problems *problems;
    const struct source_line *line;
    const struct rule *rule;
    struct text rest;
    struct number_step *steps;
    size_t count;
};

static bool put_step(struct expression *x, struct number_step step)
{
    if (x->count == NUMBER_STEPS)
        return problem(x->problems, line_place(x->line, x->rest.at),
                       "the expression is longer than %d slots, numbers and signs", NUMBER_STEPS);
    x->steps[x->count++] = step;
    return true;
}

static bool is_operator(char c)
{
    return c && strchr("+-*/", c);
}

static bool read_integer(struct expression *x, struct text t)
{
    int n = 0;
    for (size_t i = 0; i < t.length; i++) {
        if (t.at[i] < '0' || t.at[i] > '9' || n > 100000)
            return problem(x->problems, line_place(x->line, t.at),
                           "\"%.*s\" is no whole number up to a million", QUOTE(t));
        n = n * 10 + (t.at[i] - '0');
    }
    return put_step(x, (struct number_step){STEP_INTEGER, n});
}

static bool read_slot(struct expression *x, struct text t)
{
    enum slot slot;
    if (!slot_find(t, &slot))
        return problem(x->problems, line_place(x->line, t.at),
                       "unknown slot \"%.*s\"; slots.def lists them", QUOTE(t));
    size_t groups = 0;
    for (size_t i = 0; i < x->rule->slots_count; i++) {
        if (x->rule->slots[i] != slot)
            continue;
        /* A slot in several choices is the sum of them: those that took no part count as 0. */
        if (!put_step(x, (struct number_step){STEP_SLOT, (int) i})
            || (groups++ && !put_step(x, (struct number_step){STEP_ADD, 0})))
            return false;
    }
    if (groups)
        return true;
    return problem(x->problems, line_place(x->line, t.at), "`when` has no slot <%.*s:...>",
                   QUOTE(t));
}

static bool read_operand(struct expression *x)
{
    size_t n = 0;
    while (n < x->rest.length && !is_operator(x->rest.at[n]))
        n++;
    struct text t = text_slice(x->rest, 0, n);
    if (!n)
        return problem(x->problems, line_place(x->line, x->rest.at),
                       "a slot or a whole number is missing here");
    x->rest = text_slice(x->rest, n, x->rest.length);
    return t.at[0] >= '0' && t.at[0] <= '9' ? read_integer(x, t) : read_slot(x, t);
}

/* The sign at hand, when it is one of `signs`; then it is taken. */
static char take_sign(struct expression *x, const char *signs)
{
    char c = x->rest.length ? x->rest.at[0] : '\0';
    if (!c || !strchr(signs, c))
        return '\0';
    x->rest = text_slice(x->rest, 1, x->rest.length);
    return c;
}

/* Whether the operand just read is a written 0. */
static bool is_zero(const struct expression *x)
{
    const struct number_step *last = &x->steps[x->count - 1];
    return last->kind == STEP_INTEGER && last->value == 0;
}

static bool read_product(struct expression *x)
{
    if (!read_operand(x))
        return false;
    for (char sign; (sign = take_sign(x, "*/"));) {
        struct number_step step = {sign == '*' ? STEP_MULTIPLY : STEP_DIVIDE, 0};
        const char *at = x->rest.at;
        if (!read_operand(x))
            return false;
        if (sign == '/' && is_zero(x))
            return problem(x->problems, line_place(x->line, at), "division by 0");
        if (!put_step(x, step))
            return false;
    }
    return true;
}

static bool read_sum(struct expression *x)
{
    if (!read_product(x))
        return false;
    for (char sign; (sign = take_sign(x, "+-"));) {
        struct number_step step = {sign == '+' ? STEP_ADD : STEP_SUBTRACT, 0};
        if (!read_product(x) || !put_step(x, step))
            return false;
    }
    return true;
}

bool expression_read(struct problems *p, const struct source_line *line, struct text t,
                     const struct rule *rule, struct number_step steps[NUMBER_STEPS], size_t *count)
{
    struct expression x = {p, line, rule, t, steps, 0};
    if (!read_sum(&x))
        return false;
    *count = x.count;
    return true;
}
