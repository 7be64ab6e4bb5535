/* review/guard.h: which requests are let in. Pure: a request in, a verdict out; the server asks
 * before it does anything. docs/review.md has the attacks that each check is for.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_REVIEW_GUARD_H
#define DISHTAKE_REVIEW_GUARD_H

#include "base/text.h"

/* 128 random bits in hexadecimal. */
#define SECRET_LETTERS 32
/* The header that carries the page's secret. */
#define SECRET_HEADER "Dishtake-Key"
/* Bytes of a request's body at most. */
#define BODY_BYTES_MAX ((size_t) 64 << 10)

struct guard {
    unsigned port;
    char key[SECRET_LETTERS + 1]; /* of the page */
    char media[SECRET_LETTERS
               + 1]; /* in the media's address, since a player sends no headers of ours */
    bool has_media;
};

struct header {
    struct text name, value;
};

/* As it was sent. */
struct request {
    struct text method, target;
    const struct header *headers;
    size_t count;
};

enum needs { NEEDS_NOTHING, NEEDS_KEY, NEEDS_BODY };

enum route_answer {
    ANSWER_asset,
    ANSWER_recipes,
    ANSWER_words,
    ANSWER_news,
    ANSWER_edit,
    ANSWER_card,
    ANSWER_publish,
    ANSWER_media
};

struct route {
    const char *method, *target, *about;
    enum needs needs;
    enum route_answer answer;
};
extern const struct route ROUTE_TABLE[];
extern const size_t ROUTES;

/* Status 200: let in, to `route`. Else what to answer, with `why` for the page; 405 has `allow`. */
struct verdict {
    unsigned status;
    const struct route *route;
    const char *why, *allow;
};

struct verdict guard_judge(const struct guard *g, const struct request *q);

/* The value of a header, in any case of letters; `*count` says how often it was sent. */
struct text request_header(const struct request *q, const char *name, size_t *count);

#endif
