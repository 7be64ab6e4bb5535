/* tag/slot.h: what is expected at a place in a sentence, told by what stands around it: rows of
 * hearing.tsv.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TAG_SLOT_H
#define DISHTAKE_TAG_SLOT_H

#include "model/recording.h"
#include "pack/pack.h"
#include "tag/place_set.h"
#include "words/limits.h"

#define SLOT_TOKENS 6

typedef LIST(struct text) token_texts;

/* One place of a pattern: any of these tags, words or values. */
struct token {
    struct unit_set tags;
    token_texts words, values;
    uint64_t word_shapes, value_shapes; /* bits of text_shape(), so that most words are refused by a
                                         * look at them */
    bool start, end;                    /* of the sentence */
};

struct hearing_slot {
    struct token *before, *after; /* in spoken order */
    size_t before_count, after_count;
    struct unit_set expects; /* tags */
    uint64_t marks;          /* a candidate with one of them fits better */
    unsigned trust; /* the largest distance, in hundredths, that is taken; 0: only listed pairs */
    bool sure;      /* leaves little doubt: even ordinary words may be listed pairs here */
    bool certain;   /* leaves none: they may be so in captions that are written with care, too */
    bool nouns;     /* takes only pairs whose captioned word no cook handles ("leak") */
    bool always;    /* takes only pairs whose captioned word is never meant ("pharaoh") */
    bool again;     /* only for a pair that was heard in a better place of the same recording */
    bool strong;    /* of those, only pairs that are no ordinary talk */
};

struct fits;

/* A sentence's entries, fillers left out. What is known of each is looked up when it is first asked
 * for, since of most it never is. */
struct sentence_units {
    const struct fits *fits; /* borrowed */
    size_t count;
    size_t first[SENTENCE_WORDS], last[SENTENCE_WORDS]; /* word numbers */
    bool known[SENTENCE_WORDS];
    struct unit_set tags[SENTENCE_WORDS];                   /* of all their readings */
    uint64_t words[SENTENCE_WORDS], values[SENTENCE_WORDS]; /* bits of text_shape() */
    struct place_set beside[SENTENCE_WORDS];                /* places of `fits` */
};

typedef LIST(struct hearing_slot) slot_list;

bool slots_load(slot_list *slots, struct arena *a, const struct pack *k, struct problems *p);
void units_make(struct sentence_units *u, const struct recording *r, const struct sentence *s,
                const struct fits *fits);
/* After the words of unit `n` were read as something else. */
static inline void unit_forget(struct sentence_units *u, size_t n)
{
    u->known[n] = false;
}
/* The places that take unit `n`. */
const struct place_set *unit_beside(struct sentence_units *u, const struct recording *r, size_t n);
/* Whether a pattern's place for the end, "$", may stand behind the units before `end`. */
bool slot_at_end(const struct recording *r, const struct sentence_units *u, size_t end);
/* Whether units [begin, end) stand at such a place: what is before them, and what is after. */
bool slot_begins(const struct hearing_slot *s, const struct recording *r, struct sentence_units *u,
                 size_t begin);
bool slot_ends(const struct hearing_slot *s, const struct recording *r, struct sentence_units *u,
               size_t end);
/* Reads one place: "UNIT|COUNTER", "of", "=teaspoon", "^", divided by '|'. */
bool token_read(struct token *t, struct arena *a, struct text part, struct problems *p,
                struct place at);
/* Whether the word, which ends its entry, has one of the token's tags, words or values; or any of
 * its other readings, as is asked before the rules of the stage `repair` have chosen one. */
bool token_fits(const struct token *t, const struct word *w, bool any_reading);
/* False where token_fits(t, w, false) is, of most words. */
static inline bool token_may_fit(const struct token *t, const struct word *w)
{
    return unit_set_has(&t->tags, w->tag) || t->word_shapes & word_shape(w)
           || (w->entry && t->value_shapes & entry_shape(w->entry));
}

#endif
