/* review/guard.c
 * SPDX-License-Identifier: MIT */
#include "review/guard.h"

#include <stdio.h>
#include <string.h>

const struct route ROUTE_TABLE[] = {
#define ROUTE(method, target, needs, answer, about) \
    {#method, target, about, NEEDS_##needs, ANSWER_##answer},
#include "review/routes.def"
#undef ROUTE
};
const size_t ROUTES = sizeof ROUTE_TABLE / sizeof *ROUTE_TABLE;

#define MEDIA_TARGET "/media/"

static char lower(char c)
{
    return c >= 'A' && c <= 'Z' ? (char) (c - 'A' + 'a') : c;
}

static bool same_name(struct text a, const char *b)
{
    size_t length = strlen(b);
    for (size_t i = 0; i < length && i < a.length; i++)
        if (lower(a.at[i]) != lower(b[i]))
            return false;
    return a.length == length;
}

struct text request_header(const struct request *q, const char *name, size_t *count)
{
    struct text value = TEXT_EMPTY;
    *count = 0;
    for (size_t i = 0; i < q->count; i++)
        if (same_name(q->headers[i].name, name)) {
            value = q->headers[i].value;
            ++*count;
        }
    return value;
}

/* As long for a wrong secret as for the right one. */
static bool same_secret(struct text sent, const char *secret)
{
    unsigned char differ = 0;
    if (sent.length != SECRET_LETTERS)
        return false;
    for (size_t i = 0; i < SECRET_LETTERS; i++)
        differ |= (unsigned char) (sent.at[i] ^ secret[i]);
    return differ == 0;
}

/* This machine by the names that a browser has for it. A name of somebody's own that leads here
 * (DNS rebinding) is none. */
static bool is_this_server(const struct guard *g, struct text sent, const char *before)
{
    static const char *const NAMES[] = {"127.0.0.1", "localhost", "[::1]"};
    char known[64];
    for (size_t i = 0; i < sizeof NAMES / sizeof *NAMES; i++) {
        snprintf(known, sizeof known, "%s%s:%u", before, NAMES[i], g->port);
        if (text_is(sent, known))
            return true;
    }
    return false;
}

static bool host_fits(const struct guard *g, const struct request *q)
{
    size_t count;
    struct text host = request_header(q, "Host", &count);
    return count == 1 && is_this_server(g, host, "");
}

/* Headers of which a second one could be read by somebody else than the first. */
static bool are_single(const struct request *q)
{
    static const char *const NAMES[] = {
        "Origin",         "Sec-Fetch-Site",    "Sec-Fetch-Mode", "Sec-Fetch-Dest", "Content-Type",
        "Content-Length", "Transfer-Encoding", SECRET_HEADER,    "Range"};
    size_t count;
    for (size_t i = 0; i < sizeof NAMES / sizeof *NAMES; i++) {
        request_header(q, NAMES[i], &count);
        if (count > 1)
            return false;
    }
    return true;
}

static bool is_media(const struct guard *g, struct text target)
{
    size_t before = sizeof MEDIA_TARGET - 1;
    return g->has_media && text_starts(target, MEDIA_TARGET)
           && same_secret(text_slice(target, before, target.length), g->media);
}

static bool is_target(const struct guard *g, const struct route *r, struct text target)
{
    return r->answer == ANSWER_media ? is_media(g, target) : text_is(target, r->target);
}

/* HEAD is GET without a body. */
static bool is_method(const struct route *r, struct text method)
{
    return text_is(method, r->method) || (text_is(method, "HEAD") && strcmp(r->method, "GET") == 0);
}

static bool is_link_to_page(const struct request *q, const struct route *r)
{
    size_t count;
    struct text mode = request_header(q, "Sec-Fetch-Mode", &count);
    struct text dest = request_header(q, "Sec-Fetch-Dest", &count);
    return strcmp(r->target, "/") == 0 && text_is(mode, "navigate") && text_is(dest, "document");
}

/* A browser says where a request comes from; an older one, or none, says nothing. The page itself,
 * which holds no secret, may be led to from anywhere, since that is how the program opens it. */
static bool site_fits(const struct request *q, const struct route *r)
{
    size_t count;
    struct text site = request_header(q, "Sec-Fetch-Site", &count);
    if (!count || text_is(site, "same-origin"))
        return true;
    if (r->needs == NEEDS_NOTHING && text_is(site, "none"))
        return true;
    return is_link_to_page(q, r);
}

/* Compared with the fixed list and never with Host: a rebound page sends both alike. What writes
 * must say where it is from. */
static bool origin_fits(const struct guard *g, const struct request *q, const struct route *r)
{
    size_t count;
    struct text origin = request_header(q, "Origin", &count);
    if (!count)
        return r->needs != NEEDS_BODY;
    return is_this_server(g, origin, "http://");
}

static bool is_json(struct text type)
{
    struct text kind = text_trim(text_slice(type, 0, text_find(type, ';', 0)));
    struct text rest = text_slice(type, text_find(type, ';', 0), type.length);
    return same_name(kind, "application/json")
           && (!rest.length
               || same_name(text_trim(text_slice(rest, 1, rest.length)), "charset=utf-8"));
}

/* Digits only; false where it is none or too large a number. */
static bool read_length(struct text t, size_t *n)
{
    *n = 0;
    if (!t.length || t.length > 12)
        return false;
    for (size_t i = 0; i < t.length; i++) {
        if (t.at[i] < '0' || t.at[i] > '9')
            return false;
        *n = *n * 10 + (size_t) (t.at[i] - '0');
    }
    return true;
}

static struct verdict refused(unsigned status, const char *why)
{
    return (struct verdict){.status = status, .why = why};
}

static struct verdict judge_length(const struct request *q, const struct route *r)
{
    size_t lengths, codings, length = 0;
    struct text sent = request_header(q, "Content-Length", &lengths);
    struct text coding = request_header(q, "Transfer-Encoding", &codings);
    if (lengths && codings)
        return refused(400, "a length and a transfer encoding at once");
    if (codings && !same_name(coding, "chunked"))
        return refused(400, "an unknown transfer encoding");
    if (lengths && !read_length(sent, &length))
        return refused(400, "the length is no number");
    if (r->needs != NEEDS_BODY && (length || codings))
        return refused(400, "a body where none belongs");
    if (length > BODY_BYTES_MAX)
        return refused(413, "the body is too large");
    return (struct verdict){.status = 200, .route = r};
}

static struct verdict judge_key(const struct guard *g, const struct request *q,
                                const struct route *r)
{
    size_t count;
    struct text type = request_header(q, "Content-Type", &count);
    if (r->needs != NEEDS_NOTHING
        && !same_secret(request_header(q, SECRET_HEADER, &(size_t){0}), g->key))
        return refused(403, "open the address that dishtake printed");
    if (r->needs == NEEDS_BODY && (!count || !is_json(type)))
        return refused(415, "only application/json is taken");
    return judge_length(q, r);
}

static struct verdict judge_route(const struct guard *g, const struct request *q,
                                  const struct route *r)
{
    if (!site_fits(q, r) || !origin_fits(g, q, r))
        return refused(403, "this comes from another page");
    if (!is_method(r, q->method)) {
        struct verdict v = refused(405, "not that way");
        v.allow = strcmp(r->method, "GET") == 0 ? "GET, HEAD" : "POST";
        return v;
    }
    return judge_key(g, q, r);
}

struct verdict guard_judge(const struct guard *g, const struct request *q)
{
    if (!host_fits(g, q))
        return refused(403, NULL);
    if (!are_single(q))
        return refused(400, "a header that may be sent once was sent twice");
    for (size_t i = 0; i < ROUTES; i++)
        if (is_target(g, &ROUTE_TABLE[i], q->target))
            return judge_route(g, q, &ROUTE_TABLE[i]);
    return refused(404, "there is nothing here");
}
