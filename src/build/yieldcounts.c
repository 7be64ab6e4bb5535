/* build/yieldcounts.c: whether words that count something say how much the dish makes.
 * SPDX-License-Identifier: MIT */
#include "build/yieldof.h"
#include "build/yieldplace.h"
#include "match/capture.h"
#include "match/matches.h"

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

/* "Good for a cold day", "it makes a good one". */
static bool is_article(const struct recording *r, const struct match *m)
{
    for (size_t i = m->words.first; i <= m->words.last; i++)
        if (r->words.at[i].tag == TAG_ARTICLE)
            return true;
    return false;
}

/* What is said of pieces is only what the cook sees: "it makes a ribbon", "one out of the bag". */
static bool is_one_of_many(const struct builder *b, const struct match *m, const struct entry *e)
{
    if (!ratio_equal(m->high, RATIO(1)))
        return false;
    if (!e && is_article(b->r, m))
        return true;
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

/* "Scones first. That's three dozen": nothing else of a kitchen is counted so. */
static bool is_dozens_of_title(const struct builder *b, const struct match *m)
{
    bool dozen = false;
    for (size_t i = m->words.first; i <= m->words.last; i++)
        dozen |= b->r->words.at[i].tag == TAG_DOZEN;
    return dozen && is_at_start(b) && is_named(b) && dish_piece(b);
}

/* "That's twenty.": at the end of a dish of which pieces were made, or where it is cut. */
static bool number_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    (void) e;
    if (ratio_compare(m->low, RATIO(PIECES_LEAST)) < 0
        || ratio_compare(m->high, RATIO(PIECES_MOST)) > 0)
        return false;
    bool last = is_named(b) || is_at_end(b) || is_cut_before(b, m);
    return (last && dish_is_filled(b) && (dish_piece(b) || is_portioned(b)))
           || is_dozens_of_title(b, m);
}

/* "Agua fresca. Two liters": the title's last word stands before. */
static bool is_behind_title(const struct builder *b, const struct match *m)
{
    struct text title = text_last_word(b->dish->title);
    size_t i = m->words.first;
    while (i > 0 && (b->r->words.at[i].tag == TAG_THERE || b->r->words.at[i].tag == TAG_INSIDE))
        i--;
    if (!i || !title.length)
        return false;
    struct text said = b->r->words.at[i - 1].text;
    return said.length == title.length
           && text_equal(text_slice(said, 1, said.length), text_slice(title, 1, title.length));
}

/* "Esquites, four cups.": not where more is said of the amount. */
static bool headed_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    bool measures = e
                    && (e->tag == TAG_UNIT || e->tag == TAG_VESSEL || e->tag == TAG_CONTAINER
                        || e->tag == TAG_COUNTER);
    return measures && b->r->words.at[m->words.last].after >= AFTER_COMMA
           && !ratio_equal(m->high, RATIO(1)) && (is_named(b) || is_behind_title(b, m))
           && (is_at_start(b) || (is_at_end(b) && dish_is_filled(b)));
}

/* "A stew with prunes, for six.": never "bake it for ten", said without "minutes". */
static bool announced_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    (void) e;
    bool names = b->sentence->names;
    for (size_t i = b->sentence->first; i < m->words.first; i++) {
        names |= b->r->words.at[i].tag == TAG_DISH;
        if (b->r->words.at[i].tag == TAG_ACTION)
            return false;
    }
    return names && is_at_start(b);
}

/* "That's six plates of rice." */
static bool filled_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    return !ratio_equal(m->high, RATIO(1)) && e && eater_reading(b->k, e) && dish_is_filled(b);
}

static bool pieces_hold(const struct builder *b, const struct match *m, const struct entry *e)
{
    const struct entry *verb = match_entry(b->r, m, SLOT_action);
    (void) e;
    return verb && verb->marks & (MARK_OF(cuts) | MARK_OF(light) | MARK_OF(prep));
}

/* "Cut out twelve with the cutter." */
static bool stamped_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    const struct entry *verb = match_entry(b->r, m, SLOT_action);
    (void) e;
    return verb && verb->marks & MARK_OF(cuts) && ratio_compare(m->low, RATIO(PIECES_LEAST)) >= 0;
}

/* Vessels count where people eat from them; what is cut into pieces first of all goes in: "take a
 * chicken and cut it in eight pieces". */
static bool weak_holds(const struct builder *b, const struct match *m, const struct entry *e)
{
    const struct entry *verb = match_entry(b->r, m, SLOT_action);
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
    {"stamped", stamped_holds}, {"headed", headed_holds}, {"announced", announced_holds},
    {"filled", filled_holds},
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
