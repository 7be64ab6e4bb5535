/* pack/forms.h: the forms of a lexicon's rows: which ones a row has, and how they are written.
 * Within the folder.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PACK_FORMS_H
#define DISHTAKE_PACK_FORMS_H

#include "pack/load.h"

/* How rows are inflected. `given` are forms written out: a plural, or third, doing, past,
 * participle. */
struct forms {
    enum { FORMS_NONE, FORMS_NOUN, FORMS_VERB } kind;
    bool doubled; /* the last letter: chop, chopping */
    bool last;    /* the last word of several is inflected, not the first */
    struct text given[4];
    size_t given_count;
};

/* What stands in a cell of forms or behind `@forms`: "noun", "verb2-last", "noun:leaves". False,
 * with a problem in the line, when it is none of those. `given` is borrowed from `t`. */
bool forms_read(struct loader *l, const struct source_line *line, struct text t,
                struct forms *forms);

/* One form of `words`: the `given` one, or, where that is empty, one with an ending of forms.tsv.
 * Empty, with a problem at `at` (one a grammar), when the table has none. Of the loader's arena, or
 * borrowed from `given`. */
struct text forms_make(struct loader *l, const struct forms *forms, enum form form,
                       struct text words, struct text given, struct place at);

/* What forms another word has for what `row` means: those written out are of the row's own word;
 * another one takes the usual endings. */
struct forms forms_of_other(const struct forms *forms, struct text row, struct text other);

#endif
