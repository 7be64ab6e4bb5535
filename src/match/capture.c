/* match/capture.c
 * SPDX-License-Identifier: MIT */
#include "match/capture.h"

#include "match/groups.h"
#include "match/reading.h"

struct span match_slot(const struct match *match, enum slot slot)
{
    for (size_t i = 0; i < match->rule->slots_count; i++)
        if (match->rule->slots[i] == slot && match->slots[i].first <= match->slots[i].last)
            return (struct span){match->slots[i].first, match->slots[i].last};
    return NO_WORDS;
}

const struct entry *match_entry(const struct recording *r, const struct match *match,
                                enum slot slot)
{
    return match ? entry_at(r, match_slot(match, slot)) : NULL;
}

static struct span words_of(const struct subject *s, size_t begin, size_t end)
{
    return (struct span){s->words[begin], s->words[end - 1]};
}

struct values {
    struct ratio low, high;
};

/* Slots and numbers of one expression, worked out for the low and the high end at once. */
static struct values apply(int kind, struct values a, struct values b)
{
    switch (kind) {
    case STEP_ADD:
        return (struct values){ratio_add(a.low, b.low), ratio_add(a.high, b.high)};
    case STEP_SUBTRACT:
        return (struct values){ratio_subtract(a.low, b.high), ratio_subtract(a.high, b.low)};
    case STEP_MULTIPLY:
        return (struct values){ratio_multiply(a.low, b.low), ratio_multiply(a.high, b.high)};
    default:
        return (struct values){ratio_divide(a.low, b.high), ratio_divide(a.high, b.low)};
    }
}

static struct values evaluate(const struct number_step *steps, size_t count,
                              const struct values *slots)
{
    struct values stack[NUMBER_STEPS];
    size_t n = 0;
    for (size_t i = 0; i < count; i++) {
        if (steps[i].kind == STEP_SLOT)
            stack[n++] = slots[steps[i].value];
        else if (steps[i].kind == STEP_INTEGER)
            stack[n++] = (struct values){RATIO(steps[i].value), RATIO(steps[i].value)};
        else if (n >= 2)
            n--, stack[n - 1] = apply((int) steps[i].kind, stack[n - 1], stack[n]);
    }
    return n ? stack[0] : (struct values){RATIO_NONE, RATIO_NONE};
}

/* A comma, a hyphen or anything else stands between the words of a number. Numbers are put together
 * across a space or a hyphen ("twenty-five"); across a comma only by a rule that says
 * `option=comma`, and where a rule says `option=hyphen` one must stand behind `low` ("10-12", not
 * "one twenty-eight"). */
static bool is_joined(const struct recording *r, const struct match *match)
{
    bool comma = false;
    for (size_t i = match->words.first; i < match->words.last; i++)
        comma |= r->words.at[i].after == AFTER_COMMA;
    if (text_is(match->rule->option, "hyphen"))
        return !comma && r->words.at[match_slot(match, SLOT_low).last].after == AFTER_HYPHEN;
    return !comma || text_is(match->rule->option, "comma");
}

/* The slot `part` is by its name a part of one: "2 and 1/2", never "2 and 3". */
static bool parts_are_small(const struct rule *rule, const struct values *slots)
{
    for (size_t i = 0; i < rule->slots_count; i++)
        if (rule->slots[i] == SLOT_part && ratio_compare(slots[i].high, RATIO(1)) >= 0)
            return false;
    return true;
}

/* "Ten, or eight if they're hungry": how much a dish makes may be told from its higher end. "Six,
 * or four if it's my brother" is a joke: of 50 golds 40 list the six alone, "four small bowls or
 * two big ones" is none. */
static bool tells_higher_first(const struct rule *rule, struct values first, struct values second)
{
    bool near =
        ratio_compare(ratio_multiply(first.low, RATIO(2)), ratio_multiply(second.high, RATIO(3)))
            < 0
        || text_is(rule->option, "weak");
    return (rule->kind == RULE_yield || rule->kind == RULE_count) && near
           && ratio_compare(first.low, second.high) > 0;
}

static bool give_numbers(const struct rule *rule, const struct values *slots, struct match *match)
{
    match->low = match->high = RATIO_NONE;
    if (!rule->low_count)
        return true;
    struct values low = evaluate(rule->low, rule->low_count, slots);
    struct values high = rule->high_count ? evaluate(rule->high, rule->high_count, slots) : low;
    if (tells_higher_first(rule, low, high)) {
        struct values first = low;
        low = high;
        high = first;
    }
    if (!ratio_known(low.low) || !ratio_known(high.high) || ratio_compare(low.low, high.high) > 0)
        return false;
    if (rule->high_count && ratio_compare(low.low, high.high) == 0)
        return false; /* "two, two" is no range */
    bool bare = rule->high_count && text_is(rule->option, "comma");
    if (bare && ratio_compare(high.high, ratio_multiply(low.low, RATIO(2))) > 0)
        return false; /* "two three", "ten twelve": nobody says "one twelve" for a range */
    match->low = low.low;
    match->high = high.high;
    return true;
}

/* Below this a bare number is no temperature of a kitchen: no oven, no oil, no roast. */
#define BARE_TEMPERATURE_LEAST 50

/* "3 50": hundreds and then 25, 50 or 75, or a multiple of ten as Celsius ovens have. */
static bool is_split_oven(struct ratio value)
{
    return value.under == 1 && value.over >= 110 && value.over <= 575
           && (value.over % 25 == 0 || value.over % 10 == 0) && value.over % 100 >= 10;
}

/* "Pinch of salt", never "cups of milk": one unit has no plural. */
static bool is_singular(const struct recording *r, const struct match *match)
{
    const struct entry *unit = match_entry(r, match, SLOT_unit);
    return unit && !(unit->marks & MARK_OF(plural));
}

/* "Eight ounces, and half of that can": a comma ends an amount. */
static bool is_split(const struct recording *r, struct span words)
{
    for (size_t i = words.first; i < words.last; i++)
        if (r->words.at[i].after >= AFTER_COMMA)
            return true;
    return false;
}

/* "Three tablespoons plus a teaspoon": two measures, not the same one twice. */
static bool is_plus(const struct recording *r, const struct match *match)
{
    const struct entry *first = match_entry(r, match, SLOT_amount),
                       *top = match_entry(r, match, SLOT_top);
    return first && top && first->tag == TAG_UNIT && top->tag == TAG_UNIT
           && !text_equal(entry_value(first), entry_value(top)) && !is_split(r, match->words);
}

/* "An hour and twenty minutes", never "twenty minutes, half an hour": the second unit is smaller.
 */
static bool is_smaller(const struct recording *r, const struct match *match)
{
    const struct entry *first = match_entry(r, match, SLOT_time),
                       *second = match_entry(r, match, SLOT_time2);
    return first && second && ratio_compare(entry_number(second), entry_number(first)) < 0;
}

/* Seconds of an hour. */
#define HOUR 3600

/* "An hour and ten": the number behind is of minutes, fewer than an hour has. */
static bool is_in_hours(const struct recording *r, const struct match *match)
{
    const struct entry *time = match_entry(r, match, SLOT_time);
    return time && ratio_equal(entry_number(time), RATIO(HOUR));
}

/* "Half onion", never "half milk" nor "half potatoes": one thing that is counted. */
static bool is_before_one(const struct recording *r, const struct match *match)
{
    const struct word *end = r->words.at + r->words.count, *w = &r->words.at[match->words.last + 1];
    while (w < end && w->tag != TAG_FOOD && w->after < AFTER_COMMA)
        w++;
    return w < end && w->tag == TAG_FOOD && w->entry
           && !(w->entry->marks & (MARK_OF(uncounted) | MARK_OF(plural)));
}

/* "Ginger, one inch", "oil, half an inch"; no meat is measured so. */
static bool is_cut_by_length(const struct recording *r, const struct match *match)
{
    const uint64_t by_length = MARK_OF(produce) | MARK_OF(spice) | MARK_OF(herb) | MARK_OF(fat);
    const struct entry *food = match_entry(r, match, SLOT_food);
    return food && food->marks & by_length;
}

/* "Gherkins, three, chopped up": a comma or a stop behind the number. */
static bool is_ended(const struct recording *r, const struct match *match)
{
    return r->words.at[match->words.last].after >= AFTER_COMMA;
}

static bool is_plausible(const struct recording *r, const struct rule *rule,
                         const struct match *match)
{
    if (text_is(rule->option, "ended"))
        return is_ended(r, match);
    if (text_is(rule->option, "unbroken")) /* "the juice of 1, 1/2 tsp salt" */
        return r->words.at[match_slot(match, SLOT_number).last].after < AFTER_COMMA;
    if (text_is(rule->option, "counted"))
        return is_before_one(r, match);
    if (text_is(rule->option, "length"))
        return is_cut_by_length(r, match);
    if (text_is(rule->option, "singular"))
        return is_singular(r, match);
    if (text_is(rule->option, "joined"))
        return !is_split(r, match->words);
    if (text_is(rule->option, "compound")) /* "two slices of bread, crusts off" */
        return !is_split(r, match_slot(match, SLOT_food));
    if (text_is(rule->option, "plus"))
        return is_plus(r, match);
    if (text_is(rule->option, "smaller"))
        return is_smaller(r, match);
    if (text_is(rule->option, "hours"))
        return is_in_hours(r, match);
    if (rule->kind == RULE_temperature && text_is(rule->option, "split"))
        return is_split_oven(match->low);
    if (rule->kind != RULE_temperature || !text_is(rule->option, "bare"))
        return true;
    return ratio_compare(match->low, RATIO(BARE_TEMPERATURE_LEAST)) >= 0
           && ratio_equal(match->low, match->high);
}

bool capture(const struct recording *r, const struct subject *s, const struct rule *rule,
             const size_t *groups, struct match *match)
{
    struct values values[MATCH_SLOTS];
    *match = (struct match){
        .rule = rule, .words = words_of(s, groups[0], groups[1]), .slots = match->slots};
    for (size_t i = 0; i < rule->slots_count; i++) {
        const size_t *group = groups + 2 * (i + 1);
        match->slots[i] = (struct slot_span){1, 0};
        values[i] = (struct values){RATIO(0),
                                    RATIO(0)}; /* an optional part of a number that was not said */
        if (group[0] == GROUP_UNSET || group[0] >= group[1])
            continue;
        match->slots[i] = (struct slot_span){s->words[group[0]], s->words[group[1] - 1]};
        values[i] = (struct values){s->low[group[1] - 1], s->high[group[1] - 1]};
    }
    if (rule->kind == RULE_retag)
        return can_retag(r, match);
    if (!parts_are_small(rule, values) || (rule->kind == RULE_number && !is_joined(r, match)))
        return false;
    if (text_is(rule->option, "tight") && has_comma(r, match->words))
        return false;
    return give_numbers(rule, values, match) && is_plausible(r, rule, match);
}

void retag(struct recording *r, struct subject *s, const struct match *match)
{
    struct span word = match_slot(match, SLOT_word);
    const struct entry *e = entry_as(r->words.at[word.last].readings, match->rule->retag);
    if (!e)
        return;
    for (size_t i = 0; i < s->length; i++) {
        if (s->words[i] < word.first || s->words[i] > word.last)
            continue;
        struct word *w = &r->words.at[s->words[i]];
        w->entry = e;
        w->tag = s->words[i] == word.last ? e->tag : TAG_INSIDE;
        s->tags[i] = w->tag;
        s->low[i] = s->high[i] = entry_number(e);
    }
}
