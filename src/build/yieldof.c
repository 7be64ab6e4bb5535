/* build/yieldof.c
 * SPDX-License-Identifier: MIT */
#include "build/yieldof.h"

#include "build/stepwords.h"
#include "build/yieldplace.h"
#include "match/capture.h"

/* Foods that go into a dish, and do not come of it. */
#define RAW_MARKS                                                                            \
    (MARK_OF(poultry) | MARK_OF(ground) | MARK_OF(meat) | MARK_OF(fish) | MARK_OF(shellfish) \
     | MARK_OF(produce) | MARK_OF(egg))
/* A longer word names no pieces. */
#define WORD_BYTES 96

static const struct word *first_entry(const struct recording *r, const struct match *m)
{
    const struct word *w = &r->words.at[m->words.first];
    while (w->tag == TAG_INSIDE)
        w++;
    return w;
}

bool yield_serves(const struct recording *r, const struct match *m)
{
    return first_entry(r, m)->tag == TAG_SERVE;
}

bool is_counting_verb(const struct recording *r, size_t i)
{
    while (r->words.at[i].tag == TAG_INSIDE)
        i++;
    return r->words.at[i].tag == TAG_SERVE && r->words.at[i].entry->marks & MARK_OF(counts);
}

/* Whether the words say how many pieces come of it: "makes twelve", not "feeds twelve". */
static bool yield_counts_pieces(const struct recording *r, const struct match *m)
{
    return yield_serves(r, m) && first_entry(r, m)->entry->marks & MARK_OF(counts);
}

static struct text folded_word(struct text word, char room[WORD_BYTES])
{
    return word.length && word.length < WORD_BYTES / 3
               ? (struct text){room, fold_word(word, room, WORD_BYTES)}
               : TEXT_EMPTY;
}

/* "Pork meatballs" of "Pork meatballs in gravy". */
static struct text head_of(const struct pack *k, struct text title)
{
    struct text rest = title, word;
    char room[WORD_BYTES];
    while (rest.length && text_part(&rest, ' ', &word)) {
        const struct entry *e = pack_find(k, folded_word(word, room), NULL);
        size_t at = (size_t) (word.at - title.at);
        if (at && e && (e->tag == TAG_WITH || e->tag == TAG_INTO))
            return text_slice(title, 0, at - 1);
    }
    return title;
}

const struct entry *title_piece(const struct pack *k, struct text title)
{
    char room[WORD_BYTES];
    struct text last = folded_word(text_last_word(head_of(k, title)), room);
    const struct entry *e = pack_find(k, last, NULL), *dish = entry_as(e, TAG_DISH),
                       *piece = dish ? dish : entry_as(e, TAG_FOOD);
    if (!piece)
        piece = entry_as(e, TAG_COUNTER);
    if (piece && piece->tag == TAG_FOOD && piece->marks & RAW_MARKS)
        return NULL; /* "eight chicken thighs" go in */
    return piece && piece->marks & MARK_OF(plural) ? piece : NULL;
}

const struct entry *dish_piece(const struct builder *b)
{
    return title_piece(b->k, b->dish->title);
}

/* "A liter and a half" is liters. */
static const struct entry *measured_in(const struct recording *r, struct span words)
{
    for (size_t i = words.last + 1; i-- > words.first;) {
        unsigned char tag = r->words.at[i].tag;
        if (tag == TAG_UNIT || tag == TAG_COUNTER || tag == TAG_CONTAINER || tag == TAG_VESSEL)
            return r->words.at[i].entry;
    }
    return r->words.at[words.last].entry;
}

/* Whether the eater goes with the number: not "a feed for two, potato wedges", nor "divide it in
 * eight, roll each one". */
static bool is_counted_by(const struct builder *b, const struct match *m)
{
    const struct span number = match_slot(m, SLOT_number), eater = match_slot(m, SLOT_eater);
    const struct word *at = b->r->words.at;
    if (span_is_empty(number) || span_is_empty(eater) || eater.first <= number.last)
        return true;
    if (yield_serves(b->r, m) && at[number.last].after >= AFTER_COMMA)
        return false;
    const struct entry *e = at[eater.last].entry;
    bool several = ratio_compare(m->low, RATIO(1)) > 0 && at[eater.last].tag == TAG_DISH;
    return !several || e->marks & MARK_OF(plural)
           || !entry_as(pack_find(b->k, entry_shown(e), NULL), TAG_ACTION)
           || !match_entry(b->r, m, SLOT_action);
}

const struct entry *yield_eater(const struct builder *b, const struct match *m)
{
    struct text option = m->rule->option;
    bool amount = text_is(option, "after") || text_is(option, "measure")
                  || text_is(option, "slices") || text_is(option, "kind")
                  || text_is(option, "headed");
    if (amount)
        return measured_in(b->r, m->words);
    return is_counted_by(b, m) ? match_entry(b->r, m, SLOT_eater) : NULL;
}

static bool ends_so(struct text whole, struct text end)
{
    return end.length < whole.length
           && text_equal(text_slice(whole, whole.length - end.length, whole.length), end);
}

const struct entry *eater_reading(const struct pack *k, const struct entry *e)
{
    const struct entry *whole = entry_as(pack_find(k, entry_shown(e), NULL), TAG_EATER);
    struct text last = text_last_word(entry_shown(e));
    return whole ? whole : entry_as(pack_find(k, last, NULL), TAG_EATER);
}

struct text piece_name(const struct entry *e)
{
    struct text shown = entry_shown(e), kind = entry_value(e);
    if (e->tag != TAG_DISH) /* "bits" are pieces, "half pint jars" jars, litres liters */
        return e->marks & MARK_OF(generic) || e->tag == TAG_CONTAINER || e->tag == TAG_UNIT ? kind
                                                                                            : shown;
    return ends_so(shown, kind) ? text_last_word(kind) : text_last_word(shown);
}

/* "That does three dozen": eaters are not counted so. */
static bool is_by_the_dozen(const struct recording *r, const struct match *m)
{
    const struct span number = match_slot(m, SLOT_number);
    return !span_is_empty(number) && number.first < number.last
           && r->words.at[number.last].tag == TAG_DOZEN && yield_serves(r, m)
           && !(r->words.at[number.last].entry->marks & MARK_OF(approx));
}

bool yield_needs_title(const struct builder *b, const struct match *m)
{
    struct text option = m->rule->option;
    const struct entry *e = yield_eater(b, m);
    bool part = e && e->tag == TAG_PART && e->marks & MARK_OF(plural); /* "it makes four patties" */
    return (!e || part)
           && (yield_counts_pieces(b->r, m) || text_is(option, "cut") || text_is(option, "pieces")
               || text_is(option, "made") || text_is(option, "named") || text_is(option, "number")
               || text_is(option, "stamped") || is_by_the_dozen(b->r, m));
}

bool is_portioned(const struct builder *b)
{
    for (size_t i = 0; i < b->dish->steps.count; i++)
        for (size_t n = 0; n < b->dish->steps.at[i].actions.count; n++)
            if (step_words_list(b->k, "portions", b->dish->steps.at[i].actions.at[n]))
                return true;
    return false;
}

/* "Cut it in twelve": what is cut when nothing more goes in is the dish, whatever it is called. */
static bool yield_cuts_whole(const struct builder *b, const struct match *m)
{
    const struct entry *verb = match_entry(b->r, m, SLOT_action);
    return text_is(m->rule->option, "pieces") && verb && verb->marks & MARK_OF(cuts)
           && dish_is_filled(b);
}

bool yield_needs_pieces(const struct builder *b, const struct match *m)
{
    return text_is(m->rule->option, "named") || text_is(m->rule->option, "stamped")
           || (text_is(m->rule->option, "number") && !is_portioned(b))
           || (text_is(m->rule->option, "pieces") && !yield_cuts_whole(b, m));
}

/* "Mark it into squares": what it was cut into, just before; "piece" where that was not said. */
static struct text cut_into(const struct builder *b, const struct match *m)
{
    size_t first = cut_from(b);
    for (size_t i = m->words.first; i-- > first;) {
        const struct word *w = &b->r->words.at[i];
        unsigned char before = b->r->words.at[w->entry_first ? w->entry_first - 1 : 0].tag;
        if (w->tag == TAG_COUNTER && w->entry && w->entry->marks & MARK_OF(plural)
            && (before == TAG_INTO || before == TAG_ACTION))
            return piece_name(w->entry);
    }
    return TEXT_OF("piece");
}

/* "Scones", which the dish was called when it was made, whatever its title; NULL: no pieces were
 * named. */
static const struct entry *last_pieces(const struct builder *b, const struct match *m)
{
    const struct entry *found = NULL;
    for (size_t i = b->dish->words.first; i < m->words.first; i++) {
        const struct word *w = &b->r->words.at[i];
        if (w->tag == TAG_DISH && w->entry && w->entry->marks & MARK_OF(plural)
            && !(w->entry->marks & MARK_OF(generic)))
            found = w->entry;
    }
    return found;
}

/* "It cuts into nine." */
static bool says_cut(const struct recording *r, const struct match *m)
{
    return yield_serves(r, m) && first_entry(r, m)->entry->marks & MARK_OF(cuts);
}

struct text yield_counted(const struct builder *b, const struct match *m)
{
    const struct entry *e = yield_eater(b, m);
    bool uncounted = !e && text_is(m->rule->option, "weak"); /* "divide it in eight, roll each" */
    if (uncounted || (!e && (text_is(m->rule->option, "cut") || yield_cuts_whole(b, m))))
        return cut_into(b, m);
    bool whole = e && e->tag == TAG_DISH && !(e->marks & MARK_OF(plural)) /* "tabbouleh, four" */
                 && match_slot(m, SLOT_eater).first < match_slot(m, SLOT_number).first;
    if (!e && yield_needs_title(b, m)) {
        const struct entry *piece = last_pieces(b, m);
        if (piece || is_portioned(b) || says_cut(b->r, m))
            return piece ? piece_name(piece) : TEXT_OF("piece");
    }
    if (text_is(m->rule->option, "serving") || text_is(m->rule->option, "for") || !e || whole
        || e->tag == TAG_SIDE || e->tag == TAG_PART)
        return TEXT_OF("serving");
    const struct entry *eater = eater_reading(b->k, e);
    if (eater)
        return entry_value(eater);
    return text_is(m->rule->option, "dish") ? text_last_word(entry_shown(e)) : piece_name(e);
}
