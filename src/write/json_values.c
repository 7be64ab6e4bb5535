/* write/json_values.c
 * SPDX-License-Identifier: MIT */
#include "write/json_values.h"

void json_put_id(struct json *j, char kind, size_t id)
{
    char name[1 + DIGITS_MOST] = {kind};
    json_put_text(j, (struct text){name, 1 + text_digits(id, name + 1)});
}

void json_key_dish(struct json *j, const char *key, const struct recording *r, size_t dish)
{
    json_key(j, key);
    if (dish < r->dishes.count)
        json_put_id(j, ID_DISH, r->dishes.at[dish].id);
    else
        json_put_null(j);
}

void json_key_words(struct json *j, const char *key, struct span words)
{
    json_key(j, key);
    if (span_is_empty(words)) {
        json_put_null(j);
        return;
    }
    unsigned spread = j->spread;
    j->spread = 0;
    json_open(j, '[');
    json_put_whole(j, words.first);
    json_put_whole(j, words.last);
    json_close(j, ']');
    j->spread = spread;
}

void json_key_texts(struct json *j, const char *key, const text_list *list)
{
    json_key(j, key);
    json_open(j, '[');
    for (size_t i = 0; i < list->count; i++)
        json_put_text(j, list->at[i]);
    json_close(j, ']');
}

void json_finding_begins(struct json *j, const struct recording *r, const struct finding *f)
{
    json_key_text(j, "kind", f->kind);
    json_key_string(j, "level", level_name(f->level));
    json_key_dish(j, "dish", r, f->dish);
    json_key_seconds(j, "at", f->at);
}

void json_finding_words(struct json *j, const struct finding *f)
{
    json_key_text_or_null(j, "about", f->about);
    json_key_text_or_null(j, "said", f->said);
    json_key_text(j, "why", f->why);
    json_key_text_or_null(j, "suggest", f->suggest);
    json_key_text_or_null(j, "source", f->source);
    json_key_bool(j, "dismissed", f->dismissed);
}
