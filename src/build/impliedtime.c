/* build/impliedtime.c: what is done for a length of time that no verb takes: "chuck them in, four
 * minutes."
 * SPDX-License-Identifier: MIT */
#include "build/implied.h"

#include "build/heat.h"
#include "build/instruction.h"
#include "build/stepmeasure.h"
#include "build/timepast.h"

/* Where no verb says what waits, a longer time is how long it keeps ("three days in the fridge").
 */
#define VERBLESS_SECONDS_MOST (12.0 * 3600)

/* No mark of the lexicon: chunk is a verb. */
#define IS_VERB ((uint64_t) 1 << 63)

static bool is_time(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    return c->tag == TAG_DURATION && c->match && is_done(c) && !(c->scope & SCOPE_UNTIL)
           && takes_length(b, i) && ratio_double(c->match->low) <= VERBLESS_SECONDS_MOST;
}

/* What kind of verb chunk `i` is; 0 for no verb, or one too weak to make a step. */
static uint64_t verb_marks(const struct builder *b, size_t i)
{
    struct text said = said_verb(b, i).action;
    if (!said.length)
        return 0;
    const struct entry *e = action_entry(b->k, action_in_context(b, said, i));
    return (e ? e->marks : 0) | chunk_marks(&b->chunks.at[i]) | IS_VERB;
}

/* "Give", "let", "go": a time behind it is of something else than the verb before. */
static bool is_weak_verb(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    return c->tag == TAG_ACTION && is_done(c) && chunk_marks(c) & MARK_OF(light);
}

/* Whether a comma or "and" stands between chunks `i` and `time`. */
static bool is_apart(const struct builder *b, size_t i, size_t time)
{
    for (; i < time; i++)
        if (b->r->words.at[b->chunks.at[i].last].after >= AFTER_COMMA
            || b->chunks.at[i].tag == TAG_AND || b->chunks.at[i].tag == TAG_SO)
            return true;
    return false;
}

/* Whether what has these marks is done at once: food is put in, turned, taken out. */
static bool is_momentary(uint64_t marks)
{
    const uint64_t busy = MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(waits) | MARK_OF(mixes);
    return marks & (MARK_OF(brief) | MARK_OF(changes) | MARK_OF(seasons))
           || (marks & MARK_OF(puts) && !(marks & busy));
}

/* Whether the verb of chunk `verb`, with these marks, has the time of chunk `time`: food bakes,
 * rests, is stirred for it; what is cut or pressed only where nothing stands between. */
static bool takes_time(const struct builder *b, uint64_t marks, size_t verb, size_t time)
{
    const uint64_t busy = MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(waits) | MARK_OF(mixes);
    return !is_momentary(marks) && (marks & busy || !is_apart(b, verb, time));
}

/* "Let it cool, twenty minutes, then in the fridge for an hour." */
static bool is_cold_between(const struct builder *b, size_t i, size_t time)
{
    for (; i < time; i++)
        if (b->chunks.at[i].tag == TAG_PLACE && chunk_marks(&b->chunks.at[i]) & MARK_OF(cold))
            return true;
    return false;
}

/* Whether a verb of the sentence has the time of chunk `i`: the last one before it, else one behind
 * it in the same breath. */
static bool is_verbs_time(const struct builder *b, size_t i)
{
    for (size_t n = i; n-- > 0;) {
        uint64_t marks = verb_marks(b, n);
        if (marks)
            return takes_time(b, marks, n, i);
        if (is_weak_verb(b, n))
            return false;
        if (b->chunks.at[n].tag == TAG_DURATION && is_done(&b->chunks.at[n]))
            return !is_cold_between(b, n, i); /* goes with the time before */
    }
    for (size_t n = i + 1; n < b->chunks.count && !is_apart(b, i, n); n++)
        if (verb_marks(b, n))
            return true;
    return false;
}

static bool says_verb(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (verb_marks(b, i))
            return true;
    return false;
}

static bool says_amount(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        if (c->tag == TAG_LINE && c->match && is_done(c) && c->match->rule->kind == RULE_line)
            return true;
    }
    return false;
}

static bool says_side(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_SIDE)
            return true;
    return false;
}

/* The step shortly before chunk `i`; NULL where the sentence does something or puts something in.
 */
static const struct step *step_before(const struct builder *b, size_t i)
{
    return says_amount(b) || says_verb(b) ? NULL : step_near(b, i);
}

/* "Stir it in. About two minutes.": the time is of the step before, which has none yet. "An onion,
 * and that takes five minutes" is not, nor what comes after food was put in where it is hot. */
static bool waits_for_time(const struct builder *b, size_t time)
{
    const struct step *last = step_before(b, time);
    const struct entry *e = last && last->actions.count
                                ? action_entry(b->k, last->actions.at[last->actions.count - 1])
                                : NULL;
    uint64_t marks = e ? e->marks : 0;
    if (marks & MARK_OF(puts) || says_side(b))
        marks = last_heat(b) || b->pan || b->grill_at ? marks : 0;
    const uint64_t busy = MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(waits) | MARK_OF(mixes);
    if (e && e->marks & MARK_OF(puts) && !(e->marks & busy) && find_done(b, TAG_HEAT) != NOWHERE)
        return false; /* "Tip the onions in. Medium heat, ten minutes." */
    bool done = is_momentary(marks) || (last_heat(b) && !(marks & busy));
    return last && last->durations.count == 0 && !done;
}

/* Whether anything is hot here, or looked after ("foil off and ten minutes more"): without it, what
 * takes time is not told. */
static bool is_hot(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++) {
        uint64_t marks = verb_marks(b, i);
        if (b->chunks.at[i].tag == TAG_HEATED || (marks && !(marks & MARK_OF(puts))))
            return true;
    }
    return b->pan || b->grill_at || last_heat(b) || find_done(b, TAG_OVEN) != NOWHERE
           || find_done(b, TAG_HEAT) != NOWHERE || find_done(b, TAG_VESSEL) != NOWHERE;
}

struct step *step_of_time(const struct builder *b, size_t i)
{
    const struct step *last = step_before(b, i);
    bool takes = last && !last->durations.count && last->actions.count < STEP_ACTIONS
                 && text_equal(last->group, b->group);
    return takes ? &b->dish->steps.at[b->dish->steps.count - 1] : NULL;
}

/* Whether the sentence names the oven, or its heat. */
static bool says_oven(const struct builder *b)
{
    struct temperature t;
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_HEATED && is_done(&b->chunks.at[i])
            && read_temperature(b, &b->chunks.at[i], &t) && text_is(t.of, "oven"))
            return true;
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_OVEN && is_done(&b->chunks.at[i])
            && chunk_marks(&b->chunks.at[i]) & MARK_OF(ovens))
            return true;
    return false;
}

/* "Under the grill, six minutes": what is a verb elsewhere is a place behind "under the". */
static bool says_grill(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (b->chunks.at[i].tag == TAG_OVEN && is_done(&b->chunks.at[i])
            && chunk_marks(&b->chunks.at[i]) & MARK_OF(grills))
            return true;
    return false;
}

/* "The dough wants an hour", "ten minutes on the rack": what a component does in that time, or what
 * is done where the sentence says; empty where it names nothing of that kind. */
static struct text done_there(const struct builder *b, const char *kind)
{
    struct text row = text_from(kind), action = action_in_context(b, row, NOWHERE);
    return text_equal(action, row) ? TEXT_EMPTY : action;
}

/* "Six hours, but overnight is best": as long as a night, of what waits for so long at least. */
#define NIGHT_SECONDS (8.0 * 3600)
#define LONG_WAIT_SECONDS (2.0 * 3600)

/* "Overnight in the fridge" is a wait of its own. */
static bool has_place(const struct builder *b, size_t i)
{
    return chunk_tag(&b->chunks, i + 1) == TAG_INTO;
}

/* "Not an hour. Ten minutes.": the time of the step before, said again, or a night in its place. */
static bool is_repeated(const struct builder *b, size_t i)
{
    const struct step *last = step_near(b, i);
    double low = ratio_double(b->chunks.at[i].match->low);
    for (size_t n = 0; last && n < last->durations.count; n++) {
        double known = last->durations.at[n].min;
        if (known == low
            || (low == NIGHT_SECONDS && known >= LONG_WAIT_SECONDS && !has_place(b, i)))
            return true;
    }
    return false;
}

struct text implied_time(const struct builder *b, size_t i)
{
    if (!is_time(b, i) || is_verbs_time(b, i) || is_repeated(b, i) || is_spent(b, i))
        return TEXT_EMPTY;
    const char *row = "time";
    struct text part = done_there(b, "place-time");
    if (!part.length && !is_hot(b) && find_done(b, TAG_PART) != NOWHERE)
        part = done_there(b, "part-time");
    if (says_oven(b))
        row = "oven-time";
    else if (says_cold(b))
        row = "cold-time";
    else if (part.length)
        return part;
    else if (says_grill(b))
        row = "grill-time";
    else if (find_done(b, TAG_HEAT) == NOWHERE && !is_proving(b)
             && (waits_for_time(b, i) || !is_hot(b)))
        return TEXT_EMPTY;
    return implied_in_context(b, row);
}
