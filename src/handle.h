/* handle.h: the handle that dishtake.h only names; nobody outside src/'s own files includes it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_HANDLE_H
#define DISHTAKE_HANDLE_H

#include "dishtake.h"
#include "pipeline.h"
#include "write/write.h"

/* Of a recording, where the caller names no other ceiling. */
#define MEMORY_BYTES_USUAL ((size_t) 1 << 30)

/* The grammar and what was said of it; shared, read-only, by every handle made from the first one.
 */
struct grammar {
    struct pack *pack;
    struct kitchen *kitchen;
    struct ear *ear; /* ready-made; NULL: each handle makes its own, and the next ones too */
    struct saying_list *sayings;
    struct problems problems;
};

/* The grammar of these files, whose mistakes are its problems; without any, the built-in one. NULL:
 * no memory. grammar_free frees. */
struct grammar *grammar_new(const struct dishtake_file *files, size_t count);
void grammar_free(struct grammar *g);

struct dishtake {
    struct grammar *grammar;
    bool owns_grammar;
    struct matcher *matcher;
    struct ear *ear;
    struct arena arena, scratch; /* of the recording; of one output */
    struct recording recording;
    struct edits *edits;            /* of this recording; owned; NULL without any */
    struct problems edits_problems; /* of their file */
    struct problems problems;       /* of this recording */
    struct means means;             /* that it was read with */
    struct kept kept;               /* where it is to be read with other edits */
    bool keeps;
    const char *edits_name; /* borrowed */
    struct buffer out;
    bool began; /* a recording was asked for: messages are of it, no longer of the grammar */
    bool read;  /* recording is whole */
};

/* The recording goes, and what was said of it; messages are of the next one. */
void handle_forget(struct dishtake *d);
/* Where "us", "uk", ... stand for one; NULL: none of the grammar's, which is a problem. */
const struct profile *handle_profile(struct dishtake *d, const char *name);
/* A caller's options, which begin with their size: what they have of the `room` bytes that there
 * are in this version goes to `to`; the rest is zero. `from` NULL: all of it is. */
void options_take(void *to, size_t room, const void *from);
/* False with a problem where one of them cannot be used. */
bool writing_read(struct writing *w, const struct dishtake_write_options *options,
                  struct problems *p);

#endif
