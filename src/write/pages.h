/* write/pages.h: what all published pages begin and end with; their style sheets are
 * src/write/pages/, built into the library as the grammar is.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_PAGES_H
#define DISHTAKE_WRITE_PAGES_H

#include "pack/pack.h"
#include "write/html.h"
#include "write/write.h"

/* Named "write/pages/card.css". */
const struct pack_file *page_files(size_t *count);

/* Everything up to and with <main>; `sheets` are names of style sheets, "base card", in order. */
void page_begin(struct html *h, const struct writing *w, struct text title, const char *sheets);
void page_end(struct html *h); /* everything that is open */

#endif
