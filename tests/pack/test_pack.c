/* pack/test_pack.c: the loader of grammar packs, by the format that docs/grammar.md describes.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <pcre2.h>
#include <stdio.h>

#include "packs.h"

/* The endings that the samples need. */
#define FORMS                       \
    "== en/forms.tsv\n"             \
    "form\tends\tcut\tadd\n"        \
    "plural\tCONSONANT+y\t1\ties\n" \
    "plural\ts x ch sh\t0\tes\n"    \
    "plural\t*\t0\ts\n"             \
    "third\tCONSONANT+y\t1\ties\n"  \
    "third\ts x ch sh\t0\tes\n"     \
    "third\t*\t0\ts\n"              \
    "doing\te\t1\ting\n"            \
    "doing\t*\t0\ting\n"            \
    "done\te\t0\td\n"               \
    "done\tCONSONANT+y\t1\tied\n"   \
    "done\t*\t0\ted\n"

#define EXAMPLES              \
    "  ex \"a\" -> nothing\n" \
    "  ex \"b\" -> nothing\n" \
    "  ex \"c\" -> nothing\n"

static const char good[] =
    "== en/pack.list\n"
    "# what is English\n"
    "foods.lex\n"
    "actions.lex\n"
    "numbers.lex\n"
    "numbers.rules\n"
    "forms.tsv\n"
    "../common/units.tsv\n" FORMS "== common/units.tsv\n"
    "unit\tgrams\tnote\n"
    "ounce\t28.35\n"
    "pound\t453.6\trounded\n"
    "== en/foods.lex\n"
    "@tag FOOD\n"
    "@forms noun\n"
    "@marks produce\n"
    "scallion\t\therb\tspring onion | green onion\n"
    "cherry\n"
    "bay leaf\t\t\t\tnoun:leaves\n"
    "clove of garlic\tgarlic\t\t\tnoun:cloves of garlic\n"
    "@marks\n"
    "all-purpose flour\tflour\tflour uncounted\tplain flour | AP flour\tnone\n"
    "Cr\xC3\xA8me Fra\xC3\xAE"
    "che\tcream\tdairy\t\tnone\n"
    "soy\n"
    "soy sauce\n"
    "soy sauce from the jar\n"
    "chop\n"
    "== en/actions.lex\n"
    "@tag ACTION\n"
    "@forms verb\n"
    "chop\t\tcuts prep\t\tverb2\n"
    "bake\t\tovens\n"
    "fry\n"
    "stir fry\tstir-fry\t\t\tverb-last\n"
    "take out\tremove\ttakes\ttake off | lift out\tverb:takes,taking,took,taken\n"
    "saut\xC3\xA9\n"
    "@tag FOOD\n"
    "cherries\tcherry jam\t\t\tnone\n"
    "== en/numbers.lex\n"
    "@tag ONES\n"
    "two\t2\n"
    "@tag FRACTION\n"
    "half\t1/2\t\thalves\n"
    "@tag TIME\n"
    "minute\t60\n"
    "== en/numbers.rules\n"
    "stage number\n"
    "\n"
    "rule tens-and-ones\n"
    "  when  <tens:TENS> <ones:ONES>\n"
    "  give  number low=tens*10+ones\n"
    "  ex    \"twenty five\"  ->  25\n"
    "  ex    \"thirty one\"   ->  31\n"
    "  ex    \"five twenty\"  ->  nothing\n"
    "stage phrase\n"
    "rule oven-opening\n"
    "  when  (?<! SO|AND) <action:ACTION> (FOOD|PART)* OVEN\n"
    "  give  opening option=oven weight=-3\n" EXAMPLES "rule kept\n"
    "  when  FOOD\n"
    "  give  line keep\n" EXAMPLES "stage repair\n"
    "rule noun\n"
    "  when  THE <word:ACTION>\n"
    "  give  retag FOOD\n" EXAMPLES;

static struct text text_of(const char *string)
{
    return text_from(string);
}

static void assert_text(struct text t, const char *want)
{
    char *copy = calloc(1, t.length + 1);
    assert_non_null(copy);
    memcpy(copy, t.at, t.length);
    assert_string_equal(copy, want);
    free(copy);
}

/* "FILE:LINE:COLUMN: message", a line each. */
static void put_problems(const struct problems *p, struct buffer *out)
{
    for (size_t i = 0; i < p->count; i++) {
        const struct problem *at = &p->at[i];
        buffer_format(out, "%s:%u:%u: %s\n", at->at.file, at->at.line, at->at.column, at->message);
    }
}

static void assert_problems(const struct test_pack *t, const char *want)
{
    struct buffer b = {0};
    put_problems(&t->problems, &b);
    buffer_put_char(&b, '\0');
    assert_string_equal(b.at, want);
    buffer_release(&b);
}

static struct test_pack open_good(void)
{
    struct test_pack t;
    test_pack_open(&t, TEXT_OF(good));
    assert_problems(&t, "");
    assert_non_null(t.pack);
    return t;
}

/* ---- words */

struct reading {
    const char *words, *tag, *value, *shown;
    bool plural;
};

static const struct reading readings[] = {
    {"scallion", "FOOD", "scallion", "scallion", false},
    {"scallions", "FOOD", "scallion", "scallion", true},
    {"spring onion", "FOOD", "scallion", "spring onion", false},
    {"green onions", "FOOD", "scallion", "green onion", true},
    {"cherry", "FOOD", "cherry", "cherry", false},
    {"cherries", "FOOD", "cherry jam", "cherries",
     false}, /* listed, in a later file: the form gives way */
    {"bay leaves", "FOOD", "bay leaf", "bay leaf", true},
    {"cloves of garlic", "FOOD", "garlic", "clove of garlic", true},
    {"all purpose flour", "FOOD", "flour", "all-purpose flour", false},
    {"ap flour", "FOOD", "flour", "AP flour", false},
    {"creme fraiche", "FOOD", "cream",
     "Cr\xC3\xA8me Fra\xC3\xAE"
     "che",
     false},
    {"chop", "ACTION", "chop", "chop", false},
    {"chop", "FOOD", "chop", "chop", false},
    {"chops", "ACTION", "chop", "chop", false},
    {"chopping", "DOING", "chop", "chopping", false},
    {"chopped", "DONE", "chop", "chopped", false},
    {"bakes", "ACTION", "bake", "bake", false},
    {"baking", "DOING", "bake", "baking", false},
    {"baked", "DONE", "bake", "baked", false},
    {"fries", "ACTION", "fry", "fry", false},
    {"fried", "DONE", "fry", "fried", false},
    {"stir fries", "ACTION", "stir-fry", "stir fry", false},
    {"stir fried", "DONE", "stir-fry", "stir fried", false},
    {"takes out", "ACTION", "remove", "take out", false},
    {"taking out", "DOING", "remove", "taking out", false},
    {"took out", "DONE", "remove", "taken out", false},
    {"taken off", "DONE", "remove", "taken off", false},
    {"lifted out", "DONE", "remove", "lifted out", false}, /* not one of the forms of "take" */
    {"sauteed", "DONE", "saut\xC3\xA9",
     "saut\xC3\xA9"
     "ed",
     false},
    {"two", "ONES", "2", "two", false},
    {"halves", "FRACTION", "1/2", "halves", false},
    {"minute", "TIME", "60", "minute", false},
};

static void check_reading(const struct pack *k, const struct reading *want)
{
    const struct entry *e = pack_find(k, text_of(want->words), NULL);
    while (e && strcmp(tag_name(e->tag), want->tag) != 0)
        e = entry_next(e);
    if (!e)
        fail_msg("%s is not there as %s", want->words, want->tag);
    assert_text(entry_words(e), want->words);
    assert_text(entry_value(e), want->value);
    assert_text(entry_shown(e), want->shown);
    assert_int_equal((e->marks & MARK_OF(plural)) != 0, want->plural);
}

static void words_are_found(void **state)
{
    (void) state;
    struct test_pack t = open_good();
    for (size_t i = 0; i < sizeof readings / sizeof *readings; i++)
        check_reading(t.pack, &readings[i]);
    const struct entry *half = pack_find(t.pack, TEXT_OF("half"), NULL);
    assert_true(ratio_equal(entry_number(half), (struct ratio){1, 2}));
    const struct entry *soy = pack_find(t.pack, TEXT_OF("soy"), NULL);
    assert_false(ratio_known(entry_number(soy)));
    test_pack_close(&t);
}

static void marks_add_up(void **state)
{
    (void) state;
    struct test_pack t = open_good();
    assert_int_equal(pack_find(t.pack, TEXT_OF("green onion"), NULL)->marks,
                     MARK_OF(produce) | MARK_OF(herb));
    assert_int_equal(pack_find(t.pack, TEXT_OF("plain flour"), NULL)->marks,
                     MARK_OF(flour) | MARK_OF(uncounted));
    assert_int_equal(pack_find(t.pack, TEXT_OF("chopped"), NULL)->marks,
                     MARK_OF(cuts) | MARK_OF(prep));
    test_pack_close(&t);
}

static void readings_stand_in_file_order(void **state)
{
    (void) state;
    struct test_pack t = open_good();
    const struct entry *chop = pack_find(t.pack, TEXT_OF("chop"), NULL);
    assert_int_equal(chop->tag, TAG_FOOD); /* foods.lex stands before actions.lex */
    assert_int_equal(entry_next(chop)->tag, TAG_ACTION);
    assert_null(entry_next(entry_next(chop)));
    assert_ptr_equal(entry_as(chop, TAG_ACTION), entry_next(chop));
    assert_null(entry_as(chop, TAG_UNIT));
    assert_null(entry_as(NULL, TAG_UNIT));
    assert_string_equal(entry_file(chop), "en/foods.lex");
    assert_int_equal(chop->line, 14);
    test_pack_close(&t);
}

static void longer_entries_are_announced(void **state)
{
    static const struct {
        const char *words;
        bool found, more;
    } want[] = {
        {"soy", true, true},
        {"soy sauce", true, true},
        {"soy sauce from", false, true},
        {"soy sauce from the", false, true},
        {"soy sauce from the jar", true, false},
        {"cherry", true, false},
        {"all", false, true},
        {"green", false, true},
        {"so", false, false},
        {"soy ", false, false},
        {"", false, false},
    };
    (void) state;
    struct test_pack t = open_good();
    for (size_t i = 0; i < sizeof want / sizeof *want; i++) {
        bool more = !want[i].more;
        assert_int_equal(pack_find(t.pack, text_of(want[i].words), &more) != NULL, want[i].found);
        assert_int_equal(more, want[i].more);
    }
    test_pack_close(&t);
}

/* Every entry is found by its words, and every chain's entries are in the list, in order. */
static void entries_and_chains_agree(void **state)
{
    (void) state;
    struct test_pack t = open_good();
    size_t count, in_chains = 0;
    const struct entry *entries = pack_entries(t.pack, &count);
    assert_true(count > 50);
    for (size_t i = 0; i < count; i++) {
        const struct entry *e = pack_find(t.pack, entry_words(&entries[i]), NULL);
        in_chains += e == &entries[i];
        while (e && e != &entries[i]) {
            assert_true(e->next >= 0);
            e = entry_next(e);
        }
        assert_non_null(e);
        for (e = entry_next(&entries[i]); e; e = entry_next(e))
            in_chains += entry_as(pack_find(t.pack, entry_words(e), NULL), e->tag) == e
                         && pack_find(t.pack, entry_words(e), NULL) == &entries[i];
    }
    assert_int_equal(in_chains, count);
    test_pack_close(&t);
}

/* The index must grow many times over, and still find each word and no other. */
static void many_words_are_found(void **state)
{
    (void) state;
    struct buffer b = {0};
    struct test_pack t;
    buffer_put_string(&b, "== pack.list\nw.lex\n== w.lex\n@tag FOOD\n");
    for (int i = 0; i < 20000; i++)
        buffer_format(&b, "w%d x\n", i * 7);
    test_pack_open(&t, buffer_text(&b));
    assert_problems(&t, "");
    for (int i = 0; i < 140000; i++) {
        char words[32];
        bool more;
        int n = snprintf(words, sizeof words, "w%d x", i);
        const struct entry *e = pack_find(t.pack, (struct text){words, (size_t) n}, NULL);
        assert_int_equal(e != NULL, i % 7 == 0);
        assert_null(pack_find(t.pack, (struct text){words, (size_t) n - 2}, &more));
        assert_int_equal(more, i % 7 == 0);
    }
    test_pack_close(&t);
    buffer_release(&b);
}

/* An index that is full up to where it grows must not grow by being looked through once more: the
 * pack is measured first and made then. */
static void any_number_of_words_fits(void **state)
{
    (void) state;
    for (int count = 1; count <= 200; count++) {
        struct buffer b = {0};
        struct test_pack t;
        buffer_put_string(&b, "== pack.list\nw.lex\n== w.lex\n@tag FOOD\n");
        for (int i = 0; i < count; i++)
            buffer_format(&b, "x w%d\n", i); /* the last word is a new one */
        test_pack_open(&t, buffer_text(&b));
        assert_problems(&t, "");
        assert_non_null(pack_find(t.pack, TEXT_OF("x w0"), NULL));
        test_pack_close(&t);
        buffer_release(&b);
    }
}

/* Decompositions and case foldings are those of the Unicode Character Database (UnicodeData.txt,
 * CaseFolding.txt; from memory). */
static void words_fold(void **state)
{
    static const struct {
        const char *word, *folded;
    } want[] = {
        {"Butter", "butter"},
        {"cr\xC3\xA8me", "creme"},       /* U+00E8 = e + grave accent */
        {"cre\xCC\x80me", "creme"},      /* the same, taken apart */
        {"JALAPE\xC3\x91O", "jalapeno"}, /* U+00D1 = N + tilde */
        {"wei\xC3\x9F", "weiss"},        /* sharp s folds to ss */
        {"don\xE2\x80\x99t", "don't"},   /* U+2019 */
        {"don\xCA\xBCt", "don't"},       /* U+02BC */
        {"\xC2\xBD", "1/2"},             /* vulgar fraction one half = 1 U+2044 2 */
        {"\xEF\xAC\x81g", "fig"},        /* ligature fi */
        {"stir\xE2\x80\x91"
         "fry",
         "stir-fry"},               /* non-breaking hyphen */
        {"su\xC2\xADgar", "sugar"}, /* soft hyphen */
        {"\xCE\xA6\xCE\xAD\xCF\x84\xCE\xB1",
         "\xCF\x86\xCE\xB5\xCF\x84\xCE\xB1"},         /* Greek, with tonos */
        {"\xE3\x81\x8C", "\xE3\x81\x8B\xE3\x82\x99"}, /* a voicing mark is no accent */
        {"a\xFFz", "a\xFFz"},                         /* not UTF-8 */
        {"", ""},
    };
    (void) state;
    for (size_t i = 0; i < sizeof want / sizeof *want; i++) {
        char out[64];
        struct text t = text_of(want[i].word);
        size_t n = fold_word(t, out, sizeof out);
        assert_text((struct text){out, n}, want[i].folded);
        for (size_t room = 0; room <= n;
             room++) { /* less room gives the beginning, in whole letters */
            char *less = malloc(room + 1);
            size_t m = fold_word(t, less, room);
            assert_true(m <= room);
            assert_memory_equal(less, want[i].folded, m);
            free(less);
        }
    }
}

static void names_of_tags(void **state)
{
    (void) state;
    assert_string_equal(tag_name(TAG_FOOD), "FOOD");
    assert_string_equal(tag_about(TAG_OF), "of");
    assert_null(tag_name(0));
    assert_null(tag_name(TAG_INSIDE)); /* no class may have the sign of an entry that goes on */
    assert_null(tag_about('\n'));
}

/* ---- rules and tables */

static const struct rule *only_rule(const struct pack *k, enum rule_stage stage)
{
    size_t count;
    const struct rule *rules = pack_rules(k, stage, &count);
    assert_true(count > 0);
    return rules;
}

static void rules_are_read(void **state)
{
    (void) state;
    struct test_pack t = open_good();
    const struct rule *r = only_rule(t.pack, STAGE_NUMBER);
    assert_string_equal(r->name, "tens-and-ones");
    assert_int_equal(r->line, 3);
    assert_int_equal(r->kind, RULE_number);
    assert_int_equal(r->tag, TAG_NUMBER);
    assert_int_equal(r->slots_count, 2);
    assert_int_equal(r->slots[0], SLOT_tens);
    assert_int_equal(r->slots[1], SLOT_ones);
    assert_int_equal(r->ex_count, 3);
    assert_text(ref_text(&r->ex[0].words), "twenty five");
    assert_text(ref_text(&r->ex[0].expected), "25");
    assert_text(ref_text(&r->ex[2].expected), "nothing");
    assert_int_equal(r->ex[2].line, 8);
    pcre2_code *code = rule_compile(r, false);
    assert_non_null(code);
    pcre2_code_free(code);

    size_t count;
    r = pack_rules(t.pack, STAGE_PHRASE, &count);
    assert_int_equal(count, 2);
    assert_int_equal(r[0].kind, RULE_opening);
    assert_text(r[0].option, "oven");
    assert_int_equal(r[0].weight, -3);
    assert_int_equal(r[1].kind, RULE_line);
    assert_int_equal(r[1].tag, 0); /* keep */

    r = only_rule(t.pack, STAGE_REPAIR);
    assert_int_equal(r->retag, TAG_FOOD);
    assert_int_equal(r->tag, 0);
    pack_rules(t.pack, STAGE_LINE, &count);
    assert_int_equal(count, 0);
    test_pack_close(&t);
}

static void tables_are_read(void **state)
{
    (void) state;
    struct test_pack t = open_good();
    const struct table *units = pack_table(t.pack, "units");
    assert_non_null(units);
    assert_null(pack_table(t.pack, "unit"));
    assert_int_equal(units->columns, 3);
    assert_int_equal(units->rows, 2);
    assert_int_equal(table_column(units, "grams"), 1);
    assert_int_equal(table_column(units, "gram"), 3);
    assert_text(table_cell(units, 0, 1), "28.35");
    assert_text(table_cell(units, 0, 2), "");
    assert_text(table_cell(units, 1, 2), "rounded");
    assert_text(table_cell(units, 2, 0), "");
    assert_text(table_cell(units, 0, 3), "");
    assert_int_equal(units->lines[1], 3);
    test_pack_close(&t);
}

/* ---- mistakes */

/* `files` stand in a pack whose list names a.lex, b.rules and c.tsv where they are there. */
struct mistake {
    const char *files, *problems;
};

#define LEX "== p/pack.list\na.lex\n== p/a.lex\n"
#define LEX_FORMS "== en/pack.list\nforms.tsv\na.lex\n" FORMS "== en/a.lex\n"
#define RULES "== p/pack.list\nb.rules\n== p/b.rules\n"
#define TABLE "== p/pack.list\nc.tsv\n== p/c.tsv\n"
#define RULE(when, give) RULES "stage amount\nrule r\n  when " when "\n  give " give "\n" EXAMPLES
#define A60 "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"
#define COLUMNS15(n)                                                                               \
    "\t" n "a\t" n "b\t" n "c\t" n "d\t" n "e\t" n "f\t" n "g\t" n "h\t" n "i\t" n "j\t" n "k\t" n \
    "l\t" n "m\t" n "n\t" n "o"
#define COLUMNS16(n) COLUMNS15(n) "\t" n "p"
#define MANY "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"

static const struct mistake mistakes[] = {
    /* the list */
    {"", "pack.list:0:0: there is no file pack.list; it names the files of the pack\n"},
    {"== p/pack.list\n", "p/pack.list:0:0: there is nothing in the pack\n"},
    {"== p/pack.list\na.lex\n== p/a.lex\n@tag FOOD\n# egg\n",
     "p/pack.list:0:0: there is nothing in the pack\n"},
    {"== p/pack.list\nx.lex\ny.txt\n../x.lex\n/x.lex\n../common/../x.tsv\n",
     "p/pack.list:1:1: there is no file \"x.lex\"\n"
     "p/pack.list:2:1: \"y.txt\" ends in none of .lex, .rules, .tsv\n"
     "p/pack.list:3:1: \"../x.lex\" is outside of the pack; only ../common/ is allowed\n"
     "p/pack.list:4:1: \"/x.lex\" is outside of the pack; only ../common/ is allowed\n"
     "p/pack.list:5:1: \"../common/../x.tsv\" is outside of the pack; only ../common/ is "
     "allowed\n"},
    {"== p/pack.list\na.lex\n  a.lex\n== p/a.lex\n@tag FOOD\negg\n",
     "p/pack.list:2:3: \"a.lex\" is listed twice\n"},
    {"== p/pack.list\nc.tsv\nd/c.tsv\n== p/c.tsv\na\n== p/d/c.tsv\na\n",
     "p/d/c.tsv:0:0: p/c.tsv is a table of that name already\n"},
    /* any file */
    {LEX "@tag FOOD\negg\r\nham\r\n",
     "p/a.lex:2:4: the line ends in \"\\r\\n\"; save the file with \"\\n\" line ends\n"},
    {LEX "@tag FOOD\nh\xE4m\negg\xC3\n\xC0\xAF\nx\x01y\npie\n",
     "p/a.lex:2:2: byte 0xE4 is not UTF-8; save the file as UTF-8\n"
     "p/a.lex:3:4: byte 0xC3 is not UTF-8; save the file as UTF-8\n"
     "p/a.lex:4:1: byte 0xC0 is not UTF-8; save the file as UTF-8\n"
     "p/a.lex:5:2: control character 0x01; only tabs may stand between words\n"},
    {LEX "\xEF\xBB\xBF@tag FOOD\negg\n", ""},
    /* lexicons */
    {LEX "egg\nham\n@tag FOOD\npie\n",
     "p/a.lex:1:1: a row before any `@tag`; the tag says what the words are\n"},
    {LEX "@tag FOD\negg\tx\tbitter\n@tag\n@tag FOOD\negg\n",
     "p/a.lex:1:6: unknown tag \"FOD\"; tags.def lists them\n"
     "p/a.lex:2:7: unknown mark \"bitter\"; marks.def lists them\n"
     "p/a.lex:3:5: unknown tag \"\"; tags.def lists them\n"},
    {LEX "@tag FOOD\n@mark salt\n@marks salt sour\negg\t\tdairy  bad\n",
     "p/a.lex:2:1: unknown directive \"@mark\"; there are @tag, @forms, @marks\n"
     "p/a.lex:3:13: unknown mark \"sour\"; marks.def lists them\n"
     "p/a.lex:4:13: unknown mark \"bad\"; marks.def lists them\n"},
    {LEX "@tag FOOD\negg\t\t\t\tnone\t\tx\n\tegg\na|b\n-\negg\t\t\ta || b\n",
     "p/a.lex:2:13: more than five cells; a row is words, value, marks, others, forms\n"
     "p/a.lex:3:1: the row begins without words\n"
     "p/a.lex:4:1: `|` among the words; other words for the same stand in the fourth cell\n"
     "p/a.lex:5:1: \"-\" is no word\n"
     "p/a.lex:6:10: words are missing between the `|` signs\n"},
    {LEX "@tag FOOD\na b c d e f g h i j k l m\n" MANY MANY "\n",
     "p/a.lex:2:1: more than 12 words\n"
     "p/a.lex:3:1: the words are longer than 120 bytes\n"},
    {LEX "@tag FOOD\n@forms nouns\n@forms noun:eggs\negg\t\t\t\tnoun:\negg\t\t\t\tnoun:a,b\n"
         "egg\t\t\t\tverb:a,b,c\negg\t\t\t\tverb2:a,b,c,d\n",
     "p/a.lex:2:8: unknown forms \"nouns\"; there are none, noun, noun:PLURAL, verb, "
     "verb:THIRD,DOING,PAST,PARTICIPLE, verb2, each with -last\n"
     "p/a.lex:3:8: forms are written out in a row, not for all rows\n"
     "p/a.lex:4:13: `noun:` takes one form: the plural\n"
     "p/a.lex:5:13: `noun:` takes one form: the plural\n"
     "p/a.lex:6:13: `verb:` takes four forms: third person, -ing, past, participle, divided by "
     "commas\n"
     "p/a.lex:7:14: forms are written out after `noun:` or `verb:` only\n"},
    {LEX "@tag FOOD\negg\t\t\t\tnoun\nham\t\t\t\tnoun\n",
     "p/a.lex:2:1: no row of the table forms.tsv makes this form of \"egg\"\n"},
    {LEX "@tag ONES\none\t1\ntwo\nthree\t3x\n@tag TIME\nday\t1/0\n@tag FOOD\negg\t3x\n",
     "p/a.lex:3:1: \"two\" is no number; the value of a ONES is one, as 3, 1/2 or 2.5\n"
     "p/a.lex:4:7: \"3x\" is no number; the value of a ONES is one, as 3, 1/2 or 2.5\n"
     "p/a.lex:6:5: \"1/0\" is no number; the value of a TIME is one, as 3, 1/2 or 2.5\n"},
    {LEX "@tag FOOD\nspring onion\nspring-onion\tscallion\nonion\t\t\tSpring Onion\n@marks "
         "salt\nonion\n",
     "p/a.lex:3:1: \"spring onion\" as FOOD stands for \"scallion\" here and for \"spring onion\" "
     "at "
     "p/a.lex:2\n"
     "p/a.lex:4:9: \"spring onion\" as FOOD stands for \"onion\" here and for \"spring onion\" at "
     "p/a.lex:2\n"
     "p/a.lex:6:1: \"onion\" as FOOD has other marks here than at p/a.lex:4\n"},
    {LEX_FORMS "@tag FOOD\n@forms noun\nleaf\t\t\t\tnoun:leaves\nleave\nleave\n", ""},
    /* tables */
    {TABLE, "p/c.tsv:0:0: the table is empty; its first line names the columns\n"},
    {TABLE "a\tb\n1\t2\t3\n1\n", "p/c.tsv:2:5: the row has more cells than the 2 columns\n"},
    {TABLE "a\tb\ta\n", "p/c.tsv:1:5: column \"a\" is there twice\n"},
    {TABLE "a\t\tb\n", "p/c.tsv:1:3: column 2 has no name\n"},
    {"== p/pack.list\nforms.tsv\n== p/forms.tsv\nform\tends\tadd\n",
     "p/forms.tsv:0:0: no column \"cut\"; this table has form, ends, cut, add\n"},
    {"== p/pack.list\nforms.tsv\n== "
     "p/forms.tsv\nform\tends\tcut\tadd\nfirst\t*\t0\ts\nthird\t\t0\ts\n"
     "third\t*\tx\ts\n",
     "p/forms.tsv:2:1: unknown form \"first\"; the forms are plural, third, doing, done\n"
     "p/forms.tsv:3:1: no endings; `*` stands for any\n"
     "p/forms.tsv:4:1: `cut` is \"x\"; it is a number of letters, 0 to 9\n"},
    /* rules */
    {RULES "rule r\n  when FOOD\n  give line\n" EXAMPLES,
     "p/b.rules:1:1: a rule before any `stage`; the stages are repair, number, amount, line, "
     "phrase\n"},
    {RULES "stage numbers\nwhen FOOD\nstage line\nrules r\n",
     "p/b.rules:1:7: unknown stage \"numbers\"; the stages are repair, number, amount, line, "
     "phrase\n"
     "p/b.rules:2:1: `when` stands within a rule; begin one with `rule NAME`\n"
     "p/b.rules:4:1: unknown word \"rules\"; a line begins with stage, rule, when, give or ex\n"},
    {RULES "stage line\nrule r\n",
     "p/b.rules:2:6: rule \"r\" has no `when`\n"
     "p/b.rules:2:6: rule \"r\" has 0 of the 3 examples that a rule needs\n"},
    {RULES "stage line\nrule r\n  when FOOD\n  give line\n" EXAMPLES
           "rule r\n  when FOOD\n  give line\n" EXAMPLES
           "rule two words\n  when FOOD\n  give line\n" EXAMPLES,
     "p/b.rules:8:6: rule \"r\" is there already, at p/b.rules:2\n"
     "p/b.rules:14:6: a rule has a name of one word, up to 60 letters\n"},
    {RULES "stage line\nrule r\n  when FOOD\n  when FOOD\n  give line\n  give line\n"
           "  ex \"a\" -> 1\n  ex \"a\" -> 2\n",
     "p/b.rules:4:3: a second `when`; make it a rule of its own\n"
     "p/b.rules:6:3: a second `give`; make it a rule of its own\n"
     "p/b.rules:8:7: the same example as at line 7\n"
     "p/b.rules:2:6: rule \"r\" has 2 of the 3 examples that a rule needs\n"},
    {RULES "stage line\nrule r\n  give line\n  when FOOD\n" EXAMPLES,
     "p/b.rules:3:3: `give` stands after `when`\n"},
    {RULES "stage line\nrule r\n  when <food:FOOD>\n  give line\n"
           "  ex a -> 1\n  ex \"a\"\n  ex \"a -> 1\n  ex \"\" -> 1\n  ex \"a\" ->\n"
           "  ex \"b\" -> twelve\n  ex \"c\" -> fod=egg\n  ex \"d\" -> food= 1\n  ex \"e\" -> 1..2 "
           "1.. food=egg\n",
     "p/b.rules:5:6: an example is written: ex \"words\" -> what the rule gives, or nothing\n"
     "p/b.rules:6:6: an example is written: ex \"words\" -> what the rule gives, or nothing\n"
     "p/b.rules:7:6: an example is written: ex \"words\" -> what the rule gives, or nothing\n"
     "p/b.rules:8:6: an example is written: ex \"words\" -> what the rule gives, or nothing\n"
     "p/b.rules:9:6: an example is written: ex \"words\" -> what the rule gives, or nothing\n"
     "p/b.rules:10:13: \"twelve\" is neither `match`, `nothing`, a number, a range 10..12 nor "
     "slot=words\n"
     "p/b.rules:11:13: unknown slot \"fod\"; slots.def lists them\n"
     "p/b.rules:12:13: no words after \"food=\"\n"},
    /* what rules give */
    {RULE("FOOD", "food"), "p/b.rules:4:8: unknown kind \"food\"; kinds.def lists them\n"},
    {RULE("FOOD", "line side weight=x weight=9999 option="),
     "p/b.rules:4:13: \"side\" says nothing here; there are low=, high=, option=, weight= and "
     "keep\n"
     "p/b.rules:4:25: `weight=` takes a whole number, -1000 to 1000\n"
     "p/b.rules:4:34: `weight=` takes a whole number, -1000 to 1000\n"
     "p/b.rules:4:39: \"option=\" says nothing here; there are low=, high=, option=, weight= and "
     "keep\n"},
    {RULE("FOOD", "retag FOD low=1"),
     "p/b.rules:4:14: `give retag` takes a tag; \"FOD\" is none, tags.def lists them\n"
     "p/b.rules:4:14: `give retag` changes the slot <word:...>, which `when` lacks\n"
     "p/b.rules:4:14: `give retag` belongs to the stage repair\n"
     "p/b.rules:4:22: `give retag` has no number\n"},
    {RULE("<low:NUMBER>", "number high=low"), "p/b.rules:4:8: `give number` needs low=\n"},
    {RULE("<low:NUMBER>", "number low=low+ high=low*x"),
     "p/b.rules:4:23: a slot or a whole number is missing here\n"
     "p/b.rules:4:33: unknown slot \"x\"; slots.def lists them\n"},
    {RULE("<low:NUMBER>", "number low=top high=1/0"),
     "p/b.rules:4:19: `when` has no slot <top:...>\n"
     "p/b.rules:4:30: division by 0\n"},
    {RULE("<low:NUMBER>", "number low=12345678 high=1+1+1+1+1+1+1"),
     "p/b.rules:4:19: \"12345678\" is no whole number up to a million\n"
     "p/b.rules:4:46: the expression is longer than 12 slots, numbers and signs\n"},
    /* patterns */
    {RULE("FOD <fod:FOOD> (?<= BAR) FOOD", "line"),
     "p/b.rules:3:8: unknown class \"FOD\"; tags.def lists them\n"
     "p/b.rules:3:13: unknown slot \"fod\"; slots.def lists them\n"
     "p/b.rules:3:28: unknown class \"BAR\"; tags.def lists them\n"},
    {RULE("FOOD (UNIT", "line"), "p/b.rules:3:13: `(` is not closed by `)`\n"},
    {RULE("<food:FOOD", "line"), "p/b.rules:3:8: `<` is not closed by `>`\n"},
    {RULE("<food:(FOOD>)", "line"), "p/b.rules:3:14: `(` is not closed by `)`\n"},
    {RULE("FOOD) UNIT", "line"), "p/b.rules:3:12: `)` closes nothing\n"},
    {RULE("FOOD > UNIT", "line"), "p/b.rules:3:13: `>` closes nothing\n"},
    {RULE("<FOOD>", "line"), "p/b.rules:3:13: a slot is written <name:CLASSES>\n"},
    {RULE("(FOOD|) UNIT", "line"),
     "p/b.rules:3:14: a class is missing here; what may be left out is written (CLASS)?\n"},
    {RULE("", "line"),
     "p/b.rules:3:7: a class is missing here; what may be left out is written (CLASS)?\n"},
    {RULE("FOOD .* UNIT", "line"), "p/b.rules:3:13: this sign has no meaning in a pattern\n"},
    {RULE("+ FOOD", "line"), "p/b.rules:3:8: a repeat must follow a class or a group\n"},
    {RULE("^? FOOD", "line"), "p/b.rules:3:9: a repeat must follow a class or a group\n"},
    {RULE("FOOD+ +", "line"), "p/b.rules:3:14: a repeat must follow a class or a group\n"},
    {RULE("FOOD{2", "line"), "p/b.rules:3:12: a repeat is written {2}, {2,} or {2,4}\n"},
    {RULE("FOOD{4,2}", "line"),
     "p/b.rules:3:12: a repeat goes from fewer to more, and to 64 at most\n"},
    {RULE("FOOD{1,99999999999999999999}", "line"),
     "p/b.rules:3:12: a repeat goes from fewer to more, and to 64 at most\n"},
    {RULE("<food:FOOD>+", "line"),
     "p/b.rules:3:19: a slot holds one stretch of words; put the repeat inside it: <food:FOOD+>\n"},
    {RULE("(?<= FOOD UNIT) FOOD", "line"),
     "p/b.rules:3:18: a look-behind sees one class; close it with `)` after it\n"},
    {RULE("(?<! (FOOD)) FOOD", "line"),
     "p/b.rules:3:13: a look-behind takes one class, or several divided by `|`\n"},
    {RULE("(?: FOOD)", "line"), "p/b.rules:3:8: after `(?` there may be = ! <= or <!\n"},
    {RULE("(?! <food:FOOD>) ANY", "line"),
     "p/b.rules:3:13: a slot within (?! ) never holds words\n"},
    {RULE("FOOD* UNIT?", "line"),
     "p/b.rules:3:8: the pattern can match no words at all; something in it must be there\n"},
    {RULE("((((((((((((((((((((( FOOD )))))))))))))))))))))", "line"),
     "p/b.rules:3:28: more than 20 groups within groups\n"},
    {RULE("<food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD> "
          "<food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD>",
          "line"),
     "p/b.rules:3:153: more than 12 slots\n"},
    {RULE("(((FOOD{64}){64}){64}){64}", "line"),
     "p/b.rules:3:8: the pattern does not compile: regular expression is too large\n"},
    /* at a limit, and over those that no row above is over */
    {LEX "@tag FOOD\na b c d e f g h i j k l\n" A60 A60 "\n", ""},
    {LEX "@tag FOOD\n" A60 A60 "a\n", "p/a.lex:2:1: the words are longer than 120 bytes\n"},
    {TABLE "c" COLUMNS16("1") COLUMNS16("2") COLUMNS16("3") COLUMNS15("4") "\nx\n", ""},
    {TABLE "c" COLUMNS16("1") COLUMNS16("2") COLUMNS16("3") COLUMNS16("4") "\nx\n",
     "p/c.tsv:1:192: more than 64 columns\n"},
    {RULES "stage line\nrule " A60 "\n  when FOOD\n  give line\n" EXAMPLES, ""},
    {RULES "stage line\nrule " A60 "a\n  when FOOD\n  give line\n" EXAMPLES,
     "p/b.rules:2:6: a rule has a name of one word, up to 60 letters\n"},
    {RULE("FOOD{64}", "line"), ""},
    {RULE("FOOD{65}", "line"),
     "p/b.rules:3:12: a repeat goes from fewer to more, and to 64 at most\n"},
    {RULE("FOOD{1,64}", "line"), ""},
    {RULE("FOOD{1,65}", "line"),
     "p/b.rules:3:12: a repeat goes from fewer to more, and to 64 at most\n"},
    {RULE("(((((((((((((((((((( FOOD ))))))))))))))))))))", "line"), ""},
    {RULE("<food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD> "
          "<food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD> <food:FOOD>",
          "line"),
     ""},
    /* ten mistakes in four files give ten messages */
    {"== p/pack.list\na.lex\nb.rules\nc.tsv\nd.lex\n"
     "== p/a.lex\n@tag FODO\nham\n@forms nouns\n@tag FOOD\negg\t\tbad\n@what\nham\tpig\nham\n"
     "== p/b.rules\nstage line\nrule r\n  when FOOD BAR\n  give lines\n" EXAMPLES
     "rule s\n  when (FOOD\n  give line\n"
     "  ex \"a\" -> 1\n"
     "== p/c.tsv\na\tb\n1\t2\t3\n",
     "p/pack.list:4:1: there is no file \"d.lex\"\n"
     "p/c.tsv:2:5: the row has more cells than the 2 columns\n"
     "p/a.lex:1:6: unknown tag \"FODO\"; tags.def lists them\n"
     "p/a.lex:3:8: unknown forms \"nouns\"; there are none, noun, noun:PLURAL, verb, "
     "verb:THIRD,DOING,PAST,PARTICIPLE, verb2, each with -last\n"
     "p/a.lex:5:6: unknown mark \"bad\"; marks.def lists them\n"
     "p/a.lex:6:1: unknown directive \"@what\"; there are @tag, @forms, @marks\n"
     "p/a.lex:8:1: \"ham\" as FOOD stands for \"ham\" here and for \"pig\" at p/a.lex:7\n"
     "p/b.rules:3:13: unknown class \"BAR\"; tags.def lists them\n"
     "p/b.rules:4:8: unknown kind \"lines\"; kinds.def lists them\n"
     "p/b.rules:9:8: `(` is not closed by `)`\n"
     "p/b.rules:8:6: rule \"s\" has 1 of the 3 examples that a rule needs\n"},
};

static void mistakes_have_places(void **state)
{
    (void) state;
    size_t wrong = 0;
    for (size_t i = 0; i < sizeof mistakes / sizeof *mistakes; i++) {
        struct test_pack t;
        struct buffer b = {0};
        test_pack_open(&t, text_of(mistakes[i].files));
        put_problems(&t.problems, &b);
        buffer_put_char(&b, '\0');
        if (strcmp(b.at, mistakes[i].problems) != 0) {
            print_error("%s\ngives\n%sinstead of\n%s\n", mistakes[i].files, b.at,
                        mistakes[i].problems);
            wrong++;
        }
        buffer_release(&b);
        test_pack_close(&t);
    }
    assert_int_equal(wrong, 0);
}

/* A pattern of more text than fits, by many classes. */
static void long_patterns_are_refused(void **state)
{
    (void) state;
    struct buffer b = {0};
    struct test_pack t;
    buffer_put_string(&b, RULES "stage line\nrule r\n  when ");
    for (int i = 0; i < 1000; i++)
        buffer_put_string(&b, "FOOD ");
    buffer_put_string(&b, "\n  give line\n" EXAMPLES);
    test_pack_open(&t, buffer_text(&b));
    assert_int_equal(t.problems.count, 1);
    assert_string_equal(t.problems.at[0].message, "the pattern is too long; make it two rules");
    test_pack_close(&t);
    buffer_release(&b);
}

/* What is wrong in one place must not cost the rest. */
static void the_rest_is_usable(void **state)
{
    (void) state;
    struct test_pack t;
    test_pack_open(&t,
                   TEXT_OF("== p/pack.list\na.lex\n== p/a.lex\n@tag FOOD\negg\nham\tx\ty\npie\n"));
    assert_int_equal(t.problems.errors, 1);
    assert_non_null(pack_find(t.pack, TEXT_OF("egg"), NULL));
    assert_null(pack_find(t.pack, TEXT_OF("ham"), NULL));
    assert_non_null(pack_find(t.pack, TEXT_OF("pie"), NULL));
    test_pack_close(&t);
}

/* Cut off anywhere, or with any byte changed, a pack loads or is refused. */
static void broken_packs_never_crash(void **state)
{
    static const char bytes[] = {'\0', '\t', '\n', ' ', '(', '<', '@', '|', '\x80', '\xFF'};
    char *changed = malloc(sizeof good);
    (void) state;
    assert_non_null(changed);
    for (size_t i = 0; i < sizeof good; i++) {
        struct test_pack t;
        test_pack_open(&t, (struct text){good, i});
        test_pack_close(&t);
        memcpy(changed, good, sizeof good);
        changed[i] = bytes[i % sizeof bytes];
        test_pack_open(&t, (struct text){changed, sizeof good - 1});
        test_pack_close(&t);
    }
    free(changed);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(words_are_found),
        cmocka_unit_test(marks_add_up),
        cmocka_unit_test(readings_stand_in_file_order),
        cmocka_unit_test(longer_entries_are_announced),
        cmocka_unit_test(entries_and_chains_agree),
        cmocka_unit_test(many_words_are_found),
        cmocka_unit_test(any_number_of_words_fits),
        cmocka_unit_test(words_fold),
        cmocka_unit_test(names_of_tags),
        cmocka_unit_test(rules_are_read),
        cmocka_unit_test(tables_are_read),
        cmocka_unit_test(mistakes_have_places),
        cmocka_unit_test(long_patterns_are_refused),
        cmocka_unit_test(the_rest_is_usable),
        cmocka_unit_test(broken_packs_never_crash),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
