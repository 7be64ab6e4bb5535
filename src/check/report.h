/* check/report.h: what the finders of one recording share, and the one way to make a finding.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_REPORT_H
#define DISHTAKE_CHECK_REPORT_H

#include "check/list.h"
#include "check/said.h"
#include "match/matches.h"
#include "model/recording.h"
#include "pack/pack.h"

/* The cases are named in check/findings.def; their kinds, levels and words are rows of the pack's
 * findings.tsv. */
enum finding_case {
#define FINDING(name) CASE_##name,
#include "check/findings.def"
#undef FINDING
    FINDING_CASES
};

/* A row of findings.tsv; `kind` is empty where the pack has none: then the case is not reported. */
struct finding_row {
    struct text kind, why, suggest;
    enum finding_level level;
};

/* A length of time in words that look back, "they've had their ten minutes", the dish that is
 * named there, by its number, or else the last other time before that is of the same thing; NULL:
 * none is. */
struct spent {
    const struct match *time;
    size_t dish;
    const struct match *linked;
};
typedef LIST(struct spent) spent_list;
typedef LIST(struct span) span_list;

struct checker {
    struct recording *r;
    const struct pack *k;
    struct finding_row rows[FINDING_CASES];
    struct sayings sayings;
    const uint32_t *owned; /* how many words before each are a dish's; one more for the end */
    const struct ingredient_list *list; /* that the cook shows; NULL: there is none */
    struct dish *dish;                  /* the one being looked at */
    size_t number;                      /* its index */
    span_list parts;       /* its words: its spans, and talk between them that is no other dish's */
    struct span beside[2]; /* talk before and behind it that no dish has, nearest to it */
    size_t beside_count;
    spent_list spent; /* of the whole recording: durations that look back, see again.h */
    bool spent_known;
};

/* False, with problems, where a row of the table is wrong. */
bool findings_load(struct checker *c, struct problems *p);

/* What a finding is about, and where. */
struct subject_of {
    double at;         /* seconds */
    struct span words; /* what was said */
    struct text about;
};

/* Adds a finding about c->dish. The row's words have blanks: {1} is `about`, {2} and so on are
 * `more`. NULL where the pack has no row for the case. Valid until the next one is added. */
struct finding *report(struct checker *c, enum finding_case which, struct subject_of what,
                       const struct text *more, size_t count);
#define REPORT(c, which, what, ...)                                       \
    report((c), CASE_##which, (what), (const struct text[]){__VA_ARGS__}, \
           sizeof(const struct text[]){__VA_ARGS__} / sizeof(struct text))
#define REPORT_PLAIN(c, which, what) report((c), CASE_##which, (what), NULL, 0)

struct subject_of subject_words(const struct checker *c, struct span words);
struct subject_of subject_line(const struct ingredient *line);
struct subject_of subject_step(const struct recording *r, const struct step *step);
/* The words as captioned, with single spaces. Arena. */
struct text said_words(const struct recording *r, struct span words);

/* The pack's words with blanks filled in. Arena. */
struct text filled(const struct checker *c, struct text words, const struct text *blanks,
                   size_t count);
/* What the lexicon says of the step's main action: marks. */
uint64_t step_marks(const struct checker *c, const struct step *s);
/* How many of `unit` an amount in `said_unit` is; negative where the two measure different things.
 */
double amount_in(const struct checker *c, const struct amount *amount, struct text said_unit,
                 struct text unit);
/* "Beer" and "brown beer" may be one food, "chili oil" and "sesame oil" are two. */
bool one_names_both(struct text a, struct text b);
/* Whether another line of the dish that may be the same food says how much: "chicken" after "eight
 * chicken thighs". */
bool amount_elsewhere(const struct dish *d, const struct ingredient *line);
/* The same within OTHER_PART_WORDS: the seasoning of another part of the dish stands farther off.
 */
#define OTHER_PART_WORDS 50
bool amount_near(const struct dish *d, const struct ingredient *line);
/* "The turkey" where another dish has two pounds of it: what lies between dishes is spoken of as
 * known. The line must be spoken, not the cook's own. */
bool known_elsewhere(const struct checker *c, const struct ingredient *line);
/* The first place in the sentence where one of the set is said; false, and `where` as it was, when
 * there is none. */
static inline bool said_in(const struct checker *c, const char *set, const struct sentence *s,
                           struct span *where)
{
    return said_find(&c->sayings, c->r, set, sentence_words(s), where);
}
/* Whether one of the set is said in the sentence of these words. */
bool said_with(const struct checker *c, const char *set, struct span words);
/* "Now you salt it ... just do it to taste": whether it is told soon behind the words. */
bool tasted_behind(const struct checker *c, struct span words);
/* Whether the line's number, which has no unit, is no count, and none goes on from before. */
bool lacks_unit(const struct checker *c, const struct ingredient *line);
/* "Black pepper, plenty", "salt, by eye": whether what is vague stands behind the line's food;
 * `*where` is the food up to there. */
bool vague_behind(const struct checker *c, const struct ingredient *line, struct span *where);
/* "Flour on the board, a little": the same behind words that end at `last`. */
bool dusted_vaguely(const struct checker *c, size_t last);
/* "Half a teaspoon of, hang on, what is this jar. Smoked paprika.": whether the food of an amount
 * that breaks off at word `last` is said soon, by itself; and whether that word is such a food. */
bool resumes(const struct checker *c, size_t last);
bool resumed(const struct checker *c, size_t food);
/* Whether the words say spoons, and not themselves which. */
bool says_spoon(const struct checker *c, struct span words);
/* Whether it is told, there or right behind, which spoons the words mean. */
bool spoon_told(const struct checker *c, struct span said);

/* dishwords.c. Makes it the dish that is looked at: sets dish, number, parts and what is beside. */
void look_at(struct checker *c, size_t dish);
/* Whether the word belongs to c->dish. */
bool in_dish(const struct checker *c, size_t word);
/* The sentences of c->dish, one after the other, as sentence_next() gives them. */
const struct sentence *next_sentence(const struct checker *c, const struct sentence *s);
/* Whether the word belongs to c->dish, or to the talk beside it; and all words from the first to
 * the last of those. */
bool in_talk(const struct checker *c, size_t word);
struct span talk_near(const struct checker *c);
/* The dish's words, and those around it that no dish has: talk there may be of this one. */
struct span talk_around(const struct checker *c);
/* For checker.owned. Arena. */
const uint32_t *count_owned(const struct recording *r);

/* In the families' files. Each looks at c->dish. */
#define FINDER(name) void find_##name(struct checker *c);
#include "check/finders.def"

/* What the list says of the line's food where it gives an amount; NULL where it gives none. */
const struct listed *listed_amount(const struct checker *c, const struct ingredient *line);

#endif
