/* review/server.c: libmicrohttpd's requests -> guard -> session. All requests are answered by one
 * thread, one after the other.
 * SPDX-License-Identifier: MIT */
#include "review/server.h"

#include <errno.h>
#include <netinet/in.h>
#include <stdatomic.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/random.h>
#include <sys/resource.h>

#include "review/answer.h"
#include "review/http.h"

#define HEADERS_MOST 64
/* Seconds without a byte, connections at once, bytes of memory for each one's headers. */
#define IDLE_SECONDS 20u
#define CONNECTIONS_MOST 1500u
#define CONNECTION_BYTES ((size_t) 16 << 10)
/* A body this much too large is not waited for. */
#define BODY_BYTES_ENDURED ((size_t) 16 << 20)

struct server {
    struct MHD_Daemon *daemon;
    struct session *session;
    const struct media *media;
    struct guard guard;
    char address[100];
    atomic_bool opened;
};

/* One request on its way. */
struct exchange {
    struct server *server;
    char *target; /* as it was sent; owned */
    bool judged, too_large;
    size_t received;
    struct verdict verdict;
    struct buffer body;
};

/* ---- the recording */

static void add_media(const struct server *s, struct reply *r)
{
    if (r->status != 200 || !r->body.length)
        return;
    r->body.at[--r->body.length] = 0; /* the last bracket */
    if (s->guard.has_media)
        buffer_format(&r->body, ",\"media\":\"/media/%s\",\"pictures\":%s}", s->guard.media,
                      s->media->pictures ? "true" : "false");
    else
        buffer_put_string(&r->body, ",\"media\":null,\"pictures\":false}");
}

static enum MHD_Result answer_session(struct MHD_Connection *c, struct exchange *x)
{
    struct reply r = {.status = 500};
    struct session *s = x->server->session;
    struct text body = buffer_text(&x->body);
    atomic_store(&x->server->opened, true);
    switch (x->verdict.route->answer) {
    case ANSWER_recipes:
        session_recipes(s, &r);
        add_media(x->server, &r);
        break;
    case ANSWER_words:
        session_words(s, &r);
        break;
    case ANSWER_news:
        session_news(s, &r);
        break;
    case ANSWER_edit:
        session_edit(s, body, &r);
        break;
    case ANSWER_card:
        session_card(s, body, &r);
        break;
    case ANSWER_publish:
        session_publish(s, &r);
        break;
    default:
        reply_error(&r, 500, "nothing answers this");
    }
    return send_reply(c, &r);
}

static enum MHD_Result answer_route(struct MHD_Connection *c, struct exchange *x)
{
    switch (x->verdict.route->answer) {
    case ANSWER_asset:
        return send_asset(c, x->verdict.route->target);
    case ANSWER_media:
        return send_media(c, x->server->media);
    default:
        return answer_session(c, x);
    }
}

/* ---- requests */

struct header_list {
    struct header at[HEADERS_MOST];
    size_t count;
};

static enum MHD_Result keep_header(void *list, enum MHD_ValueKind kind, const char *name,
                                   const char *value)
{
    struct header_list *l = list;
    (void) kind;
    if (l->count < HEADERS_MOST)
        l->at[l->count] = (struct header){text_from(name), text_from(value)};
    l->count++;
    return MHD_YES;
}

static struct verdict judge(const struct exchange *x, struct MHD_Connection *c, const char *method)
{
    struct header_list headers = {.count = 0};
    http.get_connection_values(c, MHD_HEADER_KIND, keep_header, &headers);
    if (headers.count > HEADERS_MOST)
        return (struct verdict){.status = 431, .why = "too many headers"};
    struct request q = {text_from(method), text_from(x->target), headers.at, headers.count};
    return guard_judge(&x->server->guard, &q);
}

static enum MHD_Result take_body(struct exchange *x, const char *bytes, size_t *length)
{
    x->received += *length;
    if (x->received > BODY_BYTES_ENDURED)
        return MHD_NO;
    x->too_large |= x->received > BODY_BYTES_MAX;
    if (!x->too_large)
        buffer_put(&x->body, (struct text){bytes, *length});
    *length = 0;
    return MHD_YES;
}

static enum MHD_Result answer(void *server, struct MHD_Connection *c, const char *url,
                              const char *method, const char *version, const char *upload,
                              size_t *upload_length, void **state)
{
    struct exchange *x = *state;
    (void) server;
    (void) url; /* decoded already; the guard wants it as it was sent */
    (void) version;
    if (!x || !x->target)
        return MHD_NO;
    if (!x->judged) {
        x->judged = true;
        x->verdict = judge(x, c, method);
        /* An answer before the request was read to its end closes the connection: right for a
         * refusal. */
        return x->verdict.status == 200 ? MHD_YES : send_refusal(c, &x->verdict);
    }
    if (*upload_length)
        return take_body(x, upload, upload_length);
    if (x->too_large)
        return send_refusal(c, &(struct verdict){.status = 413, .why = "the body is too large"});
    return answer_route(c, x);
}

/* Called with the target before anything of it is decoded. */
static void *begin_exchange(void *server, const char *target, struct MHD_Connection *c)
{
    struct exchange *x = calloc(1, sizeof *x);
    (void) c;
    if (x) {
        x->server = server;
        x->target = strdup(target);
    }
    return x;
}

static void end_exchange(void *server, struct MHD_Connection *c, void **state,
                         enum MHD_RequestTerminationCode why)
{
    struct exchange *x = *state;
    (void) server;
    (void) c;
    (void) why;
    if (!x)
        return;
    free(x->target);
    buffer_release(&x->body);
    free(x);
    *state = NULL;
}

/* ---- starting */

static bool make_secret(char out[SECRET_LETTERS + 1])
{
    unsigned char bits[SECRET_LETTERS / 2];
    if (getrandom(bits, sizeof bits, 0) != (ssize_t) sizeof bits)
        return false;
    for (size_t i = 0; i < sizeof bits; i++)
        snprintf(out + 2 * i, 3, "%02x", bits[i]);
    return true;
}

/* As many connections as are allowed want as many open files. */
static void raise_files_limit(void)
{
    struct rlimit files;
    rlim_t wanted = 2 * CONNECTIONS_MOST + 100;
    if (getrlimit(RLIMIT_NOFILE, &files) != 0 || files.rlim_cur >= wanted)
        return;
    files.rlim_cur = files.rlim_max < wanted ? files.rlim_max : wanted;
    setrlimit(RLIMIT_NOFILE, &files);
}

static struct MHD_Daemon *listen_at(struct server *s, unsigned port)
{
    struct sockaddr_in here = {.sin_family = AF_INET, .sin_port = htons((uint16_t) port)};
    here.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    return http.start_daemon(
        MHD_USE_EPOLL_INTERNAL_THREAD, 0, NULL, NULL, answer, s, MHD_OPTION_SOCK_ADDR,
        (struct sockaddr *) &here, MHD_OPTION_URI_LOG_CALLBACK, begin_exchange, s,
        MHD_OPTION_NOTIFY_COMPLETED, end_exchange, s, MHD_OPTION_CONNECTION_TIMEOUT, IDLE_SECONDS,
        MHD_OPTION_CONNECTION_LIMIT, CONNECTIONS_MOST, MHD_OPTION_CONNECTION_MEMORY_LIMIT,
        CONNECTION_BYTES, MHD_OPTION_LISTEN_BACKLOG_SIZE, 4096u, MHD_OPTION_STRICT_FOR_CLIENT, 1,
        MHD_OPTION_END);
}

/* The port is known once it listens, and no request is answered before: the guard refuses port 0.
 */
static bool start(struct server *s, unsigned port, struct problems *p)
{
    if (!http_load(p))
        return false;
    if (!make_secret(s->guard.key) || !make_secret(s->guard.media))
        return problem(p, (struct place){0}, "no random numbers can be had: %s", strerror(errno));
    raise_files_limit();
    s->daemon = listen_at(s, port);
    const union MHD_DaemonInfo *info =
        s->daemon ? http.get_daemon_info(s->daemon, MHD_DAEMON_INFO_BIND_PORT) : NULL;
    if (!info)
        return problem(p, (struct place){0}, "cannot listen at 127.0.0.1:%u: %s", port,
                       strerror(errno));
    s->guard.port = info->port;
    snprintf(s->address, sizeof s->address, "http://127.0.0.1:%u/#%s", s->guard.port, s->guard.key);
    return true;
}

struct server *server_start(struct session *session, const struct media *media, unsigned port,
                            struct problems *p)
{
    struct server *s = calloc(1, sizeof *s);
    if (!s) {
        problem(p, (struct place){0}, "no memory is left");
        return NULL;
    }
    s->session = session;
    s->media = media;
    s->guard.has_media = media->file >= 0;
    if (start(s, port, p))
        return s;
    server_stop(s);
    return NULL;
}

void server_stop(struct server *s)
{
    if (s->daemon)
        http.stop_daemon(s->daemon);
    free(s);
}

const char *server_address(const struct server *s)
{
    return s->address;
}

bool server_was_opened(const struct server *s)
{
    return atomic_load(&s->opened);
}
