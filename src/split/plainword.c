/* split/plainword.c
 * SPDX-License-Identifier: MIT */
#include "split/plainword.h"

struct plain_words plain_words_of(const struct pack *k)
{
    return (struct plain_words){pack_table(k, "pronunciations"), pack_table(k, "ordinary-words")};
}

static bool has_word(const struct table *t, struct text key)
{
    return t && table_find(t, key) < t->rows;
}

bool is_plain_word(const struct plain_words *plain, struct text key)
{
    return has_word(plain->sounding, key) || has_word(plain->ordinary, key);
}
