/* tests/split/test_evidence.c: what is found at a border is all written anew, whatever was there
 * before: a kind that is left out makes borders change from reading to reading.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

#include "base/arena.h"
#include "match/matcher.h"
#include "pack/pack.h"
#include "read/read.h"
#include "split/evidence.h"
#include "split/feature.h"
#include "tag/tag.h"
#include "words/words.h"

#define ARENA_BYTES ((size_t) 64 << 20)

/* Invented. Sentences with new foods, with foods that were named, with none, and with no food at
 * all behind them. */
static const char TRANSCRIPT[] =
    "[0:00] Hello everybody, welcome back.\n"
    "[0:05] It rained all night. The boats are in. My neighbour waved. Off she went.\n"
    "[0:12] Chop one large onion and add it to the pot. Add two cups of tomatoes.\n"
    "[0:20] Stir the onion. Simmer for twenty minutes. Blend it until smooth.\n"
    "[0:40] Next up we're making a rice salad. Boil one cup of rice for twelve minutes.\n"
    "[0:50] And that's our rice salad. See you. Look after yourselves. Bye now.\n";

static const char *const NAMES[EVIDENCES] = {
#define EVIDENCE(name, new, back, what) #name,
#include "split/border.def"
#undef EVIDENCE
};

static void all_of_it_is_found_anew(void **state)
{
    static const double BEFORE = 1234.5; /* as nothing is */
    struct problems p = {0};
    struct pack *k = pack_builtin();
    struct matcher *m = matcher_new(k);
    struct arena arena;
    (void) state;
    arena_init(&arena, ARENA_BYTES);
    assert_true(arena_open(&arena));
    struct recording r = {.arena = &arena, .file = "talk.txt"};
    struct text bytes = {TRANSCRIPT, strlen(TRANSCRIPT)};
    assert_true(read_cues(&r, bytes, &p) && number_words(&r, k, &p) && tag_words(&r, k, &p)
                && match_rules(&r, k, m, &p));
    const struct feature *f = features_make(&r, k);
    const struct talk t = talk_make(&r, f, r.sentences.count);
    assert_true(t.count > 10);
    for (size_t i = 0; i < t.count; i++) {
        double x[EVIDENCES];
        for (size_t n = 0; n < EVIDENCES; n++)
            x[n] = BEFORE;
        find_evidence(&t, i, x);
        for (size_t n = 0; n < EVIDENCES; n++)
            if (!(x[n] < BEFORE))
                fail_msg("%s is not found for sentence %zu", NAMES[n], i);
    }
    arena_release(&arena);
    matcher_free(m);
    pack_free(k);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(all_of_it_is_found_anew)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
