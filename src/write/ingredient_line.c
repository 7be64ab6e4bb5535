/* write/ingredient_line.c: rules R19 to R28 of the trade: amount, size, food, then a comma and how
 * it is prepared.
 * SPDX-License-Identifier: MIT */
#include "write/ingredient_line.h"

#include <utf8proc.h>

#include "kitchen/plural.h"
#include "write/shown.h"

struct text capital(const struct writing *w, struct text t)
{
    utf8proc_int32_t code;
    utf8proc_uint8_t large[4];
    utf8proc_ssize_t n =
        utf8proc_iterate((const utf8proc_uint8_t *) t.at, (utf8proc_ssize_t) t.length, &code);
    if (n <= 0 || utf8proc_toupper(code) == code)
        return t;
    utf8proc_ssize_t size = utf8proc_encode_char(utf8proc_toupper(code), large);
    return arena_format(w->scratch, "%.*s%.*s", (int) size, (const char *) large,
                        TEXT(text_slice(t, (size_t) n, t.length)));
}

/* Both with a space between; one alone where the other is empty. */
static struct text join(const struct writing *w, struct text a, struct text b)
{
    if (!a.length || !b.length)
        return a.length ? a : b;
    return arena_format(w->scratch, "%.*s %.*s", TEXT(a), TEXT(b));
}

enum { WRITING_WORDS, WRITING_WRITTEN }; /* of the table food-writing */

/* Where the words stand in the name, whole; its length where they do not. */
static size_t find_words(struct text name, struct text words)
{
    for (size_t i = 0; i + words.length <= name.length; i = text_find(name, ' ', i) + 1) {
        const size_t end = i + words.length;
        if (text_equal(text_slice(name, i, end), words)
            && (end == name.length || name.at[end] == ' '))
            return i;
    }
    return name.length;
}

struct text food_written(const struct writing *w, struct text name)
{
    const struct table *t = pack_table(w->kitchen->pack, "food-writing");
    for (size_t row = 0; t && row < t->rows; row++) {
        struct text words = table_cell(t, row, WRITING_WORDS);
        size_t at = find_words(name, words);
        if (at < name.length)
            name = arena_format(w->scratch, "%.*s%.*s%.*s", (int) at, name.at,
                                TEXT(table_cell(t, row, WRITING_WRITTEN)),
                                TEXT(text_slice(name, at + words.length, name.length)));
    }
    return name;
}

struct text food_name(const struct writing *w, const struct ingredient *in,
                      const struct amount *amount)
{
    struct text name = food_counted(w->kitchen, w->scratch, in, amount);
    for (size_t i = 0; i < in->alternatives.count; i++)
        name = PHRASE_2(w, card_or, name, in->alternatives.at[i]);
    return food_written(w, name);
}

static bool is_one_word(struct text t)
{
    return text_find(t, ' ', 0) == t.length;
}

/* A short state stands before the food ("ripe tomato"), a long one behind it ("butter, at room
 * temperature"). */
static struct text with_states(const struct writing *w, const struct ingredient *in,
                               struct text food)
{
    for (size_t i = in->state.count; i--;)
        if (is_one_word(in->state.at[i]))
            food = join(w, in->state.at[i], food);
    food = join(w, in->size, food);
    return food;
}

static struct text with_preparation(const struct writing *w, const struct ingredient *in,
                                    struct text line)
{
    for (size_t i = 0; i < in->state.count; i++)
        if (!is_one_word(in->state.at[i]))
            line = PHRASE_2(w, card_comma, line, in->state.at[i]);
    for (size_t i = 0; i < in->prep.count; i++)
        line = i && i + 1 == in->prep.count ? PHRASE_2(w, and, line, in->prep.at[i])
                                            : PHRASE_2(w, card_comma, line, in->prep.at[i]);
    return line;
}

/* What is said of the whole line, at its end. */
static struct text with_notes(const struct writing *w, const struct ingredient *in,
                              struct text line, bool known, const struct shopping_line *sum)
{
    if (sum && sum->plus_more && known)
        line = PHRASE_1(w, plus_more, line);
    else if (sum && sum->divided && known)
        line = PHRASE_1(w, divided, line);
    if (in->to_taste)
        line = known ? PHRASE_1(w, card_or_taste, line) : PHRASE_1(w, card_taste, line);
    bool unheard = !known && !in->to_taste && in->role == ROLE_INGREDIENT;
    if (in->optional && unheard)
        line = PHRASE_1(w, card_optional_unheard, line);
    else if (in->optional)
        line = PHRASE_1(w, card_optional, line);
    else if (unheard)
        line = PHRASE_1(w, card_unheard, line);
    if (in->no_unit)
        line = PHRASE_1(w, card_no_unit, line);
    return line;
}

struct text ingredient_line(const struct writing *w, const struct ingredient *in,
                            const struct shopping_line *sum)
{
    const struct amount *amount = sum && sum->amount.known ? &sum->amount : &in->amount;
    struct text much = shown_amount(w, in, sum);
    struct text line = join(w, much, with_states(w, in, food_name(w, in, amount)));
    line = with_preparation(w, in, line);
    return capital(w, with_notes(w, in, line, much.length > 0, sum));
}
