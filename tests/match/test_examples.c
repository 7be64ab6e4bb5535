/* match/test_examples.c: every rule's own examples, `ex "words" -> expectation`, as docs/grammar.md
 * reads them. The words go through reading, numbering, tagging and matching as a caption of their
 * own.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "match/matcher.h"
#include "read/read.h"
#include "tag/tag.h"
#include "words/words.h"

#define ARENA_BYTES ((size_t) 64 << 20)
#define CAPTION_BYTES 1000
/* Examples that are known not to hold; to be lowered, never raised. */
#define FAILED_MOST 20

struct run {
    struct pack *pack;
    struct matcher *matcher;
    struct arena arena;
    struct recording r;
    size_t examples, failed;
};

static void read_words(struct run *run, struct text words)
{
    static char caption[CAPTION_BYTES];
    struct problems p = {0};
    int length =
        snprintf(caption, sizeof caption, "1\n00:00:01,000 --> 00:00:09,000\n%.*s\n", TEXT(words));
    arena_reset(&run->arena);
    run->r = (struct recording){.arena = &run->arena, .file = "example"};
    assert_true(length > 0 && (size_t) length < sizeof caption);
    assert_true(arena_open(&run->arena));
    assert_true(read_cues(&run->r, (struct text){caption, (size_t) length}, &p));
    assert_true(number_words(&run->r, run->pack, &p));
    assert_true(tag_words(&run->r, run->pack, &p));
    assert_true(match_rules(&run->r, run->pack, run->matcher, &p));
    problems_release(&p);
}

/* Whether the span's words are the wanted ones, in which '-' stands for a space. */
static bool span_is(const struct recording *r, struct span words, struct text wanted)
{
    size_t at = 0;
    if (words.first > words.last)
        return false;
    for (size_t i = words.first; i <= words.last; i++) {
        struct text key = r->words.at[i].key;
        if (at > wanted.length || !text_equal(text_slice(wanted, at, at + key.length), key))
            return false;
        at += key.length + 1;
        if (i < words.last && (at > wanted.length || wanted.at[at - 1] != '-'))
            return false;
    }
    return at == wanted.length + 1;
}

/* "slot=words" */
static bool slot_holds(const struct recording *r, const struct match *m, struct text pair)
{
    static const char *const NAMES[] = {
#define SLOT(name) #name,
#include "pack/slots.def"
#undef SLOT
    };
    size_t equals = text_find(pair, '=', 0);
    for (size_t i = 0; i < m->rule->slots_count; i++) {
        struct span slot = {m->slots[i].first, m->slots[i].last};
        if (text_is(text_slice(pair, 0, equals), NAMES[m->rule->slots[i]])
            && span_is(r, slot, text_slice(pair, equals + 1, pair.length)))
            return true;
    }
    return false;
}

/* "2", "1/2", "10..12" */
static bool number_holds(const struct match *m, struct text wanted)
{
    size_t dots = text_find(wanted, '.', 0);
    while (dots + 1 < wanted.length && wanted.at[dots + 1] != '.')
        dots = text_find(wanted, '.', dots + 1);
    struct text low = text_slice(wanted, 0, dots);
    struct text high = dots < wanted.length ? text_slice(wanted, dots + 2, wanted.length) : low;
    return ratio_equal(m->low, ratio_read(low.at, low.length))
           && ratio_equal(m->high, ratio_read(high.at, high.length));
}

static bool match_holds(const struct recording *r, const struct match *m, struct text wanted)
{
    struct text part;
    if (text_is(wanted, "match"))
        return true;
    while (text_part(&wanted, ' ', &part))
        if (part.length
            && !(text_find(part, '=', 0) < part.length ? slot_holds(r, m, part)
                                                       : number_holds(m, part)))
            return false;
    return true;
}

/* A repair leaves no match: its word has the other reading. */
static bool repair_holds(const struct recording *r, const struct rule *rule, struct text wanted)
{
    struct text word = text_slice(wanted, sizeof "word=" - 1, wanted.length);
    for (size_t i = 0; i < r->words.count; i++)
        if (r->words.at[i].tag == rule->retag
            && span_is(r, (struct span){r->words.at[i].entry_first, i}, word))
            return true;
    return false;
}

static bool example_holds(const struct recording *r, const struct rule *rule, struct text wanted)
{
    bool nothing = text_is(wanted, "nothing");
    if (rule->stage == STAGE_REPAIR)
        return nothing || repair_holds(r, rule, wanted);
    for (size_t i = 0; i < r->matches.count; i++)
        if (r->matches.at[i].rule == rule && (nothing || match_holds(r, &r->matches.at[i], wanted)))
            return !nothing;
    return nothing;
}

static void run_rule(struct run *run, const struct rule *rule)
{
    for (size_t i = 0; i < rule->ex_count; i++) {
        struct text words = ref_text(&rule->ex[i].words),
                    wanted = text_trim(ref_text(&rule->ex[i].expected));
        read_words(run, words);
        run->examples++;
        if (example_holds(&run->r, rule, wanted))
            continue;
        run->failed++;
        print_error("%s:%u: %s: \"%.*s\" does not give %.*s\n", rule->file, rule->line, rule->name,
                    TEXT(words), TEXT(wanted));
    }
}

static void every_example_holds(void **state)
{
    struct run run = {.pack = pack_builtin()};
    (void) state;
    assert_non_null(run.pack);
    run.matcher = matcher_new(run.pack);
    assert_non_null(run.matcher);
    arena_init(&run.arena, ARENA_BYTES);
    for (int stage = 0; stage < STAGE_COUNT; stage++) {
        size_t count;
        const struct rule *rules = pack_rules(run.pack, (enum rule_stage) stage, &count);
        for (size_t i = 0; i < count; i++)
            run_rule(&run, &rules[i]);
    }
    arena_release(&run.arena);
    matcher_free(run.matcher);
    pack_free(run.pack);
    printf("figure: %zu of %zu examples of grammar rules hold\n", run.examples - run.failed,
           run.examples);
    assert_true(run.examples > 100);
    assert_true(run.failed <= FAILED_MOST);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(every_example_holds)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
