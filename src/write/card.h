/* write/card.h: a dish laid out as a cookbook would, still without a form: its texts in the order
 * of the page. All forms of cards print this, so that they say the same.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_CARD_H
#define DISHTAKE_WRITE_CARD_H

#include "kitchen/nutrition.h"
#include "write/shown.h"

/* Lines under one heading; the heading is empty for the dish's own. */
struct card_part {
    struct text heading;
    text_list lines;
};

struct card_step {
    struct text heading; /* of the component that begins here; else empty */
    struct text text;
    struct text heat;  /* its temperatures in the wanted scales; empty: none was heard */
    bool unsaid;       /* the text lacks one of them */
    double start, end; /* seconds into the recording */
    size_t id;
    bool own; /* of the dish itself, behind a component: its heading ends here */
};

/* Everything in the scratch arena, or borrowed from the recording. */
struct card {
    struct shown_dish shown; /* scaled as it was asked for */
    size_t number;           /* of the dish, from 1 */
    struct text title;
    struct text yield; /* "Serves 4"; empty where none was heard */
    text_list facts;   /* yield, times */
    LIST(struct card_part) parts;
    LIST(struct card_step) steps;
    text_list cautions;
    text_list allergens; /* lines; empty where there are none */
    text_list notes;     /* of another size: the factor, and what does not grow with the dish */
    struct nutrition nutrition;
    bool draft;  /* the cook has not approved it */
    size_t open; /* findings that should be mended or answered before it is published */
};

/* False, with a problem, when the dish cannot be scaled as it was asked for. */
bool card_make(struct card *c, const struct recording *r, const struct writing *w, size_t dish,
               struct problems *p);
/* What is printed over the step: its component's name, or that the dish itself goes on; empty where
 * the list does. */
struct text step_heading(const struct writing *w, const struct card_step *s);
/* Whether some of the step's temperatures are nowhere in its text: "bake for 25 minutes". */
bool lacks_heat(const struct writing *w, const struct step *s);
/* Whether its temperatures stand behind its text: in other scales, or since the text lacks them. */
bool shows_heat(const struct writing *w, const struct card_step *s);
/* The cards of all wanted dishes, each made and put by `put`; a note where there is none. */
typedef void card_put(struct buffer *b, const struct recording *r, const struct writing *w,
                      const struct card *c, bool first);
bool cards_write(const struct recording *r, const struct writing *w, struct buffer *out,
                 struct problems *p, card_put *put);

#endif
