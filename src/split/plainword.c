/* split/plainword.c
 * SPDX-License-Identifier: MIT */
#include "split/plainword.h"

/* A column of the table of words of titles. */
#define STANDS 1

struct plain_words plain_words_of(const struct pack *k)
{
    return (struct plain_words){pack_table(k, "pronunciations"), pack_table(k, "ordinary-words"),
                                pack_table(k, "rare-words"), pack_table(k, "names"),
                                pack_table(k, "title-words")};
}

static bool has_word(const struct table *t, struct text key)
{
    return t && table_find(t, key) < t->rows;
}

static struct text before_apostrophe(struct text key)
{
    return text_slice(key, 0, text_find(key, '\'', 0));
}

bool is_common_word(const struct plain_words *plain, struct text key)
{
    return has_word(plain->sounding, key) || has_word(plain->ordinary, key);
}

/* What the table of words of titles has it as. */
static enum plain_kind kind_in_titles(const struct table *t, struct text key)
{
    size_t row = t ? table_find(t, key) : 0;
    if (!t || row >= t->rows)
        return NO_PLAIN_WORD;
    struct text stands = table_cell(t, row, STANDS);
    return text_is(stands, "before") ? BEGINS_TITLES
           : text_is(stands, "last") ? ENDS_TITLES
                                     : IN_TITLES;
}

enum plain_kind plain_kind_of(const struct plain_words *plain, struct text key)
{
    enum plain_kind in_titles = kind_in_titles(plain->titles, key);
    if (in_titles != NO_PLAIN_WORD)
        return in_titles;
    if (is_common_word(plain, key))
        return PLAIN_WORD; /* "couldn't" */
    key = before_apostrophe(key);
    if (is_common_word(plain, key) || has_word(plain->rare, key))
        return PLAIN_WORD;
    return has_word(plain->names, key) ? PROPER_NAME : NO_PLAIN_WORD;
}

bool is_plain_word(const struct plain_words *plain, struct text key)
{
    return plain_kind_of(plain, key) != NO_PLAIN_WORD;
}
