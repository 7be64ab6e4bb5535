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

bool is_plain_word(const struct plain_words *plain, struct text key)
{
    key = before_apostrophe(key);
    return has_word(plain->sounding, key) || has_word(plain->ordinary, key);
}

/* Whether the table has it, as a word of that kind. */
static bool has_kind(const struct table *t, struct text key, const char *kind)
{
    size_t row = t ? table_find(t, key) : 0;
    return t && row < t->rows && text_is(table_cell(t, row, COLUMN_KIND), kind);
}

bool is_common_word(const struct plain_words *plain, struct text key)
{
    return has_word(plain->sounding, key) || has_kind(plain->ordinary, key, "");
}

bool is_proper_name(const struct plain_words *plain, struct text key)
{
    return has_kind(plain->ordinary, before_apostrophe(key), "name");
}
