/* review/http.h: libmicrohttpd, loaded when the page is served and not before: it brings TLS and
 * what that needs, whose loading takes longer than a short recording does.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_REVIEW_HTTP_H
#define DISHTAKE_REVIEW_HTTP_H

#include <microhttpd.h>

#include "base/problem.h"

struct http {
#define HTTP_FUNCTION(name) __typeof__(MHD_##name) *(name);
#include "review/http.def"
#undef HTTP_FUNCTION
};
extern struct http http;

/* Fills in `http`; once is enough, and it is never unloaded. False, with a problem that names the
 * library, when it is not there. */
bool http_load(struct problems *p);

#endif
