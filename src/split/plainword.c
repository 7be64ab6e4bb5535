/* split/plainword.c
 * SPDX-License-Identifier: MIT */
#include "split/plainword.h"

struct plain_words plain_words_of(const struct pack *k)
{
    return (struct plain_words){pack_table(k, "pronunciations"), pack_table(k, "ordinary-words"),
                                pack_table(k, "rare-words"), pack_table(k, "names")};
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

enum plain_kind plain_kind_of(const struct plain_words *plain, struct text key)
{
    key = before_apostrophe(key);
    if (is_common_word(plain, key) || has_word(plain->rare, key))
        return PLAIN_WORD;
    return has_word(plain->names, key) ? PROPER_NAME : NO_PLAIN_WORD;
}

bool is_plain_word(const struct plain_words *plain, struct text key)
{
    return plain_kind_of(plain, key) != NO_PLAIN_WORD;
}
