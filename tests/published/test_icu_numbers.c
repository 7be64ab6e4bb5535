/* published/test_icu_numbers.c: spelled-out numbers and common fractions, against ICU.
 * Outside source: ICU's rule-based number format with the spell-out rules of Unicode CLDR for
 * English (Debian's libicu-dev): "one thousand two hundred thirty-four", and with "and". Each
 * number of 0 to 9,999 stands in a sentence of its own, and the amount found there must be this
 * number, and the only one. Fractions are put together of ICU's cardinals and ordinals: "three" and
 * "eighth" with an "s". "Half" and "quarter", which English has beside its ordinals, and the ways
 * of joining are from memory.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>
#include <unicode/unum.h>
#include <unicode/ustring.h>

#include "base/buffer.h"
#include "build/quantity.h"
#include "published/icu.h"

#define NUMBERS 10000
#define WHOLE_MOST 20
#define SPELLED_BYTES 200
#define LINE_BYTES (4 * SPELLED_BYTES)
#define SHOWN_MOST 20

/* What has been said so far, a caption a number, and what each must be read as. */
struct talk {
    struct buffer captions; /* tab-separated */
    struct ratio value[NUMBERS];
    size_t count;
};

static struct reader reader;

static UNumberFormat *speller(const char *rules)
{
    UErrorCode error = U_ZERO_ERROR;
    UChar wide[SPELLED_BYTES];
    UNumberFormat *f = unum_open(UNUM_SPELLOUT, NULL, 0, "en", NULL, &error);
    u_uastrcpy(wide, rules);
    unum_setTextAttribute(f, UNUM_DEFAULT_RULESET, wide, -1, &error);
    assert_true(U_SUCCESS(error));
    return f;
}

static const char *spell(UNumberFormat *f, double n, char out[SPELLED_BYTES])
{
    UErrorCode error = U_ZERO_ERROR;
    UChar wide[SPELLED_BYTES];
    int32_t length = unum_formatDouble(f, n, wide, SPELLED_BYTES, NULL, &error);
    assert_true(U_SUCCESS(error) && length > 0 && length < SPELLED_BYTES);
    u_UCharsToChars(wide, out, length + 1);
    return out;
}

static void say(struct talk *t, struct ratio value, const char *number, const char *of)
{
    size_t at = 3 * t->count;
    t->value[t->count++] = value;
    buffer_format(&t->captions, "%zu\t%zu\tAdd %s %s of flour.\n", at, at + 2, number, of);
}

/* The sentence's amounts: how many there are, and the last of them. */
static size_t amounts_in(const struct sentence *s, struct amount *last)
{
    size_t count = 0;
    for (size_t i = s->match_first; i < s->match_first + s->match_count; i++) {
        const struct match *m = &reader.r.matches.at[i];
        struct said_amount said = {0};
        if (m->rule->kind != RULE_amount)
            continue;
        read_amount(&reader.r, s, m, &said);
        *last = said.amount;
        count++;
    }
    return count;
}

static bool read_right(const struct sentence *s, struct ratio value, struct text unit)
{
    struct amount a = {0};
    return amounts_in(s, &a) == 1 && a.known && ratio_equal(a.min, value)
           && ratio_equal(a.max, value) && text_equal(a.unit, unit);
}

/* Reads all that was said; each caption is one sentence. Returns how many are read wrong. */
static size_t count_wrong(struct talk *t, struct text unit)
{
    size_t wrong = 0;
    reader_read(&reader, buffer_text(&t->captions));
    assert_int_equal(reader.r.sentences.count, t->count);
    for (size_t i = 0; i < t->count; i++)
        if (!read_right(&reader.r.sentences.at[i], t->value[i], unit) && wrong++ < SHOWN_MOST)
            print_error("not read as %lld/%lld: %.*s\n", (long long) t->value[i].over,
                        (long long) t->value[i].under, TEXT(reader.r.cues.at[i].text));
    return wrong;
}

/* Frees what was said. */
static void check(struct talk *t, const char *unit, const char *what)
{
    size_t wrong = count_wrong(t, text_from(unit));
    printf("figure: %zu of %zu %s read as they are spelled\n", t->count - wrong, t->count, what);
    buffer_release(&t->captions);
    assert_int_equal(wrong, 0);
}

static void check_cardinals(const char *rules, const char *what)
{
    static struct talk talk;
    char spelled[SPELLED_BYTES];
    UNumberFormat *f = speller(rules);
    talk = (struct talk){0};
    for (int n = 0; n < NUMBERS; n++)
        say(&talk, RATIO(n), spell(f, n, spelled), "grams");
    unum_close(f);
    check(&talk, "gram", what);
}

static void every_number(void **state)
{
    (void) state;
    check_cardinals("%spellout-cardinal", "numbers");
}

static void every_number_with_and(void **state)
{
    (void) state;
    check_cardinals("%spellout-cardinal-verbose", "numbers with \"and\"");
}

/* "zero point five", "one point two five": 0.01 to 9.99, as far as a kitchen's scale goes. */
static void decimals(void **state)
{
    static struct talk talk;
    char spelled[SPELLED_BYTES];
    UNumberFormat *f = speller("%spellout-cardinal");
    (void) state;
    talk = (struct talk){0};
    for (int hundredths = 1; hundredths < 1000; hundredths++)
        say(&talk, ratio_make(hundredths, 100), spell(f, hundredths / 100.0, spelled), "grams");
    unum_close(f);
    check(&talk, "gram", "decimals");
}

/* A name of its own, where English has one beside the ordinal. */
static const struct part {
    int under;
    const char *name, *names;
} parts[] = {{2, "half", "halves"},
             {3, NULL, NULL},
             {4, "quarter", "quarters"},
             {4, NULL, NULL},
             {8, NULL, NULL}};

/* "half", "thirds", "fourth" */
static void spell_part(UNumberFormat *ordinal, const struct part *part, int over,
                       char out[SPELLED_BYTES])
{
    spell(ordinal, part->under, out);
    size_t length = strlen(out);
    if (part->name)
        snprintf(out, SPELLED_BYTES, "%s", over > 1 ? part->names : part->name);
    else if (over > 1)
        snprintf(out + length, SPELLED_BYTES - length, "s");
}

struct spellers {
    UNumberFormat *cardinal, *ordinal;
};

/* "two thirds of a cup", "one half cup" */
static void say_fraction(struct talk *t, const struct spellers *f, int over,
                         const struct part *part)
{
    char top[SPELLED_BYTES], name[SPELLED_BYTES], number[LINE_BYTES];
    struct ratio value = ratio_make(over, part->under);
    spell(f->cardinal, over, top);
    spell_part(f->ordinal, part, over, name);
    snprintf(number, sizeof number, "%s %s", top, name);
    say(t, value, number, "cup");
    snprintf(number, sizeof number, "%s %s of a", top, name);
    say(t, value, number, "cup");
}

/* "two and two thirds cups", "two and a half cups" */
static void say_mixed(struct talk *t, const struct spellers *f, int whole, int over,
                      const struct part *part)
{
    char first[SPELLED_BYTES], top[SPELLED_BYTES], name[SPELLED_BYTES], number[LINE_BYTES];
    struct ratio value = ratio_add(RATIO(whole), ratio_make(over, part->under));
    spell(f->cardinal, whole, first);
    spell(f->cardinal, over, top);
    spell_part(f->ordinal, part, over, name);
    snprintf(number, sizeof number, "%s and %s %s", first, top, name);
    say(t, value, number, "cups");
    if (over > 1)
        return;
    snprintf(number, sizeof number, "%s and a%s %s", first, name[0] == 'e' ? "n" : "", name);
    say(t, value, number, "cups");
}

static void say_part(struct talk *t, const struct spellers *f, int whole, const struct part *part)
{
    for (int over = 1; over < part->under; over++)
        if (whole)
            say_mixed(t, f, whole, over, part);
        else
            say_fraction(t, f, over, part);
}

static void common_fractions(void **state)
{
    static struct talk talk;
    (void) state;
    const struct spellers f = {speller("%spellout-cardinal"), speller("%spellout-ordinal")};
    talk = (struct talk){0};
    for (int whole = 0; whole <= WHOLE_MOST; whole++)
        for (size_t i = 0; i < sizeof parts / sizeof *parts; i++)
            say_part(&talk, &f, whole, &parts[i]);
    unum_close(f.cardinal);
    unum_close(f.ordinal);
    check(&talk, "cup", "common fractions");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(every_number), cmocka_unit_test(every_number_with_and),
        cmocka_unit_test(decimals), cmocka_unit_test(common_fractions)};
    reader_open(&reader);
    int failed = cmocka_run_group_tests(tests, NULL, NULL);
    reader_close(&reader);
    return failed;
}
