/* tests/fuzz/fuzz_list.c: any bytes as the ingredient list of a small recording of two dishes:
 * refused, or read and its findings written.
 * SPDX-License-Identifier: MIT */
#include <stdint.h>
#include <stdlib.h>

#include "dishtake.h"

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);

static const char TALK[] =
    "[0:00] Today we're making a tomato soup. Add two cups of tomatoes. Chop one onion.\n"
    "[0:10] Add salt and simmer for ten minutes. That's our tomato soup.\n"
    "[0:20] Next up we're making rice. Boil one cup of rice. That's our rice.\n";

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    static struct dishtake *d;
    struct dishtake_read_options o = {.size = sizeof o,
                                      .memory = (size_t) 16 << 20,
                                      .list = length ? (const char *) bytes : "",
                                      .list_length = length,
                                      .list_name = "list"};
    size_t written;
    if (!d)
        d = dishtake_new(NULL, 0);
    if (!d)
        abort();
    if (dishtake_read(d, TALK, sizeof TALK - 1, "t", &o) == DISHTAKE_DONE
        && !dishtake_write(d, "findings", "text", NULL, &written))
        abort();
    return 0;
}
