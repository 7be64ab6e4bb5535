/* check/again.h: what is said a second time: words that look back, and the matches of a dish, for
 * the finders of contradictions.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_AGAIN_H
#define DISHTAKE_CHECK_AGAIN_H

#include "check/report.h"
#include "match/capture.h"

typedef LIST(const struct match *) match_list;

/* The matches of those kinds with a number in c->dish's words, but for those whose last word is in
 * one of the scopes. */
void add_matches(struct checker *c, uint64_t kinds, unsigned not_in, match_list *list);
/* "Did you say twenty minutes", "twenty minutes like I said": one of the set `before` right before
 * the words, or one of the set "recap" right behind them. */
bool looks_back(const struct checker *c, const char *before, struct span words);
/* The number of the one dish whose title's last word is spoken in the sentence of these words, or
 * in the one before it: "and the scones, they've had their ten minutes". NO_DISH: none, or two. */
#define NO_DISH SIZE_MAX
size_t dish_named(const struct checker *c, struct span words);
/* Whether two ranges meet. */
bool overlap(double low, double high, double other_low, double other_high);

/* The first number said in `where`, a part of `s`; false when there is none. */
bool number_in(const struct checker *c, const struct sentence *s, struct span where,
               struct amount *count);

/* The first number, in words or digits, in a part of `s`, and where it stands; false: there is
 * none. */
bool first_number(const struct checker *c, const struct sentence *s, struct span within,
                  struct amount *count, struct span *where);

/* What was told of a food before: `most` of it in all, and the last line, which is not as much as
 * was said. */
struct went_in {
    const struct ingredient *other; /* NULL: there is none in measures of the same kind */
    double most;
    size_t dish; /* whose line it is: its number */
    bool told;   /* an amount of the food is told, in whatever measure */
};
/* What went in before word `before` of that food in c->dish, in measures of the same kind: true
 * where one line, or all together, is as much as `said`. */
bool went_in(const struct checker *c, const struct entry *food, size_t before,
             const struct amount *said, struct went_in *out);
/* Whether what went in before word `before` is not as much as `said`: in c->dish, or, where that
 * tells no amount of the food, in the dish that did last. False too where nobody tells of any. */
bool told_otherwise(const struct checker *c, const struct entry *food, size_t before,
                    const struct amount *said, struct went_in *out);
/* Reports an amount, in those words, that is not what the other line tells: a finding about that
 * dish. */
void report_otherwise(struct checker *c, struct span words, struct text about, size_t dish,
                      const struct ingredient *other);
/* The words that say the line's amount: its own, or those elsewhere that it was taken from ("the
 * lamb ... about two kilos"). */
struct text amount_words(const struct checker *c, const struct ingredient *line);
/* Whether the set's words stand right before the words, in their sentence. */
bool stands_before(const struct checker *c, const char *set, struct span words);
/* Whether they stand right behind them. */
bool stands_behind(const struct checker *c, const char *set, struct span words);

/* Whether the time was said before, of this dish or another: where dishes lie between each other,
 * the words that look back may be of either. */
bool time_said(const struct checker *c, const struct match *time);

/* "Four minutes a side": said once and cooked twice. */
bool each_side(const struct checker *c, const struct match *time);

#endif
