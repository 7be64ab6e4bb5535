/* review/answer.h: what goes back to the page, with the headers that every answer has.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_REVIEW_ANSWER_H
#define DISHTAKE_REVIEW_ANSWER_H

#include <microhttpd.h>

#include "review/guard.h"
#include "review/media.h"
#include "review/session.h"

/* MHD_NO where the connection can only be closed. */
enum MHD_Result send_refusal(struct MHD_Connection *c, const struct verdict *v);
/* Releases the reply's body. */
enum MHD_Result send_reply(struct MHD_Connection *c, struct reply *r);
/* The page's file at "/" or "/style.css". */
enum MHD_Result send_asset(struct MHD_Connection *c, const char *target);
/* All of it, or the range that the request asks for. */
enum MHD_Result send_media(struct MHD_Connection *c, const struct media *m);

#endif
