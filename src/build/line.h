/* build/line.h: what the parts that make ingredient lines share.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_LINE_H
#define DISHTAKE_BUILD_LINE_H

#include "build/builder.h"

/* Seconds. */
double said_at(const struct builder *b, size_t word);
/* Whether what the chunk says is not done now, or names a dish, a yield or a sign of doneness. */
bool is_left_out(const struct chunk *c);
/* The last line spoken of; NULL for none. */
struct ingredient *last_line(const struct builder *b);
/* Whether the food is said of several, and whether a number alone counts its pieces. */
void note_pieces(const struct builder *b, struct ingredient *line, const struct entry *food,
                 const struct said_amount *said);
/* The line is what chunk `c` says: its words, its second. */
void say_line(const struct builder *b, struct ingredient *line, const struct chunk *c);
/* A new line of the dish; valid until the next one is added. */
struct ingredient *add_line(struct builder *b, const struct chunk *c, struct span food,
                            const struct entry *entry, struct text name);
void set_said(struct ingredient *line, const struct said_amount *said);
/* What was only spoken of ("the sesame greens"), or not meant, is named as it is now. */
void name_line(struct ingredient *line, struct span food, const struct entry *entry,
               struct text name);
/* To taste, optional, garnish or beside, as enum scope bits say. */
void set_scope(struct ingredient *line, unsigned scope);
/* Spoken of again; where that is in a step (`used`), a food that was only mentioned does go in. */
void use_again(struct builder *b, struct ingredient *old, const struct chunk *c, bool used);

/* water.c. How water goes in that chunk `index` names without an amount: not at all, or nobody
 * knows; if an amount follows; to cover what is there. */
enum water { WATER_NONE, WATER_ANNOUNCED, WATER_COVERS };
enum water water_goes_in(const struct builder *b, size_t index);
/* package.c. "A can of milk, twelve ounces, a cup of sugar": the size of the last line's package,
 * which stands before an amount and a food that it is not of; `said` becomes that food's own. */
void take_size(struct builder *b, const struct chunk *c, size_t index, struct said_amount *said);
/* piecefood.c. "Four cloves, the spice": makes the line of the piece, where the food only says of
 * which sort it is; false where it is not so. */
bool is_piece_food(struct builder *b, const struct chunk *c, const struct entry *food,
                   const struct said_amount *said);
/* "Four cloves, a stick of cinnamon": of two amounts before the food the first is a
 * food of its own, and makes its line; `said` becomes the second. */
void take_piece_food(struct builder *b, const struct chunk *c, const struct entry *food,
                     struct said_amount *said);
/* anew.c. "The carrots", "all the ginger and garlic": what is there already. */
bool is_the_food(const struct builder *b, const struct chunk *c);
/* The line's food is named again by chunk `c`: an amount behind it makes another line. */
void note_named_again(struct builder *b, const struct ingredient *old, const struct chunk *c,
                      const struct entry *food);
/* More was said of the line: its amount, or its name again. */
void note_told(struct builder *b, const struct ingredient *line, const struct chunk *c,
               bool amount);
/* The last word so far at which the line was spoken of. */
size_t told_end(const struct builder *b, const struct ingredient *line);

/* What becomes of a food that the dish already has. */
enum repeat {
    REPEAT_NEW,      /* a line of its own */
    REPEAT_SAME,     /* nothing */
    REPEAT_CORRECTS, /* takes back the amount before */
    REPEAT_FILLS     /* gives the amount that the line lacked */
};
enum repeat judge(const struct builder *b, const struct ingredient *old, const struct match *m,
                  const struct said_amount *now, unsigned scope);
/* "the meat" is the beef chuck, "the vegetables" are what was chopped: the line that a generic word
 * is about, when no amount makes it a food of its own; else NULL. */
struct ingredient *generic_of(struct builder *b, const struct chunk *c, const struct entry *food,
                              const struct said_amount *said);

/* "I've got some olives out too", "I've put out almonds here as well": it stands ready, and is put
 * in later or never. */
/* group.c: the part that the sentence names, which what comes then goes into; and whether it is
 * over behind the sentence. */
void name_group(struct builder *b);
void end_group(struct builder *b);
/* partof.c: gives lines the group of a part that is named only once it is made. */
void name_parts(struct builder *b);
bool is_laid_out(const struct builder *b, size_t index);
/* Whether the food is what is made here, of other foods: "I'll make the custard". Notes it. */
bool is_made_here(struct builder *b, size_t index, const struct entry *food,
                  const struct said_amount *said);
/* Whether the food is spoken of and does not go in; `old`: the dish's line of that food, or NULL.
 */
bool is_no_line(const struct builder *b, size_t index, const struct entry *food,
                const struct ingredient *old, const struct said_amount *said);
/* article.c. "a carrot", of which no number nor measure says how many; and whether what chunk
 * `index` tells so is no part of the dish: "into a sausage", "it's a syrup", "a bread bin". */
bool is_article_one(const struct chunk *c);
bool is_idle_one(const struct builder *b, size_t index, const struct entry *food);
/* instead.c. "One red pepper, sorry, one green pepper": the food that was said last, of `line`, was
 * not meant. */
bool replaces_food(const struct builder *b, const struct chunk *c, size_t index,
                   struct ingredient *line);
/* "A bunch of cilantro no a bunch of parsley" without its commas: not denied, but corrected. */
bool corrects_denied(struct builder *b, size_t index);
/* "Tomatoes, the cherry ones": whether the chunk says which sort of food the line before is, and
 * what it does to that line. */
bool is_sort(const struct chunk *c);
void build_sort(struct builder *b, const struct chunk *c);
/* package.c. "And another can of white beans, same size": the package is as big as the one before.
 */
void give_same_package(const struct builder *b, struct ingredient *line);
/* "Two cups of broth, chicken", "stock cubes, vegetable": the food behind says which kind. */
bool names_kind(struct builder *b, size_t index, const struct said_amount *said);
/* foodname.c. The words of the food; what a comma divides is no compound: "two slices of bread,
 * crusts off". */
struct span food_slot(const struct builder *b, const struct match *m);
/* The lexicon's food, with the word of a food right behind that belongs to it, which `food` then
 * has too; NULL for words that are no entry by themselves. */
const struct entry *food_entry(struct builder *b, size_t index, struct span *food);
/* The food as a recipe names it, its last word in the singular where the lexicon knows it: arena.
 */
struct text name_of_food(struct builder *b, struct span food);
/* "One red pepper, one green one": makes a line of the second; false where the amount is no such.
 */
bool build_other_sort(struct builder *b, const struct chunk *c, size_t index,
                      const struct said_amount *said);
/* "scallions or chives": the second is no line of its own. */
bool is_alternative(const struct builder *b, size_t index);
/* "A cup of panko, you could use breadcrumbs", "breadcrumbs work too". */
bool is_offered(const struct builder *b, size_t index);
/* "lemon or lime juice": the line's food gets the last word that it shares with its alternative. */
void add_alternative(struct builder *b, struct ingredient *line, struct text name);
/* "red or white wine", found as white wine with the state "red". */
void name_either(struct builder *b, struct ingredient *line, struct span state);
/* "With a green salad on the side": a dish that is served with this one. */
void build_dish_beside(struct builder *b, size_t index);
/* broken.c. Keeps the amount of chunk `index`, whose food did not follow at once; gives it to the
 * food of chunk `index` that has none itself. */
void keep_broken(struct builder *b, size_t index, const struct said_amount *said);
void take_broken(struct builder *b, size_t index, struct said_amount *said);
/* range.c. "An egg or two", "three cloves, maybe four": whether the number of chunk `index` makes
 * the line's amount a range; to its end; and "a cup of parsley at least", at chunk `index`. */
bool widens_amount(const struct builder *b, const struct ingredient *line, size_t index);
void widen_amount(struct ingredient *line, struct ratio high);
void open_amount(struct builder *b, size_t index);
/* "One each of red and yellow peppers", found as yellow peppers with the state "red": makes a line
 * of the first. */
void add_first_of_both(struct builder *b, const struct chunk *c, const struct said_amount *said);
/* "A teaspoon each of ginger and garlic paste": names the line of the food before as `name`, the
 * one in chunk `index`, where they share the last word. */
void share_last_word(struct builder *b, size_t index, struct text name);
/* A food without an amount goes in only where something is put in, or beside one that has an
 * amount. */
bool is_used_here(const struct builder *b, const struct chunk *c, size_t index,
                  const struct said_amount *said);
/* "Salt, of course.", "brush the tops with milk": more of a food that went in before, of which
 * nobody says how much. */
bool goes_in_again(const struct builder *b, size_t index, const struct ingredient *old,
                   const struct said_amount *said);
/* "Taste that for salt and lemon": the food goes in to taste. */
bool is_tasted_for(const struct builder *b, size_t index);
/* eachof.c. "... of each", "... apiece" at chunk `index`. */
bool is_for_each(const struct builder *b, size_t index);
/* Whether the amount of chunk `index` sums up the line's, which was for each: "a teaspoon on each,
 * so that's six teaspoons", "four tablespoons altogether". */
bool is_sum(const struct builder *b, const struct ingredient *line, size_t index);
/* "Yogurt and sour cream, half a cup of each": the foods of the sentence that have no amount have
 * this one; where it has none, those of the sentence before, if they are several. */
void give_each(struct builder *b, const struct said_amount *said);
/* carry.c. "cumin and coriander, a teaspoon each": the foods listed before have the amount too. */
void carry_back(struct builder *b, size_t index, const struct said_amount *said);
/* "125 grams of oats, 125 of flour, 100 of sugar": the unit said before, where the recording leaves
 * units out again and again; who does so once may have slipped, and is asked. */
void carry_unit(const struct builder *b, const struct chunk *c, const struct entry *food,
                struct said_amount *said);
/* "The same again of brown sugar": the amount of the line before. */
void carry_same(const struct builder *b, const struct chunk *c, struct said_amount *said);
/* "Two leaves of bay": two bay leaves; `name` becomes that. */
void count_pieces(const struct entry *food, struct said_amount *said, struct text *name);
/* Whether the recording leaves units out by habit. */
bool drops_units(const struct recording *r);
/* "a teaspoon each of cumin, coriander": the amount holds for the foods that follow in the list. */
void carry_each(struct builder *b, const struct chunk *c, size_t index, struct said_amount *said);

#endif
