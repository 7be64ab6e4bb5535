/* write/check_json.c: findings as JSON, with a summary by dish.
 * SPDX-License-Identifier: MIT */
#include "write/json_values.h"
#include "write/place.h"

#define SPREAD_DEPTH 3

static void put_place(struct json *j, const struct recording *r, const struct finding *f)
{
    unsigned line, column;
    if (!finding_place(r, f, &line, &column))
        return;
    json_key_whole(j, "line", line);
    json_key_whole(j, "column", column);
}

static void put_finding(struct json *j, const struct recording *r, const struct finding *f)
{
    json_open(j, '{');
    json_finding_begins(j, r, f);
    put_place(j, r, f);
    json_finding_words(j, f);
    json_close(j, '}');
}

/* How many open findings of each level the dish has. */
static void put_counts(struct json *j, const struct recording *r, size_t dish)
{
    json_open(j, '{');
    json_key_dish(j, "dish", r, dish);
    json_key_text_or_null(j, "title", r->dishes.at[dish].title);
    for (int level = LEVEL_STOP; level >= LEVEL_NOTE; level--) {
        size_t from = open_findings(r, dish, (enum finding_level) level);
        size_t above =
            level < LEVEL_STOP ? open_findings(r, dish, (enum finding_level)(level + 1)) : 0;
        json_key_whole(j, level_name((enum finding_level) level), from - above);
    }
    json_close(j, '}');
}

bool write_check_json(const struct recording *r, const struct writing *w, struct buffer *out,
                      struct problems *p)
{
    (void) p;
    struct json j = {.out = out, .spread = w->one_line ? 0 : SPREAD_DEPTH};
    json_open(&j, '{');
    json_key_string(&j, "format", "dishtake findings 1");
    json_key_string(&j, "file", r->file);
    json_key_text(&j, "note", PHRASE_0(w, check_silence));
    json_key(&j, "dishes");
    json_open(&j, '[');
    for (size_t i = 0; i < r->dishes.count; i++)
        if (dish_wanted(w, i))
            put_counts(&j, r, i);
    json_close(&j, ']');
    json_key(&j, "findings");
    json_open(&j, '[');
    for (size_t i = 0; i < r->findings.count; i++)
        if (dish_wanted(w, r->findings.at[i].dish))
            put_finding(&j, r, &r->findings.at[i]);
    json_close(&j, ']');
    json_close(&j, '}');
    buffer_put_char(out, '\n');
    return true;
}
