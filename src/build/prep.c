/* build/prep.c: what was done to a food, where that is said beside it.
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "base/arena.h"
#include "build/stepwords.h"
#include "match/subject.h"

/* "Two cloves. Crushed.": participles that begin a sentence so few words after a food are its own.
 */
#define ALONE_WORDS 12

static void add_word(struct builder *b, struct ingredient *line, size_t i)
{
    const struct word *w = &b->r->words.at[i];
    if (!w->entry || (w->tag == TAG_STATE && b->r->words.at[i + 1].tag == TAG_OR))
        return; /* "hot or mild sausage": either will do */
    if (w->tag == TAG_DONE && w->entry->marks & MARK_OF(prep))
        add_line_prep(b, line, with_manner(b, i, w->entry, plain_participle(b, w->entry)));
    else if ((w->tag == TAG_STATE || w->tag == TAG_FULLNESS) && w->entry->marks & MARK_OF(prep))
        add_state(b, line, w->entry, i < line->id);
    else if (w->tag == TAG_EXTRACT)
        add_prep(b->r->arena, &line->prep, entry_value(w->entry));
    else if (w->tag == TAG_VAGUE)
        add_prep(b->r->arena, &line->prep, prepared_by_amount(b, line, w->entry));
    else if (w->tag == TAG_STATE)
        add_prep(b->r->arena, &line->state, entry_shown(w->entry));
    else if (w->tag == TAG_SIZE && !line->size.length)
        line->size = entry_shown(w->entry);
}

bool ends_caption(const struct builder *b, size_t i)
{
    const struct word *w = &b->r->words.at[i];
    return w->tag == TAG_DONE && !b->r->punctuated && i > b->sentence->first
           && i < b->sentence->last && w[1].cue != w->cue && w[-1].tag == TAG_FOOD
           && w[-1].cue == w->cue;
}

void read_prep_inside(struct builder *b, struct ingredient *line, const struct match *m)
{
    for (size_t i = m->words.first; i <= m->words.last; i++)
        if (b->r->words.at[i].tag != TAG_INSIDE && !(b->r->words.at[i].scope & SCOPE_NEGATED)
            && !ends_caption(b, i))
            add_word(b, line, i);
}

/* "All" without a food behind it. */
static bool is_share(const struct chunk *c)
{
    return c->match && c->match->rule->kind == RULE_share;
}

/* A heat too: "medium". */
static const bool AMONG_PREPS[TAG_CODES] = {
    [TAG_DONE] = true, [TAG_MANNER] = true,  [TAG_STATE] = true, [TAG_SIZE] = true,
    [TAG_HEAT] = true, [TAG_MEASURE] = true, [TAG_AND] = true,   [TAG_BE] = true,
    [TAG_NOT] = true,  [TAG_OTHER] = true,   [TAG_SORRY] = true, [TAG_WHOLE] = true,
    [TAG_EACH] = true, [TAG_THE] = true,     [TAG_THERE] = true};

/* Whether a chunk may stand among the preparations of a food without ending them. */
static bool passes(const struct chunk *c)
{
    return is_share(c) || is_sort(c) || AMONG_PREPS[c->tag];
}

/* "Cut on the bias", "cut small": "cut" alone says nothing. */
static struct prep_phrase cut_how(struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    const struct chunk *k = &c->at[i], *next = k + 1;
    bool how = i + 1 < c->count && b->r->words.at[k->last].after < AFTER_COMMA
               && (next->tag == TAG_MANNER || next->tag == TAG_SIZE || next->tag == TAG_STATE
                   || next->tag == TAG_FULLNESS
                   || (next->tag == TAG_OTHER && is_step_word(b, next, "how")));
    if (how)
        return (struct prep_phrase){printed_prep(b, k->first, next->last), i + 1};
    bool alone = k->entry->words_count == 1 && i && b->r->words.at[k->last].after == AFTER_COMMA
                 && b->r->words.at[k->first - 1].after == AFTER_COMMA; /* "chillies, cut, soaked" */
    bool says = alone || (k->entry->words_count > 1 && !leads_to_pieces(b, k));
    return (struct prep_phrase){says ? entry_shown(k->entry) : TEXT_EMPTY, i};
}

/* "Cut in" behind a food is the same as "cut into", though elsewhere butter is cut in. */
static bool is_cut_into(const struct builder *b, const struct chunk *c)
{
    const struct entry *first =
        c->first < c->last && leads_to_pieces(b, c)
            ? entry_as(pack_find(b->k, b->r->words.at[c->first].key, NULL), TAG_DONE)
            : NULL;
    return first && first->marks & MARK_OF(pieces);
}

/* "Two spoons of mayo split over the four": shared out, and not cut. */
static bool is_shared_out(const struct builder *b, size_t i)
{
    return i + 1 < b->chunks.count && is_step_word(b, &b->chunks.at[i + 1], "among");
}

/* "Cut in two inch lengths" at chunks `i` to `end`, without what is only said while thinking: "cut
 * in, what, two inch lengths". */
static struct text done_into(struct builder *b, size_t i, size_t end)
{
    const struct chunk *k = &b->chunks.at[i];
    return arena_format(
        b->r->arena, "%.*s %.*s", TEXT(printed_prep(b, k->first, k->last)),
        TEXT(printed_prep(b, b->chunks.at[pieces_begin(b, i)].first, b->chunks.at[end].last)));
}

struct prep_phrase participle_at(struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    const struct chunk *k = &c->at[i];
    if (k->tag != TAG_DONE || k->scope & SCOPE_NOT_DONE || is_shared_out(b, i))
        return (struct prep_phrase){0};
    size_t end = pieces_end(b, i);
    bool prep = chunk_marks(k) & MARK_OF(prep);
    bool cut = chunk_marks(k) & MARK_OF(pieces) || is_cut_into(b, k);
    prep |= end && is_cut_into(b, k);
    struct text word = end && prep && cut ? pieces_word(b, pieces_begin(b, i), end) : TEXT_EMPTY;
    if (word.length)
        return (struct prep_phrase){word, end};
    if (end && (prep || (is_counter(b, end) && !(chunk_marks(k) & MARK_OF(puts)))))
        return (struct prep_phrase){done_into(b, i, end), end};
    if (prep && chunk_marks(k) & MARK_OF(pieces))
        return cut_how(b, i);
    if (!prep)
        return (struct prep_phrase){TEXT_EMPTY, i};
    return (struct prep_phrase){with_manner(b, k->first, k->entry, plain_participle(b, k->entry)),
                                i};
}

struct prep_phrase pieces_at(struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    size_t end = c->at[i].tag == TAG_INTO ? pieces_end(b, i) : 0;
    struct text done = end ? pieces_word(b, pieces_begin(b, i), end) : TEXT_EMPTY;
    if (done.length)
        return (struct prep_phrase){done, end};
    if (!end || c->at[end].tag != TAG_COUNTER || !(chunk_marks(&c->at[end]) & MARK_OF(plural)))
        return (struct prep_phrase){0};
    if (!done.length) /* "cut in big strips"; "in slices" is sliced */
        done = arena_format(b->r->arena, "%.*s %.*s", TEXT(step_word(b->k, "cut")),
                            TEXT(printed_prep(b, c->at[i].first, c->at[end].last)));
    return (struct prep_phrase){done, end};
}

/* "... of oil, cold pan", "hot filling": the state is that of what stands behind it. */
static bool is_of_next(const struct builder *b, size_t i)
{
    const struct word *w = &b->r->words.at[b->chunks.at[i].last];
    if (w->after >= AFTER_COMMA || i + 1 >= b->chunks.count || w[1].cue != w->cue)
        return false;
    unsigned char next = b->chunks.at[i + 1].tag;
    return next == TAG_VESSEL || next == TAG_OVEN || next == TAG_TOOL || next == TAG_PART
           || next == TAG_PLACE || next == TAG_DISH;
}

/* "water, lukewarm", "a stick of butter, soft": a state behind the food is one to bring it to. */
static struct prep_phrase state_at(const struct builder *b, size_t i)
{
    const struct chunk *k = &b->chunks.at[i];
    bool prep = (k->tag == TAG_STATE || k->tag == TAG_FULLNESS) && chunk_marks(k) & MARK_OF(prep)
                && !(k->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL)) && !is_of_next(b, i);
    return (struct prep_phrase){prep ? entry_value(k->entry) : TEXT_EMPTY, i};
}

static struct prep_phrase prep_at(struct builder *b, size_t i)
{
    struct prep_phrase p = removed_at(b, i);
    if (!p.prep.length)
        p = participle_at(b, i);
    if (!p.prep.length)
        p = pieces_at(b, i);
    if (!p.prep.length)
        p = shape_at(b, i);
    if (!p.prep.length)
        p = tool_at(b, i);
    return p.prep.length ? p : state_at(b, i);
}

/* Whether chunk `i` says that what follows holds for all that was listed: "all", "both", "each"; in
 * "the toasted ones" it does not. */
static bool means_all(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    bool ones = i + 2 < c->count && (c->at[i + 2].tag == TAG_IT || c->at[i + 2].tag == TAG_OTHER);
    return is_share(&c->at[i]) || c->at[i].tag == TAG_WHOLE || c->at[i].tag == TAG_EACH
           || (c->at[i].tag == TAG_THE && !ones);
}

/* "Washed well and torn": an adverb that begins a sentence elsewhere. */
static bool is_well(const struct chunks *c, size_t i)
{
    return c->at[i].tag == TAG_SO && i && c->at[i - 1].tag == TAG_DONE
           && chunk_tag(c, i + 1) == TAG_AND;
}

/* "Roughly chopped", "about halved": a hedge that is none of an amount. */
static bool is_roughly(const struct chunks *c, size_t i)
{
    return c->at[i].tag == TAG_HEDGE && i + 1 < c->count && c->at[i + 1].tag == TAG_DONE;
}

void read_prep_after(struct builder *b, struct ingredient *line, size_t index)
{
    struct chunks *c = &b->chunks;
    line = told_of(b, line, index);
    read_prep_of_next(b, line, index);
    size_t others = 0;
    bool all = false, back = false;
    for (size_t i = index + 1; i < c->count && others < 3; i++) {
        struct prep_phrase p = prep_at(b, i);
        if (c->at[i].tag == TAG_NOT && !(line->entry && line->entry->marks & MARK_OF(produce)))
            p.prep = TEXT_EMPTY; /* "thighs without the bone" are bought so */
        if (!p.prep.length && c->at[i].tag == TAG_DONE)
            p = (struct prep_phrase){prepared_before(b, line, &c->at[i]), i};
        back |= p.prep.length && !i && c->count == 2 && c->at[1].tag == TAG_SORRY;
        if (p.prep.length && back && line->prep.count) /* "diced, sorry" */
            line->prep.at[line->prep.count - 1] = p.prep;
        else if (p.prep.length && all)
            give_all(b, c->at[i].first, p.prep);
        else if (p.prep.length) {
            if (i == index + 1 && chunk_marks(&c->at[i]) & MARK_OF(pieces))
                give_pair(b, line, p.prep);
            add_line_prep(b, line, p.prep);
        } else if (aside_end(b, i) || give_same(b, line, i)) {
            i = aside_end(b, i) ? aside_end(b, i) : give_same(b, line, i);
            continue;
        } else if (!passes(&c->at[i]) && !leads_to_done(b, i) && !is_roughly(c, i)
                   && !is_well(c, i))
            return;
        others += c->at[i].tag == TAG_OTHER || c->at[i].tag == TAG_BE || c->at[i].tag == TAG_THERE;
        all = means_all(b, i) || (all && (p.prep.length || c->at[i].tag == TAG_MANNER));
        back = c->at[i].tag == TAG_SORRY || is_no_by_itself(b->r, c->at[i].last);
        i = p.prep.length ? p.last : i;
    }
}

void read_prep_alone(struct builder *b)
{
    struct ingredient *line = last_line(b);
    if (!line || !line->amount.known || !b->chunks.count)
        return;
    size_t last = told_end(b, line), end = prep_at(b, 0).last + 1;
    bool of_other = end < b->chunks.count
                    && (b->chunks.at[end].tag == TAG_IT || b->chunks.at[end].tag == TAG_THE
                        || b->chunks.at[end].tag == TAG_LINE); /* "pounded hers to death" */
    if (last < b->sentence->first && b->sentence->first - last <= ALONE_WORDS && !of_other
        && prep_at(b, 0).prep.length)
        read_prep_after(b, line, (size_t) -1);
}
