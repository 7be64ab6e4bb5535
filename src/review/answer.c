/* review/answer.c: answers by libmicrohttpd.
 * SPDX-License-Identifier: MIT */
#include "review/answer.h"

#include <stdio.h>
#include <string.h>
#include <unistd.h>

#include "review/assets.h"
#include "review/http.h"
#include "review/range.h"

/* On every answer, errors included. No script but the page's own files runs, nothing is asked of
 * anybody else, no other page may hold this one in a frame, load its files or see into its window.
 */
static const char *const HEADERS[][2] = {
    {"Content-Security-Policy", "default-src 'none'; script-src 'self'; style-src 'self'; img-src "
                                "'self'; media-src 'self'; connect-src 'self'; "
                                "base-uri 'none'; form-action 'none'; frame-ancestors 'none'"},
    {"X-Content-Type-Options", "nosniff"},
    {"Cross-Origin-Resource-Policy", "same-origin"},
    {"Cross-Origin-Opener-Policy", "same-origin"},
    {"Cross-Origin-Embedder-Policy", "require-corp"},
    {"Referrer-Policy", "no-referrer"},
    {"X-Frame-Options", "DENY"},
    {"Cache-Control", "no-store"},
};

static enum MHD_Result send_response(struct MHD_Connection *c, unsigned status,
                                     struct MHD_Response *response, const char *type)
{
    if (!response)
        return MHD_NO;
    for (size_t i = 0; i < sizeof HEADERS / sizeof *HEADERS; i++)
        http.add_response_header(response, HEADERS[i][0], HEADERS[i][1]);
    if (type)
        http.add_response_header(response, MHD_HTTP_HEADER_CONTENT_TYPE, type);
    enum MHD_Result done = http.queue_response(c, status, response);
    http.destroy_response(response);
    return done;
}

/* libmicrohttpd takes no const; with this mode it copies. */
static struct MHD_Response *copied(struct text t)
{
    union {
        const char *from;
        void *to;
    } bytes = {.from = t.length ? t.at : ""};
    return http.create_response_from_buffer(t.length, bytes.to, MHD_RESPMEM_MUST_COPY);
}

enum MHD_Result send_reply(struct MHD_Connection *c, struct reply *r)
{
    struct text body =
        r->body.failed ? TEXT_OF("{\"error\":\"no memory is left\"}") : buffer_text(&r->body);
    unsigned status = r->body.failed ? 507 : r->status;
    enum MHD_Result done = send_response(c, status, copied(body), "application/json");
    buffer_release(&r->body);
    return done;
}

enum MHD_Result send_refusal(struct MHD_Connection *c, const struct verdict *v)
{
    struct reply r = {.status = v->status};
    if (v->why)
        reply_error(&r, v->status, v->why);
    struct MHD_Response *response = copied(buffer_text(&r.body));
    if (response && v->allow)
        http.add_response_header(response, MHD_HTTP_HEADER_ALLOW, v->allow);
    enum MHD_Result done =
        send_response(c, v->status, response, v->why ? "application/json" : NULL);
    buffer_release(&r.body);
    return done;
}

static const char *type_of(struct text name)
{
    if (text_ends(name, ".js"))
        return "text/javascript; charset=utf-8";
    return text_ends(name, ".css") ? "text/css; charset=utf-8" : "text/html; charset=utf-8";
}

enum MHD_Result send_asset(struct MHD_Connection *c, const char *target)
{
    char name[80];
    size_t count;
    const struct pack_file *files = asset_files(&count);
    snprintf(name, sizeof name, "review/assets%s",
             strcmp(target, "/") == 0 ? "/page.html" : target);
    for (size_t i = 0; i < count; i++)
        if (strcmp(files[i].name, name) == 0)
            return send_response(c, MHD_HTTP_OK, copied(files[i].bytes), type_of(text_from(name)));
    return send_refusal(c, &(struct verdict){.status = 404, .why = "it is not built in"});
}

static enum MHD_Result send_no_range(struct MHD_Connection *c, uint64_t size)
{
    char all[40];
    struct MHD_Response *response = copied(TEXT_EMPTY);
    snprintf(all, sizeof all, "bytes */%llu", (unsigned long long) size);
    if (response)
        http.add_response_header(response, MHD_HTTP_HEADER_CONTENT_RANGE, all);
    return send_response(c, MHD_HTTP_RANGE_NOT_SATISFIABLE, response, NULL);
}

static enum MHD_Result send_part(struct MHD_Connection *c, const struct media *m,
                                 enum range_kind kind, const uint64_t bytes[2], uint64_t size)
{
    char part[80];
    int file = dup(m->file);
    if (file < 0)
        return send_refusal(c, &(struct verdict){.status = 503, .why = "too many files are open"});
    struct MHD_Response *response =
        http.create_response_from_fd_at_offset64(bytes[1] - bytes[0] + 1, file, bytes[0]);
    if (!response) {
        close(file);
        return MHD_NO;
    }
    http.add_response_header(response, MHD_HTTP_HEADER_ACCEPT_RANGES, "bytes");
    snprintf(part, sizeof part, "bytes %llu-%llu/%llu", (unsigned long long) bytes[0],
             (unsigned long long) bytes[1], (unsigned long long) size);
    if (kind == RANGE_PART)
        http.add_response_header(response, MHD_HTTP_HEADER_CONTENT_RANGE, part);
    return send_response(c, kind == RANGE_PART ? 206 : 200, response, m->type);
}

static const char *sent(struct MHD_Connection *c, const char *name)
{
    return http.lookup_connection_value(c, MHD_HEADER_KIND, name);
}

enum MHD_Result send_media(struct MHD_Connection *c, const struct media *m)
{
    uint64_t size = media_size(m), bytes[2] = {0, size ? size - 1 : 0};
    /* If-Range asks for the whole file unless it is still the same one; there is nothing here to
     * tell that by. */
    const char *range = sent(c, MHD_HTTP_HEADER_RANGE);
    enum range_kind kind = RANGE_WHOLE;
    if (range && !sent(c, MHD_HTTP_HEADER_IF_RANGE))
        kind = range_read(text_from(range), size, &bytes[0], &bytes[1]);
    if (kind == RANGE_BAD)
        return send_no_range(c, size);
    if (!size)
        return send_response(c, MHD_HTTP_OK, copied(TEXT_EMPTY), m->type);
    return send_part(c, m, kind, bytes, size);
}
