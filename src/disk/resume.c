/* disk/resume.c: see resume.h. Nothing is synced: after a power cut the digests tell what is whole.
 * SPDX-License-Identifier: MIT */
#include "disk/resume.h"

#include <errno.h>
#include <fcntl.h>
#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <unistd.h>

#include "base/digest.h"

#define ENDING ".resume"
#define FIRST_LINE "dishtake resume 1 %016" PRIx64 "\n"
#define FIRST_LINE_BYTES 35
#define MARK_BYTES 16 /* of it that every version begins with */
/* Key, digest and length of what follows. */
#define HEAD "%016" PRIx64 " %016" PRIx64 " %016zx\n"
#define HEAD_BYTES 51

struct resume_row {
    uint64_t key, digest;
    size_t at, length; /* of the output, in the file */
};

static bool failed(const struct resume *r, const char *what, struct problems *p)
{
    return problem(p, (struct place){.file = r->name}, "cannot be %s: %s", what, strerror(errno));
}

/* False where the file ends before, or on an error. */
static bool read_at(const struct resume *r, size_t at, char *bytes, size_t length)
{
    while (length) {
        ssize_t n = pread(r->file, bytes, length, (off_t) at);
        if (n < 0 && errno == EINTR)
            continue;
        if (n <= 0)
            return false;
        bytes += n;
        at += (size_t) n;
        length -= (size_t) n;
    }
    return true;
}

static bool write_at(const struct resume *r, size_t at, struct text bytes)
{
    while (bytes.length) {
        ssize_t n = pwrite(r->file, bytes.at, bytes.length, (off_t) at);
        if (n < 0 && errno != EINTR)
            return false;
        size_t put = n > 0 ? (size_t) n : 0;
        bytes = text_slice(bytes, put, bytes.length);
        at += put;
    }
    return true;
}

/* A head is what it says only if it would be written like that again. */
static bool parse_head(const char *head, struct resume_row *row)
{
    char again[HEAD_BYTES + 1];
    char *at;
    row->key = strtoull(head, &at, 16);
    row->digest = strtoull(at, &at, 16);
    row->length = strtoull(at, NULL, 16);
    snprintf(again, sizeof again, HEAD, row->key, row->digest, row->length);
    return strcmp(head, again) == 0;
}

static bool keep(struct resume *r, struct resume_row row)
{
    if (r->count == r->room) {
        size_t room = r->room ? r->room * 2 : 256;
        struct resume_row *more = realloc(r->rows, room * sizeof *more);
        if (!more)
            return false;
        r->rows = more;
        r->room = room;
    }
    r->rows[r->count++] = row;
    return true;
}

/* By key; of one key the latest first. */
static int compare_rows(const void *a, const void *b)
{
    const struct resume_row *x = a, *y = b;
    if (x->key != y->key)
        return x->key < y->key ? -1 : 1;
    return x->at > y->at ? -1 : x->at < y->at;
}

/* All that is there up to what a killed run left half. */
static bool read_rows(struct resume *r, size_t size, struct problems *p)
{
    char head[HEAD_BYTES + 1] = "";
    struct resume_row row;
    while (read_at(r, r->end, head, HEAD_BYTES) && parse_head(head, &row)) {
        row.at = r->end + HEAD_BYTES;
        if (row.length > size - row.at)
            break;
        if (!keep(r, row))
            return problem(p, (struct place){.file = r->name}, "no memory is left");
        r->end = row.at + row.length;
    }
    if (r->count)
        qsort(r->rows, r->count, sizeof *r->rows, compare_rows);
    return ftruncate(r->file, (off_t) r->end) == 0 || failed(r, "written", p);
}

static bool read_file(struct resume *r, uint64_t made_by, struct problems *p)
{
    char first[FIRST_LINE_BYTES + 1], found[FIRST_LINE_BYTES + 1] = "";
    off_t size = lseek(r->file, 0, SEEK_END);
    if (size < 0)
        return failed(r, "read", p);
    snprintf(first, sizeof first, FIRST_LINE, made_by);
    bool whole = read_at(r, 0, found, FIRST_LINE_BYTES);
    if (strncmp(found, first, size < MARK_BYTES ? (size_t) size : MARK_BYTES) != 0)
        return problem(p, (struct place){.file = r->name},
                       "this is not what a run with --resume left; name another output");
    r->end = FIRST_LINE_BYTES;
    if (whole && strcmp(found, first) == 0)
        return read_rows(r, (size_t) size, p);
    r->anew = whole;
    return (ftruncate(r->file, 0) == 0 && write_at(r, 0, text_from(first)))
           || failed(r, "written", p);
}

bool resume_open(struct resume *r, const char *output, uint64_t made_by, struct problems *p)
{
    size_t room = strlen(output) + sizeof ENDING;
    *r = (struct resume){.name = malloc(room), .file = -1};
    if (!r->name)
        return problem(p, (struct place){0}, "no memory is left");
    snprintf(r->name, room, "%s%s", output, ENDING);
    r->file = open(r->name, O_RDWR | O_CREAT | O_CLOEXEC, 0666);
    if (r->file < 0)
        return failed(r, "written", p);
    if (flock(r->file, LOCK_EX | LOCK_NB) != 0)
        return errno == EWOULDBLOCK ? problem(p, (struct place){.file = r->name},
                                              "another run is writing it; let it end")
                                    : failed(r, "locked", p);
    return read_file(r, made_by, p);
}

void resume_close(struct resume *r)
{
    if (r->file >= 0)
        close(r->file);
    free(r->rows);
    free(r->name);
    *r = (struct resume){.file = -1};
}

/* The first row of the key, or where it would be. */
static size_t first_row(const struct resume *r, uint64_t key)
{
    size_t low = 0, high = r->count;
    while (low < high) {
        size_t middle = low + (high - low) / 2;
        if (r->rows[middle].key < key)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

static bool put_row(const struct resume *r, const struct resume_row *row, struct buffer *out)
{
    char *bytes = malloc(row->length + 1);
    bool whole = bytes && read_at(r, row->at, bytes, row->length);
    struct text output = {bytes, row->length};
    whole = whole && digest_add_part(row->key, output) == row->digest;
    if (whole)
        buffer_put(out, output);
    free(bytes);
    return whole;
}

bool resume_find(const struct resume *r, uint64_t key, struct buffer *out)
{
    for (size_t i = first_row(r, key); i < r->count && r->rows[i].key == key; i++)
        if (put_row(r, &r->rows[i], out))
            return true;
    return false;
}

bool resume_add(struct resume *r, uint64_t key, struct text output, struct problems *p)
{
    char head[HEAD_BYTES + 1];
    snprintf(head, sizeof head, HEAD, key, digest_add_part(key, output), output.length);
    if (!write_at(r, r->end, text_from(head)) || !write_at(r, r->end + HEAD_BYTES, output))
        return failed(r, "written", p);
    r->end += HEAD_BYTES + output.length;
    return true;
}
