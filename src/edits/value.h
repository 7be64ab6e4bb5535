/* edits/value.h: what the cook may give a line, a step or a dish, as JSON; fields.def lists it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_EDITS_VALUE_H
#define DISHTAKE_EDITS_VALUE_H

#include "edits/edits.h"

/* Bytes of one text at most, and entries of one list. */
#define VALUE_TEXT_MAX 2000
#define VALUE_LIST_MAX 50

/* Whether the edit's "field" and "value" are what its kind takes. */
bool value_fits(enum edit_kind kind, const json_t *edit);
/* Gives `in`, `s` or `d` one field; texts are copied to the arena. False, with nothing changed, for
 * a value that is none. */
bool value_set_line(struct ingredient *in, const char *field, const json_t *value, struct arena *a);
bool value_set_step(struct step *s, const char *field, const json_t *value, struct arena *a);
bool value_set_dish(struct dish *d, const char *field, const json_t *value, struct arena *a);

/* Where the values of "finding" stand. */
enum answer { ANSWER_OPEN, ANSWER_ACCEPTED, ANSWER_DISMISSED, ANSWERS };
bool value_answer(const json_t *value, enum answer *answer);

#endif
