/* pack/pack.h: a grammar pack, ready for use: lexicon, rules, tables. Read-only once loaded, and
 * shared by all threads. The files' formats are in docs/grammar.md.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PACK_PACK_H
#define DISHTAKE_PACK_PACK_H

#include <stdint.h>

#include "base/problem.h"
#include "base/ratio.h"
#include "base/text.h"
#include "model/match.h"
#include "pack/unit_set.h"

enum tag {
#define TAG(name, code, about) TAG_##name = (code),
#include "model/tags.def"
#undef TAG
    TAG_INSIDE = '_' /* a word of an entry that goes on */
};
#define TAG_CODES 256 /* every code is below this */

enum mark_bit {
#define MARK(name, about) MARK_BIT_##name,
#include "model/marks.def"
#undef MARK
    MARK_COUNT
};
#define MARK_OF(name) ((uint64_t) 1 << MARK_BIT_##name)

/* The class name of a tag ("FOOD") and what it stands for; NULL for a code that is no tag. */
const char *tag_name(unsigned char tag);
const char *tag_about(unsigned char tag);
bool tag_find(struct text name, unsigned char *tag);
const char *mark_name(enum mark_bit mark);
bool mark_find(struct text name, uint64_t *mark);
/* Whether the mark of that name is one of these; false for a name that is no mark's. */
bool mark_named(uint64_t marks, struct text name);

/* A text of the pack, by its distance from here, so that tables can stand anywhere in memory. Its
 * length stands before it: in a byte, or, where that is TEXT_LONG, in the four before that. Never
 * copied: ref_text() says what it is. */
struct ref {
    int32_t at; /* bytes from this field; 0: there is none */
};
#define TEXT_LONG 255
static inline struct text ref_text(const struct ref *r)
{
    const char *at = (const char *) r + r->at;
    uint32_t length = (unsigned char) at[-1];
    if (length == TEXT_LONG)
        memcpy(&length, at - 1 - sizeof length, sizeof length);
    return (struct text){at, length};
}

/* The longest entry: the loader refuses a longer one, and none is looked for. */
#define ENTRY_WORDS 12
#define ENTRY_BYTES 120

/* One reading of a word or of several words. Lives in the pack, and is never copied. */
struct entry {
    uint64_t marks;                                   /* MARK_OF bits */
    struct ref words_at, value_at, shown_at, file_at; /* entry_words(), ... */
    int32_t number_at; /* entry_number(): bytes from this field; 0: none, as most have */
    int32_t next;      /* how many entries further the next reading of the same words is; 0: none */
    unsigned line;     /* where it was listed */
    unsigned char tag; /* enum tag */
    unsigned char words_count;
    unsigned char value_shape; /* text_shape_number() of its value */
};

/* As it was listed or inflected, folded: "soy sauce", "chopped". */
static inline struct text entry_words(const struct entry *e)
{
    return ref_text(&e->words_at);
}
/* What it stands for: the food's kind ("scallion"), the unit ("tablespoon"), the action's base form
 * ("chop"), the number ("1/2"); equals the listed words if not given. */
static inline struct text entry_value(const struct entry *e)
{
    return ref_text(&e->value_at);
}
/* Of a number word, or a length of time in seconds; none otherwise. */
static inline struct ratio entry_number(const struct entry *e)
{
    struct ratio number = RATIO_NONE;
    if (e->number_at)
        memcpy(&number, (const char *) &e->number_at + e->number_at, sizeof number);
    return number;
}
static inline uint64_t entry_shape(const struct entry *e)
{
    return (uint64_t) 1 << e->value_shape;
}
/* The listed form, not folded, not inflected: "crème fraîche". */
static inline struct text entry_shown(const struct entry *e)
{
    return ref_text(&e->shown_at);
}
/* The next reading of the same words, less likely; NULL at the end. */
static inline const struct entry *entry_next(const struct entry *e)
{
    return e->next ? e + e->next : NULL;
}
/* Where it was listed, with e->line. The same pointer for all entries of a file. */
static inline const char *entry_file(const struct entry *e)
{
    return ref_text(&e->file_at).at;
}

/* The stages in which rules run, in order. */
enum rule_stage {
    STAGE_REPAIR, /* changes the reading of an ambiguous word */
    STAGE_NUMBER, /* puts number words together */
    STAGE_AMOUNT, /* amounts, times, temperatures, sizes */
    STAGE_LINE,   /* amounts with their foods */
    STAGE_PHRASE, /* what a sentence says: openings, yields, suppositions; overlaps allowed */
    STAGE_COUNT
};

/* What a rule gives; KIND_... in pack/kinds.def, the slots in pack/slots.def. */
enum rule_kind {
#define RULE_KIND(name, tag, about) RULE_##name,
#include "pack/kinds.def"
#undef RULE_KIND
    RULE_KINDS
};
/* The kind in a set of kinds. */
#define KIND_OF(name) ((uint64_t) 1 << RULE_##name)
#define KINDS_ALL (~(uint64_t) 0)
_Static_assert(RULE_KINDS <= 64, "a set of kinds has a bit for each");

enum slot {
#define SLOT(name) SLOT_##name,
#include "pack/slots.def"
#undef SLOT
    SLOTS
};
/* The name of a slot, as rules write it ("food"); NULL for a number that is none. */
const char *slot_name(enum slot slot);

/* One node of a number expression, in postfix order. */
struct number_step {
    enum { STEP_SLOT, STEP_INTEGER, STEP_ADD, STEP_SUBTRACT, STEP_MULTIPLY, STEP_DIVIDE } kind;
    int value; /* index into rule.slots, or the integer */
};

#define NUMBER_STEPS 12

struct rule {
    const char *name, *file;
    unsigned line;
    unsigned number; /* among the pack's rules of all stages, from 0 */
    enum rule_stage stage;
    enum rule_kind kind;
    unsigned char
        tag; /* what the matched words become for later stages; 0: they stay as they are */
    unsigned char retag;    /* repair: the tag of the reading that the slot `word` gets */
    int weight;             /* of an opening, a closing */
    const char *pattern;    /* over tag strings, as PCRE2 reads it; rule_compile() */
    struct unit_set needed; /* code units, every one of which a subject must have */
    struct text sieve;      /* pack/sieve.h, without slots; empty: it has none */
    struct text codes;      /* the same with its slots */
    bool slots_ahead;       /* some stand in a look ahead, and not in the codes */
    size_t slots_count;
    enum slot slots[MATCH_SLOTS];                             /* what capture group n + 1 is */
    struct number_step low[NUMBER_STEPS], high[NUMBER_STEPS]; /* of a rule that gives a number */
    size_t low_count, high_count;
    struct text option;       /* a fixed word that the rule gives: "side", "oven" */
    const struct example *ex; /* its own examples */
    size_t ex_count;
};

/* Words, and what the rule is to make of them: `ex "words" -> expected`. */
struct example {
    struct ref words, expected;
    unsigned line;
};

/* A table of the pack, as rows of cells: "units", "findings", ... */
struct table {
    struct text name; /* the file's name without ".tsv" */
    const char *file;
    size_t columns, rows;
    const struct ref *heads; /* column names */
    const struct ref *cells; /* row by row */
    const unsigned *lines;   /* each row's line in the file */
    const uint32_t *keys;    /* open addressing: slots of the first rows of first cells; 0: free */
    size_t keys_room;
    const uint32_t *pairs; /* the same of the first two cells, where most first ones repeat */
    size_t pairs_room;
    const uint32_t *nexts; /* 1 + the next row with the same first cell; NULL: those that have the
                              same stand together */
};

struct pack;

struct pack_file {
    const char *name; /* "en/foods.lex": folder of the pack, then the file; borrowed */
    struct text bytes;
};

/* Reads all files of a pack. NULL only when nothing usable is left; every mistake is in `p`, with
 * file, line and column. pack_free frees. Keeps nothing of the files. */
struct pack *pack_load(const struct pack_file *files, size_t count, struct problems *p);
void pack_free(struct pack *k);
/* What was looked up so far takes no memory until it is asked for again: between stages, which ask
 * for different parts. Only of the built-in pack, which stands in the program's file. */
void pack_forget(const struct pack *k);
/* The pack that is built into the program, made from text when the program was built. NULL: no
 * memory. pack_free frees. */
struct pack *pack_builtin(void);
/* All that a pack is, as one block of bytes: two packs are the same when these are. */
struct text pack_bytes(const struct pack *k);

/* The first (likeliest) reading of a folded word or words joined by single spaces; NULL when there
 * is none. `more` (may be NULL) says whether a longer entry begins with these words. */
const struct entry *pack_find(const struct pack *k, struct text words, bool *more);
/* The reading with that tag among those of the same words as `e` (which may be NULL); NULL when
 * there is none. */
const struct entry *entry_as(const struct entry *e, enum tag tag);
/* All entries, in the order of the files, for reverse look-ups; `count` of them. */
const struct entry *pack_entries(const struct pack *k, size_t *count);

/* Foods in whose names of several words the folded word stands, in the order of the files, as
 * numbers of pack_entries(); one that has the word twice is there twice. */
const uint32_t *pack_foods_with(const struct pack *k, struct text word, size_t *count);

/* How an entry sounds, a letter a sound (table "sounds"). A word that is listed with two
 * pronunciations is there twice. In the order of the entries; none where the pack has no table
 * "pronunciations" or "spelling". */
struct pronounced {
    uint64_t letters; /* sound_letters(sounds) */
    struct ref sounds;
    struct ref value; /* the entry's */
    uint32_t entry;   /* its number */
    unsigned char tag;
    unsigned char length, letters_count; /* of the sounds; how many different ones */
};
/* How many bits are set: without a call, as the compiler's own would be on older processors. */
static inline unsigned count_bits(uint64_t bits)
{
    bits -= bits >> 1 & 0x5555555555555555u;
    bits = (bits & 0x3333333333333333u) + (bits >> 2 & 0x3333333333333333u);
    bits = (bits + (bits >> 4)) & 0x0f0f0f0f0f0f0f0fu;
    return (unsigned) (bits * 0x0101010101010101u >> 56);
}
/* A bit for each sound that is in it; those of either case are apart, since 64 is between them. */
static inline uint64_t sound_letters(struct text sounds)
{
    uint64_t letters = 0;
    for (size_t i = 0; i < sounds.length; i++)
        letters |= (uint64_t) 1 << ((unsigned char) sounds.at[i] & 63);
    return letters;
}
#define SOUNDS_MOST 40 /* of words; the longest one has fewer */
/* Those of the entries of one tag, in the order of the entries. */
const struct pronounced *pack_pronounced(const struct pack *k, unsigned char tag, size_t *count);
/* How any folded words sound, as listed or else as they are spelled, at most SOUNDS_MOST. */
size_t pack_sounds(const struct pack *k, struct text words, char out[SOUNDS_MOST]);

const struct rule *pack_rules(const struct pack *k, enum rule_stage stage, size_t *count);
size_t pack_rules_count(const struct pack *k); /* of all stages */
/* The rule's pattern as PCRE2's code (pcre2_code), to machine code too where `jit` asks for it.
 * NULL: no memory. pcre2_code_free frees. */
void *rule_compile(const struct rule *rule, bool jit);
const struct table *pack_table_named(const struct pack *k, struct text name);
/* NULL: no such table. Here, so that a literal's length is known at the call; so is table_cell, of
 * which each word has some dozens. */
static inline const struct table *pack_table(const struct pack *k, const char *name)
{
    return pack_table_named(k, (struct text){name, strlen(name)});
}
/* The column's number; table.columns when there is none. */
size_t table_column(const struct table *t, const char *head);
/* Empty when out of range. */
static inline struct text table_cell(const struct table *t, size_t row, size_t column)
{
    return row < t->rows && column < t->columns ? ref_text(&t->cells[row * t->columns + column])
                                                : TEXT_EMPTY;
}
/* The first row whose first cell is `key`; table.rows when there is none. */
size_t table_find(const struct table *t, struct text key);
/* The next row with the same first cell; table.rows when there is none. */
static inline size_t table_next(const struct table *t, size_t row)
{
    if (t->nexts)
        return row < t->rows && t->nexts[row] ? t->nexts[row] - 1 : t->rows;
    /* A text of the pack stands there once, so that where it stands tells which it is. */
    return row + 1 < t->rows && table_cell(t, row, 0).at == table_cell(t, row + 1, 0).at ? row + 1
                                                                                         : t->rows;
}
/* The first row whose first two cells are these; table.rows when there is none. */
size_t table_find_pair(const struct table *t, struct text first, struct text second);

/* Lower case, no accents, one kind of apostrophe: the form in which words are looked up. Hyphens
 * stay. Writes at most `room` bytes to `out`, returns the length; ASCII needs no more room than the
 * text, other text up to three times as much. */
size_t fold_word(struct text t, char *out, size_t room);

#endif
