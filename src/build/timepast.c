/* build/timepast.c
 * SPDX-License-Identifier: MIT */
#include "build/timepast.h"

#include "build/wording.h"

bool waits_here(const struct builder *b)
{
    for (size_t i = 0; i < b->chunks.count; i++)
        if (chunk_marks(&b->chunks.at[i]) & MARK_OF(waits))
            return true;
    return false;
}

/* "We've got an hour", "I have half an hour": the cook's own time. */
static bool is_owned(const struct builder *b, size_t index)
{
    const struct chunk *have = index ? &b->chunks.at[index - 1] : NULL;
    if (!have || have->tag != TAG_HAVE || !is_step_word(b, have, "owns")
        || b->r->words.at[have->last].after >= AFTER_COMMA) /* "the lowest you've got, an hour" */
        return false;
    return have->first < have->last || (index > 1 && have[-1].tag == TAG_ME);
}

#define DAY_SECONDS (24.0 * 3600)

/* "This is a day for soup": what nothing waits for lasts no day. */
static bool is_a_day(const struct builder *b, size_t index)
{
    return b->chunks.at[index].match && ratio_double(b->chunks.at[index].match->low) >= DAY_SECONDS
           && !waits_here(b) && !(index && b->chunks.at[index - 1].tag == TAG_FOR);
}

/* What may stand between "been" and the time: "been more like", "been its", "been on there". */
#define BEEN_CHUNKS 4

/* "It's been forty minutes": the time that the dish has had, where nothing says where or by what
 * verb: "they've been in the oven for an hour". */
static bool has_been(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    for (size_t i = index; i-- > 0 && index - i <= BEEN_CHUNKS;) {
        const struct chunk *k = &c->at[i];
        if (is_step_word(b, k, "been"))
            return b->dish->steps.count > 0
                   && (chunk_tag(c, index + 1) != TAG_INTO
                       || chunk_tag(c, index + 2) == TAG_HEAT); /* "on high" is no place */
        if (k->tag == TAG_FOR || k->tag == TAG_ACTION || k->tag == TAG_DOING || k->tag == TAG_OVEN
            || k->tag == TAG_PLACE || k->tag == TAG_VESSEL
            || b->r->words.at[k->last].after >= AFTER_COMMA)
            break;
    }
    return false;
}

/* "Ten minutes for the eggs is over", "twenty minutes are up" */
static bool is_up(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    for (size_t i = index + 1; i + 1 < c->count && i <= index + BEEN_CHUNKS; i++) {
        if (b->r->words.at[c->at[i - 1].last].after >= AFTER_COMMA)
            return false;
        if (c->at[i].tag == TAG_BE && is_step_word(b, &c->at[i + 1], "over"))
            return true;
    }
    return false;
}

/* Whether the dish has a time that is as long, or longer. */
static bool has_longer(const struct builder *b, double least)
{
    for (size_t i = 0; i < b->dish->steps.count; i++) {
        const struct step *s = &b->dish->steps.at[i];
        for (size_t n = 0; n < s->durations.count; n++)
            if (s->durations.at[n].max >= least)
                return true;
    }
    return false;
}

/* "That's two hours it's had", "forty minutes they've been in": of a wait that was told. */
static bool has_had(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    for (size_t i = index + 1; c->at[index].match && i < c->count && i <= index + BEEN_CHUNKS;
         i++) {
        if (b->r->words.at[c->at[i - 1].last].after >= AFTER_COMMA)
            return false;
        if (is_step_word(b, &c->at[i], "been"))
            return i > index + 1 && has_longer(b, ratio_double(c->at[index].match->low));
        if (c->at[i].tag != TAG_THERE && c->at[i].tag != TAG_IT && c->at[i].tag != TAG_THE
            && c->at[i].tag != TAG_PART && c->at[i].tag != TAG_LINE && c->at[i].tag != TAG_ME)
            return false;
    }
    return false;
}

/* So far behind "every time you look" what it costs may stand. */
#define EACH_TIME_CHUNKS 8

/* "Every time you open it, add ten minutes", "each peek's another five": what it costs. */
static bool is_cost(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    const struct chunk *time = &c->at[index];
    bool costs = index && chunk_marks(time - 1) & MARK_OF(puts);
    for (size_t i = time->first; i <= time->last; i++)
        costs |= b->r->words.at[i].tag == TAG_MORE;
    for (size_t i = index; costs && i-- > 0 && index - i <= EACH_TIME_CHUNKS;) {
        if (b->r->words.at[c->at[i].last].after >= AFTER_STOP)
            return false;
        if (is_step_word(b, &c->at[i], "every"))
            return true;
    }
    return false;
}

/* "Okay, four hours on.", "fifty minutes on the clock": how long it was. */
static bool is_elapsed(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    const size_t on = index + 1;
    if (on >= c->count || !b->dish->steps.count || !is_step_word(b, &c->at[on], "elapsed")
        || b->r->words.at[c->at[index].last].after >= AFTER_COMMA)
        return false;
    if (on + 1 == c->count || b->r->words.at[c->at[on].last].after >= AFTER_COMMA)
        return true;
    return c->at[on + 1].tag == TAG_THE && on + 2 < c->count
           && is_step_word(b, &c->at[on + 2], "clock");
}

/* So far behind the verb the time may stand: "keeps in the fridge, oh, for about three days". */
#define KEPT_CHUNKS 7
#define KEPT_SECONDS (12.0 * 3600)

/* "They keep for three days in a tin": how long it is good, where nothing is told to be kept. */
static bool is_kept(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (!c->at[index].match || ratio_double(c->at[index].match->low) < KEPT_SECONDS)
        return false;
    for (size_t i = index; i-- > 0 && index - i <= KEPT_CHUNKS;) {
        const unsigned char tag = c->at[i].tag;
        if (tag == TAG_ACTION && c->at[i].entry)
            return step_words_list(b->k, "keeps", entry_value(c->at[i].entry));
        if (tag == TAG_IT || tag == TAG_LINE || tag == TAG_PART || tag == TAG_DURATION)
            return false;
    }
    return false;
}

/* "Use it within an hour": by when, not how long. */
static bool is_deadline(const struct builder *b, size_t index)
{
    return index && is_step_word(b, &b->chunks.at[index - 1], "deadline");
}

/* "If it gets too dark after forty minutes": when, of a longer time that the dish has. */
static bool is_supposed_point(const struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    return index && c->scope & SCOPE_SUPPOSED && c[-1].tag == TAG_WHEN && c->match
           && has_longer(b, ratio_double(c->match->low));
}

/* None is "an hour old", "every ten minutes", "dinner's in an hour". */
bool is_length(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (is_up(b, index) || has_been(b, index) || has_had(b, index) || is_elapsed(b, index)
        || is_cost(b, index))
        return false;
    return !((index + 1 < c->count && is_step_word(b, &c->at[index + 1], "passed"))
             || (index > 0 && is_step_word(b, &c->at[index - 1], "every")) || is_owned(b, index)
             || is_supposed_point(b, index) || is_a_day(b, index) || is_deadline(b, index)
             || is_kept(b, index));
}

/* A wait that is told to be over may have been a little shorter. */
#define OVER_SHARE 0.85
/* Seconds of silence in which it passed. */
#define OVER_PAUSE 3.0

/* Whether the dish has such a time already. */
static bool has_time(const struct builder *b, double min, double max)
{
    for (size_t i = 0; i < b->dish->steps.count; i++) {
        const struct step *s = &b->dish->steps.at[i];
        for (size_t n = 0; n < s->durations.count; n++)
            if (s->durations.at[n].min * OVER_SHARE <= min && max <= s->durations.at[n].max)
                return true;
    }
    return false;
}

/* The same to the second. */
static bool has_same_time(const struct builder *b, double min, double max)
{
    for (size_t i = 0; i < b->dish->steps.count; i++) {
        const struct step *s = &b->dish->steps.at[i];
        for (size_t n = 0; n < s->durations.count; n++)
            if (s->durations.at[n].min == min && s->durations.at[n].max == max)
                return true;
    }
    return false;
}

/* Whether the sentence begins with chunk `i`, or with "so" and it. */
static bool begins_with(const struct builder *b, size_t i)
{
    return i == 0 || (i == 1 && b->chunks.at[0].tag == TAG_SO);
}

static bool pauses_before(const struct builder *b, size_t word)
{
    const struct word *first = &b->r->words.at[word];
    return first > b->r->words.at && first->start - first[-1].end >= OVER_PAUSE;
}

/* A "So." of its own may stand between the silence and the sentence. */
static bool is_behind_pause(const struct builder *b)
{
    const size_t first = b->sentence->first;
    return pauses_before(b, first)
           || (first > 0 && b->r->words.at[first - 1].tag == TAG_SO && pauses_before(b, first - 1));
}

/* Of so long a wait the same time, said alone behind an "okay", tells that it is over. */
#define LONG_SECONDS 900.0

/* "So, twenty minutes. Off the heat.": said alone, once it has passed. */
static bool is_told_alone(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    const struct match *m = c->at[index].match;
    bool again = index == 1 && m && ratio_double(m->low) >= LONG_SECONDS
                 && has_same_time(b, ratio_double(m->low), ratio_double(m->high));
    return begins_with(b, index) && (again || is_behind_pause(b))
           && (index + 1 == c->count || b->r->words.at[c->at[index].last].after >= AFTER_COMMA
               || c->at[index + 1].tag == TAG_SO || c->at[index + 1].tag == TAG_WILL);
}

/* "This has been sitting for about fourteen hours" */
static bool has_been_doing(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    for (size_t i = index; i-- > 1 && index - i <= BEEN_CHUNKS;)
        if (c->at[i].tag == TAG_DOING)
            return is_step_word(b, &c->at[i - 1], "been");
    return false;
}

/* "Right, that's forty-two minutes": a time that the dish has already, when it is over. */
bool is_over(const struct builder *b, size_t index, double min, double max)
{
    const struct chunks *c = &b->chunks;
    bool told = index && c->at[index - 1].tag == TAG_THERE
                && (index == 1 || c->at[index - 2].tag == TAG_SO);
    return (told || is_told_alone(b, index) || has_been_doing(b, index)) && has_time(b, min, max);
}

/* How far a word may be from the time of which it says that it was. */
#define SPENT_CHUNKS 4

bool is_spent(const struct builder *b, size_t index)
{
    const struct chunks *c = &b->chunks;
    for (size_t i = index; i-- > 0 && index - i <= SPENT_CHUNKS;) {
        if (b->r->words.at[c->at[i].last].after >= AFTER_STOP)
            break;
        if (is_step_word(b, &c->at[i], "spent"))
            return true;
    }
    return index + 1 < c->count && is_step_word(b, &c->at[index + 1], "spent");
}

bool takes_length(const struct builder *b, size_t index)
{
    const struct match *m = b->chunks.at[index].match;
    return is_length(b, index) && !is_over(b, index, ratio_double(m->low), ratio_double(m->high));
}
