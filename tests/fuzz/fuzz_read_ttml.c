/* fuzz/fuzz_read_ttml.c: the reader on TTML.
 * SPDX-License-Identifier: MIT */
#include "read.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    return read_behind("", data, size);
}
