/* pack/pattern.c: a pattern over classes -> a PCRE2 pattern over the tag string.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "pack/pattern.h"

/* An entry is `_` for each word but the last, then its tag. */
static void read_class(struct pattern *x, struct unit_set *needed)
{
    struct text name = pattern_take_name(x);
    unsigned char tag;
    pattern_put(x, "(?:_*");
    if (text_is(name, "ANY")) {
        pattern_put(x, "[^_]");
        sieve_put(x->sieve, SIEVE_ANY);
    } else if (pattern_class(x, name, &tag)) {
        pattern_put_unit(x, tag);
        sieve_put_list(x->sieve, SIEVE_UNITS, &tag, 1);
        unit_set_add(needed, tag);
    }
    pattern_put(x, ")");
}

/* `(?<= A|B)`: one unit, since a class of several words has no fixed length. A negative one also
 * refuses `_`, or a match could begin within an entry, where what stands before it is out of sight.
 */
static void read_behind(struct pattern *x, bool negative)
{
    bool any = false;
    unsigned char units[SIEVE_LIST_MOST];
    size_t count = 0;
    pattern_put(x, negative ? "(?<![_" : "(?<=[");
    do {
        unsigned char tag;
        pattern_peek(x);
        struct text name = pattern_take_name(x);
        if (!name.length) {
            pattern_stop(x, x->at, "a look-behind takes one class, or several divided by `|`");
            return;
        }
        if (text_is(name, "ANY"))
            any = true;
        else if (pattern_class(x, name, &tag)) {
            pattern_put_unit(x, tag);
            units[count++ % SIEVE_LIST_MOST] = tag;
        }
    } while (pattern_take(x, "|"));
    if (any) { /* all units but `_`, which is 0x5f */
        pattern_put(x, "\\x{00}-\\x{5e}\\x{60}-\\x{ff}");
        sieve_put(x->sieve, negative ? SIEVE_NONE_BEHIND : SIEVE_SOME_BEHIND);
    } else {
        sieve_put_list(x->sieve, negative ? SIEVE_NOT_BEHIND : SIEVE_BEHIND, units, count);
    }
    pattern_put(x, "])");
    if (!pattern_take(x, ")"))
        pattern_stop(x, x->at, "a look-behind sees one class; close it with `)` after it");
}

static void read_choices(struct pattern *x, struct unit_set *needed);

/* What stands between an opening sign, already taken, and `close`. */
static void read_group(struct pattern *x, const char *opened, const char *close,
                       struct unit_set *needed)
{
    if (++x->depth > PATTERN_DEPTH) {
        pattern_stop(x, opened, "more than 20 groups within groups");
        return;
    }
    read_choices(x, needed);
    x->depth--;
    if (!x->stopped && !pattern_take(x, close)) {
        x->broken = x->stopped = true;
        problem(x->problems, line_place(x->line, opened), "`%c` is not closed by `%s`", *opened,
                close);
    }
    pattern_put(x, ")");
}

/* What a slot holds. What is in a look ahead is walked from its end, and so has no slots: PCRE2
 * finds those. */
static void read_slot(struct pattern *x, const char *opened, struct unit_set *needed)
{
    const size_t number = x->rule->slots_count - 1;
    x->rule->slots_ahead |= x->ahead;
    pattern_put(x, "(");
    if (!x->ahead)
        sieve_put_slot(x->sieve, SIEVE_OPEN, number);
    read_group(x, opened, ">", needed);
    if (!x->ahead)
        sieve_put_slot(x->sieve, SIEVE_CLOSE, number);
}

/* The number of the slot's name, noted as the next capture group. */
static void read_slot_name(struct pattern *x)
{
    pattern_peek(x);
    struct text name = pattern_take_name(x);
    enum slot slot;
    if (!name.length || !pattern_take(x, ":")) {
        pattern_stop(x, x->at, "a slot is written <name:CLASSES>");
    } else if (!slot_find(name, &slot)) {
        x->broken = true;
        problem(x->problems, line_place(x->line, name.at),
                "unknown slot \"%.*s\"; slots.def lists them", QUOTE(name));
    } else if (x->refusing) {
        pattern_stop(x, name.at, "a slot within (?! ) never holds words");
    } else if (x->rule->slots_count == MATCH_SLOTS) {
        x->broken = true;
        problem(x->problems, line_place(x->line, name.at), "more than %d slots", MATCH_SLOTS);
    } else {
        x->rule->slots[x->rule->slots_count++] = slot;
    }
}

static void read_ahead(struct pattern *x, const char *opened, bool negative)
{
    struct unit_set unneeded = {{0}};
    size_t begin = x->sieve->length;
    bool within = x->ahead;
    pattern_put(x, negative ? "(?!" : "(?=");
    x->ahead = true;
    x->refusing += negative;
    read_group(x, opened, ")", &unneeded);
    x->refusing -= negative;
    x->ahead = within;
    sieve_wrap_look(x->sieve, begin, negative ? SIEVE_NOT_AHEAD : SIEVE_AHEAD);
}

static enum atom read_look(struct pattern *x, const char *opened)
{
    if (pattern_take(x, "<="))
        read_behind(x, false);
    else if (pattern_take(x, "<!"))
        read_behind(x, true);
    else if (pattern_take(x, "="))
        read_ahead(x, opened, false);
    else if (pattern_take(x, "!"))
        read_ahead(x, opened, true);
    else
        pattern_stop(x, opened, "after `(?` there may be = ! <= or <!");
    return ATOM_PLACE;
}

static enum atom read_atom(struct pattern *x, struct unit_set *needed)
{
    char c = pattern_peek(x);
    const char *at = x->at;
    if (c == '\0' || c == '|' || c == ')' || c == '>' || x->stopped)
        return ATOM_NONE;
    if (is_name_letter(c)) {
        read_class(x, needed);
        return ATOM_PART;
    }
    x->at++;
    switch (c) {
    case '<':
        read_slot_name(x);
        read_slot(x, at, needed);
        return ATOM_SLOT;
    case '(':
        if (x->at < x->end && *x->at == '?') {
            x->at++;
            return read_look(x, at);
        }
        pattern_put(x, "(?:");
        read_group(x, at, ")", needed);
        return ATOM_PART;
    case '^':
        pattern_put(x, "^");
        sieve_put(x->sieve, SIEVE_BEGIN);
        return ATOM_PLACE;
    case '$':
        pattern_put(x, "$");
        sieve_put(x->sieve, SIEVE_END);
        return ATOM_PLACE;
    default:
        pattern_stop(x, at,
                     strchr("?*+{", c) ? "a repeat must follow a class or a group"
                                       : "this sign has no meaning in a pattern");
        return ATOM_NONE;
    }
}

static void read_sequence(struct pattern *x, struct unit_set *needed)
{
    const char *begin = x->at;
    size_t codes = x->sieve->length;
    for (size_t atoms = 0;; atoms++) {
        struct unit_set of_atom = {{0}};
        size_t of_codes = x->sieve->length;
        enum atom atom = read_atom(x, &of_atom);
        if (x->stopped)
            return;
        if (atom == ATOM_NONE) {
            if (!atoms)
                pattern_stop(x, begin,
                             "a class is missing here; what may be left out is written (CLASS)?");
            return;
        }
        if (pattern_repeat(x, atom, of_codes))
            unit_set_join(needed, &of_atom);
        if (x->ahead)
            sieve_swap(x->sieve, codes, of_codes);
    }
}

/* Of several choices only what all of them need is needed. */
static void read_choices(struct pattern *x, struct unit_set *needed)
{
    size_t begin = x->sieve->length, ends[SIEVE_LIST_MOST], count = 0;
    read_sequence(x, needed);
    ends[count++] = x->sieve->length;
    while (!x->stopped && pattern_take(x, "|")) {
        struct unit_set of_choice = {{0}};
        pattern_put(x, "|");
        read_sequence(x, &of_choice);
        unit_set_meet(needed, &of_choice);
        if (count == SIEVE_LIST_MOST)
            x->sieve->full = true;
        else
            ends[count++] = x->sieve->length;
    }
    if (count > 1 && !x->stopped)
        sieve_wrap_choices(x->sieve, begin, ends, count);
}

bool pattern_translate(struct problems *p, const struct source_line *line, struct text t,
                       struct rule *rule, char regex[PATTERN_BYTES], struct sieve *sieve)
{
    struct pattern x = {.problems = p,
                        .line = line,
                        .rule = rule,
                        .at = t.at,
                        .end = t.at + t.length,
                        .out = regex,
                        .sieve = sieve};
    struct unit_set needed = {{0}};
    regex[0] = '\0';
    rule->slots_count = 0;
    rule->slots_ahead = false;
    read_choices(&x, &needed);
    if (!x.stopped && pattern_peek(&x))
        pattern_stop(&x, x.at, *x.at == ')' ? "`)` closes nothing" : "`>` closes nothing");
    rule->needed = needed;
    return !x.broken;
}
