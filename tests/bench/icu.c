/* bench/icu.c: a yardstick: the words and sentences of a file, as ICU divides them (UAX 29); prints
 * only their number.
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>
#include <unicode/ubrk.h>
#include <unicode/utext.h>

static long count(UBreakIteratorType type, UText *text)
{
    UErrorCode status = U_ZERO_ERROR;
    UBreakIterator *breaks = ubrk_open(type, "en", NULL, 0, &status);
    long n = 0;
    ubrk_setUText(breaks, text, &status);
    while (U_SUCCESS(status) && ubrk_next(breaks) != UBRK_DONE)
        n++;
    ubrk_close(breaks);
    return n;
}

int main(int argc, char **argv)
{
    static char bytes[64 << 20];
    FILE *file = argc > 1 ? fopen(argv[1], "rb") : NULL;
    UErrorCode status = U_ZERO_ERROR;
    if (!file)
        return 2;
    size_t length = fread(bytes, 1, sizeof bytes, file);
    fclose(file);
    UText *text = utext_openUTF8(NULL, bytes, (int64_t) length, &status);
    if (U_FAILURE(status))
        return 1;
    printf("%ld words, %ld sentences\n", count(UBRK_WORD, text), count(UBRK_SENTENCE, text));
    utext_close(text);
    return 0;
}
