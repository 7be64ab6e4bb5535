/* edits/print.c: struct edits -> the file's bytes.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "edits/edits.h"

static int put_bytes(const char *bytes, size_t length, void *out)
{
    buffer_put(out, (struct text){bytes, length});
    return 0;
}

static bool put_json(const json_t *value, struct buffer *out)
{
    size_t flags = JSON_REAL_PRECISION(15) | JSON_ENCODE_ANY | JSON_COMPACT;
    return value && json_dump_callback(value, put_bytes, out, flags) == 0;
}

static bool put_list(const json_t *list, struct buffer *out)
{
    bool done = true;
    size_t count = json_array_size(list);
    buffer_put_char(out, '[');
    for (size_t i = 0; i < count; i++) {
        buffer_put_string(out, i ? ",\n  " : "\n  ");
        done &= put_json(json_array_get(list, i), out);
    }
    buffer_put_string(out, count ? "\n]" : "]");
    return done;
}

static void put_key(const char *key, struct buffer *out)
{
    json_t *string = json_string(key);
    put_json(string, out);
    json_decref(string);
    buffer_put_string(out, ": ");
}

bool edits_print(json_t *root, struct buffer *out)
{
    bool done = true, first = true;
    const char *key;
    json_t *value;
    buffer_put_char(out, '{');
    json_object_foreach(root, key, value)
    {
        buffer_put_string(out, first ? "\n" : ",\n");
        put_key(key, out);
        done &= strcmp(key, "edits") == 0 ? put_list(value, out) : put_json(value, out);
        first = false;
    }
    buffer_put_string(out, "\n}\n");
    return done && !out->failed;
}
