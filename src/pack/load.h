/* pack/load.h: what the files share that read a pack from text; nobody outside src/pack includes
 * it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PACK_LOAD_H
#define DISHTAKE_PACK_LOAD_H

#include "base/arena.h"
#include "pack/pack.h"

/* Limits. A pack within them is far beyond any real one; each is named in the message. */
#define PACK_BYTES ((size_t) 256 << 20) /* of one pack */
#define LOAD_BYTES (4 * PACK_BYTES)     /* of all that is needed to make it from text */
#define PACK_FILES 200
#define TABLE_COLUMNS 64
#define NAME_BYTES 60      /* of a rule's name */
#define PATTERN_BYTES 8192 /* of the compiled pattern's text */
#define PATTERN_DEPTH 20
#define REPEAT_MOST 64 /* a sentence has no more words */
#define RULE_EXAMPLES 3

/* A line of a pack file that says something: neither empty nor a comment. */
struct source_line {
    const char *file;
    unsigned number;
    struct text text;
};

/* Walks over the lines of a file, and reports those that are no text. */
struct lines {
    struct problems *problems;
    struct text rest;
    struct source_line line;
    bool told_returns; /* that the file has "\r\n" line ends is said once */
};

struct lines lines_open(const struct pack_file *file, struct problems *p);
bool lines_next(struct lines *l);
/* The place of `at`, a byte of the line. */
struct place line_place(const struct source_line *line, const char *at);
/* Takes the next word, divided by spaces, off the front of `*rest`. */
bool line_word(struct text *rest, struct text *word);
/* Feeds "%.*s" with a text that may be long: what is quoted ends after 60 bytes. */
#define QUOTE(t) quote_length(t), (t).at
int quote_length(struct text t);

/* An open-addressing table from texts to numbers; the texts are borrowed. */
struct key {
    const char *at; /* NULL: a free slot */
    uint32_t length, hash;
    uint32_t first; /* of words: the first reading's index + 1; 0: none */
    uint32_t more;  /* of words: whether a longer entry begins so */
};

struct index {
    struct key *slots;
    size_t room, count; /* room is a power of two, or 0 */
};

void index_reserve(struct arena *a, struct index *x, size_t count);
struct key *index_put(struct arena *a, struct index *x, struct text t); /* finds or adds */

enum form { FORM_PLURAL, FORM_THIRD, FORM_DOING, FORM_DONE, FORMS };

/* How one ending makes a form: a row of forms.tsv, for one of its `ends`. */
struct ending {
    enum form form;
    struct text end; /* empty: any word */
    bool after_consonant;
    size_t cut;
    struct text add;
};

/* A reading while it is being listed: an entry with its texts where the files have them. */
struct listing {
    struct text words, value, shown;
    struct ratio number;
    uint64_t marks;
    const char *file;
    unsigned line;
    unsigned char tag, words_count;
    bool made;     /* by the loader, not listed */
    bool dead;     /* gave way to a listed one */
    uint32_t next; /* index + 1 of the next reading of the same words */
};

struct listed_table {
    struct text name;
    const char *file;
    size_t columns, rows;
    struct text *heads, *cells;
    unsigned *lines;
};

struct listed_example {
    struct text words, expected;
    unsigned line;
};

struct rule_node {
    struct rule rule; /* all but its examples */
    LIST(struct listed_example) examples;
    struct rule_node *next;
    bool refused;
};

struct loader {
    struct arena arena; /* all below; released when the image is made */
    struct problems *problems;
    LIST(struct listing) entries;
    struct index words;
    LIST(struct listed_table) tables;
    LIST(struct ending) endings;
    bool told_endings; /* that no table of endings is there is said once */
    struct rule_node *first_rule, **rules_end;
    struct index rule_names;
    LIST(struct rule_node *) named; /* by the numbers in rule_names */
};

/* A pronunciation of an entry, before it is in the image. */
struct heard {
    struct text sounds;
    uint32_t entry;
    unsigned char tag;
};
typedef LIST(struct heard) heard_list;

/* All pronunciations of the pack's entries; in the arena. */
heard_list pronounce_entries(struct arena *a, const struct pack *k);
/* All that was read, as the block that image.h describes; caller frees. */
void *image_make(struct loader *l, heard_list heard);

/* Each reads one file; what is wrong goes to l->problems. */
void table_file_read(struct loader *l, const struct pack_file *file);
void lexicon_file_read(struct loader *l, const struct pack_file *file);
void rule_file_read(struct loader *l, const struct pack_file *file);

/* Adds a reading; refuses one that contradicts another, naming `at` and the other's place. */
void entry_add(struct loader *l, const struct listing *e, struct place at);
/* Drops readings that gave way. */
void entries_finish(struct loader *l);

/* Reads the table `forms`. */
void endings_read(struct loader *l, const struct listed_table *t);
/* The form of one word, in the arena; empty when no ending fits. */
struct text inflect(struct loader *l, enum form form, struct text word);

/* The words as they are looked up: folded, hyphens as spaces, single spaces; in the arena, or `t`
 * itself. */
struct text fold_words(struct arena *a, struct text t, size_t *count);

bool slot_find(struct text name, enum slot *slot);
bool stage_find(struct text name, enum rule_stage *stage);
bool kind_find(struct text name, enum rule_kind *kind);
unsigned char kind_tag(enum rule_kind kind);

/* Reads the pattern `t` of `line` into rule->pattern, needed and slots. False when it was refused.
 */
bool pattern_read(struct loader *l, const struct source_line *line, struct text t,
                  struct rule *rule);
/* Reads "tens*10+ones" into postfix steps; false when it was refused. */
bool expression_read(struct problems *p, const struct source_line *line, struct text t,
                     const struct rule *rule, struct number_step steps[NUMBER_STEPS],
                     size_t *count);

#endif
