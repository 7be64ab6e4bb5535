/* build/dangling.c: amounts with no food beside them, and foods that an amount is asked of.
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "base/arena.h"
#include "match/capture.h"
#include "match/subject.h"

/* An amount that comes later than this after its food is where the food goes in. */
#define LATE_SECONDS 15.0

/* "Mustard, the smooth sort, about four teaspoons": an amount this soon after a food without one is
 * that food's. */
#define DELAY_SECONDS 9.0

/* "Oil. A good glug.": so few words behind a food without an amount. */
#define VAGUE_WORDS 3

/* "A cup of stock. No, sorry, two.": an amount so few words after the one that it takes back. */
#define TAKE_BACK_WORDS 12

/* "Actually, three": what is only said while thinking takes back by an amount so near. */
#define ACTUAL_WORDS 3

/* What may stand between a package and its size: "a tin of tomatoes, the 400 gram one". */
static bool leads_to_size(unsigned char tag)
{
    return tag == TAG_THE || tag == TAG_ARTICLE || tag == TAG_THERE || tag == TAG_SO
           || tag == TAG_IT || tag == TAG_BE || tag == TAG_HEDGE;
}

/* "a can of beans, fifteen ounces": the amount behind a package is its size. */
static bool is_package_of(const struct builder *b, const struct chunk *c, size_t index,
                          const struct ingredient *line, const struct said_amount *said)
{
    size_t i = index;
    while (i > 0 && leads_to_size(b->chunks.at[i - 1].tag))
        i--;
    if (!i || line->words.last != b->chunks.at[i - 1].last || line->package.known
        || !line->amount.unit.length)
        return false;
    bool one = ratio_equal(line->amount.max, RATIO(1)); /* "a block of feta, 200 grams" */
    return (span_has_tag(b->r, line->words, TAG_CONTAINER)
            || (one && span_has_tag(b->r, line->words, TAG_COUNTER)))
           && span_has_tag(b->r, c->match->words, TAG_UNIT) && said->amount.unit.length > 0;
}

/* "A tin of tuna on top of that, the 145 gram size": so many words at most behind the package. */
#define SIZE_WORDS 16

/* Whether the line's unit is a package: a can, a bag. */
static bool is_packed(const struct builder *b, const struct ingredient *line)
{
    const struct text unit = line->amount.known ? line->amount.unit : TEXT_EMPTY;
    return unit.length && entry_as(pack_find(b->k, unit, NULL), TAG_CONTAINER);
}

/* "The four hundred gram ones": a size told with "the", of a package named some words before. */
static bool is_size_of_package(const struct builder *b, const struct chunk *c, size_t index,
                               const struct ingredient *line, const struct said_amount *said)
{
    const struct text unit = said->package.known ? said->package.unit : said->amount.unit;
    size_t i = index;
    while (i > 0 && b->chunks.at[i - 1].tag == TAG_HEDGE)
        i--;
    return i && b->chunks.at[i - 1].tag == TAG_THE && !line->package.known && is_packed(b, line)
           && entry_as(pack_find(b->k, unit, NULL), TAG_UNIT) && c->first > line->words.last
           && c->first - line->words.last <= SIZE_WORDS;
}

/* "A can of beans, fifteen ounces, drained": what stands behind the size is said of the food. */
static void give_package(struct builder *b, struct ingredient *line, size_t index,
                         const struct said_amount *said)
{
    line->package = said->package.known ? said->package : said->amount;
    read_prep_after(b, line, index);
}

/* "A chuck roast, about three pounds": of one piece the weight is what a recipe prints. */
static bool weighs_one(const struct builder *b, const struct chunk *c, size_t index,
                       const struct ingredient *line, const struct said_amount *said)
{
    const struct entry *unit = entry_at(b->r, match_slot(c->match, SLOT_unit));
    size_t i = index;
    while (i > 0
           && (leads_to_size(b->chunks.at[i - 1].tag) || b->chunks.at[i - 1].tag == TAG_OTHER))
        i--;
    bool article = text_is(line->rule, "line-one"); /* a number that was said is meant */
    return article && i && line->words.last == b->chunks.at[i - 1].last && said->amount.known
           && unit && unit->marks & MARK_OF(weighs);
}

/* Whether what stands at `index` is said of what was spoken of: "a teaspoon of that", and not "of
 * the sauce". */
static bool is_of_it(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (index + 1 >= c->count || c->at[index].tag != TAG_OF)
        return index >= c->count || c->at[index].tag != TAG_OF;
    if (c->at[index + 1].tag == TAG_IT)
        return true;
    unsigned char after = chunk_tag(c, index + 2);
    if (after == TAG_COUNTER) /* "rosemary, a tablespoon of the leaves" */
        after = chunk_tag(c, index + 3);
    return c->at[index + 1].tag == TAG_THE
           && (after == TAG_SO || after == TAG_AND || after == TAG_DONE
               || b->r->words.at[c->at[index + 1].last].after == AFTER_COMMA);
}

/* "Four cloves. No, three.": the word stands by itself; in "my sister doesn't, so ..." it takes
 * nothing back. */
static bool is_no(const struct recording *r, size_t i)
{
    const struct word *w = &r->words.at[i];
    bool alone = w->tag == TAG_NOT && w->after >= AFTER_COMMA && i
                 && r->words.at[i - 1].after >= AFTER_COMMA && w->entry
                 && w->entry->words_count == 1;
    return alone || is_no_by_itself(r, i);
}

/* "200 grams of rice, 250 actually": the word behind takes back what stood before. */
static bool is_actual(const struct builder *b, const struct ingredient *line, const struct chunk *c)
{
    size_t next = c->last + 1;
    return next < b->r->words.count && b->r->words.at[next].tag == TAG_SORRY
           && (b->r->words.at[next].filler || next == b->sentence->last)
           && c->first > line->words.last && c->first - line->words.last <= TAKE_BACK_WORDS;
}

/* Whether the line's amount was taken back since it was said. */
static bool is_taken_back(const struct builder *b, const struct ingredient *line, size_t first)
{
    if (first <= line->words.last || first - line->words.last > TAKE_BACK_WORDS)
        return false;
    for (size_t i = line->words.last + 1; i < first; i++) {
        bool far = b->r->words.at[i].filler && first - i > ACTUAL_WORDS;
        if ((b->r->words.at[i].tag == TAG_SORRY && !far) || is_no(b->r, i))
            return true;
    }
    return false;
}

/* "Half a cup more", with nothing behind that it would be more of. */
static bool is_more(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    unsigned char next = chunk_tag(c, index + 2);
    return index + 1 < c->count && c->at[index + 1].tag == TAG_MORE && next != TAG_LINE
           && next != TAG_OF;
}

static void add_again(struct builder *b, const struct chunk *c, const struct said_amount *said)
{
    struct ingredient again = *last_line(b), *line = LIST_ADD(b->r->arena, &b->dish->ingredients);
    *line = (struct ingredient){.id = c->last,
                                .words = {c->first, c->last},
                                .at = said_at(b, c->first),
                                .said = b->r->words.at[c->last].text,
                                .food = again.food,
                                .kind = again.kind,
                                .entry = again.entry,
                                .rule = text_from(c->match->rule->name),
                                .group = b->group};
    set_said(line, said);
    b->last_line = b->dish->ingredients.count;
}

/* The chunk before what may be said of the food behind an amount: "about an inch of it, grated". */
static size_t behind_of_it(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    bool of = index + 2 < c->count && c->at[index + 1].tag == TAG_OF;
    return of && (c->at[index + 2].tag == TAG_IT || c->at[index + 2].tag == TAG_THE) ? index + 2
                                                                                     : index;
}

static void give_amount(struct builder *b, struct ingredient *line, const struct chunk *c,
                        size_t index, const struct said_amount *said)
{
    set_said(line, said);
    line->questioned = false;
    note_told(b, line, c, true);
    read_prep_after(b, line, behind_of_it(b, index));
    if (said_at(b, c->first) - line->at > LATE_SECONDS)
        line->at = said_at(b, c->first);
}

/* "Black pepper. Plenty.": it goes in, no amount is known. */
static void give_vague(const struct builder *b, struct ingredient *line, const struct chunk *c,
                       size_t index)
{
    if (!line->questioned || line->amount.known || !is_of_it(b, index + 1)
        || c->first - line->words.last > VAGUE_WORDS)
        return;
    line->questioned = false;
    line->vague = true;
}

/* An amount with no food beside it: "another cup", "that was four cups, by the way", "how much? A
 * spoon." */
void build_amount(struct builder *b, const struct chunk *c, size_t index)
{
    struct said_amount said = {0};
    struct ingredient *line = last_line(b);
    if (line && c->match->rule->kind == RULE_vague && !is_left_out(c))
        give_vague(b, line, c, index);
    bool from = index && b->chunks.at[index - 1].tag == TAG_FROM
                && span_has_tag(b->r, c->match->words, TAG_CONTAINER); /* "out of a jar" */
    bool pieces = index && pieces_end(b, index - 1) == index;          /* "cut into eight wedges" */
    bool portions = index + 1 < b->chunks.count
                    && b->chunks.at[index + 1].tag == TAG_BY; /* "a spoon at a time" */
    if (is_left_out(c) || c->match->rule->kind != RULE_amount || pieces || from || portions)
        return;
    read_amount(b->r, b->sentence, c->match, &said);
    keep_broken(b, index, &said);
    if (!line)
        return;
    if (build_other_sort(b, c, index, &said))
        return;
    bool sum = line->amount.known && is_sum(b, line, index);
    if (sum || ((is_taken_back(b, line, c->first) || is_actual(b, line, c)) && line->amount.known))
        give_amount(b, line, c, index, &said);
    else if (said.more || is_more(b, index))
        add_again(b, c, &said);
    else if (is_package_of(b, c, index, line, &said)
             || is_size_of_package(b, c, index, line, &said))
        give_package(b, line, index, &said);
    else if (is_for_each(b, index + 1))
        give_each(b, &said);
    else if (weighs_one(b, c, index, line, &said))
        give_amount(b, line, c, index, &said);
    else if (!line->amount.known && !line->to_taste && is_of_it(b, index + 1)
             && said_at(b, c->first) - b->last_said < DELAY_SECONDS)
        give_amount(b, line, c, index, &said);
}

/* "Four cloves. No, look at the size of these, three.": a number alone keeps the unit of the one
 * taken back. */
void build_number(struct builder *b, const struct chunk *c)
{
    struct ingredient *line = last_line(b);
    struct ratio low, high;
    number_at(b->r, b->sentence, (struct span){c->first, c->last}, &low, &high);
    size_t index = (size_t) (c - b->chunks.at);
    if (line && line->amount.known && ratio_known(low) && widens_amount(b, line, index)) {
        widen_amount(line, low);
        return;
    }
    if (!line || !line->amount.known || !ratio_known(low) || is_left_out(c)
        || (!is_taken_back(b, line, c->first) && !is_actual(b, line, c)))
        return;
    line->amount.min = low;
    line->amount.max = high;
    struct chunk *own = &b->chunks.at[c - b->chunks.at];
    own->match = NULL; /* and no oven's heat */
    own->tag = TAG_OTHER;
}

/* "Salt, two tablespoons. Sorry, teaspoons.": a unit alone takes the place of the one before. */
void build_unit(struct builder *b, const struct chunk *c, size_t index)
{
    struct ingredient *line = last_line(b);
    if (!line || !line->amount.known || !line->amount.unit.length || !c->entry || is_left_out(c)
        || !is_taken_back(b, line, c->first) || chunk_tag(&b->chunks, index + 1) == TAG_OF)
        return;
    line->amount.unit = entry_value(c->entry);
    note_told(b, line, c, true);
}

void ask_line(struct builder *b, const struct chunk *c)
{
    struct span food = match_slot(c->match, SLOT_food);
    const struct entry *entry = entry_at(b->r, food);
    if (!entry || entry->tag != TAG_FOOD || is_left_out(c))
        return;
    struct ingredient *old = find_food(b, entry, entry_shown(entry));
    if (!old) {
        old = add_line(b, c, food, entry, entry_shown(entry));
        old->questioned = true;
    }
    b->last_line = (size_t) (old - b->dish->ingredients.at) + 1;
}
