/* write/markdown.h: text into CommonMark, so that it reads as it was said and never as markup.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_MARKDOWN_H
#define DISHTAKE_WRITE_MARKDOWN_H

#include "base/buffer.h"

/* Inline text on one line: signs that could mean something are escaped, line ends become spaces. */
void put_markdown(struct buffer *b, struct text t);

#endif
