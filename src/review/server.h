/* review/server.h: the page's server, on 127.0.0.1 only.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_REVIEW_SERVER_H
#define DISHTAKE_REVIEW_SERVER_H

#include "review/guard.h"
#include "review/media.h"
#include "review/session.h"

struct server;

/* Takes nothing: session and media must outlive it. Port 0: a free one. NULL, with a problem, when
 * it cannot listen. server_stop ends it; what was acknowledged is saved already. */
struct server *server_start(struct session *session, const struct media *media, unsigned port,
                            struct problems *p);
void server_stop(struct server *s);
/* "http://127.0.0.1:PORT/#SECRET"; a browser keeps what stands behind '#' to itself. Borrowed. */
const char *server_address(const struct server *s);
/* Whether a page has shown the secret: then it was opened. */
bool server_was_opened(const struct server *s);

#endif
