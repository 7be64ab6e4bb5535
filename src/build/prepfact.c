/* build/prepfact.c: words that may tell what was done to a food, and the foods they may be told of.
 * SPDX-License-Identifier: MIT */
#include "build/prepodds.h"

#include <limits.h>

#include "base/arena.h"
#include "build/beside.h"
#include "build/instruction.h"
#include "build/stepwords.h"
#include "match/subject.h"

/* Foods before a word that are looked at, and behind it. */
#define LINES_BEFORE 3
#define LINES_BEHIND 2
/* Words between at most: behind the nearest food, and others; before it. */
#define REACH 24
#define REACH_LIST 16
#define REACH_BACK 6

struct search {
    struct builder *b;
    struct prep_food *lines; /* by their last word */
    size_t count, past;      /* `past`: the lines that end before the word */
    bool inside;             /* the word is one of a line's own */
    prep_weigh *weigh;
    void *with;
};

static const struct word *at(const struct builder *b, size_t i)
{
    return &b->r->words.at[i];
}

/* A verb, or its participle; only some foods are prepared by those that have no mark. */
static bool find_verb(const struct builder *b, const struct word *w, struct prep_word *out)
{
    const bool done = w->tag == TAG_DONE, doing = w->tag == TAG_DOING;
    const bool all = w->entry->marks & MARK_OF(prep);
    if (!all && (w->entry->words_count > 1 || !is_prep_row(b, entry_value(w->entry))))
        return false;
    const struct entry *verb = w->tag == TAG_ACTION ? w->entry
                               : doing              ? action_entry(b->k, entry_value(w->entry))
                                                    : NULL;
    const struct entry *part = !all ? NULL : done ? w->entry : verb ? participle(b->k, verb) : NULL;
    if (all && !part)
        return false;
    out->kind = all ? (done    ? PREP_DONE
                       : doing ? PREP_DOING
                               : PREP_ORDER)
                    : (done    ? PREP_ROW_DONE
                       : doing ? PREP_ROW_DOING
                               : PREP_ROW_ORDER);
    out->way = done ? PREP_TOLD : PREP_ORDERED;
    out->bare = part && part->marks & MARK_OF(pieces);
    out->done = part ? plain_participle(b, part) : TEXT_EMPTY;
    out->says = entry_value(w->entry);
    return true;
}

static bool tells_size(unsigned char tag)
{
    return tag == TAG_SIZE || tag == TAG_STATE || tag == TAG_FULLNESS || tag == TAG_MANNER;
}

/* "Rounds", "in small cubes". */
static bool find_pieces(const struct builder *b, const struct word *w, struct prep_word *out)
{
    unsigned char before = out->first ? at(b, out->first - 1)->tag : (unsigned char) TAG_SO;
    struct text done = step_row(b, "pieces", w->key);
    struct text size = done.length && tells_size(before) ? at(b, out->first - 1)->key : TEXT_EMPTY;
    struct text sized =
        size.length ? step_row(b, "pieces",
                               arena_format(b->r->arena, "%.*s %.*s", TEXT(size), TEXT(w->key)))
                    : TEXT_EMPTY;
    out->kind = PREP_PIECES;
    out->done = sized.length ? sized : done;
    return done.length > 0;
}

/* "Fine", "small", said of how a food is cut. */
static bool find_how(const struct builder *b, const struct word *w, struct prep_word *out)
{
    out->kind = PREP_HOW;
    out->done = step_row(b, "bare", w->key);
    return out->done.length > 0;
}

/* "Finely diced": how what is told behind it was done, and nothing by itself. */
static bool is_of_done(const struct builder *b, size_t i)
{
    return i < b->sentence->last && at(b, i)->after < AFTER_COMMA && at(b, i + 1)->tag == TAG_DONE;
}

/* "Diced, sorry", "diced, no, sliced" */
static bool is_taken_back(const struct builder *b, size_t i)
{
    return i + 1 < b->r->words.count
           && (at(b, i + 1)->tag == TAG_SORRY || is_no_by_itself(b->r, i + 1));
}

/* What a word of each tag may be: most words are nothing of the kind. */
enum teller { TELLS_NOTHING, TELLS_VERB, TELLS_PIECES, TELLS_SIZE, TELLS_BEHIND_SIZE };
static const unsigned char TELLERS[UCHAR_MAX + 1] = {
    [TAG_DONE] = TELLS_VERB,       [TAG_ACTION] = TELLS_VERB, [TAG_DOING] = TELLS_VERB,
    [TAG_COUNTER] = TELLS_PIECES,  [TAG_UNIT] = TELLS_PIECES, [TAG_DISH] = TELLS_PIECES,
    [TAG_FRACTION] = TELLS_PIECES, [TAG_SIZE] = TELLS_SIZE,   [TAG_STATE] = TELLS_SIZE,
    [TAG_FULLNESS] = TELLS_SIZE,   [TAG_MANNER] = TELLS_SIZE, [TAG_OTHER] = TELLS_BEHIND_SIZE};

static enum teller teller_at(const struct builder *b, size_t i)
{
    const struct word *w = at(b, i);
    enum teller t = TELLERS[w->tag];
    if (t != TELLS_BEHIND_SIZE)
        return t;
    unsigned char before = i ? w[-1].tag : (unsigned char) TAG_SO;
    return before == TAG_INTO || TELLERS[before] == TELLS_SIZE ? TELLS_PIECES : TELLS_NOTHING;
}

static bool find_word(const struct builder *b, size_t i, enum teller teller, struct prep_word *out)
{
    const struct word *w = at(b, i);
    if (w->scope & SCOPE_NEGATED || is_taken_back(b, i)
        || (teller == TELLS_SIZE && is_of_done(b, i)))
        return false;
    *out = (struct prep_word){.first = w->entry_first, .last = i, .scope = w->scope};
    if (teller == TELLS_VERB)
        return w->entry && find_verb(b, w, out);
    out->way = PREP_NAMED;
    out->says = w->key;
    return teller == TELLS_SIZE ? find_how(b, w, out) : find_pieces(b, w, out);
}

static void look_beside(const struct builder *b, struct prep_word *w)
{
    w->before = tag_before(b->r, w->first);
    w->behind = tag_behind(b->r, w->last);
    for (size_t i = w->first; i-- > 0 && w->nears < PREP_NEAR;)
        w->near[w->nears++] = at(b, i)->key;
    for (size_t i = w->last + 1; i < b->r->words.count && w->nexts < PREP_NEXT; i++)
        w->next[w->nexts++] = at(b, i)->key;
}

/* Which power of two covers so many words: 0, 1, 2, 4 ... */
static unsigned power(unsigned words)
{
    unsigned n = words > 0;
    while (n && 1U << (n - 1) < words && n + 1 < PREP_DISTANCES)
        n++;
    return n;
}

/* What stands between, from word `first` up to `end`. */
static void look_between(const struct search *s, const struct prep_word *w, struct prep_case *c,
                         size_t first, size_t end)
{
    const struct builder *b = s->b;
    const struct ingredient *line = c->line;
    unsigned words = 0;
    c->stops = at(b, c->side == PREP_SIDE_BEFORE ? line->words.last : w->last)->after >= AFTER_STOP;
    for (size_t i = first; i < end; i++)
        if (!at(b, i)->filler) {
            words++;
            c->stops += at(b, i)->after >= AFTER_STOP;
        }
    unsigned one = at(b, c->side == PREP_SIDE_BEHIND ? line->words.first : line->words.last)->cue,
             other = at(b, w->last)->cue;
    c->distance = power(words);
    c->captions = one < other ? other - one : one - other;
}

static bool has_prep(const struct ingredient *line, struct text done)
{
    for (size_t n = 0; n < line->prep.count; n++)
        if (preps_alike(line->prep.at[n], done))
            return true;
    return false;
}

/* Whether the rules have it for another food beside the word. */
static bool is_taken(const struct search *s, const struct prep_word *w, const struct prep_case *c)
{
    size_t n = s->past > LINES_BEFORE ? s->past - LINES_BEFORE : 0;
    for (; n < s->count && s->lines[n].line->words.first <= w->last + REACH_BACK; n++)
        if (s->lines[n].line != c->line && has_prep(s->lines[n].line, c->done))
            return true;
    return false;
}

/* "Cut" tells nothing new of what is sliced, nor "cubes" of what is "cut into 1-inch cubes". */
static bool says_no_more(const struct prep_word *w, const struct ingredient *line)
{
    bool named = false;
    for (size_t n = 0; w->kind == PREP_PIECES && n < line->prep.count; n++)
        named |= text_equal(text_last_word(line->prep.at[n]), w->says);
    return named || (w->bare && line->prep.count);
}

static void weigh_case(const struct search *s, struct prep_word *w, struct prep_food *food,
                       enum prep_where where, struct span between)
{
    struct builder *b = s->b;
    struct ingredient *line = food->line;
    struct prep_case c = {.line = line, .food = food, .where = where};
    c.side = where < PREP_BEHIND_0 ? PREP_SIDE_BEFORE : PREP_SIDE_BEHIND;
    c.done = usual_prep(b, line, w->done.length ? w->done : prep_row(b, line, w->says));
    if (!c.done.length)
        return;
    look_between(s, w, &c, between.first, between.last);
    c.given = has_prep(line, c.done);
    c.taken = is_taken(s, w, &c);
    if (c.given || !says_no_more(w, line))
        s->weigh(b, w, &c, s->with);
}

/* Whether a food is near enough to word `i`; finds where it stands among the foods. */
static bool find_place(struct search *s, size_t i)
{
    const size_t first = at(s->b, i)->entry_first;
    while (s->past < s->count && s->lines[s->past].line->words.last < first)
        s->past++;
    const struct ingredient *next = s->past < s->count ? s->lines[s->past].line : NULL;
    s->inside = next && next->words.first <= i;
    return (s->past && first - s->lines[s->past - 1].line->words.last <= REACH)
           || (next && !s->inside && next->words.first - i <= REACH_BACK)
           || (s->inside && s->past + 1 < s->count);
}

static void weigh_word(const struct search *s, struct prep_word *w)
{
    for (size_t n = 0; n < LINES_BEFORE && n < s->past; n++) {
        struct prep_food *food = &s->lines[s->past - 1 - n];
        size_t last = food->line->words.last;
        if (w->first - last > (n ? REACH_LIST : REACH))
            break;
        weigh_case(s, w, food, (enum prep_where)(PREP_BEFORE_0 + n),
                   (struct span){last + 1, w->first});
    }
    for (size_t n = 0; n < LINES_BEHIND && s->past + w->inside + n < s->count; n++) {
        struct prep_food *food = &s->lines[s->past + w->inside + n];
        size_t first = food->line->words.first;
        if (first <= w->last || first - w->last > REACH_BACK)
            break;
        weigh_case(s, w, food, (enum prep_where)(PREP_BEHIND_0 + n),
                   (struct span){w->last + 1, first});
    }
}

/* Nearly in order already. */
static void sort_lines(struct prep_food *lines, size_t count)
{
    for (size_t n = 1; n < count; n++)
        for (size_t i = n; i > 0 && lines[i].line->words.last < lines[i - 1].line->words.last;
             i--) {
            struct prep_food line = lines[i];
            lines[i] = lines[i - 1];
            lines[i - 1] = line;
        }
}

void each_prep_case(struct builder *b, prep_weigh *weigh, void *with)
{
    const size_t count = b->dish->ingredients.count;
    if (!count)
        return;
    struct search s = {.b = b, .count = count, .weigh = weigh, .with = with};
    s.lines = arena_alloc(b->r->arena, count * sizeof *s.lines);
    for (size_t n = 0; n < count; n++)
        s.lines[n].line = &b->dish->ingredients.at[n];
    sort_lines(s.lines, count);
    for (size_t n = 0; n < b->dish->spans.count; n++)
        for (size_t i = b->dish->spans.at[n].first; i <= b->dish->spans.at[n].last; i++) {
            struct prep_word w;
            enum teller teller = teller_at(b, i);
            if (!teller || !find_place(&s, i) || (s.inside && teller != TELLS_VERB)
                || !find_word(b, i, teller, &w))
                continue; /* the pieces in "two slices of bread" are no preparation */
            w.inside = s.inside;
            look_beside(b, &w);
            weigh_word(&s, &w);
        }
}
