/* build/dangling.c: amounts with no food beside them, and foods that an amount is asked of.
 * SPDX-License-Identifier: MIT */
#include "build/dangling.h"

#include "base/arena.h"
#include "match/capture.h"
#include "match/subject.h"

/* An amount that comes later than this after its food is where the food goes in. */
#define LATE_SECONDS 15.0

/* "Oil. A good glug.": so few words behind a food without an amount. */
#define VAGUE_WORDS 3

/* "A cup of stock. No, sorry, two.": an amount so few words after the one that it takes back. */
#define TAKE_BACK_WORDS 12

/* "Actually, three": what is only said while thinking takes back by an amount so near. */
#define ACTUAL_WORDS 3

/* "... of it", "... of floury ones", "a cup of frozen": the last chunk of what stands at `index`
 * for the food that was spoken of; 0 where nothing does. */
static size_t of_ones(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    size_t i = index + 1;
    while (chunk_tag(c, i) == TAG_STATE || chunk_tag(c, i) == TAG_SIZE
           || chunk_tag(c, i) == TAG_MORE || chunk_tag(c, i) == TAG_DONE)
        i++;
    if (chunk_tag(c, i) == TAG_IT && i < c->count)
        return i;
    if (chunk_tag(c, i) == TAG_COUNTER && chunk_tag(c, i + 1) != TAG_OF
        && chunk_tag(c, i + 1) != TAG_LINE)
        return i; /* "now the cod, 600 grams of fillet" */
    bool ends = i == c->count || b->r->words.at[c->at[i - 1].last].after >= AFTER_COMMA;
    return i > index + 1 && ends ? i - 1 : 0;
}

/* Whether what stands at `index` is said of what was spoken of: "a teaspoon of that", and not "of
 * the sauce". */
static bool is_of_it(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (index + 1 >= c->count || c->at[index].tag != TAG_OF)
        return index >= c->count || c->at[index].tag != TAG_OF;
    if (of_ones(b, index))
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

bool is_actual(const struct builder *b, const struct ingredient *line, const struct chunk *c)
{
    size_t next = c->last + 1;
    return next < b->r->words.count && b->r->words.at[next].tag == TAG_SORRY
           && (b->r->words.at[next].filler || next == b->sentence->last)
           && c->first > line->words.last && c->first - line->words.last <= TAKE_BACK_WORDS;
}

bool is_taken_back(const struct builder *b, const struct ingredient *line, size_t first)
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

struct ingredient *add_again(struct builder *b, const struct chunk *c,
                             const struct said_amount *said)
{
    struct ingredient again = *last_line(b), *line = LIST_ADD(b->r->arena, &b->dish->ingredients);
    *line = (struct ingredient){.id = c->last,
                                .words = {c->first, c->last},
                                .at = said_at(b, c->first),
                                .said = b->r->words.at[c->last].text,
                                .food = again.food,
                                .kind = again.kind,
                                .entry = again.entry,
                                .rule = c->match ? text_from(c->match->rule->name) : again.rule,
                                .group = b->group};
    set_said(line, said);
    b->last_line = b->dish->ingredients.count;
    return line;
}

/* The chunk before what may be said of the food behind an amount: "about an inch of it, grated". */
static size_t behind_of_it(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    bool of = index + 2 < c->count && c->at[index + 1].tag == TAG_OF;
    size_t ones = of ? of_ones(b, index + 1) : 0;
    if (ones)
        return ones;
    return of && (c->at[index + 2].tag == TAG_IT || c->at[index + 2].tag == TAG_THE) ? index + 2
                                                                                     : index;
}

void give_amount(struct builder *b, struct ingredient *line, const struct chunk *c, size_t index,
                 const struct said_amount *said)
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

/* "Vegetable oil in the pan, three centimetres, ...": how deep it is, between commas. */
void build_depth(struct builder *b, const struct chunk *c)
{
    struct ingredient *line = last_line(b);
    struct said_amount said = {0};
    const bool apart = c->first && b->r->words.at[c->first - 1].after == AFTER_COMMA
                       && b->r->words.at[c->last].after >= AFTER_COMMA;
    const bool by = c > b->chunks.at && c[-1].tag == TAG_BY; /* "cover it by two inches" */
    if ((!apart && !by) || !line || line->id < b->sentence->first || line->amount.known
        || !line->entry || !(line->entry->marks & (MARK_OF(fat) | MARK_OF(water)))
        || line->entry->marks & MARK_OF(dairy))
        return; /* "I butter the form, 24 centimetres" */
    line_amount(b->r, b->sentence, c->match, &said);
    if (said.amount.known)
        set_said(line, &said);
}

/* Of what goes into the dish. */
static bool is_amount_here(const struct builder *b, const struct chunk *c, size_t index)
{
    bool from = index && b->chunks.at[index - 1].tag == TAG_FROM
                && span_has_tag(b->r, c->match->words, TAG_CONTAINER); /* "out of a jar" */
    bool pieces = index && pieces_end(b, index - 1) == index;          /* "cut into eight wedges" */
    bool portions = index + 1 < b->chunks.count
                    && b->chunks.at[index + 1].tag == TAG_BY; /* "a spoon at a time" */
    return !is_left_out(c) && c->match->rule->kind == RULE_amount && !pieces && !from && !portions;
}

static bool is_told_again(const struct builder *b, const struct chunk *c, size_t index,
                          const struct ingredient *line)
{
    return line->amount.known
           && (is_sum(b, line, index) || is_taken_back(b, line, c->first) || is_actual(b, line, c));
}

static bool is_told_late(const struct builder *b, const struct chunk *c, size_t index,
                         const struct ingredient *line)
{
    return !line->amount.known && !line->to_taste && is_of_it(b, index + 1)
           && said_at(b, c->first) - b->last_said < DELAY_SECONDS;
}

/* Gives the amount to the line, as its own, its package's or another portion's. */
static void settle_amount(struct builder *b, const struct chunk *c, size_t index,
                          struct ingredient *line, struct said_amount *said)
{
    if (is_told_again(b, c, index, line))
        give_amount(b, line, c, index, said);
    else if (said->more || is_more(b, index))
        add_again(b, c, said);
    else if (is_package_of(b, c, index, line, said) || is_size_of_package(b, c, index, line, said)
             || tells_size_of_package(b, c, line, said))
        give_package(b, line, index, said);
    else if (sizes_spoons(b, line, c, said))
        give_amount(b, line, c, index, said);
    else if (is_for_each(b, index + 1))
        give_each(b, said);
    else if (weighs_one(b, c, index, line, said) || is_told_late(b, c, index, line))
        give_amount(b, line, c, index, said);
    else if (is_named_again(b, c, index) && is_of_it(b, index + 1))
        add_named_again(b, c, behind_of_it(b, index), said);
}

/* An amount with no food beside it: "another cup", "that was four cups, by the way", "how much? A
 * spoon." */
void build_amount(struct builder *b, const struct chunk *c, size_t index)
{
    struct said_amount said = {0};
    struct ingredient *line = last_line(b);
    if (line && c->match->rule->kind == RULE_vague && !is_left_out(c))
        give_vague(b, line, c, index);
    if (!is_amount_here(b, c, index))
        return;
    read_amount(b->r, b->sentence, c->match, &said);
    if (is_of_it(b, index + 1) && build_piece_food(b, c, chunk_words(c), &said))
        return;
    keep_broken(b, index, &said);
    if (line && !build_other_sort(b, c, index, &said))
        settle_amount(b, c, index, line, &said);
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
