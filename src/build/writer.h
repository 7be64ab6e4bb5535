/* build/writer.h: what the parts of the step writer share while one step is being written.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_WRITER_H
#define DISHTAKE_BUILD_WRITER_H

#include "build/instruction.h"
#include "build/wording.h"

/* Words of an entry from which on it is a saying, written as it stands: "bring it to a boil". */
#define SAYING_WORDS 3

/* Foods that are listed before the verb that takes them up. */
#define PENDING_MOST 16

struct writer {
    struct builder *b;
    const struct step *s;
    size_t index; /* of that step in the dish */
    bool named;   /* the step has named a thing: what "it" is after that is plain */
    struct prose p;
    struct {
        struct chunk chunk;
        const struct sentence *sentence;
    } pending[PENDING_MOST];
    size_t pending_count;
    unsigned run;      /* words of the sentence that is being written, foods apart */
    unsigned doubts;   /* words so far that no cookbook would print */
    bool timed;        /* the sentence's time is written */
    unsigned said;     /* bit set of the step's actions that a verb says */
    size_t begin, end; /* the chunks of this sentence that belong to the step; `end` is left out */
};

/* steptext.c. From the beginning of the sentence, or where the step before ends, to the last word
 * of the step; false when that is nothing. */
bool find_range(struct writer *w, size_t not_before);

/* stepclause.c: chunks are meant by their index; an `end` is left out. */
size_t clause_end(const struct writer *w, size_t i);
/* The first chunk that tells what to do; `end` when there is none. */
size_t find_verb(const struct writer *w, size_t begin, size_t end);
bool says_tag(const struct writer *w, size_t begin, size_t end, unsigned char tag);
/* The sentence, clause by clause, each with its verb first. */
void write_clauses(struct writer *w);

/* stepheat.c. The step's heat, where the text says how long and has lost it. */
void say_lost_heat(struct writer *w);

/* steptime.c. The first length of time in the range that is done; `end` when there is none. */
size_t find_time(const struct writer *w, size_t begin, size_t end);
/* Whether that time is how long the step takes: not "it keeps for a week". */
bool is_its_time(const struct writer *w, size_t time);
/* From where on the words before the time only lead to it: "for", "and give them". */
size_t lead_of_time(const struct writer *w, size_t begin, size_t time);
/* "And fry for 5 minutes": the time in chunk `time`, with the range's place and what follows it,
 * behind the step's first action that takes time and that no verb says; false when there is none.
 */
bool say_unsaid_time(struct writer *w, size_t begin, size_t time, size_t end);

/* "Boil it, and that's ten minutes": "for 10 minutes"; false where it is not told so. */
bool say_told_time(struct writer *w, size_t begin, size_t time, size_t end);

/* "For 5 minutes": the time in chunk `time`, and what follows it up to `end`. */
void say_for(struct writer *w, size_t begin, size_t time, size_t end);

/* stepdoubt.c. Whether chunk `i` of the range is a word that no cookbook would print there. */
bool is_odd(const struct writer *w, size_t i, size_t begin, size_t end);
/* Whether chunk `i` of a range stands in "or it'll stick", "before you cut it". */
bool is_aside(const struct writer *w, size_t i, size_t begin);
/* Chunk `i` of a range is written: counts it where it reads oddly. */
void note_doubt(struct writer *w, size_t i, size_t begin, size_t end);
/* "Till it's": a sign of doneness that breaks off, at chunk `i`; `last` becomes the chunk behind
 * it. */
bool is_open_until(const struct writer *w, size_t i, size_t end, size_t *last);
/* Whether a sentence begins with a verb, or with when or where. */
bool begins_well(const struct writer *w, struct text said);
/* Whether the text that was written cannot be trusted. */
bool is_doubtful(const struct writer *w);

/* stepclean.c. The chunk behind the words that can stand behind the verb. */
size_t object_end(const struct writer *w, size_t verb, size_t end);
/* Whether the words can name what the verb is done to: a food, or a thing. */
bool names_object(const struct writer *w, size_t begin, size_t end);

/* steptidy.c. The text without what it says twice; arena. */
struct text tidy_text(const struct builder *b, struct text said);

/* stepunused.c. Foods that went in and that no step of the dish names are taken up by the step
 * behind them, or get one. */
void take_up_unnamed(struct builder *b);

/* stepplain.c. Whether the action alone is a sentence: "Stir.", but not "Add." */
bool is_enough(const struct writer *w, struct text action);
/* The step from its actions, foods and times; false when that is nothing. */
bool write_step_plainly(struct writer *w, size_t not_before);

/* stepaction.c. The action that the step has for this verb: its own, or what it means where the
 * dish is. */
struct text step_action(const struct writer *w, struct text action);
/* How the verb is written: with its particle ("whisk in"), as the saying it is, else as the plain
 * verb; `subject`: a thing stands before it. */
struct text verb_words(const struct chunk *c, struct text action, bool subject);
/* stepverb.c. */
void write_verb(struct writer *w, size_t begin, size_t verb, size_t end);

/* stepsplit.c. The verb as it is written; `apart` becomes its last word where that stands behind a
 * pronoun: "knock it back". */
struct said_verb written_verb(const struct writer *w, size_t verb, struct text *apart);
/* Whether anything but words that are left out stands between a verb and its particle. */
bool says_object(const struct writer *w, size_t verb, size_t end);
/* The rest of a verb whose words stand apart: what is between them; returns where it goes on. */
size_t say_split(struct writer *w, const struct phrasal *p, size_t rest, size_t end,
                 struct text apart);

/* stepobject.c. "Chicken thighs, cut in chunks, go into the marinade": the food before a verb that
 * goes without an object; `verb` when there is none, or another verb stands between. */
size_t subject_food(const struct writer *w, size_t verb);
/* Whether the verb is written in other words than it was said in: "goes in" is "add". */
bool is_reworded(const struct chunk *c, struct text action);
/* Whether chunk `i` can begin a place: "a", "the", a vessel. */
bool is_place_word(const struct writer *w, size_t i, size_t end);
/* "The grill", "a hot oven": where something is taken from; not what is taken. */
bool comes_from(const struct writer *w, size_t i, size_t end);
/* Whether a verb that means more here is better written as it was said: "leave it", which rests. */
bool keeps_verb(const struct writer *w, const struct chunk *c, struct text action);
/* "To": what leads from the action's food to its place. */
void say_to(struct writer *w, struct text action);
/* Whether chunk `i` can be what a verb is done to. */
bool is_object_word(const struct writer *w, size_t i);
/* "Give it a stir", "in they go": what is done to it stands inside the saying. */
bool holds_object(const struct chunk *c);
/* Whether nothing but foods stands behind the verb: no place, no particle. */
bool puts_only(const struct writer *w, size_t verb);
/* "Add to the one saucepan": what goes in, or comes out, is not said; `rest`: behind the verb. */
bool lacks_object(const struct writer *w, const struct chunk *c, struct text action, size_t rest,
                  size_t end);

/* steptake.c. Whether chunk `i` is a pronoun: "it", "that" with nothing behind it. */
bool is_pronoun(const struct writer *w, size_t i, size_t end);
/* Whether a verb of several words ends in "in", "on": "goes in" is written "add", and then lacks
 * it.
 */
bool is_into(const struct writer *w, size_t verb);
/* Whether the foods that were listed are what this verb is done to: it names none of its own, and
 * is one that foods are readied, mixed or cooked by. */
bool takes_pending(const struct writer *w, size_t subject, size_t verb, size_t end);

/* steprange.c. "so the herbs give up": why, which a recipe keeps. "So", "now", "then" only lead on.
 */
bool is_reason(const struct writer *w, size_t i);
/* Whether chunk `i` stands in such a reason, which a comma ends. */
bool in_reason(const struct writer *w, size_t i);
/* The chunks' words, without what a recipe leaves out; ends where talk begins. */
void say_range(struct writer *w, size_t begin, size_t end);

/* steplist.c */
bool is_food(const struct chunk *c);
/* The range's foods join those that wait for their verb. */
void gather(struct writer *w);
/* Writes what stands in these chunks only, of those of the step. */
void write_within(struct writer *w, size_t begin, size_t end, void say(struct writer *));
/* Names them all; none waits any more. */
void say_pending(struct writer *w);
/* The same behind the verb that takes them up: "pack the brown sugar". */
void say_taken(struct writer *w);
/* Of the foods that wait those that are new here, and not yet written. */
void keep_new(struct writer *w);
/* Writes those that no verb took up as a sentence of their own. */
void flush_pending(struct writer *w);

/* stepname.c. Writes what the pronoun in chunk `i`, which verb `verb` is done to, stands for, or
 * leaves it out where a cookbook does ("bake for 10 minutes"); false where the pronoun stays. */
bool name_pronoun(struct writer *w, size_t verb, size_t i, size_t end);

/* steptemplate.c. The first template of `action` whose places are all filled; `own`: only one that
 * is listed for it. */
bool say_action(struct writer *w, struct text action, bool own);
/* The place that chunks of the range name ("in the fridge"); false when there is none. */
bool say_place(struct writer *w, size_t begin, size_t end);
void write_verbless(struct writer *w);

#endif
