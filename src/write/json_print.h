/* write/json_print.h: JSON, value after value, straight into a buffer. It closes what was opened
 * and puts the commas; the caller gives each value of an object a key.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_JSON_PRINT_H
#define DISHTAKE_WRITE_JSON_PRINT_H

#include "base/buffer.h"
#include "base/ratio.h"

struct json {
    struct buffer *out; /* borrowed */
    unsigned depth;     /* brackets open */
    unsigned spread;    /* down to this depth every value has a line of its own */
    bool first;         /* nothing stands in the innermost bracket yet */
    bool keyed;         /* a key was just written */
    bool in_script; /* of an HTML page: '<', '>' and '&' as \u003c, so that no text ends the script
                     */
};

void json_open(struct json *j, char bracket); /* '{' or '[' */
void json_close(struct json *j, char bracket);
/* A literal of the program, which needs no escaping. */
void json_put_key(struct json *j, struct text key);
static inline void json_key(struct json *j, const char *key)
{
    json_put_key(j, (struct text){key, strlen(key)});
}
/* Escaped; bytes that are no UTF-8 become U+FFFD. */
void json_put_text(struct json *j, struct text t);
void json_put_string(struct json *j, const char *string); /* NULL gives null */
/* At most 15 significant digits, whatever the locale; what is no finite number gives null. */
void json_put_number(struct json *j, double value);
void json_put_seconds(struct json *j, double value); /* to the millisecond */
void json_put_ratio(struct json *j, struct ratio value);
void json_put_whole(struct json *j, size_t value);
void json_put_bool(struct json *j, bool value);
void json_put_null(struct json *j);
/* The text, or null where it is empty. */
void json_put_text_or_null(struct json *j, struct text t);

/* A key and its value. */
#define JSON_KEYED(name, type)                                                      \
    static inline void json_key_##name(struct json *j, const char *key, type value) \
    {                                                                               \
        json_key(j, key);                                                           \
        json_put_##name(j, value);                                                  \
    }
JSON_KEYED(text, struct text)
JSON_KEYED(text_or_null, struct text)
JSON_KEYED(string, const char *)
JSON_KEYED(number, double)
JSON_KEYED(seconds, double)
JSON_KEYED(ratio, struct ratio)
JSON_KEYED(whole, size_t)
JSON_KEYED(bool, bool)
#undef JSON_KEYED

/* A key and an array: put(to, element) writes each element of the list that `list` points at. */
#define JSON_LIST(j, key, list, put, to)           \
    do {                                           \
        json_key((j), (key));                      \
        json_open((j), '[');                       \
        for (size_t i = 0; i < (list)->count; i++) \
            put((to), &(list)->at[i]);             \
        json_close((j), ']');                      \
    } while (0)

#endif
