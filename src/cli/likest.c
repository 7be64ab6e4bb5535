/* cli/likest.c: what a mistyped word was meant to be.
 * SPDX-License-Identifier: MIT */
#include "cli/cli.h"

#include <string.h>

#define WORD_LETTERS 24 /* longer words are no option of ours */

static size_t least(size_t a, size_t b, size_t c)
{
    size_t ab = a < b ? a : b;
    return ab < c ? ab : c;
}

/* Letters to add, drop, change, or swap with their neighbour (optimal string alignment distance).
 */
static size_t distance(const char *a, const char *b)
{
    size_t rows[WORD_LETTERS + 1][WORD_LETTERS + 1];
    size_t m = strlen(a), n = strlen(b);
    for (size_t i = 0; i <= m; i++)
        for (size_t j = 0; j <= n; j++) {
            if (!i || !j) {
                rows[i][j] = i + j;
                continue;
            }
            rows[i][j] = least(rows[i - 1][j] + 1, rows[i][j - 1] + 1,
                               rows[i - 1][j - 1] + (a[i - 1] != b[j - 1]));
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]
                && rows[i - 2][j - 2] + 1 < rows[i][j])
                rows[i][j] = rows[i - 2][j - 2] + 1;
        }
    return rows[m][n];
}

const char *likest(const char *typed, const char *const *words, size_t count)
{
    const char *best = NULL;
    size_t length = strlen(typed);
    if (length > WORD_LETTERS)
        return NULL;
    size_t best_distance = length / 3 + 1; /* a third of the letters may be wrong */
    for (size_t i = 0; i < count; i++) {
        size_t d = distance(typed, words[i]);
        if (d <= best_distance && (!best || d < best_distance)) {
            best = words[i];
            best_distance = d;
        }
    }
    return best;
}
