/* match/matcher.c: the rules of a pack over the tag strings of a recording, stage by stage.
 * SPDX-License-Identifier: MIT */
#include "match/matcher.h"

#include <pcre2.h>
#include <stdlib.h>
#include <string.h>

#include "match/capture.h"
#include "match/groups.h"
#include "match/mark.h"
#include "match/sieve.h"
#include "match/subject.h"

/* PCRE2's own limits. A rule over 60 units that needs more is a rule that runs away (speed.md
 * measured). */
#define MATCH_LIMIT 10000
#define DEPTH_LIMIT 200
#define HEAP_KIB 256
#define JIT_STACK_BYTES (128 * 1024)
/* Number words are put together by rules that build on one another: "two" "and" "a half" "to"
 * "three". */
#define PASSES_MOST 5
/* More matches than this in one sentence are no talk; the first ones are kept. */
#define FOUND_MOST 256

/* Runs of a rule that a recording may take, for each of its words: an ordinary one takes under a
 * hundred. */
#define RUNS_A_WORD 2000

/* Hardly ever more than one in so many, in ordinary talk. */
#define WORDS_A_MATCH 3

/* Machine code is made for recordings of more words; below, making it takes longer than it saves
 * (docs/gates.md). By the recording alone, so that what was read before it changes nothing. */
#define JIT_WORDS 6000

struct code {
    pcre2_code *code; /* NULL: the rule did not run yet */
    bool jit;         /* there is machine code, where PCRE2 has any for this machine */
};

struct matcher {
    /* For rules that their codes do not tell; NULL until there is one. */
    pcre2_match_data *data;
    pcre2_match_context *context;
    pcre2_jit_stack *stack;
    struct code *codes; /* by the number of their rule */
    size_t codes_count;
    bool jit;                                        /* for the recording at hand */
    struct groups groups;                            /* of the match at hand */
    struct match found[FOUND_MOST];                  /* of one pass over one sentence */
    struct slot_span slots[FOUND_MOST][MATCH_SLOTS]; /* theirs */
    size_t begins[FOUND_MOST], ends[FOUND_MOST];     /* their units in the subject, end left out */
    size_t count;
    struct subject subject;
};

struct matcher *matcher_new(const struct pack *k)
{
    struct matcher *m = calloc(1, sizeof *m);
    if (!m)
        return NULL;
    m->codes_count = k ? pack_rules_count(k) : 0;
    m->codes = calloc(m->codes_count + 1, sizeof *m->codes);
    if (!m->codes) {
        matcher_free(m);
        return NULL;
    }
    return m;
}

void matcher_free(struct matcher *m)
{
    if (!m)
        return;
    for (size_t i = 0; m->codes && i < m->codes_count; i++)
        pcre2_code_free(m->codes[i].code);
    free(m->codes);
    pcre2_match_data_free(m->data);
    pcre2_match_context_free(m->context);
    pcre2_jit_stack_free(m->stack);
    free(m);
}

/* Jumps when there is no memory. */
static void make_ready(struct recording *r, struct matcher *m)
{
    if (m->data)
        return;
    pcre2_match_context_free(m->context);
    m->context = pcre2_match_context_create(NULL);
    if (m->context)
        m->data = pcre2_match_data_create(MATCH_SLOTS + 1, NULL);
    if (!m->data)
        longjmp(r->arena->full, 1);
    pcre2_set_match_limit(m->context, MATCH_LIMIT);
    pcre2_set_depth_limit(m->context, DEPTH_LIMIT);
    pcre2_set_heap_limit(m->context, HEAP_KIB);
}

static void make_machine_code(struct matcher *m, struct code *c)
{
    if (!m->stack)
        m->stack = pcre2_jit_stack_create(32 * 1024, JIT_STACK_BYTES, NULL);
    if (m->stack)
        pcre2_jit_stack_assign(m->context, NULL, m->stack);
    pcre2_jit_compile(c->code, PCRE2_JIT_COMPLETE);
    c->jit = true;
}

static pcre2_code *code_of(struct recording *r, struct matcher *m, const struct rule *rule)
{
    struct code *c = &m->codes[rule->number];
    make_ready(r, m);
    if (!c->code)
        c->code = rule_compile(rule, false);
    if (!c->code)
        longjmp(r->arena->full, 1);
    if (m->jit && !c->jit)
        make_machine_code(m, c);
    return c->code;
}

/* By PCRE2. A limit that was hit is counted and the sentence is given up for this rule. */
static bool run_code(struct recording *r, struct matcher *m, const struct rule *rule, size_t from)
{
    const pcre2_code *code = code_of(r, m, rule);
    int got = pcre2_match(code, m->subject.tags, m->subject.length, from,
                          PCRE2_NO_UTF_CHECK | (m->jit ? 0 : PCRE2_NO_JIT), m->data, m->context);
    if (got >= 0)
        memcpy(m->groups.at, pcre2_get_ovector_pointer(m->data), sizeof m->groups.at);
    if (got >= 0 || got == PCRE2_ERROR_NOMATCH)
        return got >= 0;
    if (!r->limits_hit++)
        r->limit_rule = rule->name;
    return false;
}

/* One match of `rule` at or after unit `from`; its groups are in m->groups. */
static bool run(struct recording *r, struct matcher *m, const struct rule *rule, size_t from)
{
    if (r->steps_left == 0)
        return false;
    r->steps_left--;
    enum groups_found found = groups_find(rule, &m->subject, from, &m->groups);
    return found == GROUPS_UNSURE ? run_code(r, m, rule, from) : found == GROUPS_FOUND;
}

static void keep_match(struct recording *r, struct matcher *m, const struct rule *rule,
                       size_t begin, size_t end)
{
    if (m->count == FOUND_MOST)
        return;
    struct match *match = &m->found[m->count];
    match->slots = m->slots[m->count];
    if (!capture(r, &m->subject, rule, m->groups.at, match))
        return;
    m->begins[m->count] = begin;
    m->ends[m->count] = end;
    m->count++;
}

/* All matches of `rule`, one for each unit at which one begins. */
static void find_all(struct recording *r, struct matcher *m, const struct rule *rule)
{
    if (!unit_set_holds(&m->subject.present, &rule->needed))
        return;
    for (size_t from = 0; from < m->subject.length && sieve_passes(rule, &m->subject, from)
                          && run(r, m, rule, from);) {
        size_t begin = m->groups.at[0], end = m->groups.at[1];
        if (end > begin)
            keep_match(r, m, rule, begin, end);
        from = subject_entry_end(&m->subject, begin > from ? begin : from);
    }
}

static void find_stage(struct recording *r, const struct pack *k, struct matcher *m,
                       enum rule_stage stage)
{
    size_t count;
    const struct rule *rules = pack_rules(k, stage, &count);
    m->count = 0;
    subject_count(&m->subject);
    for (size_t i = 0; i < count; i++)
        find_all(r, m, &rules[i]);
}

/* Leftmost first, then longest, then the rule that stands earlier in the pack (found earlier). */
static bool is_before(const struct matcher *m, size_t a, size_t b)
{
    if (m->begins[a] != m->begins[b])
        return m->begins[a] < m->begins[b];
    if (m->ends[a] != m->ends[b])
        return m->ends[a] > m->ends[b];
    return a < b;
}

/* The best match that begins at unit `from` or later; m->count when there is none. */
static size_t best_from(const struct matcher *m, size_t from)
{
    size_t best = m->count;
    for (size_t i = 0; i < m->count; i++)
        if (m->begins[i] >= from && (best == m->count || is_before(m, i, best)))
            best = i;
    return best;
}

static void add_match(struct recording *r, const struct match *match)
{
    struct match *kept = LIST_ADD(r->arena, &r->matches);
    *kept = *match;
    kept->slots =
        arena_own(r->arena, match->slots, match->rule->slots_count * sizeof *match->slots);
}

/* Takes the matches that do not overlap and turns each into one class. False when nothing changed.
 */
static bool join_matches(struct recording *r, struct matcher *m)
{
    bool changed = false;
    for (size_t i = best_from(m, 0); i < m->count; i = best_from(m, m->ends[i])) {
        const struct match *match = &m->found[i];
        size_t last = m->ends[i] - 1;
        bool same = m->ends[i] - m->begins[i] == 1 && m->subject.tags[last] == match->rule->tag;
        add_match(r, match);
        if (!match->rule->tag || same)
            continue;
        subject_join(&m->subject, m->begins[i], m->ends[i], match->rule->tag);
        m->subject.low[last] = match->low;
        m->subject.high[last] = match->high;
        changed = true;
    }
    return changed;
}

/* Another reading for an ambiguous word; rule after rule, each sees what the one before changed. */
static void repair(struct recording *r, const struct pack *k, struct matcher *m)
{
    size_t count;
    const struct rule *rules = pack_rules(k, STAGE_REPAIR, &count);
    for (size_t i = 0; i < count; i++) {
        m->count = 0;
        find_all(r, m, &rules[i]);
        for (size_t n = 0; n < m->count; n++)
            retag(r, &m->subject, &m->found[n]);
        if (m->count)
            subject_count(&m->subject);
    }
}

static void match_sentence(struct recording *r, const struct pack *k, struct matcher *m,
                           struct sentence *s)
{
    s->match_first = r->matches.count;
    subject_make(&m->subject, r, s);
    repair(r, k, m);
    for (size_t pass = 0; pass < PASSES_MOST; pass++) {
        find_stage(r, k, m, STAGE_NUMBER);
        if (!join_matches(r, m))
            break;
    }
    find_stage(r, k, m, STAGE_AMOUNT);
    join_matches(r, m);
    find_stage(r, k, m, STAGE_LINE);
    join_matches(r, m);
    find_stage(r, k, m, STAGE_PHRASE);
    for (size_t i = 0; i < m->count; i++)
        add_match(r, &m->found[i]);
    s->match_count = r->matches.count - s->match_first;
    mark_scopes(r, s);
}

bool match_rules(struct recording *r, const struct pack *k, struct matcher *m, struct problems *p)
{
    r->steps_left = (r->words.count + 1) * RUNS_A_WORD;
    m->jit = r->words.count > JIT_WORDS;
    LIST_RESERVE(r->arena, &r->matches, r->words.count / WORDS_A_MATCH + 1);
    for (size_t i = 0; i < r->sentences.count; i++)
        match_sentence(r, k, m, &r->sentences.at[i]);
    if (r->limits_hit)
        problem_note(p, (struct place){r->file, 0, 0},
                     "the grammar rule \"%s\" was given up at its limit (%zu times in all); the "
                     "other rules ran",
                     r->limit_rule, r->limits_hit);
    if (r->steps_left == 0)
        problem_note(p, (struct place){r->file, 0, 0},
                     "the recording's budget of rule runs was used up; its last part was not read");
    return true;
}
