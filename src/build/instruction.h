/* build/instruction.h: which words of a sentence tell what to do.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_INSTRUCTION_H
#define DISHTAKE_BUILD_INSTRUCTION_H

#include "build/phrasal.h"

struct said_verb {
    struct text action; /* base form; empty when the chunk tells nothing to do */
    bool split; /* with a word farther behind, or a thing without a verb: then `phrasal` is filled
                   in */
    struct phrasal phrasal;
};

/* What is known of a sentence's chunks by now, by their index. */
struct verb_memo {
    const struct sentence *sentence;
    char is[SENTENCE_WORDS];   /* its verdict; PASS while nobody asked */
    char step[SENTENCE_WORDS]; /* whether it is a step: YES or NO; the same */
    bool told[SENTENCE_WORDS]; /* its said_verb() is in `verbs` */
    struct said_verb verbs[SENTENCE_WORDS];
};

/* What the lexicon says of an action, by its base form; NULL when it has no such verb. */
const struct entry *action_entry(const struct pack *k, struct text action);
/* Of a chunk that says "meanwhile": "while they | rest", "while the | sauce", not "in the
 * meantime". */
bool ends_in_subject(const struct builder *b, const struct chunk *c);
/* "let", of "let that soften". */
bool is_let(const struct builder *b, const struct chunk *c);
/* Whether chunk `c` is a verb, in whichever form. */
bool is_verb_word(const struct chunk *c);
/* Whether the verb in chunk `i` is an instruction, or tells what is going on here and now. */
bool is_verb(const struct builder *b, size_t i);
/* What chunk `i` tells to do. A step is worded by it. */
struct said_verb said_verb(const struct builder *b, size_t i);
/* What it would tell to do if it were an instruction. */
struct said_verb verb_of(const struct builder *b, size_t i);
/* Whether the verb in chunk `i` is likely to be a step of a recipe (told.h). What is an instruction
 * may be none ("so turn it round, like that"), and what is none may be one ("there's the onion
 * chopped"). */
bool is_step_verb(const struct builder *b, size_t i);
/* What chunk `i` tells to do, where that is a step. */
struct said_verb step_verb(const struct builder *b, size_t i);

#endif
