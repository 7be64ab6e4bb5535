/* fuzz/fuzz_read_webvtt.c: the reader on WebVTT.
 * SPDX-License-Identifier: MIT */
#include "read.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    return read_behind("WEBVTT\n\n", data, size);
}
