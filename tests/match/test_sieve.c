/* match/test_sieve.c: a rule's codes against PCRE2, over sentences of random classes: its sieve
 * lets a sentence pass exactly where PCRE2 finds a match, from every unit on, and its slots hold
 * the same units.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>

#include <cmocka.h>
#include <pcre2.h>

#include "match/groups.h"
#include "match/sieve.h"

#define SENTENCES 400 /* of each rule */
#define UNITS_MOST SENTENCE_WORDS

/* Patterns of a kind that the pack has none of. */
static const char *const ODD[] = {
    "FOOD (AND|OR FOOD){2,3} $",
    "^ (?! FOOD|AND) ANY{2,} (?= FOOD (AND FOOD)* $)",
    "(?<! FOOD|ANY) FOOD",
    "(?<= ANY) FOOD (?! ANY)",
    "(FOOD+ AND?)+ (?= (?! OR) ANY AND|OR $)",
    "(FOOD|AND FOOD|(OR|AND)? FOOD AND)+ OR",
    "<food:FOOD|AND> (?<! AND) (?! (FOOD AND){0,2} OR)",
    "(<food:FOOD+> (<word:AND> FOOD?)?)+ OR?",
    "<food:(FOOD|AND)+?> <word:ANY*> (OR|FOOD){2,3}?",
    "(AND? <food:FOOD>? (OR*)+)* FOOD AND",
    "FOOD (?= AND <food:FOOD>)",
};
#define ODD_COUNT (sizeof ODD / sizeof *ODD)

static uint32_t seed = 1;
static size_t unsure, told; /* matches that the codes leave to PCRE2, and others */

static uint32_t random_below(uint32_t n)
{
    seed = seed * 1664525u + 1013904223u; /* Numerical Recipes' */
    return (seed >> 8) % n;
}

/* Mostly classes of the rule's own pattern, so that many sentences nearly match. */
static void random_sentence(struct subject *s, const struct rule *rule)
{
    static const unsigned char OTHERS[] = {TAG_FOOD, TAG_OTHER, TAG_AND, TAG_NUMBER, TAG_OR};
    size_t codes = rule->sieve.length;
    s->length = 1 + random_below(random_below(4) ? 8 : UNITS_MOST);
    for (size_t i = 0; i < s->length; i++) {
        unsigned char unit = (unsigned char) rule->sieve.at[random_below((uint32_t) codes)];
        uint32_t kind = random_below(8);
        s->tags[i] = kind == 0   ? TAG_INSIDE
                     : kind == 1 ? OTHERS[random_below(sizeof OTHERS)]
                     : unit < 32 ? (unsigned char) TAG_FOOD
                                 : unit;
    }
    subject_count(s);
}

/* What PCRE2 found must be found by the codes, unless they say that they cannot tell. */
static void check_groups(const struct rule *rule, const struct subject *s, size_t from,
                         pcre2_match_data *data)
{
    struct groups g;
    const PCRE2_SIZE *groups = pcre2_get_ovector_pointer(data);
    enum groups_found found = groups_find(rule, s, from, &g);
    unsure += found == GROUPS_UNSURE;
    told += found == GROUPS_FOUND;
    assert_int_not_equal(found, GROUPS_NONE);
    for (size_t n = 0; found == GROUPS_FOUND && n < 2 * (rule->slots_count + 1); n++)
        if (g.at[n] != groups[n])
            fail_msg("%s, from %zu of \"%.*s\": %zu is %zu, and PCRE2 says %zu", rule->name, from,
                     (int) s->length, (const char *) s->tags, n, g.at[n], groups[n]);
}

static size_t check_rule(const struct rule *rule, struct subject *s)
{
    size_t matched = 0;
    pcre2_code *code = rule_compile(rule, false);
    pcre2_match_data *data = pcre2_match_data_create(MATCH_SLOTS + 1, NULL);
    assert_non_null(code);
    assert_non_null(data);
    assert_true(rule->sieve.length > 0);
    for (size_t n = 0; n < SENTENCES; n++) {
        random_sentence(s, rule);
        for (size_t from = 0; from < s->length; from++) {
            int result = pcre2_match(code, s->tags, s->length, from, PCRE2_NO_JIT, data, NULL);
            bool found = result >= 0;
            if (result == PCRE2_ERROR_MATCHLIMIT)
                continue; /* it gave up, and tells nothing */
            if (found != sieve_passes(rule, s, from))
                fail_msg("%s, from %zu of \"%.*s\": PCRE2 says %d", rule->name, from,
                         (int) s->length, (const char *) s->tags, found);
            if (found)
                check_groups(rule, s, from, data);
            matched += found;
        }
    }
    pcre2_match_data_free(data);
    pcre2_code_free(code);
    return matched;
}

static size_t check_pack(const struct pack *k, size_t *rules)
{
    static struct subject s;
    size_t matched = 0;
    for (enum rule_stage stage = 0; stage < STAGE_COUNT; stage++) {
        size_t count;
        const struct rule *all = pack_rules(k, stage, &count);
        for (size_t i = 0; i < count; i++)
            matched += check_rule(&all[i], &s) > 0;
        *rules += count;
    }
    return matched;
}

static void pack_rules_pass(void **state)
{
    (void) state;
    struct pack *k = pack_builtin();
    size_t rules = 0;
    assert_non_null(k);
    size_t matched = check_pack(k, &rules);
    printf("figure: %zu rules over %d random sentences each; %zu of them matched some\n", rules,
           SENTENCES, matched);
    printf("figure: %zu matches told by their codes, %zu left to PCRE2\n", told, unsure);
    assert_true(matched > rules / 4);
    assert_true(unsure < told / 1000);
    pack_free(k);
}

static void odd_rules_pass(void **state)
{
    (void) state;
    char rules[4096];
    size_t length = 0, count = 0;
    length += (size_t) snprintf(rules, sizeof rules, "stage phrase\n");
    for (size_t i = 0; i < ODD_COUNT; i++)
        length +=
            (size_t) snprintf(rules + length, sizeof rules - length,
                              "rule odd-%zu\n  when %s\n  give quiet\n"
                              "  ex \"a\" -> match\n  ex \"b\" -> match\n  ex \"c\" -> match\n",
                              i, ODD[i]);
    const struct pack_file files[] = {{"en/pack.list", TEXT_OF("odd.rules\n")},
                                      {"en/odd.rules", {rules, length}}};
    struct problems p = {0};
    struct pack *k = pack_load(files, 2, &p);
    for (size_t i = 0; i < p.count; i++)
        printf("%s\n", p.at[i].message);
    assert_int_equal(p.errors, 0);
    assert_non_null(k);
    assert_int_equal(check_pack(k, &count), ODD_COUNT);
    pack_free(k);
    problems_release(&p);
}

/* The limit on a walk: repeats in repeats pass without an answer. */
static void long_walks_pass(void **state)
{
    (void) state;
    static struct subject s;
    static const unsigned char CODES[] = {11, 1, 64,         12, 0, /* REPEAT 1..64 of 12 bytes */
                                          11, 1, 64,         7,  0, /* REPEAT 1..64 of 7 */
                                          11, 1, 2,          2,  0,
                                          1,  1,               /* REPEAT 1..2 of ANY ANY */
                                          0,  1, TAG_HUNDRED}; /* never there */
    const struct rule rule = {.sieve = {(const char *) CODES, sizeof CODES}};
    s.length = UNITS_MOST;
    for (size_t i = 0; i < s.length; i++)
        s.tags[i] = TAG_FOOD;
    subject_count(&s);
    assert_false(sieve_passes(&rule, &s, 0)); /* new places run out long before the limit */
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(pack_rules_pass),
                                       cmocka_unit_test(odd_rules_pass),
                                       cmocka_unit_test(long_walks_pass)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
