/* pack/pattern.c: a pattern over classes -> a PCRE2 pattern over the tag string.
 * SPDX-License-Identifier: MIT */
#include <pcre2.h>
#include <stdio.h>
#include <string.h>

#include "pack/load.h"
#include "pack/sieve.h"

struct pattern {
    struct problems *problems;
    const struct source_line *line;
    struct rule *rule;
    const char *at, *end;
    char *out; /* PATTERN_BYTES */
    size_t length;
    struct sieve *sieve;
    bool ahead; /* in a look ahead, whose part of the sieve stands in reverse order */
    unsigned depth;
    unsigned refusing; /* how many (?! ) are open */
    bool broken;       /* something was wrong; reading goes on where it can */
    bool stopped;      /* reading cannot go on */
};

static bool wrong(struct pattern *x, const char *at, const char *message)
{
    x->broken = true;
    return problem(x->problems, line_place(x->line, at), "%s", message);
}

/* For a mistake after which nothing that follows makes sense. */
static void stop(struct pattern *x, const char *at, const char *message)
{
    if (!x->stopped)
        wrong(x, at, message);
    x->stopped = true;
}

static void put(struct pattern *x, const char *string)
{
    size_t n = strlen(string);
    if (n >= PATTERN_BYTES - x->length) {
        stop(x, x->at, "the pattern is too long; make it two rules");
        return;
    }
    memcpy(x->out + x->length, string, n + 1);
    x->length += n;
}

/* Every unit is escaped, since many are signs that PCRE2 reads as its own. */
static void put_unit(struct pattern *x, unsigned char unit)
{
    char escaped[8];
    snprintf(escaped, sizeof escaped, "\\x{%02x}", unit);
    put(x, escaped);
}

static void skip_spaces(struct pattern *x)
{
    while (x->at < x->end && (*x->at == ' ' || *x->at == '\t'))
        x->at++;
}

static char peek(struct pattern *x)
{
    skip_spaces(x);
    return x->at < x->end ? *x->at : '\0';
}

static bool take(struct pattern *x, const char *string)
{
    size_t n = strlen(string);
    skip_spaces(x);
    if ((size_t) (x->end - x->at) < n || memcmp(x->at, string, n) != 0)
        return false;
    x->at += n;
    return true;
}

static bool is_name_letter(char c)
{
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
}

static struct text take_name(struct pattern *x)
{
    const char *begin = x->at;
    while (x->at < x->end && is_name_letter(*x->at))
        x->at++;
    return (struct text){begin, (size_t) (x->at - begin)};
}

static const char *const ANY = "ANY";

/* The tag of a class name; reports an unknown one. */
static bool class_tag(struct pattern *x, struct text name, unsigned char *tag)
{
    if (tag_find(name, tag))
        return true;
    x->broken = true;
    return problem(x->problems, line_place(x->line, name.at),
                   "unknown class \"%.*s\"; tags.def lists them", QUOTE(name));
}

/* An entry is `_` for each word but the last, then its tag. */
static void read_class(struct pattern *x, struct unit_set *needed)
{
    struct text name = take_name(x);
    unsigned char tag;
    put(x, "(?:_*");
    if (text_is(name, ANY)) {
        put(x, "[^_]");
        sieve_put(x->sieve, SIEVE_ANY);
    } else if (class_tag(x, name, &tag)) {
        put_unit(x, tag);
        sieve_put_list(x->sieve, SIEVE_UNITS, &tag, 1);
        unit_set_add(needed, tag);
    }
    put(x, ")");
}

/* `(?<= A|B)`: one unit, since a class of several words has no fixed length. A negative one also
 * refuses `_`, or a match could begin within an entry, where what stands before it is out of sight.
 */
static void read_behind(struct pattern *x, bool negative)
{
    bool any = false;
    unsigned char units[SIEVE_LIST_MOST];
    size_t count = 0;
    put(x, negative ? "(?<![_" : "(?<=[");
    do {
        unsigned char tag;
        peek(x);
        struct text name = take_name(x);
        if (!name.length) {
            stop(x, x->at, "a look-behind takes one class, or several divided by `|`");
            return;
        }
        if (text_is(name, ANY))
            any = true;
        else if (class_tag(x, name, &tag)) {
            put_unit(x, tag);
            units[count++ % SIEVE_LIST_MOST] = tag;
        }
    } while (take(x, "|"));
    if (any) { /* all units but `_`, which is 0x5f */
        put(x, "\\x{00}-\\x{5e}\\x{60}-\\x{ff}");
        sieve_put(x->sieve, negative ? SIEVE_NONE_BEHIND : SIEVE_SOME_BEHIND);
    } else {
        sieve_put_list(x->sieve, negative ? SIEVE_NOT_BEHIND : SIEVE_BEHIND, units, count);
    }
    put(x, "])");
    if (!take(x, ")"))
        stop(x, x->at, "a look-behind sees one class; close it with `)` after it");
}

static void read_choices(struct pattern *x, struct unit_set *needed);

/* What stands between an opening sign, already taken, and `close`. */
static void read_group(struct pattern *x, const char *opened, const char *close,
                       struct unit_set *needed)
{
    if (++x->depth > PATTERN_DEPTH) {
        stop(x, opened, "more than 20 groups within groups");
        return;
    }
    read_choices(x, needed);
    x->depth--;
    if (!x->stopped && !take(x, close)) {
        x->broken = x->stopped = true;
        problem(x->problems, line_place(x->line, opened), "`%c` is not closed by `%s`", *opened,
                close);
    }
    put(x, ")");
}

/* The number of the slot's name, noted as the next capture group. */
static void read_slot_name(struct pattern *x)
{
    peek(x);
    struct text name = take_name(x);
    enum slot slot;
    if (!name.length || !take(x, ":")) {
        stop(x, x->at, "a slot is written <name:CLASSES>");
    } else if (!slot_find(name, &slot)) {
        x->broken = true;
        problem(x->problems, line_place(x->line, name.at),
                "unknown slot \"%.*s\"; slots.def lists them", QUOTE(name));
    } else if (x->refusing) {
        stop(x, name.at, "a slot within (?! ) never holds words");
    } else if (x->rule->slots_count == MATCH_SLOTS) {
        x->broken = true;
        problem(x->problems, line_place(x->line, name.at), "more than %d slots", MATCH_SLOTS);
    } else {
        x->rule->slots[x->rule->slots_count++] = slot;
    }
}

/* What an atom may be followed by. */
enum atom {
    ATOM_NONE, /* the end of what is being read */
    ATOM_PART, /* may repeat */
    ATOM_SLOT, /* may be left out, but holds one stretch of words only */
    ATOM_PLACE /* takes no words */
};

static void read_ahead(struct pattern *x, const char *opened, bool negative)
{
    struct unit_set unneeded = {{0}};
    size_t begin = x->sieve->length;
    bool within = x->ahead;
    put(x, negative ? "(?!" : "(?=");
    x->ahead = true;
    x->refusing += negative;
    read_group(x, opened, ")", &unneeded);
    x->refusing -= negative;
    x->ahead = within;
    sieve_wrap_look(x->sieve, begin, negative ? SIEVE_NOT_AHEAD : SIEVE_AHEAD);
}

static enum atom read_look(struct pattern *x, const char *opened)
{
    if (take(x, "<="))
        read_behind(x, false);
    else if (take(x, "<!"))
        read_behind(x, true);
    else if (take(x, "="))
        read_ahead(x, opened, false);
    else if (take(x, "!"))
        read_ahead(x, opened, true);
    else
        stop(x, opened, "after `(?` there may be = ! <= or <!");
    return ATOM_PLACE;
}

static enum atom read_atom(struct pattern *x, struct unit_set *needed)
{
    char c = peek(x);
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
        put(x, "(");
        read_group(x, at, ">", needed);
        return ATOM_SLOT;
    case '(':
        if (x->at < x->end && *x->at == '?') {
            x->at++;
            return read_look(x, at);
        }
        put(x, "(?:");
        read_group(x, at, ")", needed);
        return ATOM_PART;
    case '^':
        put(x, "^");
        sieve_put(x->sieve, SIEVE_BEGIN);
        return ATOM_PLACE;
    case '$':
        put(x, "$");
        sieve_put(x->sieve, SIEVE_END);
        return ATOM_PLACE;
    default:
        stop(x, at,
             strchr("?*+{", c) ? "a repeat must follow a class or a group"
                               : "this sign has no meaning in a pattern");
        return ATOM_NONE;
    }
}

/* The number at hand; -1 when there is none. */
static int take_count(struct pattern *x)
{
    int n = -1;
    skip_spaces(x);
    while (x->at < x->end && *x->at >= '0' && *x->at <= '9') {
        n = (n < 0 ? 0 : n) * 10 + (*x->at++ - '0');
        if (n > REPEAT_MOST)
            n = REPEAT_MOST + 1;
    }
    return n;
}

/* `{m}`, `{m,}` or `{m,n}`, the brace already taken. */
static void read_braces(struct pattern *x, const char *at, int *least, int *most)
{
    char text[32];
    *least = *most = take_count(x);
    if (take(x, ",")) {
        *most = take_count(x);
        *most = *most < 0 ? REPEAT_MOST : *most;
    }
    if (*least < 0 || !take(x, "}"))
        stop(x, at, "a repeat is written {2}, {2,} or {2,4}");
    else if (*least > *most || *most > REPEAT_MOST || *most == 0)
        stop(x, at, "a repeat goes from fewer to more, and to 64 at most");
    snprintf(text, sizeof text, "{%d,%d}", *least, *most);
    put(x, text);
}

/* The repeat after an atom, whose part of the sieve begins at `begin`; says whether the atom must
 * be there. */
static bool read_repeat(struct pattern *x, enum atom atom, size_t begin)
{
    char c = peek(x);
    const char *at = x->at;
    int least = 0, most = REPEAT_MOST;
    if (!c || !strchr("?*+{", c))
        return true;
    if (atom == ATOM_PLACE) {
        stop(x, at, "a repeat must follow a class or a group");
        return true;
    }
    x->at++;
    if (c == '{') {
        read_braces(x, at, &least, &most);
    } else {
        put(x, (char[]){c, '\0'});
        least = c == '+';
        most = c == '?' ? 1 : REPEAT_MOST;
    }
    if (atom == ATOM_SLOT && most > 1)
        stop(x, at, "a slot holds one stretch of words; put the repeat inside it: <food:FOOD+>");
    if (take(x, "?")) /* as few as it can */
        put(x, "?");
    if (!x->stopped)
        sieve_wrap_repeat(x->sieve, begin, (unsigned) least, (unsigned) most);
    return least > 0;
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
                stop(x, begin, "a class is missing here; what may be left out is written (CLASS)?");
            return;
        }
        if (read_repeat(x, atom, of_codes))
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
    while (!x->stopped && take(x, "|")) {
        struct unit_set of_choice = {{0}};
        put(x, "|");
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

/* The text of the PCRE2 pattern, and rule->needed and slots. */
static bool pattern_translate(struct problems *p, const struct source_line *line, struct text t,
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
    read_choices(&x, &needed);
    if (!x.stopped && peek(&x))
        stop(&x, x.at, *x.at == ')' ? "`)` closes nothing" : "`>` closes nothing");
    rule->needed = needed;
    return !x.broken;
}

/* NULL: PCRE2 refuses it, or has no memory; then `*error` says which. */
static pcre2_code *compile(const char *regex, int *error)
{
    PCRE2_SIZE offset;
    return pcre2_compile((PCRE2_SPTR) regex, PCRE2_ZERO_TERMINATED, PCRE2_DOLLAR_ENDONLY, error,
                         &offset, NULL);
}

/* PCRE2's own refusals; what reaches it is well-formed, so that only size is left. */
static bool check(struct problems *p, struct place at, const char *regex)
{
    int error;
    PCRE2_UCHAR message[120];
    uint32_t empty = 0;
    pcre2_code *code = compile(regex, &error);
    if (!code) {
        pcre2_get_error_message(error, message, sizeof message / sizeof *message);
        return problem(p, at, "the pattern does not compile: %s", (const char *) message);
    }
    pcre2_pattern_info(code, PCRE2_INFO_MATCHEMPTY, &empty);
    pcre2_code_free(code);
    if (empty)
        return problem(p, at,
                       "the pattern can match no words at all; something in it must be there");
    return true;
}

bool pattern_read(struct loader *l, const struct source_line *line, struct text t,
                  struct rule *rule)
{
    char regex[PATTERN_BYTES];
    struct sieve sieve = {.length = 0};
    if (!pattern_translate(l->problems, line, t, rule, regex, &sieve))
        return false;
    rule->pattern = arena_text(&l->arena, text_from(regex)).at;
    rule->sieve = arena_text(&l->arena, sieve_text(&sieve));
    return check(l->problems, line_place(line, t.at), regex);
}

void *rule_compile(const struct rule *rule, bool jit)
{
    int error;
    pcre2_code *code = compile(rule->pattern, &error);
    if (code && jit) /* where there is no JIT, PCRE2 interprets */
        pcre2_jit_compile(code, PCRE2_JIT_COMPLETE);
    return code;
}
