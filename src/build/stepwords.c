/* build/stepwords.c
 * SPDX-License-Identifier: MIT */
#include "build/stepwords.h"

static struct text text_in(const struct table *t, const char *kind, struct text key)
{
    return t ? table_cell(t, table_find_pair(t, text_from(kind), key), STEP_TEXT) : TEXT_EMPTY;
}

struct text step_text(const struct pack *k, const char *kind, struct text key)
{
    return text_in(pack_table(k, "step-words"), kind, key);
}

struct text step_row(const struct builder *b, const char *kind, struct text key)
{
    return text_in(b->step_words, kind, key);
}

struct text step_word(const struct pack *k, const char *key)
{
    return step_text(k, "word", text_from(key));
}

bool step_words_list(const struct pack *k, const char *kind, struct text word)
{
    return step_text(k, kind, word).length > 0;
}

bool is_step_word(const struct builder *b, const struct chunk *c, const char *kind)
{
    return text_in(b->step_words, kind, b->r->words.at[c->last].key).length > 0;
}
