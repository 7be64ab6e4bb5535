/* split/plainword.c
 * SPDX-License-Identifier: MIT */
#include "split/plainword.h"

struct plain_words plain_words_of(const struct pack *k)
{
    return (struct plain_words){pack_table(k, "pronunciations"), pack_table(k, "ordinary-words")};
}

/* The columns of ordinary-words. */
enum { COLUMN_WORD, COLUMN_KIND /* empty, "rare" or "name" */ };

static bool has_word(const struct table *t, struct text key)
{
    return t && table_find(t, key) < t->rows;
}

static struct text before_apostrophe(struct text key)
{
    return text_slice(key, 0, text_find(key, '\'', 0));
}

enum plain_kind plain_kind_of(const struct plain_words *plain, struct text key)
{
    const struct table *t = plain->ordinary;
    key = before_apostrophe(key);
    if (has_word(plain->sounding, key))
        return PLAIN_WORD;
    size_t row = t ? table_find(t, key) : 0;
    if (!t || row >= t->rows)
        return NO_PLAIN_WORD;
    return text_is(table_cell(t, row, COLUMN_KIND), "name") ? PROPER_NAME : PLAIN_WORD;
}

bool is_plain_word(const struct plain_words *plain, struct text key)
{
    return plain_kind_of(plain, key) != NO_PLAIN_WORD;
}

bool is_common_word(const struct plain_words *plain, struct text key)
{
    const struct table *t = plain->ordinary;
    if (has_word(plain->sounding, key))
        return true;
    size_t row = t ? table_find(t, key) : 0;
    return t && row < t->rows && !table_cell(t, row, COLUMN_KIND).length;
}
