/* kitchen/kitchen.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/kitchen.h"

/* All tables together take about a third of this. */
#define KITCHEN_BYTES ((size_t) 8 << 20)

static const struct {
    const char *key;
    size_t blanks;
} phrase_list[] = {
#define PHRASE(key, blanks) {#key, blanks},
#include "kitchen/phrases.def"
#undef PHRASE
};

/* "{3}" at `at`: 3; 0 when there is no blank. */
static size_t blank_at(struct text words, size_t at)
{
    if (at + 2 >= words.length || words.at[at] != '{' || words.at[at + 2] != '}')
        return 0;
    char digit = words.at[at + 1];
    return digit >= '1' && digit <= '9' ? (size_t) (digit - '0') : 0;
}

/* Each blank must stand in the words, and no other. */
static bool has_blanks(struct text words, size_t blanks)
{
    unsigned seen = 0;
    for (size_t i = 0; i < words.length; i++)
        seen |= 1u << blank_at(words, i);
    return (seen | 1u) == (2u << blanks) - 1;
}

static bool load_phrase(struct kitchen *k, const struct rows *r, size_t row, struct problems *p)
{
    struct text key = rows_cell(r, row, 0), words = rows_cell(r, row, 1);
    for (size_t i = 0; i < PHRASES; i++)
        if (text_is(key, phrase_list[i].key)) {
            k->phrases[i] = words;
            return has_blanks(words, phrase_list[i].blanks)
                   || problem(p, rows_place(r, row),
                              "the words of \"%.*s\" need the blanks {1} to {%zu}, each once",
                              TEXT(key), phrase_list[i].blanks);
        }
    return problem(p, rows_place(r, row), "there is no phrase \"%.*s\"", TEXT(key));
}

static bool load_phrases(struct kitchen *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k->pack, "kitchen-words", "key words", p))
        return false;
    bool good = true;
    for (size_t row = 0; row < r.count; row++)
        good &= load_phrase(k, &r, row, p);
    for (size_t i = 0; i < PHRASES; i++)
        if (!k->phrases[i].length)
            good = problem(p, (struct place){r.table->file, 0, 0}, "the phrase \"%s\" is missing",
                           phrase_list[i].key);
    return good;
}

static bool load_marks(struct kitchen *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k->pack, "oven-marks", "mark fahrenheit", p))
        return false;
    for (size_t row = 0; row < r.count; row++) {
        struct oven_mark *mark = LIST_ADD(&k->memory, &k->marks);
        if (!rows_number(&r, row, 0, &mark->mark, p)
            || !rows_number(&r, row, 1, &mark->fahrenheit, p))
            return false;
    }
    return true;
}

static bool load_households(struct kitchen *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k->pack, "kitchen-metric", "unit amount metric source", p))
        return false;
    for (size_t row = 0; row < r.count; row++) {
        struct household *h = LIST_ADD(&k->memory, &k->households);
        *h = (struct household){unit_find(&k->units, rows_cell(&r, row, 0)),
                                unit_find(&k->units, rows_cell(&r, row, 2)), RATIO_NONE,
                                rows_cell(&r, row, 3)};
        if (!h->unit || !h->metric)
            return problem(p, rows_place(&r, row), "a unit that is not in units.tsv");
        if (!rows_number(&r, row, 1, &h->amount, p))
            return false;
    }
    return true;
}

static bool load_scaling(struct kitchen *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k->pack, "scaling-notes", "by what how from to note", p))
        return false;
    for (size_t row = 0; row < r.count; row++) {
        struct scale_rule *rule = LIST_ADD(&k->memory, &k->scale_rules);
        rule->by = rows_cell(&r, row, 0);
        rule->what = rows_cell(&r, row, 1);
        rule->whole = text_is(rows_cell(&r, row, 2), "whole");
        rule->note = rows_cell(&r, row, 5);
        if (!rows_number(&r, row, 3, &rule->from, p) || !rows_number(&r, row, 4, &rule->to, p))
            return false;
    }
    return true;
}

static bool read_counts(const struct rows *r, size_t row, struct time_rule *rule,
                        struct problems *p)
{
    static const char *const words[] = {"active", "cook", "rest", "beside"};
    struct text counts = rows_cell(r, row, 2);
    struct ratio times = ratio_read(counts.at, counts.length);
    if (text_is(rule->by, "each") && text_is(counts, "batches"))
        return true;
    if (text_is(rule->by, "each") && ratio_finite(times) && times.under == 1 && times.over > 0) {
        rule->times = (size_t) times.over;
        return true;
    }
    for (size_t i = 0; text_is(rule->by, "action") && i < 4; i++)
        if (text_is(counts, words[i])) {
            rule->counts = (enum counts) i;
            return true;
        }
    return problem(p, rows_place(r, row),
                   "\"%.*s\" counts as none of active, cook, rest, beside, a number, batches",
                   TEXT(rule->word));
}

static bool load_times(struct kitchen *k, struct problems *p)
{
    struct rows r;
    if (!rows_open(&r, k->pack, "action-times", "by word counts", p))
        return false;
    for (size_t row = 0; row < r.count; row++) {
        struct time_rule *rule = LIST_ADD(&k->memory, &k->time_rules);
        rule->by = rows_cell(&r, row, 0);
        rule->word = rows_cell(&r, row, 1);
        if (!read_counts(&r, row, rule, p))
            return false;
    }
    return true;
}

static bool load_all(struct kitchen *k, struct problems *p)
{
    struct arena *a = &k->memory;
    return load_phrases(k, p) && load_marks(k, p) && units_load(&k->units, a, k->pack, p)
           && foods_load(&k->foods, &k->units, a, k->pack, p)
           && aisles_load(&k->aisles, a, k->pack, p) && load_households(k, p) && load_scaling(k, p)
           && load_times(k, p) && allergens_load(&k->allergens, a, k->pack, p)
           && cautions_load(&k->cautions, a, k->pack, p)
           && titles_load(&k->titles, &k->foods, a, k->pack, p)
           && ladders_load(&k->ladders, &k->units, a, k->pack, p);
}

static bool too_large(struct problems *p)
{
    return problem(p, (struct place){0}, "the kitchen's tables are larger than %zu bytes",
                   KITCHEN_BYTES);
}

/* The jump of a full arena ends here; it holds no value of its own that the jump could lose. */
static struct kitchen *begin(struct arena *memory)
{
    if (!arena_open(memory))
        return NULL;
    arena_reserve(memory, KITCHEN_BYTES);
    return arena_alloc(memory, sizeof(struct kitchen));
}

/* So does it here. */
static bool fill(struct kitchen *k, struct problems *p)
{
    if (arena_open(&k->memory))
        return load_all(k, p);
    return too_large(p);
}

struct kitchen *kitchen_new(const struct pack *pack, struct problems *p)
{
    struct arena memory;
    arena_init(&memory, KITCHEN_BYTES);
    struct kitchen *k = begin(&memory);
    if (!k) {
        problem(p, (struct place){NULL, 0, 0}, "out of memory");
        return NULL;
    }
    k->memory = memory;
    k->pack = pack;
    if (fill(k, p))
        return k;
    kitchen_free(k);
    return NULL;
}

struct kitchen *kitchen_open(const struct ready *image, const struct pack *pack)
{
    struct kitchen *k = ready_open(image, pack);
    if (k)
        k->pack = pack;
    return k;
}

void kitchen_free(struct kitchen *k)
{
    if (!k)
        return;
    struct arena memory = k->memory; /* which it stands in itself */
    arena_release(&memory);
}

/* What stands at `*at` of the words: a blank's text, or the words up to the next blank; `*at` goes
 * behind it. */
static struct text next_piece(struct text words, size_t *at, const struct text *blanks,
                              size_t count)
{
    size_t begin = *at, blank = blank_at(words, begin);
    if (blank && blank <= count) {
        *at += 3;
        return blanks[blank - 1];
    }
    do
        ++*at;
    while (*at < words.length && !(blank_at(words, *at) && blank_at(words, *at) <= count));
    return text_slice(words, begin, *at);
}

struct text fill_blanks(struct arena *a, struct text words, const struct text *blanks, size_t count)
{
    size_t length = 0;
    for (size_t at = 0; at < words.length;)
        length += next_piece(words, &at, blanks, count).length;
    char *whole = arena_alloc(a, length + 1);
    size_t done = 0;
    for (size_t at = 0; at < words.length;) {
        struct text piece = next_piece(words, &at, blanks, count);
        if (piece.length)
            memcpy(whole + done, piece.at, piece.length);
        done += piece.length;
    }
    return (struct text){whole, length};
}

struct text phrase_listed(const struct kitchen *k, struct arena *a, struct text list,
                          struct text next)
{
    if (!list.length || !next.length)
        return list.length ? list : next;
    return PHRASE_TEXT(k, a, list_next, list, next);
}

struct text phrase_all_listed(const struct kitchen *k, struct arena *a, const struct text *parts,
                              size_t count)
{
    if (count < 2)
        return count ? parts[0] : TEXT_EMPTY;
    return phrase_listed(k, a, phrase_all_listed(k, a, parts, count / 2),
                         phrase_all_listed(k, a, parts + count / 2, count - count / 2));
}

struct text phrase(const struct kitchen *k, struct arena *a, enum phrase_key key,
                   const struct text *blanks, size_t count)
{
    return fill_blanks(a, k->phrases[key], blanks, count);
}
