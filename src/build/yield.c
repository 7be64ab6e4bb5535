/* build/yield.c: how much the dish makes, as it was said.
 * SPDX-License-Identifier: MIT */
#include "build/yield.h"

#include "build/yieldof.h"
#include "build/yieldor.h"
#include "match/capture.h"
#include "match/mark.h"
#include "match/matches.h"

/* A yield of a hundred thousand is a subscriber count. */
#define YIELD_MOST 2000
/* "Feeds four of us, that does, or two after a long day": so near it is another way to say it. */
#define OR_WORDS 10
/* "I get twelve. Three each, for four people.": so near behind pieces people share them. */
#define SHARING_WORDS 16

/* "I get nine, if I don't eat the scraps": what is supposed behind it takes nothing back. */
static bool is_supposed_later(const struct builder *b, size_t i)
{
    const struct recording *r = b->r;
    const struct sentence *s = b->sentence;
    if (s->flags & SENTENCE_STORY)
        return false;
    return !match_among(r, (struct span){s->first, i}, UNREAL_KINDS);
}

/* "Don't let anybody tell you it serves two", never "they don't need the oven and it makes eight".
 */
static bool is_denied(const struct builder *b, size_t i)
{
    while (i-- > b->sentence->first) {
        unsigned char tag = b->r->words.at[i].tag;
        if (tag == TAG_AND || tag == TAG_SO || b->r->words.at[i].after >= AFTER_COMMA
            || b->r->words.at[i].filler) /* "who don't know, um, this is for four" */
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

/* "My mother's one, and this is for six", "if somebody has parsley, so this is for four": a clause
 * of its own shows the dish, whatever story it stands in. */
static bool is_shown(const struct builder *b, const struct match *m)
{
    const struct word *at = b->r->words.at;
    size_t first = m->words.first, i = first;
    while (at[i].tag == TAG_INSIDE)
        i++;
    bool shows = at[i].tag == TAG_THERE;
    if (at[i].tag == TAG_SERVE && first > b->sentence->first)
        shows = at[first - 1].tag == TAG_AND || at[first - 1].tag == TAG_SO;
    for (; shows && i <= m->words.last; i++)
        shows = at[i].tag != TAG_STORY;
    return shows;
}

/* Whether the words say it of this dish: not in a story, nor as another way to say it ("... or
 * it'll feed two ukulele players"). */
static bool is_said(const struct builder *b, const struct match *m)
{
    const struct recording *r = b->r;
    if (r->words.at[m->words.last].after == AFTER_QUESTION)
        return false; /* "Feeds four? Feeds six?" */
    bool named = yield_serves(r, m) && b->sentence->names
                 && (!(b->sentence->flags & SENTENCE_STORY) || is_named_before_story(b));
    named |= is_shown(b, m);
    for (size_t i = m->words.first; i <= m->words.last; i++)
        if ((r->words.at[i].scope & SCOPE_NEGATED && is_denied(b, i))
            || (r->words.at[i].scope & SCOPE_UNREAL && !named && !is_supposed_later(b, i)))
            return false;
    size_t before = m->words.first;
    while (before > b->sentence->first && r->words.at[before - 1].tag == TAG_WILL)
        before--;
    bool other = before > 0 && r->words.at[before - 1].tag == TAG_OR;
    return !other || !b->dish->yield.known || b->dish->yield.words.last + OR_WORDS < before;
}

/* Whether words of the match say that it holds for all dishes. */
static bool is_of_all(const struct recording *r, const struct match *m)
{
    if (text_is(m->rule->option, "all"))
        return true;
    size_t i = m->words.first;
    while (r->words.at[i].tag == TAG_INSIDE)
        i++;
    return r->words.at[i].tag == TAG_SERVE && r->words.at[i].entry->marks & MARK_OF(again);
}

/* Words of these rules only count or name what is there. */
static bool only_counts(struct text option)
{
    static const char *const options[] = {"weak",   "pieces",  "dish",    "kind",   "end",
                                          "number", "measure", "stamped", "headed", "filled"};
    for (size_t i = 0; i < sizeof options / sizeof *options; i++)
        if (text_is(option, options[i]))
            return true;
    return false;
}

/* How sure it is that these words say how much the dish makes: what is only cut or named least. */
static enum yield_sure sureness(const struct builder *b, const struct match *m)
{
    struct text option = m->rule->option;
    const struct entry *e = yield_eater(b, m);
    if (text_is(option, "slices"))
        return YIELD_CUT;
    if (only_counts(option)) /* "that's four suppers" may be of four dishes */
        return e && e->tag == TAG_DISH && e->marks & MARK_OF(generic) ? YIELD_CUT : YIELD_COUNTED;
    if (b->r->words.at[m->words.first].scope & SCOPE_SUPPOSED
        && !is_supposed_later(b, m->words.first))
        return YIELD_CUT;
    if (yield_needs_title(b, m) && !dish_piece(b))
        return YIELD_SAID; /* "you get about twelve": pieces, of whatever they are */
    return yield_serves(b->r, m) || text_is(option, "serving") || text_is(option, "for")
                   || text_is(option, "answer") || text_is(option, "announced")
                   || is_of_all(b->r, m)
               ? YIELD_SERVED
               : YIELD_SAID;
}

/* Whether the title says of what the pieces are, and whether they are none where it does not. */
static enum yield_pieces pieces_of(const struct builder *b, const struct match *m, struct text of)
{
    bool cut = text_is(m->rule->option, "cut") && !text_is(of, "piece");
    if (cut || !yield_needs_title(b, m))
        return YIELD_OF_WHAT_IS_SAID;
    return yield_needs_pieces(b, m) ? YIELD_OF_PIECES_ONLY : YIELD_OF_PIECES;
}

/* Whether people are told of who share the pieces that were counted just before. */
static bool shares_pieces(const struct builder *b, const struct match *m)
{
    const struct yield *before = &b->dish->yield;
    return before->known && b->yield_sure >= YIELD_SAID && !text_is(before->of, "serving")
           && text_is(yield_counted(b, m), "serving")
           && m->words.first < before->words.last + SHARING_WORDS;
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
        if (e && (e->tag == TAG_DISH || e->tag == TAG_COUNTER) && !(e->marks & MARK_OF(plural)))
            *sure = YIELD_CUT;
    }
    if (text_is(m->rule->option, "for") && b->yield_sure == YIELD_SERVED)
        return false; /* "soup for four. For two with an appetite." */
    if (shares_pieces(b, m))
        return false;
    bool same = before->known && ratio_equal(before->max, m->high) && *sure >= YIELD_SAID;
    return *sure >= b->yield_sure || same;
}

/* The last one said counts, since it is said with the finished dish in sight; what is only cut or
 * named ("so that's twelve squares"), or may be of people in a story, gives way to what is said to
 * be served. */
void build_yield(struct builder *b, const struct sentence *s)
{
    b->sentence = s;
    struct matches yields = matches_of(b->r, s, YIELD_KINDS);
    for (const struct match *m; (m = matches_next(&yields));) {
        if (!ratio_finite(m->high) || !is_said(b, m) || !yield_counts(b, m)
            || ratio_compare(m->high, RATIO(YIELD_MOST)) > 0)
            continue;
        if (text_is(m->rule->option, "more")) {
            yield_with_more(b, m);
            continue;
        }
        enum yield_sure sure = sureness(b, m);
        if (!is_surer(b, m, &sure))
            continue;
        b->yield_sure = sure;
        struct text of = yield_counted(b, m);
        struct ratio high = m->high;
        yield_with_other(b, m, &high);
        b->dish->yield = (struct yield){true, m->low, high, of, m->words, pieces_of(b, m, of)};
    }
}

bool yield_is_shared(const struct recording *r, const struct sentence *s)
{
    struct matches yields = matches_of(r, s, YIELD_KINDS);
    for (const struct match *m; (m = matches_next(&yields));)
        if (is_of_all(r, m))
            return true;
    return false;
}

void share_yield(struct builder *b, const struct sentence *s)
{
    struct yield before = b->dish->yield;
    enum yield_sure sure = b->yield_sure;
    bool shared = yield_is_shared(b->r, s);
    if ((s->names && !shared) || sure != YIELD_NONE)
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
