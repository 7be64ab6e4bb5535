/* disk/save.h: a file that is kept for somebody: read whole, replaced whole, never lost, though two
 * programs keep it at once and either may be killed at any moment. docs/decisions/ has the record
 * of it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_DISK_SAVE_H
#define DISHTAKE_DISK_SAVE_H

#include "base/buffer.h"
#include "base/problem.h"

/* The file as it was last seen. Two programs that keep it lock `guard`, a file that neither of them
 * ever writes, since a lock on the file itself would be lost when it is replaced. */
struct kept {
    char *name;          /* owned */
    int guard;           /* a descriptor */
    bool there;          /* else `bytes` is empty */
    struct buffer bytes; /* owned */
};

/* "evening.srt" -> "evening.edits.json", beside it; malloc, the caller frees. NULL: no memory, or
 * standard input. */
char *edits_name(const char *transcript);

/* Takes `name` and opens the guard; clears away what a killed save left; reads the file, which need
 * not be there. False, with a problem, when it cannot be read or has more than `most` bytes.
 * kept_close in either case. */
bool kept_open(struct kept *f, char *name_take, const char *guard, size_t most, struct problems *p);
void kept_close(struct kept *f);

enum kept_news { KEPT_SAME, KEPT_CHANGED, KEPT_UNREADABLE };
/* Reads the file again if it is not what was last seen; KEPT_CHANGED: `bytes` are new, `old` (may
 * be NULL) gets what they were. On KEPT_UNREADABLE nothing changes. */
enum kept_news kept_look(struct kept *f, size_t most, struct buffer *old, struct problems *p);

enum kept_saved {
    SAVED,
    SAVED_BY_ANOTHER, /* somebody else wrote the file: nothing was written; look at it first */
    SAVED_NOT         /* the old file is whole; a problem says why */
};
/* Replaces the file's bytes, if it still is what was last seen. */
enum kept_saved kept_save(struct kept *f, struct text bytes, struct problems *p);

#endif
