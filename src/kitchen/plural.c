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

/* Said without a unit, or added up from such amounts. */
static bool is_count(const struct amount *amount)
{
    return amount->known && (!amount->unit.length || text_is(amount->unit, "each"));
}

/* Whether the unit takes the plural of what there are several of: 500 grams of prawns, but 2 slices
 * of lemon. */
static bool measures(const struct kitchen *k, const struct amount *amount)
{
    const struct unit *unit = amount->known ? unit_find(&k->units, amount->unit) : NULL;
    return unit && unit->dimension != DIMENSION_COUNT;
}

static bool has_word(struct text words, struct text wanted)
{
    struct text word;
    while (text_part(&words, ' ', &word))
        if (text_equal(word, wanted))
            return true;
    return false;
}

/* Whether the line's words end in the plural's last one: of "black-eyed beans" a caption may hold
 * "beans" alone. */
static bool is_said(struct arena *a, const struct ingredient *line, struct text plural)
{
    char *folded = arena_alloc(a, line->said.length * 3 + 1);
    size_t length = fold_word(line->said, folded, line->said.length * 3);
    for (size_t i = 0; i < length; i++)
        if (folded[i] == '\n' || folded[i] == '-' || folded[i] == ',')
            folded[i] = ' ';
    return has_word((struct text){folded, length}, text_last_word(plural));
}

static bool is_plural(const struct kitchen *k, struct arena *a, const struct ingredient *line,
                      const struct amount *amount, struct text plural)
{
    if (line->no_unit)
        return false;
    if (is_count(amount))
        return ratio_compare(amount->max, RATIO(1)) > 0;
    return (line->several && measures(k, amount)) || is_said(a, line, plural);
}

struct text food_counted(const struct kitchen *k, struct arena *a, const struct ingredient *line,
                         const struct amount *amount)
{
    struct text plural = plural_of(k->pack, a, line->food);
    return is_plural(k, a, line, amount, plural) ? plural : line->food;
}
