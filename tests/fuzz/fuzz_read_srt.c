/* fuzz/fuzz_read_srt.c: the reader on SubRip.
 * SPDX-License-Identifier: MIT */
#include "read.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    return read_behind("1\n00:00:00,000 --> 00:00:01,000\n", data, size);
}
