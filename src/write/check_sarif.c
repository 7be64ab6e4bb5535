/* write/check_sarif.c: findings in the Static Analysis Results Interchange Format 2.1.0 (OASIS
 * standard, 27 March 2020), which editors and build servers read.
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <string.h>

#include "write/json_print.h"
#include "write/place.h"
#include "write/write.h"

#define SPREAD_DEPTH 5

/* The standard has three levels; `kind` keeps ours apart in the properties. */
static const char *sarif_level(enum finding_level level)
{
    static const char *const NAMES[] = {"note", "note", "warning", "error"};
    return NAMES[level];
}

/* A file name as a relative URI (RFC 3986): what is neither unreserved nor a slash is written %41.
 */
static struct text uri(struct arena *a, const char *name)
{
    static const char KEPT[] =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~/";
    struct text t = text_from(name);
    char *out = arena_alloc(a, 3 * t.length + 1);
    size_t length = 0;
    for (size_t i = 0; i < t.length; i++) {
        if (strchr(KEPT, t.at[i]))
            out[length++] = t.at[i];
        else
            length += (size_t) snprintf(out + length, 4, "%%%02X", (unsigned char) t.at[i]);
    }
    return (struct text){out, length};
}

static void put_message(struct json *j, const struct writing *w, const struct finding *f)
{
    json_key(j, "message");
    json_open(j, '{');
    json_key_text(j, "text", arena_format(w->scratch, "%.*s %.*s", TEXT(f->why), TEXT(f->suggest)));
    json_close(j, '}');
}

static void put_region(struct json *j, const struct recording *r, const struct finding *f)
{
    unsigned line, column;
    if (!finding_place(r, f, &line, &column))
        return;
    json_key(j, "region");
    json_open(j, '{');
    json_key_whole(j, "startLine", line);
    json_key_whole(j, "startColumn", column_characters(r, line, column));
    json_close(j, '}');
}

static void put_location(struct json *j, const struct recording *r, const struct writing *w,
                         const struct finding *f)
{
    json_key(j, "locations");
    json_open(j, '[');
    json_open(j, '{');
    json_key(j, "physicalLocation");
    json_open(j, '{');
    json_key(j, "artifactLocation");
    json_open(j, '{');
    json_key_text(j, "uri", uri(w->scratch, r->file));
    json_close(j, '}');
    put_region(j, r, f);
    json_close(j, '}');
    json_close(j, '}');
    json_close(j, ']');
}

static void put_properties(struct json *j, const struct recording *r, const struct finding *f)
{
    json_key(j, "properties");
    json_open(j, '{');
    json_key_string(j, "level", level_name(f->level));
    json_key_seconds(j, "seconds", f->at);
    if (f->dish < r->dishes.count) {
        json_key_text(j, "dish", r->dishes.at[f->dish].title);
    }
    if (f->source.length) {
        json_key_text(j, "source", f->source);
    }
    json_close(j, '}');
}

static void put_result(struct json *j, const struct recording *r, const struct writing *w,
                       const struct finding *f)
{
    json_open(j, '{');
    json_key_text(j, "ruleId", f->kind);
    json_key_string(j, "level", sarif_level(f->level));
    put_message(j, w, f);
    put_location(j, r, w, f);
    if (f->dismissed) {
        json_key(j, "suppressions");
        json_open(j, '[');
        json_open(j, '{');
        json_key_string(j, "kind", "external");
        json_close(j, '}');
        json_close(j, ']');
    }
    put_properties(j, r, f);
    json_close(j, '}');
}

static bool kind_before(const struct recording *r, size_t n)
{
    for (size_t i = 0; i < n; i++)
        if (text_equal(r->findings.at[i].kind, r->findings.at[n].kind))
            return true;
    return false;
}

/* The standard wants each rule once. */
static void put_tool(struct json *j, const struct recording *r)
{
    json_key(j, "tool");
    json_open(j, '{');
    json_key(j, "driver");
    json_open(j, '{');
    json_key_string(j, "name", "dishtake");
    json_key(j, "rules");
    json_open(j, '[');
    for (size_t i = 0; i < r->findings.count; i++) {
        if (kind_before(r, i))
            continue;
        json_open(j, '{');
        json_key_text(j, "id", r->findings.at[i].kind);
        json_close(j, '}');
    }
    json_close(j, ']');
    json_close(j, '}');
    json_close(j, '}');
}

bool write_check_sarif(const struct recording *r, const struct writing *w, struct buffer *out,
                       struct problems *p)
{
    (void) p;
    struct json j = {.out = out, .spread = w->one_line ? 0 : SPREAD_DEPTH};
    json_open(&j, '{');
    json_key_string(&j, "version", "2.1.0");
    json_key(&j, "runs");
    json_open(&j, '[');
    json_open(&j, '{');
    put_tool(&j, r);
    json_key_string(&j, "columnKind", "unicodeCodePoints");
    json_key(&j, "results");
    json_open(&j, '[');
    for (size_t i = 0; i < r->findings.count; i++)
        if (dish_wanted(w, r->findings.at[i].dish))
            put_result(&j, r, w, &r->findings.at[i]);
    json_close(&j, ']');
    json_close(&j, '}');
    json_close(&j, ']');
    json_close(&j, '}');
    buffer_put_char(out, '\n');
    return true;
}
