/* pack/test_memory.c: the memory that a pack may take, at the limit and one byte over it.
 * SPDX-License-Identifier: MIT */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
/* cmocka wants the four above. */
#include <cmocka.h>
#include <stdio.h>

#include "pack/load.h"
#include "packs.h"

#define HEAD "== p/pack.list\nt.tsv\n== p/t.tsv\nname\ttext\nlong\t"

/* What a pack takes in whose one table has a cell of so many letters; 0 where it is refused. */
static size_t pack_with(size_t letters, char message[200])
{
    struct test_pack t;
    size_t length = strlen(HEAD) + letters;
    char *bytes = malloc(length);
    assert_non_null(bytes);
    memcpy(bytes, HEAD, strlen(HEAD));
    memset(bytes + strlen(HEAD), 'x', letters);
    test_pack_open(&t, (struct text){bytes, length});
    free(bytes);
    size_t took = t.pack ? pack_bytes(t.pack).length : 0;
    message[0] = '\0';
    if (!t.pack && t.problems.count)
        snprintf(message, 200, "%s", t.problems.at[0].message);
    test_pack_close(&t);
    return took;
}

/* A letter more takes a byte more, so that a short one tells where the limit lies. */
static void memory_is_bounded(void **state)
{
    const size_t shorter = 100000;
    char message[200];
    (void) state;
    size_t most = PACK_BYTES - pack_with(shorter, message) + shorter;
    assert_int_equal(pack_with(most, message), PACK_BYTES);
    assert_int_equal(pack_with(most + 1, message), 0);
    assert_string_equal(message, "the pack needs more than 256 MB, or memory is short");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(memory_is_bounded),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
