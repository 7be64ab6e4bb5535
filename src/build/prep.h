/* build/prep.h: what the parts that read preparations share.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_PREP_H
#define DISHTAKE_BUILD_PREP_H

#include "build/line.h"

/* What a preparation is when it begins at a chunk: its text, and the last chunk of it. */
struct prep_phrase {
    struct text prep; /* arena; empty: none begins there */
    size_t last;
};

/* Adds what the list does not say yet. */
void add_prep(struct arena *a, text_list *list, struct text t);
/* The same for a line, in the word that fits its food. */
void add_line_prep(struct builder *b, struct ingredient *line, struct text t);
/* The state in the line's words, `before` its food or behind it: a preparation, or what the food is
 * called. */
void add_state(struct builder *b, struct ingredient *line, const struct entry *state, bool before);
/* The row of step-words, of this kind, for what is said of the line's sort of food or of its name's
 * last word: "egg beat", "tofu press"; empty for none. */
struct text food_row(const struct builder *b, const struct ingredient *line, const char *rows,
                     struct text said);
/* What recipes call it of the line's food; empty for what is no preparation of it. */
struct text usual_prep(const struct builder *b, const struct ingredient *line, struct text t);
/* What a verb that heats or works a food before it goes in makes of the line's; empty for none. */
struct text prep_row(const struct builder *b, const struct ingredient *line, struct text action);
/* The participle of a verb, which the loader made of the same row; NULL when it has none. */
const struct entry *participle(const struct pack *k, const struct entry *verb);
/* The participle without its particle: "chopped" of "chopped up". */
struct text plain_participle(const struct builder *b, const struct entry *done);
/* "Finely diced" for a cut `done` at `word`, which is printed as `t`, where its manner stands
 * before it. */
struct text with_manner(const struct builder *b, size_t word, const struct entry *done,
                        struct text t);
/* The words as a line prints them: numbers as digits. */
struct text printed_prep(struct builder *b, size_t first, size_t last);
/* Whether the chunk leads to the pieces: "into" by itself, or as the last word of "cut into". */
bool leads_to_pieces(const struct builder *b, const struct chunk *c);
/* "cut into half-inch cubes": the chunk that names the pieces; 0 when chunk `index` begins no such
 * phrase. */
size_t pieces_end(const struct builder *b, size_t index);
/* Whether chunk `i` is pieces: "cubes", "8 wedges". */
bool is_counter(const struct builder *b, size_t i);
/* The first chunk of that phrase, behind the verb or the food; 0 where there is none. */
size_t pieces_begin(const struct builder *b, size_t index);
/* "sliced" for "in slices", "thinly sliced" for "into thin rounds" at chunks `begin` to `end`;
 * empty where no one word says it. */
struct text pieces_word(struct builder *b, size_t begin, size_t end);
/* What a verb that heats or works a food before it goes in makes of it: "toasted"; empty for none.
 */
struct text prepared_before(const struct builder *b, const struct ingredient *line,
                            const struct chunk *verb);
/* The same where an "it" stands behind the verb, at chunk `it`. */
struct text prepared_it(const struct builder *b, const struct ingredient *line,
                        const struct chunk *verb, size_t it);
/* The same where the verb has its "it" inside: "put it through a sieve". */
struct text prepared_inside(const struct builder *b, const struct ingredient *line,
                            const struct chunk *verb);
/* The same where the food stands behind the verb: "toast a handful of walnuts". */
struct text prepared_first(const struct builder *b, const struct ingredient *line,
                           const struct chunk *verb);
/* The same of a food that was named before: "half a cup of cocoa. Sift the cocoa". */
struct text prepared_then(const struct builder *b, const struct ingredient *line,
                          const struct chunk *verb);
/* What the unit of its amount makes of a fruit: "a squeeze" is juiced; empty for nothing. */
struct text prepared_by_amount(const struct builder *b, const struct ingredient *line,
                               const struct entry *unit);
/* "On the fine grater", "I use the press for those", at chunk `i`. */
struct prep_phrase tool_at(const struct builder *b, size_t i);
/* The lines of the sentence before word `end` all have it: "one onion, two carrots, all diced"; one
 * that says its own only where no others do not. */
void give_all(struct builder *b, size_t end, struct text prep);
/* "Two carrots and two parsnips cut into batons": the line before has it too, where it is counted
 * as this one is, with nothing but an "and" between. */
void give_pair(struct builder *b, const struct ingredient *line, struct text prep);
/* The chunk behind the verbs that are done to the food at chunk `index` and to all listed before
 * it; `index` where there is no list. */
size_t verbs_end(const struct builder *b, const struct ingredient *line, size_t index);
/* The line of which the words behind its food at chunk `index` tell: "bread, soaked in milk and
 * squeezed" tells of the bread. */
struct ingredient *told_of(const struct builder *b, struct ingredient *line, size_t index);
/* What stands with the next food's words and belongs to this one: "dill, chopped, fresh dill". */
void read_prep_of_next(struct builder *b, struct ingredient *line, size_t index);
/* "... half an onion sliced | tofu on top": where captions have no stops, one that ends with a
 * participle ends what is said of the food before; at word `i`. */
bool ends_caption(const struct builder *b, size_t i);
/* Whether the verb of chunk `index` is done to several: "chop those up". */
bool means_several(const struct builder *b, size_t index);
/* The first of the lines that stand in one list with `line`, nothing but an "and" between them. */
struct ingredient *list_of(const struct builder *b, struct ingredient *line);
/* "Take out the seeds", "cut off the ends", at the verb of chunk `index`: "seeded"; empty for none.
 */
struct text part_taken(const struct builder *b, size_t index);
/* What a food is without the part that chunk `i` names; empty where it names none. */
struct text part_done(const struct builder *b, size_t i);
/* "cut into half-inch cubes"; "chopped"; "chopped up", at chunk `i`. */
struct prep_phrase participle_at(struct builder *b, size_t i);
/* "strings off", "with the crusts cut off", "seeds taken out", at chunk `i`. */
struct prep_phrase removed_at(const struct builder *b, size_t i);
/* Whether chunk `index` stands for a food spoken of: "it", "those" with nothing behind that they
 * belong to, "each one". */
bool is_it(const struct builder *b, size_t index);
/* "Give them a rinse": the verb has its "it" inside. */
bool has_it_inside(const struct builder *b, const struct chunk *c);
/* "Peel, core and slice them": the "it" of the verb at chunk `index`, behind the verbs listed with
 * it; 0 for none. */
size_t object_of(const struct builder *b, size_t index);
/* "... out of the jar, chopped", "... about an ounce each, skinned", "... a big one, peeled": the
 * last chunk of what stands at chunk `i` between a food and what was done to it; 0 for none. */
size_t aside_end(const struct builder *b, size_t i);
/* prepshape.c. "Rough chop", "small dice", "chunks", at chunk `i`. */
struct prep_phrase shape_at(struct builder *b, size_t i);
/* "The same", "same way": gives the line what was done to the food before it; the last chunk of the
 * saying, 0 where none begins at chunk `i`. */
size_t give_same(struct builder *b, struct ingredient *line, size_t i);
/* "... that I've just chopped", "which I diced up": who did it, before the participle at once. */
bool leads_to_done(const struct builder *b, size_t i);
/* "In rings", "in big chunks", at chunk `i`. */
struct prep_phrase pieces_at(struct builder *b, size_t i);
/* "It needs to be cold", "you want those in rounds", "I only want the zest of it": what the chunk
 * says of a food that was spoken of; empty for nothing. */
struct text said_of_it(struct builder *b, const struct ingredient *line, size_t index);
/* A fruit that is bought for its juice: table food-parts says so. */
bool has_juice(const struct builder *b, const struct ingredient *line);

/* prepverb.c, and prepnamed.c of a food that was named before. */
/* "You slice it": a verb so few words after a food is done to that food alone. */
#define NEAR_WORDS 24
/* Whether the chunk is a verb of one of these sorts whose participle is printed on a line. */
bool prepares(const struct chunk *c, uint64_t sorts);
/* Whether the food was put to something since: what is done then is done to the dish. */
bool is_worked_on(const struct builder *b, const struct ingredient *line, size_t before);
/* The tag of the chunk before `i` that is no adverb nor "already": who did it. */
unsigned char teller_of(const struct builder *b, size_t i);
/* "And I", "and you": what goes on with what the cook does. */
bool is_and_cook(const struct builder *b, const struct chunk *c, enum tag cook);
/* The participle of a chunk that says what is done, or what was: "mince", "I've minced"; "I fried"
 * tells a step of the dish. NULL for none. */
const struct entry *prepared_as(const struct builder *b, size_t i, uint64_t sorts);
/* What the verb of chunk `verb` makes of a food that stands at chunk `food`, with the pieces behind
 * it; empty when it prepares nothing: "cut the potatoes into chunks". */
struct text prepared(struct builder *b, size_t verb, size_t food, uint64_t sorts);

#endif
