/* fuzz/fuzz_read_encoding.c: the reader on any bytes, in any encoding.
 * SPDX-License-Identifier: MIT */
#include "read.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    return read_behind("", data, size);
}
