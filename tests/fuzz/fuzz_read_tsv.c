/* fuzz/fuzz_read_tsv.c: the reader on tab-separated rows.
 * SPDX-License-Identifier: MIT */
#include "read.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    return read_behind("0\t1\ta\n", data, size);
}
