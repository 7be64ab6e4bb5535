/* review/assets.h: the page's files, built into the program by the tool that builds in the grammar.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_REVIEW_ASSETS_H
#define DISHTAKE_REVIEW_ASSETS_H

#include "pack/pack.h"

/* Named "review/assets/style.css". */
const struct pack_file *asset_files(size_t *count);

#endif
