/* build/builder.h: what the parts of the builder share while one dish is being built.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_BUILD_BUILDER_H
#define DISHTAKE_BUILD_BUILDER_H

#include "build/chunk.h"
#include "build/quantity.h"

/* A row of the pack's table `phrasal`. */
struct phrasal_row {
    struct text head, particle, object, action;
    size_t next; /* 1 + the next row whose head has the same text_shape_number(); 0: none */
};
typedef LIST(struct phrasal_row) phrasal_list;

/* The table, by kind: "verb", "thing", "food". */
struct phrasals {
    struct phrasal_kind {
        phrasal_list rows;
        size_t first[64]; /* 1 + the first row whose head has that text_shape_number() */
    } verbs, things, foods;
};

/* One step is one tight group of actions. */
#define STEP_ACTIONS 3

struct verb_memo; /* instruction.h */

/* How a yield was said: not yet; "cut it, so that's eight"; "twelve squares"; "four people"; "feeds
 * four". */
enum yield_sure { YIELD_NONE, YIELD_CUT, YIELD_COUNTED, YIELD_SAID, YIELD_SERVED };

struct builder {
    struct recording *r;
    struct verb_memo *memo; /* arena; of the sentence in `chunks` */
    const struct pack *k;
    const struct table *step_words;             /* the pack's; NULL: it has none */
    const struct table *step_odds;              /* the same */
    const struct table *line_odds;              /* the same */
    const struct table *prep_odds, *prep_foods; /* the same */
    const struct rule *bare; /* by which numbers are minutes; NULL: not looked for yet */
    struct phrasals phrasals;
    struct dish *dish;
    const struct sentence *sentence; /* the one being read */
    struct chunks chunks;            /* of that sentence */
    struct text group; /* the component that things go into now; empty: the dish itself */
    const struct entry *next_part; /* one that is made from the next sentence on; NULL: none */
    size_t group_age;              /* sentences since it was named or fed */
    struct text heated;            /* what was last said to be hot: "oven" */
    size_t heated_age;             /* sentences since */
    const struct entry
        *pan; /* the pot or pan on the stove that was spoken of last; NULL for none */
    const struct entry *made; /* the food that was last said to be made here: the custard */
    size_t pan_at;            /* the word that names it */
    size_t tin_at;            /* the word that names a tin or tray for the oven last; 0 for none */
    size_t oven_at;           /* the same of the oven, and of a grill or barbecue */
    size_t grill_at;
    bool drops_units;  /* the recording leaves units out again and again */
    char scale;        /* of the recording's ovens: 'F' or 'C' */
    bool rundown;      /* foods listed in this sentence go in later */
    size_t rundown_at; /* the word that says so */
    double talk;       /* log odds that nothing is cooked in the recording */
    double last_said;  /* seconds: when the last ingredient was spoken of */
    bool cooks;        /* this sentence has an instruction or an amount */
    bool asked;        /* the sentence before was a question */
    size_t last_line;  /* index + 1 of the last ingredient spoken of; 0 for none */
    size_t told_line;  /* `last_line` when more was said of it: its amount, its name again */
    size_t told_last;  /* the last word of that */
    struct said_amount
        broken;       /* an amount whose food did not follow: "a pound of, excuse me, mince" */
    size_t broken_at; /* its last word */
    bool broken_of;   /* "of" stood behind it */
    bool told_amount; /* what was said was its amount */
    const struct entry *anew;   /* the food that was named again, of a line with an amount */
    size_t anew_line;           /* index + 1 of that line */
    struct span anew_words;     /* the words that named it again */
    enum yield_sure yield_sure; /* how the dish's yield was said, so far */
    size_t list_step; /* index + 1 of the dish's last step when it only lists foods; else 0 */
    bool put_in;      /* a list of foods was said to go in: "carrots in" */
    double list_end;  /* seconds: when that list's last food was named */
    const struct match *each; /* "a teaspoon each of": holds for the foods that follow */
};

/* One chunk that is a food with or without an amount. */
void build_line(struct builder *b, const struct chunk *c, size_t index);
/* The food of a question ("how much vinegar?"), if the dish has it without an amount. */
void ask_line(struct builder *b, const struct chunk *c);
/* An amount without a food, a number or a unit that takes back the one before, and a verb that
 * hides a food.
 */
void build_amount(struct builder *b, const struct chunk *c, size_t index);
/* A length behind oil or water, said as an amount of it. */
void build_depth(struct builder *b, const struct chunk *c);
void build_number(struct builder *b, const struct chunk *c);
void build_unit(struct builder *b, const struct chunk *c, size_t index);
void build_hidden(struct builder *b, const struct chunk *c, size_t index);
/* What stands behind a food: ", peeled and sliced", "cut into strips". */
void read_prep_after(struct builder *b, struct ingredient *line, size_t index);
/* What is done to it by the verb before it: "peel six kiwis". */
void read_prep_before(struct builder *b, struct ingredient *line, size_t index);
/* The same where it stands in a sentence of its own: "Two cloves. Crushed." */
void read_prep_alone(struct builder *b);
/* What is done next to the line before: "and you slice it". */
void read_prep_of_it(struct builder *b, struct ingredient *line, size_t index);
void read_prep_inside(struct builder *b, struct ingredient *line, const struct match *m);
/* The dish's ingredient that is the same food; NULL when there is none. */
struct ingredient *find_food(struct builder *b, const struct entry *food, struct text name);

/* Steps, durations and temperatures of the sentence in b->chunks. */
void build_steps(struct builder *b);
/* After the last sentence: a list of foods that no verb took up. */
void settle_steps(struct builder *b);
/* The dish's yield, from the phrase matches of its sentences. */
void build_yield(struct builder *b, const struct sentence *s);
/* The same where it is said before all dishes, of everybody who will eat: of each dish that says
 * nothing else. */
void share_yield(struct builder *b, const struct sentence *s);
/* Whether the sentence tells a yield that holds for all dishes: "all of this feeds eight". */
bool yield_is_shared(const struct recording *r, const struct sentence *s);
/* The dish, as sentence.names has it, of which sentence `n` tells a yield if it tells one: that is
 * named there or beside it, or spoken of by what its title says; 0: none is. */
size_t yield_names(const struct recording *r, size_t n);
/* Whether a yield is of this dish: of the one `named`, by yield_names(), else of the one whose
 * words it is among (`inside`). */
bool yield_is_of(const struct recording *r, const struct dish *d, size_t named, bool inside);
/* Whether sentence `n` may tell the yield of a dish that it is no part of. There are dishes. */
bool yield_is_elsewhere(const struct recording *r, size_t n, size_t named);
/* Whether the chunk counts what the dish's title names, once something was done: "so, six
 * flatbreads". That is how much it makes; nothing goes in. */
bool yields_title(struct builder *b, const struct chunk *c, size_t index, const struct entry *food,
                  const struct amount *said);

#endif
