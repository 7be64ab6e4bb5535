/* pack/packs.h: packs written into tests and fuzz inputs as one text, whose lines "== NAME" begin
 * files.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TESTS_PACK_PACKS_H
#define DISHTAKE_TESTS_PACK_PACKS_H

#include <stdlib.h>
#include <string.h>

#include "base/buffer.h"
#include "pack/pack.h"

#define PACK_TEST_FILES 16

/* Each file is a block of its own size, so that sanitizers see a read past its end. */
struct test_pack {
    struct pack_file files[PACK_TEST_FILES];
    char *names[PACK_TEST_FILES];
    char *bytes[PACK_TEST_FILES];
    size_t count;
    struct problems problems;
    struct pack *pack;
};

static inline void test_pack_add(struct test_pack *t, struct text name, struct text bytes)
{
    char *name_copy = malloc(name.length + 1), *copy = malloc(bytes.length ? bytes.length : 1);
    if (!name_copy || !copy)
        abort();
    memcpy(name_copy, name.at, name.length);
    name_copy[name.length] = '\0';
    if (bytes.length)
        memcpy(copy, bytes.at, bytes.length);
    t->names[t->count] = name_copy;
    t->bytes[t->count] = copy;
    t->files[t->count++] = (struct pack_file){name_copy, {copy, bytes.length}};
}

/* The offset of the next line that begins with "== ", at or after `from`. */
static inline size_t test_pack_head(struct text t, size_t from)
{
    while (from < t.length && !text_starts(text_slice(t, from, t.length), "== ")) {
        from = text_find(t, '\n', from);
        from += from < t.length;
    }
    return from;
}

static inline void test_pack_open(struct test_pack *t, struct text text)
{
    *t = (struct test_pack){0};
    size_t head = test_pack_head(text, 0);
    while (head < text.length && t->count < PACK_TEST_FILES) {
        size_t end = text_find(text, '\n', head),
               next = test_pack_head(text, end + (end < text.length));
        test_pack_add(t, text_slice(text, head + 3, end), text_slice(text, end + 1, next));
        head = next;
    }
    t->pack = pack_load(t->files, t->count, &t->problems);
}

static inline void test_pack_close(struct test_pack *t)
{
    pack_free(t->pack);
    problems_release(&t->problems);
    for (size_t i = 0; i < t->count; i++) {
        free(t->names[i]);
        free(t->bytes[i]);
    }
}

#endif
