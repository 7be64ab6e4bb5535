/* pack/rule_compile.c: a rule's pattern as PCRE2's code.
 * SPDX-License-Identifier: MIT */
#include <pcre2.h>

#include "pack/pattern.h"

/* NULL: PCRE2 refuses it, or has no memory; then `*error` says which. */
static pcre2_code *compile(const char *regex, int *error)
{
    PCRE2_SIZE offset;
    return pcre2_compile((PCRE2_SPTR) regex, PCRE2_ZERO_TERMINATED, PCRE2_DOLLAR_ENDONLY, error,
                         &offset, NULL);
}

/* PCRE2's own refusals; what reaches it is well-formed, so that only size is left. */
static bool check(struct problems *p, struct place at, const char *regex)
{
    int error;
    PCRE2_UCHAR message[120];
    uint32_t empty = 0;
    pcre2_code *code = compile(regex, &error);
    if (!code) {
        pcre2_get_error_message(error, message, sizeof message / sizeof *message);
        return problem(p, at, "the pattern does not compile: %s", (const char *) message);
    }
    pcre2_pattern_info(code, PCRE2_INFO_MATCHEMPTY, &empty);
    pcre2_code_free(code);
    if (empty)
        return problem(p, at,
                       "the pattern can match no words at all; something in it must be there");
    return true;
}

bool pattern_read(struct loader *l, const struct source_line *line, struct text t,
                  struct rule *rule)
{
    char regex[PATTERN_BYTES];
    struct sieve codes = {.length = 0}, sieve;
    if (!pattern_translate(l->problems, line, t, rule, regex, &codes))
        return false;
    sieve_strip(&sieve, &codes);
    rule->pattern = arena_text(&l->arena, text_from(regex)).at;
    rule->codes = arena_text(&l->arena, sieve_text(&codes));
    rule->sieve = arena_text(&l->arena, sieve_text(&sieve));
    return check(l->problems, line_place(line, t.at), regex);
}

void *rule_compile(const struct rule *rule, bool jit)
{
    int error;
    pcre2_code *code = compile(rule->pattern, &error);
    if (code && jit) /* where there is no JIT, PCRE2 interprets */
        pcre2_jit_compile(code, PCRE2_JIT_COMPLETE);
    return code;
}
