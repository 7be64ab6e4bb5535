/* build/yieldcounts.c: whether words that count something say how much the dish makes.
 * SPDX-License-Identifier: MIT */
#include "build/yieldof.h"
#include "match/capture.h"
#include "match/matches.h"

/* So near its end nothing more goes into a dish: "Two loaves." */
#define END_SENTENCES 4
/* Nor where no amount is said in so many sentences. */
#define QUIET_SENTENCES 40
/* So many people are talked of, and not fed, unless the cook says so: "two hundred children". */
#define COMPANY_LEAST 99
/* Of fewer pieces nobody says only how many they are. */
#define PIECES_LEAST 6
/* "So that is for one" has no more words; "it's too small for one person" tells of something else.
 */
#define FOR_ONE_WORDS 5
/* A greater number alone is an hour, a heat or a price. */
#define PIECES_MOST 96

/* "One fish does two people": what a piece does is no yield of the dish. */
static bool is_of_one_piece(const struct builder *b, const struct match *m)
{
    const struct word *at = b->r->words.at;
    size_t food = m->words.first;
    if (!yield_serves(b->r, m) || food < b->sentence->first + 2 || at[--food].tag != TAG_FOOD)
        return false;
    size_t first = at[food].entry_first;
    return first > b->sentence->first
           && (at[first - 1].tag == TAG_ONES || at[first - 1].tag == TAG_EACH);
}

/* "Two loaves", where the title is "White loaf". */
static bool is_like_title(const struct builder *b, const struct entry *e)
{
    const struct entry *last =
        entry_as(pack_find(b->k, text_last_word(b->dish->title), NULL), TAG_COUNTER);
    return last && text_equal(entry_value(e), entry_value(last));
}

static bool is_cut_before(const struct builder *b, const struct match *m)
{
    for (size_t i = cut_from(b); i < m->words.first; i++) {
        const struct word *w = &b->r->words.at[i];
        if (w->tag == TAG_ACTION && w->entry && w->entry->marks & MARK_OF(cuts))
            return true;
    }
    return false;
}

/* Whether the sentence is among the dish's last ones, and the dish was made before. */
static bool is_at_end(const struct builder *b)
{
    const struct span *last =
        b->dish->spans.count ? &b->dish->spans.at[b->dish->spans.count - 1] : &b->dish->words;
    const struct sentence *s = b->sentence, *end = b->r->sentences.at + b->r->sentences.count;
    for (size_t n = 0; n < END_SENTENCES && s < end; n++, s++)
        if (s->last >= last->last)
            return b->dish->steps.count > 0;
    return false;
}

bool dish_is_filled(const struct builder *b)
{
    const struct sentence *s = b->sentence, *end = b->r->sentences.at + b->r->sentences.count;
    for (size_t n = 0; n < QUIET_SENTENCES && ++s < end; n++)
        if (dish_has_sentence(b->dish, s) && match_in(b->r, s, KIND_OF(line)))
            return false;
    return b->dish->steps.count > 0;
}

/* Whether the sentence names a dish, or the one before it. */
static bool is_named(const struct builder *b)
{
    const struct sentence *s = b->sentence;
    return s->names || (s > b->r->sentences.at && s[-1].names);
}

/* "Flatbreads", "biscuits": more than one of a kind of dish, or of what the title is named after.
 */
static bool is_kind_of_dish(const struct builder *b, const struct entry *e)
{
    const struct entry *piece = dish_piece(b);
    if (!e || !(e->marks & MARK_OF(plural)))
        return false;
    return e->tag == TAG_DISH || entry_as(pack_find(b->k, entry_shown(e), NULL), TAG_DISH)
           || (piece
               && text_equal(text_last_word(entry_shown(e)), text_last_word(entry_shown(piece))));
}

/* "It does two jobs": how many of something that no dish is counted by. */
static bool counts_other(const struct builder *b, const struct match *m)
{
    size_t next = m->words.last + 1;
    if (next > b->sentence->last || yield_eater(b, m) || !yield_serves(b->r, m)
        || b->r->words.at[next - 1].after >= AFTER_COMMA)
        return false;
    const struct word *w = &b->r->words.at[next];
    return w->tag == TAG_OTHER && !w->entry && !w->filler;
}

/* "It's for one." */
static bool is_for_one(const struct recording *r, const struct match *m)
{
    bool is_for = false;
    for (size_t i = m->words.first; i <= m->words.last; i++)
        is_for |= r->words.at[i].tag == TAG_FOR;
    return is_for && m->words.last - m->words.first < FOR_ONE_WORDS;
}

/* "That's one person", "one bowl, one person, eat it". */
static bool is_presented(const struct recording *r, const struct match *m)
{
    const struct word *first = &r->words.at[m->words.first];
    if (!m->words.first)
        return false;
    unsigned char before = (first - 1)->tag;
    return before == TAG_THERE || before == TAG_BE || before == TAG_FOR
           || ((first - 1)->after >= AFTER_COMMA
               && r->words.at[m->words.last].after >= AFTER_COMMA);
}

/* What is said of pieces is only what the cook sees: "it makes a ribbon", "one out of the bag". */
static bool is_one_of_many(const struct builder *b, const struct match *m, const struct entry *e)
{
    if (!ratio_equal(m->high, RATIO(1)))
        return false;
    if (is_for_one(b->r, m))
        return false;
    if (e && e->tag == TAG_EATER && b->r->words.at[m->words.first].tag == TAG_ONES)
        return !is_presented(b->r, m); /* "one person asked" */
    return e ? e->tag == TAG_COUNTER && text_is(entry_value(e), "piece") : !yield_serves(b->r, m);
}

/* A piece that comes of a dish: "eight wedges", "two loaves". */
static bool is_of_dish(const struct builder *b, const struct entry *e)
{
    return text_is(entry_value(e), "piece") || e->marks & MARK_OF(names)
           || e->marks & MARK_OF(plural)
           || entry_as(pack_find(b->k, entry_shown(e), NULL), TAG_DISH);
}

/* What must hold besides, by the option of the rule that found the words. */
typedef bool holds(const struct builder *b, const struct match *m, const struct entry *e);

static bool slices_hold(const struct builder *b, const struct match *m, const struct entry *e)
{
    return e && e->tag == TAG_COUNTER && is_cut_before(b, m);
}

static bool dish_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    (void) m;
    return is_kind_of_dish(b, e);
}

static bool kind_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    if (!e)
        return false;
    if (e->tag == TAG_CONTAINER && b->r->words.at[m->words.first].tag != TAG_ARTICLE
        && dish_is_filled(b))
        return true;
    if (e->tag == TAG_COUNTER)
        return is_like_title(b, e) || (is_of_dish(b, e) && is_at_end(b) && dish_is_filled(b));
    return (e->tag == TAG_CONTAINER || e->tag == TAG_VESSEL) && is_at_end(b);
}

static bool end_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    (void) e; /* "one pot down, three to go" */
    return is_at_end(b) && !ratio_equal(m->high, RATIO(1));
}

static bool for_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    (void) e;
    for (size_t i = m->words.first; i <= m->words.last; i++)
        if (b->r->words.at[i].tag == TAG_BE || b->r->words.at[i].tag == TAG_THERE)
            return true;
    return is_named(b) || is_at_end(b); /* "bake it for ten", said without "minutes" */
}

static bool measure_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    return e && e->tag != TAG_EATER && is_counting_verb(b->r, m->words.first);
}

static bool after_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    return e && is_counting_verb(b->r, m->words.last + 1);
}

static bool named_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    (void) e;
    return is_named(b) && b->r->words.at[m->words.last].tag == TAG_IT;
}

/* "That's twenty.": at the end of a dish of which pieces were made. */
static bool number_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    (void) e;
    return ratio_compare(m->low, RATIO(PIECES_LEAST)) >= 0
           && ratio_compare(m->high, RATIO(PIECES_MOST)) <= 0 && dish_is_filled(b)
           && (dish_piece(b) || is_portioned(b)) && (is_named(b) || is_at_end(b));
}

static bool pieces_hold(const struct builder *b, const struct match *m, const struct entry *e)
{
    const struct entry *verb = entry_at(b->r, match_slot(m, SLOT_action));
    (void) e;
    return verb && verb->marks & (MARK_OF(cuts) | MARK_OF(light) | MARK_OF(prep));
}

/* "Cut out twelve with the cutter." */
static bool stamped_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    const struct entry *verb = entry_at(b->r, match_slot(m, SLOT_action));
    (void) e;
    return verb && verb->marks & MARK_OF(cuts) && ratio_compare(m->low, RATIO(PIECES_LEAST)) >= 0;
}

/* Vessels count where people eat from them; what is cut into pieces first of all goes in: "take a
 * chicken and cut it in eight pieces". */
static bool weak_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    const struct entry *verb = entry_at(b->r, match_slot(m, SLOT_action));
    if (verb && e && e->tag == TAG_COUNTER && !b->dish->steps.count && !dish_piece(b))
        return false;
    return !e || e->tag != TAG_VESSEL || eater_reading(b->k, e);
}

/* "Feeds six? - Eight.": behind a question for how many it is. */
static bool answer_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    const struct sentence *s = b->sentence;
    (void) m, (void) e;
    if (s == b->r->sentences.at || b->r->words.at[s[-1].last].after != AFTER_QUESTION)
        return false;
    for (size_t i = s[-1].first; i <= s[-1].last; i++)
        if (b->r->words.at[i].tag == TAG_SERVE || b->r->words.at[i].tag == TAG_EATER)
            return true;
    return false;
}

static const struct {
    const char *option;
    holds *holds;
} conditions[] = {
    {"slices", slices_hold},    {"dish", dish_holds},     {"kind", kind_holds},
    {"end", end_holds},         {"for", for_holds},       {"measure", measure_holds},
    {"after", after_holds},     {"named", named_holds},   {"pieces", pieces_hold},
    {"weak", weak_holds},       {"answer", answer_holds}, {"number", number_holds},
    {"stamped", stamped_holds},
};

bool yield_counts(const struct builder *b, const struct match *m)
{
    const struct entry *e = yield_eater(b, m);
    if (counts_other(b, m) || is_of_one_piece(b, m) || is_one_of_many(b, m, e))
        return false;
    if (e && e->tag == TAG_EATER && !yield_serves(b->r, m)
        && ratio_compare(m->high, RATIO(COMPANY_LEAST)) > 0)
        return false;
    for (size_t i = 0; i < sizeof conditions / sizeof *conditions; i++)
        if (text_is(m->rule->option, conditions[i].option))
            return conditions[i].holds(b, m, e);
    return true;
}
