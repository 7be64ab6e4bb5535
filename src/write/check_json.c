/* write/check_json.c: findings as JSON, with a summary by dish.
 * SPDX-License-Identifier: MIT */
#include "write/json_print.h"
#include "write/place.h"
#include "write/write.h"

#define SPREAD_DEPTH 3

static void key_text(struct json *j, const char *key, struct text t)
{
    json_key(j, key);
    json_put_text_or_null(j, t);
}

static void put_dish_id(struct json *j, const struct recording *r, const struct writing *w,
                        size_t dish)
{
    json_key(j, "dish");
    if (dish < r->dishes.count)
        json_put_text(j, arena_format(w->scratch, "%c%zu", ID_DISH, r->dishes.at[dish].id));
    else
        json_put_null(j);
}

static void put_place(struct json *j, const struct recording *r, const struct finding *f)
{
    unsigned line, column;
    if (!finding_place(r, f, &line, &column))
        return;
    json_key(j, "line");
    json_put_whole(j, line);
    json_key(j, "column");
    json_put_whole(j, column);
}

static void put_finding(struct json *j, const struct recording *r, const struct writing *w,
                        const struct finding *f)
{
    json_open(j, '{');
    key_text(j, "kind", f->kind);
    json_key(j, "level");
    json_put_string(j, level_name(f->level));
    put_dish_id(j, r, w, f->dish);
    json_key(j, "at");
    json_put_seconds(j, f->at);
    put_place(j, r, f);
    key_text(j, "about", f->about);
    key_text(j, "said", f->said);
    key_text(j, "why", f->why);
    key_text(j, "suggest", f->suggest);
    key_text(j, "source", f->source);
    json_key(j, "dismissed");
    json_put_bool(j, f->dismissed);
    json_close(j, '}');
}

/* How many findings of each level the dish has; FINDING_NO_DISH + 1 == 0 never comes here. */
static void put_counts(struct json *j, const struct recording *r, const struct writing *w,
                       size_t dish)
{
    json_open(j, '{');
    put_dish_id(j, r, w, dish);
    key_text(j, "title", r->dishes.at[dish].title);
    for (int level = LEVEL_STOP; level >= LEVEL_NOTE; level--) {
        size_t from = open_findings(r, dish, (enum finding_level) level);
        size_t above =
            level < LEVEL_STOP ? open_findings(r, dish, (enum finding_level)(level + 1)) : 0;
        json_key(j, level_name((enum finding_level) level));
        json_put_whole(j, from - above);
    }
    json_close(j, '}');
}

bool write_check_json(const struct recording *r, const struct writing *w, struct buffer *out,
                      struct problems *p)
{
    (void) p;
    struct json j = {.out = out, .spread = w->one_line ? 0 : SPREAD_DEPTH};
    json_open(&j, '{');
    json_key(&j, "format");
    json_put_string(&j, "dishtake findings 1");
    json_key(&j, "file");
    json_put_string(&j, r->file);
    json_key(&j, "note");
    json_put_text(&j, PHRASE_PLAIN(w->kitchen, w->scratch, check_silence));
    json_key(&j, "dishes");
    json_open(&j, '[');
    for (size_t i = 0; i < r->dishes.count; i++)
        if (dish_wanted(w, i))
            put_counts(&j, r, w, i);
    json_close(&j, ']');
    json_key(&j, "findings");
    json_open(&j, '[');
    for (size_t i = 0; i < r->findings.count; i++)
        if (dish_wanted(w, r->findings.at[i].dish))
            put_finding(&j, r, w, &r->findings.at[i]);
    json_close(&j, ']');
    json_close(&j, '}');
    buffer_put_char(out, '\n');
    return true;
}
