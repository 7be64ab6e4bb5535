/* review/card.c: a dish as it will be printed.
 * SPDX-License-Identifier: MIT */
#include <jansson.h>

#include "review/session.h"
#include "write/json_print.h"

/* Units and scale are checked by the library, which says what would be right. */
static const char *make_card(struct session *s, const json_t *request, size_t *length)
{
    struct dishtake_write_options o = {.size = sizeof o, .at = -1};
    o.dish = (size_t) json_integer_value(json_object_get(request, "dish"));
    o.units = json_string_value(json_object_get(request, "units"));
    o.times = json_string_value(json_object_get(request, "times"));
    return dishtake_write(s->d, "card", "text", &o, length);
}

void session_card(struct session *s, struct text asked, struct reply *r)
{
    json_t *request = json_loadb(asked.at, asked.length, JSON_REJECT_DUPLICATES, NULL);
    struct json j = {.out = &r->body};
    size_t length;
    bool fits = json_integer_value(json_object_get(request, "dish")) > 0;
    const char *card = fits ? make_card(s, request, &length) : NULL;
    json_decref(request);
    if (!card) {
        reply_error(r, fits ? 422 : 400,
                    fits ? session_message(s->d, "no such dish") : "a dish is needed");
        return;
    }
    r->status = 200;
    json_open(&j, '{');
    json_key_text(&j, "card", (struct text){card, length});
    json_close(&j, '}');
}
