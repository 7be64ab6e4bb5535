/* review/session.h: one recording being reviewed: its transcript, the cook's edits on disk, the
 * recipes that come of both. Nothing is told to be saved before it is.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_REVIEW_SESSION_H
#define DISHTAKE_REVIEW_SESSION_H

#include "disk/save.h"
#include "dishtake.h"

/* The name of a state of the edits, with a NUL. */
#define REVISION_LETTERS 17

struct session {
    struct dishtake *d; /* borrowed; holds what was read last */
    const char *name;   /* of the transcript; borrowed */
    struct buffer bytes;
    struct kept edits;
    struct buffer told;                   /* the recipes that a page was given last */
    char told_revision[REVISION_LETTERS]; /* and the state of the edits then */
    bool usable;                          /* the edits file, as it is on the disk now, was read */
    struct dishtake_read_options options;
};

/* Reads transcript and edits. False, with problems, when one of them cannot be used. session_close
 * in either case. */
bool session_open(struct session *s, struct dishtake *d, const char *name,
                  const struct dishtake_read_options *options, struct problems *p);
void session_close(struct session *s);

/* What the page gets: an HTTP status, and JSON. */
struct reply {
    unsigned status;
    struct buffer body;
};

void session_recipes(struct session *s, struct reply *r);
void session_words(struct session *s, struct reply *r);
/* Whether there are edits that another page or program made. */
void session_news(struct session *s, struct reply *r);
/* {"revision": of the page, "edit": {...}}. Answers with the recipes once the edit is on the disk;
 * what the page of that revision has already is told by its place (delta.h). */
void session_edit(struct session *s, struct text asked, struct reply *r);
/* {"dish": N, "units": "us", "metric" or "both", "times": "1/2"}: its card as plain text. */
void session_card(struct session *s, struct text asked, struct reply *r);

/* {}: writes everything to publish into a folder beside the transcript, "evening-published".
 * Refused with 409 while something unsafe stands unanswered. */
void session_publish(struct session *s, struct reply *r);

/* Takes over what another program wrote. False, with a reply, when that cannot be used: then
 * nothing is written either. */
bool session_look(struct session *s, struct reply *r);
/* The last error that reading or writing told; else `otherwise`. */
const char *session_message(const struct dishtake *d, const char *otherwise);
void reply_error(struct reply *r, unsigned status, const char *why);

#endif
