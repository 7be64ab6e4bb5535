/* kitchen/plural.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/plural.h"

static bool is_plural_of(const struct entry *e, const struct entry *one)
{
    return e->marks & MARK_OF(plural) && e->tag == one->tag
           && text_equal(entry_shown(e), entry_shown(one));
}

/* A form that the loader made of exactly these words; NULL: none. It was listed in the same line,
 * so it stands beside them. */
static const struct entry *plural_entry(const struct pack *k, struct text words)
{
    size_t count;
    const struct entry *all = pack_entries(k, &count), *one = pack_find(k, words, NULL);
    if (!one || one < all || one >= all + count)
        return NULL;
    for (const struct entry *e = one; e < all + count && e->line == one->line; e++)
        if (is_plural_of(e, one))
            return e;
    for (const struct entry *e = one; e >= all && e->line == one->line; e--)
        if (is_plural_of(e, one))
            return e;
    return NULL;
}

/* The longest end of the words that the pack can put in the plural: "boneless chicken thigh" by
 * "chicken thigh". */
struct text plural_of(const struct pack *k, struct arena *a, struct text words)
{
    for (size_t begin = 0; begin < words.length;) {
        struct text end = text_slice(words, begin, words.length);
        const struct entry *e = plural_entry(k, end);
        if (e)
            return arena_format(a, "%.*s%.*s", (int) begin, words.at, TEXT(entry_words(e)));
        begin = text_find(words, ' ', begin) + 1;
    }
    return words;
}

static bool contains(struct text whole, struct text part)
{
    for (size_t i = 0; part.length && i + part.length <= whole.length; i++)
        if (memcmp(whole.at + i, part.at, part.length) == 0)
            return true;
    return false;
}

/* Said without a unit, or added up from such amounts. */
static bool is_count(const struct amount *amount)
{
    return amount->known && (!amount->unit.length || text_is(amount->unit, "each"));
}

static bool is_plural(struct arena *a, const struct ingredient *line, const struct amount *amount,
                      struct text plural)
{
    if (is_count(amount))
        return ratio_compare(amount->max, RATIO(1)) > 0;
    char *folded = arena_alloc(a, line->said.length * 3 + 1);
    size_t length = fold_word(line->said, folded, line->said.length * 3);
    for (size_t i = 0; i < length; i++)
        if (folded[i] == '\n')
            folded[i] = ' '; /* a caption of two lines */
    return contains((struct text){folded, length}, plural);
}

struct text food_counted(const struct pack *k, struct arena *a, const struct ingredient *line,
                         const struct amount *amount)
{
    struct text plural = plural_of(k, a, line->food);
    return is_plural(a, line, amount, plural) ? plural : line->food;
}
