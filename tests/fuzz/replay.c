/* fuzz/replay.c: a fuzz target without the fuzzer: runs it on each file named, so that `make test`,
 * which needs no clang, meets every seed and everything that ever broke it.
 * SPDX-License-Identifier: MIT */
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

#define BYTES_MOST ((size_t) 4 << 20)

int main(int argc, char **argv)
{
    for (int i = 1; i < argc; i++) {
        FILE *file = fopen(argv[i], "rb");
        uint8_t *data = malloc(BYTES_MOST);
        size_t size = file && data ? fread(data, 1, BYTES_MOST, file) : 0;
        /* A block of its own size, so that a read behind its end is seen. */
        uint8_t *exact = data ? realloc(data, size ? size : 1) : NULL;
        if (!file || !exact) {
            fprintf(stderr, "replay: %s cannot be read\n", argv[i]);
            return 2;
        }
        fclose(file);
        LLVMFuzzerTestOneInput(exact, size);
        free(exact);
    }
    printf("%d passed, 0 failed\n", argc - 1);
    return 0;
}
