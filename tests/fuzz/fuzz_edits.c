/* tests/fuzz/fuzz_edits.c: any bytes as an edits file of a small recording: refused, or read,
 * printed, read again alike; and the same whether all is read anew or only what differs from the
 * edits before.
 * SPDX-License-Identifier: MIT */
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include "dishtake.h"

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);

static const char TALK[] =
    "[0:00] Today we're making a tomato soup. Add two cups of tomatoes. Chop one onion.\n"
    "[0:10] Add salt and simmer for ten minutes. That's our tomato soup.\n"
    "[0:20] Next up we're making rice. Boil one cup of rice. That's our rice.\n";

static enum dishtake_result read_with(struct dishtake *d, const char *edits, size_t length)
{
    struct dishtake_read_options o = {
        .size = sizeof o, .edits = edits, .edits_length = length, .edits_name = "e"};
    return dishtake_read(d, TALK, sizeof TALK - 1, "t", &o);
}

static bool is_same_page(struct dishtake *a, struct dishtake *b)
{
    size_t length, other_length;
    const char *page = dishtake_write(a, "review", "recipes", NULL, &length);
    const char *other = dishtake_write(b, "review", "recipes", NULL, &other_length);
    return page && other && length == other_length && memcmp(page, other, length) == 0;
}

/* Goes on from whatever the inputs before left. */
static void compare_with_going_on(struct dishtake *d, enum dishtake_result anew, const char *edits,
                                  size_t length)
{
    static struct dishtake *kept;
    const struct dishtake_read_options o = {.size = sizeof o, .edits_name = "e", .keep = true};
    if (!kept) {
        kept = dishtake_again(d);
        if (!kept || dishtake_read(kept, TALK, sizeof TALK - 1, "t", &o) != DISHTAKE_DONE)
            abort();
    }
    if (dishtake_read_edits(kept, edits, length) != anew
        || (anew == DISHTAKE_DONE && !is_same_page(kept, d)))
        abort();
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    static struct dishtake *d;
    static const char ASKED[] =
        "{\"kind\":\"dish-set\",\"on\":\"d1\",\"field\":\"title\",\"value\":\"x\"}";
    size_t written;
    if (!d)
        d = dishtake_new(NULL, 0);
    enum dishtake_result result =
        d ? read_with(d, (const char *) bytes, length) : DISHTAKE_NO_MEMORY;
    if (d)
        compare_with_going_on(d, result, (const char *) bytes, length);
    if (result != DISHTAKE_DONE)
        return 0;
    size_t count = dishtake_edits(d);
    if (!dishtake_write(d, "review", "recipes", NULL, &written)
        || !dishtake_write(d, "recipes", "json", NULL, &written))
        abort();
    const char *next = dishtake_edit(d, ASKED, sizeof ASKED - 1, &written);
    char *file = next ? strdup(next) : NULL;
    if (file && (read_with(d, file, written) != DISHTAKE_DONE || dishtake_edits(d) != count + 1))
        abort();
    free(file);
    return 0;
}
