/* build/recount.c: numbers and units that stand alone, for what was said before.
 * SPDX-License-Identifier: MIT */
#include "build/dangling.h"

#include "build/wording.h"
#include "match/capture.h"

/* "Two spoons of oil": nobody knows of which spoon. */
static bool is_unsized(const struct builder *b, const struct ingredient *line)
{
    for (size_t i = line->words.first; i <= line->words.last; i++)
        if (b->r->words.at[i].tag == TAG_UNIT && b->r->words.at[i].entry
            && b->r->words.at[i].entry->marks & MARK_OF(generic))
            return line->no_unit && line->amount.known && !line->amount.unit.length;
    return false;
}

/* "Lentils, two glasses, rinsed. Four hundred grams.": so many words behind the line. */
#define NEXT_WORDS 5

bool sizes_spoons(const struct builder *b, const struct ingredient *line, const struct chunk *c,
                  const struct said_amount *said)
{
    const size_t index = (size_t) (c - b->chunks.at);
    const bool begins =
        !index && line->words.last < c->first && c->first - line->words.last <= NEXT_WORDS;
    return is_unsized(b, line) && said->amount.unit.length
           && (begins || follows_line(b, index, line)
               || (ratio_equal(line->amount.max, said->amount.max)
                   && c->first - told_end(b, line) <= SIZE_WORDS));
}

/* "Peppers, the long ones, ten.": so many words at most tell of which sort they are. */
#define SORT_WORDS 7

/* "Now onions. Two, roughly chopped.", "I take four for this": a number alone, soon behind a food
 * that has no amount. */
static bool counts_last(const struct builder *b, const struct ingredient *line, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    unsigned char before = index ? b->chunks.at[index - 1].tag : (unsigned char) TAG_SO,
                  next = chunk_tag(&b->chunks, index + 1);
    const bool ends = b->r->words.at[c->last].after >= AFTER_COMMA;
    const bool anew = is_named_again(b, c, index);
    if (((line->amount.known || said_at(b, c->first) - line->at > DELAY_SECONDS) && !anew)
        || line->to_taste || is_left_out(c))
        return false;
    const bool apart = c->first && b->r->words.at[c->first - 1].after == AFTER_COMMA
                       && (anew
                           || (c->first - line->words.last <= SORT_WORDS && line->entry
                               && !(line->entry->marks & MARK_OF(uncounted))));
    if (!index || (index == 1 && before == TAG_SO) || apart)
        return ends;
    const bool takes = before == TAG_HAVE || is_step_word(b, c - 1, "uses");
    return takes && (ends || next == TAG_FOR);
}

/* Nobody counts more of a food by a number alone. */
#define COUNTED_MOST 40

static void give_number(struct builder *b, struct ingredient *line, const struct chunk *c,
                        size_t index, struct ratio low, struct ratio high)
{
    struct said_amount said = {.amount = {.known = true, .min = low, .max = high}};
    if (is_named_again(b, c, index))
        add_named_again(b, c, index, &said);
    else
        give_amount(b, line, c, index, &said);
    b->chunks.at[index].match = NULL; /* and no oven's heat */
    b->chunks.at[index].tag = TAG_OTHER;
}

/* "Four cloves. No, look at the size of these, three.": a number alone keeps the unit of the one
 * taken back. */
void build_number(struct builder *b, const struct chunk *c)
{
    struct ingredient *line = last_line(b);
    struct ratio low, high;
    number_at(b->r, b->sentence, chunk_words(c), &low, &high);
    size_t index = (size_t) (c - b->chunks.at);
    if (line && line->amount.known && ratio_known(low) && widens_amount(b, line, index)) {
        widen_amount(line, low);
        return;
    }
    if (line && ratio_known(low) && ratio_compare(high, RATIO(COUNTED_MOST)) <= 0
        && counts_last(b, line, index)) {
        give_number(b, line, c, index, low, high);
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
    if (!line || !line->amount.known || !c->entry || is_left_out(c)
        || chunk_tag(&b->chunks, index + 1) == TAG_OF)
        return;
    bool wrong = line->amount.unit.length && is_taken_back(b, line, c->first);
    bool missing = is_unsized(b, line) && c->first > line->words.last
                   && c->first - told_end(b, line) <= SIZE_WORDS
                   && !(c->entry->marks & MARK_OF(generic));
    if (!wrong && !missing)
        return;
    line->no_unit = false;
    line->amount.unit = entry_value(c->entry);
    note_told(b, line, c, true);
}
