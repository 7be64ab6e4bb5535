/* write/wrap.h: plain text in lines of a width that people read.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_WRAP_H
#define DISHTAKE_WRITE_WRAP_H

#include "base/buffer.h"

#define WRAP_COLUMNS 78

/* A letter is taken to be a column wide, which is right for the scripts we print. `first` and then
 * the text, broken at spaces; further lines begin with as many spaces as `first`
 * has columns. White space in the text becomes single spaces. Ends with a line end. */
void put_wrapped(struct buffer *b, const char *first, struct text t);
/* A line of `c` under a heading. */
void put_rule(struct buffer *b, char c, size_t columns);

#endif
