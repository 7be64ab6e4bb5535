/* build/yield.c: how much the dish makes, as it was said.
 * SPDX-License-Identifier: MIT */
#include "build/yield.h"

#include "build/yieldof.h"
#include "match/capture.h"

/* A yield of a hundred thousand is a subscriber count. */
#define YIELD_MOST 2000
/* So near its end nothing more goes into a dish: "Two loaves." */
#define END_SENTENCES 4
/* So many people are talked of, and not fed, unless the cook says so: "two hundred children". */
#define COMPANY_LEAST 99

/* "I get nine, if I don't eat the scraps": what is supposed behind it takes nothing back. */
static bool is_supposed_later(const struct builder *b, size_t i)
{
    const struct recording *r = b->r;
    const struct sentence *s = b->sentence;
    if (s->flags & SENTENCE_STORY)
        return false;
    for (size_t n = 0; n < s->match_count; n++) {
        const struct match *m = &r->matches.at[s->match_first + n];
        bool unreal = m->rule->kind == RULE_unreal || m->rule->kind == RULE_supposed
                      || m->rule->kind == RULE_instead;
        if (unreal && m->words.first <= i)
            return false;
    }
    return true;
}

/* "Don't let anybody tell you it serves two", never "they don't need the oven and it makes eight".
 */
static bool is_denied(const struct builder *b, size_t i)
{
    while (i-- > b->sentence->first) {
        unsigned char tag = b->r->words.at[i].tag;
        if (tag == TAG_AND || tag == TAG_SO || b->r->words.at[i].after >= AFTER_COMMA)
            return false;
        if (tag == TAG_NOT)
            return true;
    }
    return false;
}

/* "It's a fish curry, I learned it at sea, and it'll do six": the story begins behind the name. */
static bool is_named_before_story(const struct builder *b)
{
    bool named = false;
    for (size_t i = b->sentence->first; i <= b->sentence->last; i++) {
        unsigned char tag = b->r->words.at[i].tag;
        if (tag == TAG_STORY)
            return named;
        named |= tag == TAG_DISH;
    }
    return named;
}

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

/* Whether the words say it of this dish: not in a story, nor as another way to say it ("... or
 * it'll feed two ukulele players"). */
static bool is_said(const struct builder *b, const struct match *m)
{
    const struct recording *r = b->r;
    bool named = yield_serves(r, m) && b->sentence->names
                 && (!(b->sentence->flags & SENTENCE_STORY) || is_named_before_story(b));
    for (size_t i = m->words.first; i <= m->words.last; i++)
        if ((r->words.at[i].scope & SCOPE_NEGATED && is_denied(b, i))
            || (r->words.at[i].scope & SCOPE_UNREAL && !named && !is_supposed_later(b, i)))
            return false;
    size_t before = m->words.first;
    while (before > b->sentence->first && r->words.at[before - 1].tag == TAG_WILL)
        before--;
    bool other = before > b->sentence->first && r->words.at[before - 1].tag == TAG_OR;
    return !other || !b->dish->yield.known || b->dish->yield.words.first < b->sentence->first;
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

/* Pieces that are only cut count where the dish is named after them; vessels where people eat from
 * them. */
static bool counts(const struct builder *b, const struct match *m)
{
    if (counts_other(b, m) || is_of_one_piece(b, m))
        return false;
    const struct entry *e = yield_eater(b, m);
    if (e && e->tag == TAG_EATER && !yield_serves(b->r, m)
        && ratio_compare(m->high, RATIO(COMPANY_LEAST)) > 0)
        return false;
    const struct entry *verb = entry_at(b->r, match_slot(m, SLOT_action));
    if (text_is(m->rule->option, "slices"))
        return e && e->tag == TAG_COUNTER && is_cut_before(b, m);
    if (text_is(m->rule->option, "dish"))
        return is_kind_of_dish(b, e);
    if (text_is(m->rule->option, "kind"))
        return e
               && ((e->tag == TAG_COUNTER && is_like_title(b, e))
                   || ((e->tag == TAG_COUNTER || e->tag == TAG_CONTAINER || e->tag == TAG_VESSEL)
                       && is_at_end(b)));
    if (text_is(m->rule->option, "end"))
        return is_at_end(b);
    if (text_is(m->rule->option, "measure"))
        return e && e->tag != TAG_EATER && is_counting_verb(b->r, m->words.first);
    if (text_is(m->rule->option, "after"))
        return e && is_counting_verb(b->r, m->words.last + 1);
    if (text_is(m->rule->option, "named"))
        return is_named(b) && b->r->words.at[m->words.last].tag == TAG_IT;
    if (text_is(m->rule->option, "pieces"))
        return verb && verb->marks & (MARK_OF(cuts) | MARK_OF(light) | MARK_OF(prep));
    return !e || e->tag != TAG_VESSEL || !text_is(m->rule->option, "weak")
           || eater_reading(b->k, e);
}

/* How sure it is that these words say how much the dish makes: what is only cut or named least. */
static enum yield_sure sureness(const struct builder *b, const struct match *m)
{
    if (text_is(m->rule->option, "slices"))
        return YIELD_CUT;
    if (text_is(m->rule->option, "weak") || text_is(m->rule->option, "pieces")
        || text_is(m->rule->option, "dish") || text_is(m->rule->option, "kind")
        || text_is(m->rule->option, "end") || text_is(m->rule->option, "measure"))
        return YIELD_COUNTED;
    if (b->r->words.at[m->words.first].scope & SCOPE_SUPPOSED
        && !is_supposed_later(b, m->words.first))
        return YIELD_CUT;
    return yield_serves(b->r, m) || text_is(m->rule->option, "serving") ? YIELD_SERVED : YIELD_SAID;
}

/* Whether the title says of what the pieces are, and whether they are none where it does not. */
static enum yield_pieces pieces_of(const struct builder *b, const struct match *m, struct text of)
{
    bool cut = text_is(m->rule->option, "cut") && !text_is(of, "piece");
    if (cut || !yield_needs_title(b, m))
        return YIELD_OF_WHAT_IS_SAID;
    return yield_needs_pieces(m) ? YIELD_OF_PIECES_ONLY : YIELD_OF_PIECES;
}

/* Whether to take it for what was said before. "You'll have one cookie" is said of one piece, where
 * more are counted; the same number again may say better of what: "which makes eight squares",
 * "apple turnovers, eight of them". */
static bool is_surer(const struct builder *b, const struct match *m, enum yield_sure *sure)
{
    const struct yield *before = &b->dish->yield;
    const struct entry *e = yield_eater(b, m);
    if (ratio_equal(m->high, RATIO(1)) && !(e && e->tag == TAG_UNIT)) {
        if (*sure <= YIELD_COUNTED && !text_is(m->rule->option, "kind")
            && !text_is(m->rule->option, "end") && !text_is(m->rule->option, "measure"))
            return false; /* "here's a plate" counts nothing */
        if (e && e->tag == TAG_DISH && !(e->marks & MARK_OF(plural)))
            *sure = YIELD_CUT;
    }
    bool same = before->known && ratio_equal(before->max, m->high) && *sure >= YIELD_SAID;
    return *sure >= b->yield_sure || same;
}

/* The last one said counts, since it is said with the finished dish in sight; what is only cut or
 * named ("so that's twelve squares"), or may be of people in a story, gives way to what is said to
 * be served. */
void build_yield(struct builder *b, const struct sentence *s)
{
    b->sentence = s;
    for (size_t i = 0; i < s->match_count; i++) {
        const struct match *m = &b->r->matches.at[s->match_first + i];
        bool kind = m->rule->kind == RULE_yield || m->rule->kind == RULE_count;
        if (!kind || !ratio_finite(m->high) || !is_said(b, m) || !counts(b, m)
            || ratio_compare(m->high, RATIO(YIELD_MOST)) > 0)
            continue;
        enum yield_sure sure = sureness(b, m);
        if (!is_surer(b, m, &sure))
            continue;
        b->yield_sure = sure;
        struct text of = yield_counted(b, m);
        b->dish->yield = (struct yield){true, m->low, m->high, of, m->words, pieces_of(b, m, of)};
    }
}

void share_yield(struct builder *b, const struct sentence *s)
{
    struct yield before = b->dish->yield;
    if (s->names)
        return;
    build_yield(b, s);
    if (b->yield_sure < YIELD_SERVED || b->dish->yield.pieces
        || !text_is(b->dish->yield.of, "serving"))
        b->dish->yield = before;
    b->yield_sure = YIELD_NONE; /* all that is said of the dish itself is surer */
}

void settle_yield(const struct pack *k, struct dish *d)
{
    const struct entry *piece = d->yield.pieces ? title_piece(k, d->title) : NULL;
    if (piece)
        d->yield.of = piece_name(piece);
    else if (d->yield.pieces == YIELD_OF_PIECES_ONLY)
        d->yield.known = false;
}

/* Whether a sentence begins at the chunk, or "that's" and the like lead to it. */
static bool is_presented(const struct builder *b, size_t index)
{
    unsigned char before = index ? b->chunks.at[index - 1].tag : (unsigned char) TAG_SO;
    return before == TAG_SO || before == TAG_THERE || before == TAG_AND;
}

bool yields_title(struct builder *b, const struct chunk *c, size_t index, const struct entry *food,
                  const struct amount *said)
{
    const struct dish *d = b->dish;
    const struct entry *piece = d->title_said && d->steps.count ? dish_piece(b) : NULL;
    if (!piece || !food || !said->known || said->unit.length || !is_presented(b, index)
        || !(food->marks & MARK_OF(plural)) || !ratio_finite(said->max)
        || !text_equal(text_last_word(entry_shown(food)), text_last_word(entry_shown(piece))))
        return false;
    if (b->yield_sure <= YIELD_COUNTED)
        b->dish->yield = (struct yield){true,
                                        said->min,
                                        said->max,
                                        text_last_word(entry_shown(food)),
                                        {c->first, c->last},
                                        YIELD_OF_WHAT_IS_SAID};
    return true;
}
