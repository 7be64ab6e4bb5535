/* fuzz/fuzz_read_json.c: the reader on JSON segments.
 * SPDX-License-Identifier: MIT */
#include "read.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    return read_behind("", data, size);
}
