/* write/json_values.h: values of the model in JSON, alike in every output that has them.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_JSON_VALUES_H
#define DISHTAKE_WRITE_JSON_VALUES_H

#include "model/recording.h"
#include "write/json_print.h"
#include "write/write.h"

/* "d17": a kind of ID_..., and the number of a word. */
void json_put_id(struct json *j, char kind, size_t id);
static inline void json_key_id(struct json *j, const char *key, char kind, size_t id)
{
    json_key(j, key);
    json_put_id(j, kind, id);
}
/* The id of the `dish`th dish; null where a finding is about none. */
void json_key_dish(struct json *j, const char *key, const struct recording *r, size_t dish);
/* [first, last] on one line; null where there are none. */
void json_key_words(struct json *j, const char *key, struct span words);
void json_key_texts(struct json *j, const char *key, const text_list *list);
/* What every finding begins with: its kind, level, dish and second; and what it ends with: its
 * words, and whether the cook dismissed it. What says where it is stands between them. */
void json_finding_begins(struct json *j, const struct recording *r, const struct finding *f);
void json_finding_words(struct json *j, const struct finding *f);

#endif
