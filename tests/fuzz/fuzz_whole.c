/* fuzz/fuzz_whole.c: any bytes through the whole library: read, and written in every form. A small
 * arena, so that its ceiling is met too.
 * SPDX-License-Identifier: MIT */
#include <stdint.h>
#include <stdlib.h>

#include "dishtake.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    static struct dishtake *d; /* the grammar is loaded once */
    struct dishtake_read_options o = {.size = sizeof o, .memory = (size_t) 16 << 20};
    struct dishtake_format f;
    size_t length;
    if (!d)
        d = dishtake_new(NULL, 0);
    if (!d || !dishtake_ready(d))
        abort();
    o.one_dish = size && data[size - 1] % 2;
    o.dishes = size ? data[size - 1] / 2 % 8 : 0;
    if (dishtake_read(d, (const char *) data, size, "fuzz", &o) != DISHTAKE_DONE)
        return 0;
    for (size_t i = 0; dishtake_format(i, &f); i++)
        if (!dishtake_write(d, f.output, f.as, NULL, &length))
            abort();
    return 0;
}
