/* build/stepjoin.h: "Two eggs, a cup of milk. Whisk that.": a list of foods without a verb is one
 * step with the verb behind it, else with the step before.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_STEPJOIN_H
#define DISHTAKE_BUILD_STEPJOIN_H

#include "build/instruction.h"

/* Whether the sentence's first verb is done to what was listed before. */
bool takes_up_list(const struct builder *b);
/* The foods that the sentence lists before its first verb go in, too. */
void add_listed(struct builder *b, struct step *s);
/* The steps from `first` on are new: the list before them is taken up (`joins`), or goes on with
 * the step before it. */
void close_list(struct builder *b, size_t first, bool joins);
/* After each sentence, whose new steps begin at `first`: a list may go on without a new step. */
void note_list(struct builder *b, size_t first);

/* step.c. Whether the step does that. */
bool step_has(const struct step *s, struct text action);
/* What the verb of chunk `i` means in the place where the dish is now; empty for no verb. */
struct text action_here(const struct builder *b, size_t i, struct said_verb verb);
/* The step that chunk `i` says, in the place where the dish is now; empty when it says none. */
struct text step_action_at(const struct builder *b, size_t i);
/* Whether it tells to do anything, by the rules or by the odds: by it steps are laid out and
 * joined, so that what a step says does not hang on which of its verbs is one. */
bool tells_action(const struct builder *b, size_t i);
/* steprepeat.c. The dish's steps from `first` on are new: the only one of them may be the one
 * before it, said again. */
void join_repeat(struct builder *b, size_t first);
/* stepact.c. Adds an action to step `s`. By the rules alone (`ruled`) it is laid out and worded;
 * its actions are in the end those that are likely to be a recipe's (`told`). */
void put_action(struct builder *b, struct step *s, struct text action, bool ruled, bool told);
/* "An onion, chopped": whether something else was done to what is listed than that it goes in: then
 * the list is whole, and a verb may still take it up. */
bool is_worked(const struct step *list);
/* Whether that action would be one too many. */
bool is_full(const struct step *s, struct text action, bool told);
/* Of a step which the rules know nothing of, what is told has to do for its layout and words. */
void settle_actions(struct builder *b, struct step *s);
/* The steps' actions are what is told from here on. Where that is nothing, a step is none. */
void keep_told(struct dish *d);
/* The marks of all verbs of the sentence that are instructions. */
uint64_t instruction_marks(const struct builder *b);

#endif
