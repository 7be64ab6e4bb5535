/* write/place.h: where in the caption file a finding stands.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_PLACE_H
#define DISHTAKE_WRITE_PLACE_H

#include "model/recording.h"

/* The line and the column, in bytes, of the first word that a finding is about, or of the first
 * word of its time where none was said. False where the recording has no words. */
bool finding_place(const struct recording *r, const struct finding *f, unsigned *line,
                   unsigned *column);
/* The same column counted in characters (Unicode code points). */
unsigned column_characters(const struct recording *r, unsigned line, unsigned column);

#endif
