/* review/range.h: which bytes of a file a player asks for (RFC 9110, section 14).
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_REVIEW_RANGE_H
#define DISHTAKE_REVIEW_RANGE_H

#include <stdint.h>

#include "base/text.h"

enum range_kind {
    RANGE_WHOLE, /* no range that we know: the whole file */
    RANGE_PART,
    RANGE_BAD /* none of the file's bytes, turned round, or several ranges: refused with 416 */
};

/* Of a Range header and a file of `size` bytes: first and last byte. */
enum range_kind range_read(struct text header, uint64_t size, uint64_t *first, uint64_t *last);

#endif
