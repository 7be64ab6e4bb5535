/* build/build.c: each dish's sentences -> its ingredient lines, steps, yield.
 * SPDX-License-Identifier: MIT */
#include "build/build.h"

#include "build/builder.h"
#include "base/arena.h"
#include "build/heat.h"
#include "build/heatof.h"
#include "build/instruction.h"
#include "build/line.h"
#include "build/lineodds.h"
#include "build/phrasal.h"
#include "build/minutes.h"
#include "build/prepodds.h"
#include "build/preheat.h"
#include "build/steptext.h"
#include "build/talk.h"
#include "match/matches.h"

/* Verbs with which a food goes in though no amount is said of it. */
#define PUTTING \
    (MARK_OF(puts) | MARK_OF(mixes) | MARK_OF(seasons) | MARK_OF(finishes) | MARK_OF(serves))

/* "I added the salt": told as done, which puts it in all the same. */
static bool is_told(const struct builder *b, size_t i)
{
    const struct chunk *before = i ? &b->chunks.at[i - 1] : NULL;
    return before && before->tag == TAG_ME && b->chunks.at[i].tag == TAG_DONE;
}

/* Whether the sentence puts something in. */
static bool sentence_cooks(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->scope & SCOPE_NOT_DONE)
            continue;
        if ((c->tag == TAG_ACTION || is_told(b, i)) && chunk_marks(c) & PUTTING
            && !(c->scope & SCOPE_UNTIL))
            return true;
    }
    return false;
}

/* What may say how the last food is, or what is done to it. */
static bool may_prepare(const struct chunk *c)
{
    return c->tag == TAG_ACTION || c->tag == TAG_DONE || c->tag == TAG_STATE || c->tag == TAG_DOING
           || (c->tag == TAG_EXTRACT && !c->match) || c->tag == TAG_INTO;
}

/* What a verb does to the foods: hides one, or prepares the last one. */
static void build_verb(struct builder *b, const struct chunk *c, size_t index)
{
    if (c->tag != TAG_INTO && c->tag != TAG_EXTRACT && c->tag != TAG_DOING)
        build_hidden(b, c, index);
    if (b->last_line)
        read_prep_of_it(b, &b->dish->ingredients.at[b->last_line - 1], index);
}

/* A number that could be an oven's heat: "250 grams, no 300". */
static bool is_bare_heat(const struct chunk *c)
{
    return c->tag == TAG_HEATED && c->match && text_is(c->match->rule->option, "bare");
}

/* "It needs some salt, so put that in to taste": said of the food that the sentence has. */
static void season_last(struct builder *b)
{
    struct ingredient *line = last_line(b);
    if (line && line->id >= b->sentence->first && line->entry && !line->amount.known
        && line->entry->marks & (MARK_OF(salt) | MARK_OF(spice)))
        line->to_taste = true;
}

/* Nothing goes in with a question, but its food is what the answer's amount is of. */
static void read_foods(struct builder *b, bool question)
{
    read_prep_alone(b);
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_LINE && c->match && !question)
            build_line(b, c, i);
        else if (c->tag == TAG_AMOUNT && c->match && !question)
            build_amount(b, c, i);
        else if ((c->tag == TAG_NUMBER || is_bare_heat(c)) && !question)
            build_number(b, c);
        else if (c->tag == TAG_UNIT && !question)
            build_unit(b, c, i);
        else if (c->tag == TAG_MEASURE && c->match && !question)
            build_depth(b, c);
        else if (c->tag == TAG_TASTE && !question)
            season_last(b);
        else if (c->tag == TAG_ATLEAST && !question)
            open_amount(b, i);
        else if (may_prepare(c) && !question)
            build_verb(b, c, i);
        else if (c->tag == TAG_LINE && c->match)
            ask_line(b, c);
        else if (c->tag == TAG_DISH && !question)
            build_dish_beside(b, i);
    }
}

/* "In a small bowl you're going to need half a cup of flour": it goes in now. */
static bool goes_in_vessel(const struct builder *b, const struct match *rundown)
{
    bool into = false;
    for (size_t i = b->sentence->first; i < rundown->words.first; i++) {
        into |= b->r->words.at[i].tag == TAG_INTO;
        if (into && b->r->words.at[i].tag == TAG_VESSEL)
            return true;
    }
    return false;
}

static void read_sentence(struct builder *b, const struct sentence *s)
{
    b->sentence = s;
    b->each = NULL;
    read_chunks(b, s);
    b->group_age++;
    name_group(b);
    const struct match *rundown = match_in(b->r, b->sentence, KIND_OF(rundown));
    if (rundown && goes_in_vessel(b, rundown))
        rundown = NULL;
    b->rundown = rundown;
    b->rundown_at = rundown ? rundown->words.last : 0;
    b->cooks = sentence_cooks(b);
    bool question = s->flags & SENTENCE_QUESTION;
    read_foods(b, question);
    build_steps(b);
    note_heated(b);
    end_group(b);
    b->asked = question;
}

/* The oven of a sentence that is said before the dish; what else it tells is not the dish's. */
static void read_heat(struct builder *b, const struct sentence *s)
{
    size_t kept = b->dish->steps.count;
    b->sentence = s;
    read_chunks(b, s);
    build_steps(b);
    note_heated(b);
    for (size_t i = kept; i < b->dish->steps.count; i++)
        if (b->dish->steps.at[i].temperatures.count)
            b->dish->steps.at[kept++] = b->dish->steps.at[i];
    LIST_CUT(&b->dish->steps, kept);
    b->list_step = 0;
}

/* Foods that were only spoken of did not go in; nor did those that stood ready beside the rest and
 * were not spoken of again. */
static bool is_dropped(const struct ingredient *line)
{
    return line->questioned || (line->laid_out && !line->used);
}

static void drop_questions(struct dish *d)
{
    size_t kept = 0;
    for (size_t i = 0; i < d->ingredients.count; i++)
        if (!is_dropped(&d->ingredients.at[i]))
            d->ingredients.at[kept++] = d->ingredients.at[i];
    LIST_CUT(&d->ingredients, kept);
}

/* About what the dish will need, so that its lists leave no smaller selves behind. */
static void reserve_room(const struct recording *r, struct dish *d)
{
    size_t sentences = 0, lines = 0;
    for (size_t i = 0; i < d->spans.count; i++) {
        const struct span part = d->spans.at[i];
        sentences += sentence_until(r, part.last) - sentence_from(r, part.first);
        for (struct matches told = matches_among(r, part, KIND_OF(line)); matches_next(&told);)
            lines++;
    }
    LIST_RESERVE(r->arena, &d->ingredients, lines + 1);
    LIST_RESERVE(r->arena, &d->steps, sentences / 2 + 1);
}

/* What sentences tell of dishes that they are no part of. */
struct elsewhere {
    const struct dish **heated; /* the dish for which each sets the oven; NULL: none */
    size_t *named;              /* the dish that a yield is of, as yield_names() has it */
    unsigned *next; /* of each the next one, itself too, that does so or may tell a yield; how many
                       sentences there are where none does */
};

static struct elsewhere find_elsewhere(const struct recording *r)
{
    size_t count = r->sentences.count;
    struct elsewhere e = {arena_alloc(r->arena, (count + 1) * sizeof *e.heated),
                          arena_alloc(r->arena, (count + 1) * sizeof *e.named),
                          arena_alloc(r->arena, (count + 1) * sizeof *e.next)};
    e.next[count] = (unsigned) count;
    for (size_t n = count; r->dishes.count && n-- > 0;) {
        e.heated[n] = preheated_dish(r, n);
        e.named[n] = yield_names(r, n);
        bool here = e.heated[n] || yield_is_elsewhere(r, n, e.named[n]);
        e.next[n] = here ? (unsigned) n : e.next[n + 1];
    }
    return e;
}

/* The dish's first part that ends at or behind the sentence, or how many there are: they stand in
 * the order of their words, and a dish that is come back to has thousands. */
static size_t part_from(const struct dish *d, const struct sentence *s)
{
    size_t begin = 0, end = d->spans.count;
    while (begin < end) {
        size_t middle = begin + (end - begin) / 2;
        if (d->spans.at[middle].last < s->first)
            begin = middle + 1;
        else
            end = middle;
    }
    return begin;
}

/* The first sentence from `n` on that may be the dish's, set its oven or tell its yield: a long
 * recording has thousands for each of its dishes. */
static size_t next_sentence(const struct recording *r, const struct dish *d,
                            const struct elsewhere *e, size_t n)
{
    size_t part = n < r->sentences.count ? part_from(d, &r->sentences.at[n]) : d->spans.count;
    if (part == d->spans.count)
        return e->next[n];
    if (r->sentences.at[n].last >= d->spans.at[part].first)
        return n; /* as of nearly all: a search tells of others */
    size_t first = sentence_from(r, d->spans.at[part].first);
    bool sooner = first < e->next[n] && r->sentences.at[first].first <= d->spans.at[part].last;
    return sooner ? first : e->next[n];
}

/* What sentence `n` tells of the dish, which it need not be part of. */
static void read_for_dish(struct builder *b, const struct elsewhere *e, size_t n)
{
    const struct recording *r = b->r;
    const struct sentence *s = &r->sentences.at[n];
    const bool inside = dish_has_sentence(b->dish, s);
    if (inside)
        read_sentence(b, s);
    else if (e->heated[n] == b->dish)
        read_heat(b, s);
    if (yield_is_of(r, b->dish, e->named[n], inside))
        build_yield(b, s);
    else if (s->last < r->dishes.at[0].words.first || yield_is_shared(r, s))
        share_yield(b, s);
}

static void build_recipe(struct builder *b, const struct elsewhere *e)
{
    const struct recording *r = b->r;
    reserve_room(r, b->dish);
    for (size_t n = 0; (n = next_sentence(r, b->dish, e, n)) < r->sentences.count; n++)
        read_for_dish(b, e, n);
    settle_steps(b);
    judge_lines(b);
    drop_questions(b->dish);
    guess_preps(b);
    name_parts(b);
    write_steps(b);
}

bool build_recipes(struct recording *r, const struct pack *k, struct problems *p)
{
    (void) p;
    const struct elsewhere elsewhere = find_elsewhere(r);
    const struct builder any = {.r = r,
                                .k = k,
                                .step_words = pack_table(k, "step-words"),
                                .step_odds = pack_table(k, "step-odds"),
                                .line_odds = pack_table(k, "line-odds"),
                                .prep_odds = pack_table(k, "prep-odds"),
                                .prep_foods = pack_table(k, "prep-foods"),
                                .memo = arena_alloc(r->arena, sizeof(struct verb_memo)),
                                .phrasals = phrasals_load(r->arena, k),
                                .talk = r->dishes.count ? talk_points(r) : 0,
                                .scale = recording_scale(r, k),
                                .drops_units = drops_units(r)};
    for (size_t i = 0; i < r->dishes.count; i++) {
        struct builder b = any;
        b.dish = &r->dishes.at[i];
        build_recipe(&b, &elsewhere);
    }
    return true;
}
