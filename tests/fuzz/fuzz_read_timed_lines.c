/* fuzz/fuzz_read_timed_lines.c: the reader on timed lines.
 * SPDX-License-Identifier: MIT */
#include "read.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    return read_behind("[0:01] a\n", data, size);
}
