/* model/recording.h: a recording on its way through the pipeline: cues, words, sentences, matches,
 * dishes. Every stage fills in its own part and reads the parts above it. All of it lives in one
 * arena.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MODEL_RECORDING_H
#define DISHTAKE_MODEL_RECORDING_H

#include "base/arena.h"
#include "base/problem.h"
#include "model/finding.h"
#include "model/match.h"
#include "model/recipe.h"

enum transcript_kind {
    KIND_UNKNOWN,
    KIND_SUBRIP,
    KIND_WEBVTT,
    KIND_TTML,
    KIND_TIMED_LINES, /* "[1:02] text", "1:02 text", a clock on a line of its own; Markdown or not
                       */
    KIND_JSON,        /* segments with start, end, text */
    KIND_TSV
};

/* A word whose own time the captions give; `offset` is where it begins in the cue's text. */
struct word_time {
    size_t offset;
    double start, end; /* seconds; end < 0 when not given */
};

/* One caption. Its text has formatting and entities removed; a '\n' stays where the caption broke
 * the line. Rolling captions hold only what was not in the cue before. */
struct cue {
    double start, end;   /* seconds from the start of the recording; end < 0 when not given */
    struct text text;    /* arena, UTF-8, NFC */
    struct text speaker; /* as a voice tag or "NAME:" names it, or one of UNNAMED; empty when not
                            given */
    size_t raw, raw_end; /* the caption's own lines in `source`: offsets of the first byte and after
                            the last */
    unsigned line, column; /* of the text's first letter in the file, from 1; column in bytes */
    size_t skipped;        /* bytes of the caption's text that stand in cues before this one */
    const struct word_time *times; /* arena; NULL when the captions do not time words */
    size_t times_count;
};

/* Who begins to speak where captions only have a dash or ">>". There are two, in turn, so that a
 * change is seen. */
extern const char *const UNNAMED[2];
/* Whether somebody is given, by name. */
bool speaker_is_named(struct text speaker);

/* What stands behind a word, before the next one. */
enum word_after {
    AFTER_SPACE,
    AFTER_HYPHEN,
    AFTER_COMMA, /* comma, semicolon, colon, dash, bracket */
    AFTER_STOP,  /* full stop, exclamation mark, "..." */
    AFTER_QUESTION
};

struct entry;

/* What one word in thirty has. */
struct word_rare {
    struct ratio number; /* the value of a word of digits ("2.5", "1/2", "½"); none otherwise */
    const struct entry *heard_as; /* what a misheard word was read as, else NULL */
    const struct entry *heard_or; /* another reading as likely: then neither was applied */
};
/* Of all other words. */
extern const struct word_rare WORD_USUAL;

/* Four tenths of what a long recording takes are its words, so that they are kept small. */
struct word {
    struct text text; /* as captioned; points into the cue's text */
    struct text key;  /* folded for look-up: lower case, no accents (arena, or == text) */
    double start, end;
    unsigned cue;
    unsigned entry_first; /* first word of its entry, when that has several */
    unsigned char tag;    /* a code unit of tag/tags.def; '_' inside a longer entry, whose last word
                             has the tag */
    unsigned char after;  /* enum word_after */
    bool capital : 1;     /* begins with a capital letter */
    bool new_speaker : 1; /* the first word of another speaker */
    bool pause : 1;       /* a silence or a sound tag ("[Music]") stands before it */
    bool filler : 1;      /* "um", "you know", a false start: no rule sees it */
    bool begins : 1;      /* a longer entry of the lexicon begins with it */
    unsigned char shape;  /* text_shape_number(key) */
    unsigned short scope; /* enum scope bits: what a phrase around it makes of it */
    const struct entry *alone; /* the likeliest reading of the word by itself; NULL: it has none */
    const struct entry
        *readings; /* all readings of the words, the likeliest first; NULL for an unknown word */
    const struct entry
        *entry; /* the lexicon's reading (borrowed from the pack); NULL for an unknown word */
    const struct word_rare *rare; /* arena, shared by copies of the recording; never NULL */
};

/* They are set in a copy, which the word has from then on. */
void word_set_number(struct arena *a, struct word *w, struct ratio number);
void word_set_heard(struct arena *a, struct word *w, const struct entry *as,
                    const struct entry * or);

/* The bit of its key's shape. */
static inline uint64_t word_shape(const struct word *w)
{
    return (uint64_t) 1 << w->shape;
}

/* What is said in a scope is not done here and now, or is done in a special way. */
enum scope {
    SCOPE_UNREAL = 1,  /* a supposition, a story, another cook, talk to the audience */
    SCOPE_NEGATED = 2, /* "don't rinse them" */
    SCOPE_INSTEAD = 4, /* "you can use cold tea in place of ..." */
    SCOPE_UNTIL = 8,   /* a sign of doneness */
    SCOPE_OPTIONAL = 16,
    SCOPE_BESIDE = 32, /* served with it */
    SCOPE_GARNISH = 64,
    SCOPE_TASTE = 128,
    SCOPE_TITLE = 256, /* names a dish */
    SCOPE_YIELD = 512,
    SCOPE_SUPPOSED = 1024, /* "if you have no buttermilk" */
    SCOPE_ADORNS = 2048    /* "garnish it with a spoon of seeds": however much of it */
};
#define SCOPE_NOT_DONE (SCOPE_UNREAL | SCOPE_NEGATED | SCOPE_INSTEAD | SCOPE_SUPPOSED)

/* A stretch of words that rules see at once; at most SENTENCE_WORDS long. */
struct sentence {
    size_t first, last;              /* word numbers */
    unsigned flags;                  /* enum sentence_flag */
    size_t match_first, match_count; /* its part of recording.matches */
    size_t names; /* the id of the dish that it names, plus one; 0: it names none */
};

enum sentence_flag {
    SENTENCE_QUESTION = 1,
    SENTENCE_STORY = 2,  /* all of it tells of another time or cook */
    SENTENCE_LEAVING = 4 /* the dish that it names has been made: "that's the curry" */
};

struct edit_run;
struct sayings;

struct recording {
    struct arena *arena;
    struct text bytes;  /* the file's own bytes; borrowed */
    struct text source; /* the file's bytes as UTF-8 with '\n' line ends */
    enum transcript_kind kind;
    struct text language;    /* as the file names it; empty when it does not */
    LIST(struct cue) cues;   /* by start */
    LIST(struct word) words; /* word number = index */
    LIST(struct sentence) sentences;
    LIST(struct match) matches; /* sentence by sentence */
    LIST(struct dish) dishes;
    LIST(struct finding) findings;
    bool punctuated;         /* its captions have full stops */
    double length;           /* seconds: the end of the last cue */
    const char *file;        /* its name, for messages; borrowed */
    bool one_dish;           /* asked for: all of it is one dish */
    size_t told_dishes;      /* how many dishes there are; 0: nobody told */
    size_t steps_left;       /* of the pattern matcher's budget for this recording */
    size_t limits_hit;       /* matches given up at a PCRE2 limit */
    const char *limit_rule;  /* the rule that hit one first; NULL when none did */
    struct edit_run *edited; /* what became of the cook's edits; NULL without any */
    struct sayings *sayings; /* where checks hear what they listen for (check/said.h) */
};

/* A copy of a recording shares everything with it. These give `r` what is changed after a stage as
 * its own, in its arena: then the other one stays as it was. */
void recording_own_words(struct recording *r); /* and cues, and sentences */
void recording_own_dishes(struct recording *r);
void recording_own_findings(struct recording *r);

/* The number of the first sentence that ends at or after the word; sentences.count: none does. */
size_t sentence_from(const struct recording *r, size_t word);
/* One past the last sentence that begins at or before the word: from sentence_from(r, a) to
 * sentence_until(r, b) are the sentences of words [a, b]. */
size_t sentence_until(const struct recording *r, size_t word);
/* The sentences of words [first, last], one after the other: the first one behind NULL, and so on;
 * NULL: that was the last. */
const struct sentence *sentence_next(const struct recording *r, struct span words,
                                     const struct sentence *s);
/* Whether one of the words has that tag; none has it in an empty span. */
bool span_has_tag(const struct recording *r, struct span words, unsigned char tag);
/* The entry that stands at these words, by its last word; NULL where there are none. */
const struct entry *entry_at(const struct recording *r, struct span words);
static inline struct span sentence_words(const struct sentence *s)
{
    return (struct span){s->first, s->last};
}
/* The sentence of a word; NULL when it is in none. */
const struct sentence *sentence_of(const struct recording *r, size_t word);
/* The dish with that id; NULL: none. */
struct dish *dish_with_id(const struct recording *r, size_t id);
/* Whether the sentence is part of the dish. */
bool dish_has_sentence(const struct dish *d, const struct sentence *s);
/* The ingredient with that id; NULL: none. */
const struct ingredient *dish_ingredient(const struct dish *d, size_t id);

#endif
