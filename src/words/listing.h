/* words/listing.h: which way round somebody lists foods and amounts, where captions have no stops.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WORDS_LISTING_H
#define DISHTAKE_WORDS_LISTING_H

#include "words/ending.h"

enum listing {
    LISTING_UNSURE,
    LISTING_ENDS,   /* "salt half a teaspoon | cumin one teaspoon": amounts stand behind their foods
                     */
    LISTING_GOES_ON /* "a cup of oats half a teaspoon | salt", "salt | half a teaspoon" */
};

/* Whether a sentence that begins with unit `first` of words ends behind unit `unit`, as far as
 * amounts and foods tell. */
enum listing listing_at(const struct endings *e, size_t first, size_t unit);

#endif
