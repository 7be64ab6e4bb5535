/* pack/rule_file.c: rules, with their examples.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "pack/load.h"

/* The rule being read. */
struct reading {
    struct loader *loader;
    const struct source_line *line;
    bool has_stage;
    enum rule_stage stage;
    struct rule_node *node; /* NULL between rules */
    struct place at;        /* of the rule's name */
    bool when, give;
    bool slots_known; /* `when` was read without mistakes */
    bool low;         /* `low=` was there */
};

static struct problems *problems_of(const struct reading *x)
{
    return x->loader->problems;
}

/* Notes that the rule at hand cannot be used. */
static void refuse(struct reading *x)
{
    if (x->node)
        x->node->refused = true;
}

#define WRONG(x, at, ...) \
    (refuse(x), problem(problems_of(x), line_place((x)->line, (at)), __VA_ARGS__))

static bool add_name(struct reading *x, struct text name)
{
    struct loader *l = x->loader;
    struct key *key = index_put(&l->arena, &l->rule_names, name);
    if (key->first) {
        const struct rule *old = &l->named.at[key->first - 1]->rule;
        return WRONG(x, name.at, "rule \"%.*s\" is there already, at %s:%u", QUOTE(name), old->file,
                     old->line);
    }
    *LIST_ADD(&l->arena, &l->named) = x->node;
    key->first = (uint32_t) l->named.count;
    return true;
}

static void read_rule(struct reading *x, struct text name)
{
    struct arena *a = &x->loader->arena;
    x->node = arena_alloc(a, sizeof *x->node);
    *x->loader->rules_end = x->node;
    x->loader->rules_end = &x->node->next;
    x->node->rule.name = arena_text(a, name).at;
    x->node->rule.file = x->line->file;
    x->node->rule.line = x->line->number;
    x->node->rule.stage = x->stage;
    x->at = line_place(x->line, name.at);
    x->when = x->give = x->slots_known = x->low = false;
    if (!name.length || name.length > NAME_BYTES || text_find(name, ' ', 0) < name.length)
        WRONG(x, name.at, "a rule has a name of one word, up to %d letters", NAME_BYTES);
    else
        add_name(x, name);
    if (!x->has_stage)
        WRONG(x, x->line->text.at,
              "a rule before any `stage`; the stages are repair, number, amount, "
              "line, phrase");
    x->has_stage = true; /* say it once */
}

static void finish_rule(struct reading *x)
{
    if (!x->node)
        return;
    struct text name = text_from(x->node->rule.name);
    const char *lacks = !x->when ? "`when`" : !x->give ? "`give`" : NULL;
    if (lacks) {
        refuse(x);
        problem(problems_of(x), x->at, "rule \"%.*s\" has no %s", QUOTE(name), lacks);
    }
    if (x->node->examples.count < RULE_EXAMPLES) {
        refuse(x);
        problem(problems_of(x), x->at, "rule \"%.*s\" has %zu of the %d examples that a rule needs",
                QUOTE(name), x->node->examples.count, RULE_EXAMPLES);
    }
    x->node = NULL;
}

static void read_stage(struct reading *x, struct text name)
{
    finish_rule(x);
    x->has_stage = true;
    if (!stage_find(name, &x->stage))
        WRONG(x, name.at,
              "unknown stage \"%.*s\"; the stages are repair, number, amount, line, phrase",
              QUOTE(name));
}

static void read_when(struct reading *x, struct text pattern)
{
    if (x->when) {
        WRONG(x, text_trim(x->line->text).at, "a second `when`; make it a rule of its own");
        return;
    }
    x->when = true;
    x->slots_known = pattern_read(x->loader, x->line, pattern, &x->node->rule);
    if (!x->slots_known)
        refuse(x);
}

static bool has_slot(const struct rule *rule, enum slot slot)
{
    for (size_t i = 0; i < rule->slots_count; i++)
        if (rule->slots[i] == slot)
            return true;
    return false;
}

/* `give retag TAG`: the rest of the line is the tag. */
static void read_retag(struct reading *x, struct text *rest)
{
    struct rule *rule = &x->node->rule;
    struct text name;
    line_word(rest, &name);
    if (!tag_find(name, &rule->retag))
        WRONG(x, name.at, "`give retag` takes a tag; \"%.*s\" is none, tags.def lists them",
              QUOTE(name));
    if (x->slots_known && !has_slot(rule, SLOT_word))
        WRONG(x, name.at, "`give retag` changes the slot <word:...>, which `when` lacks");
    if (rule->stage != STAGE_REPAIR)
        WRONG(x, name.at, "`give retag` belongs to the stage repair");
}

static void read_weight(struct reading *x, struct text t)
{
    bool negative = text_starts(t, "-");
    struct text digits = text_slice(t, negative, t.length);
    struct ratio n = ratio_read(digits.at, digits.length);
    if (!ratio_finite(n) || n.under != 1 || n.over > 1000 || n.over < 0)
        WRONG(x, t.at, "`weight=` takes a whole number, -1000 to 1000");
    else
        x->node->rule.weight = negative ? -(int) n.over : (int) n.over;
}

static void read_number(struct reading *x, struct text t, struct number_step *steps, size_t *count)
{
    if (x->node->rule.kind == RULE_retag)
        WRONG(x, t.at, "`give retag` has no number");
    else if (x->slots_known
             && !expression_read(problems_of(x), x->line, t, &x->node->rule, steps, count))
        refuse(x);
}

/* `option=side` -> its value; false when `t` does not begin so. */
static bool setting(struct text t, const char *name, struct text *value)
{
    *value = text_slice(t, strlen(name), t.length);
    return text_starts(t, name);
}

static void read_setting(struct reading *x, struct text t)
{
    struct rule *rule = &x->node->rule;
    struct text value;
    x->low |= text_starts(t, "low=");
    if (setting(t, "low=", &value))
        read_number(x, value, rule->low, &rule->low_count);
    else if (setting(t, "high=", &value))
        read_number(x, value, rule->high, &rule->high_count);
    else if (setting(t, "weight=", &value))
        read_weight(x, value);
    else if (setting(t, "option=", &value) && value.length)
        rule->option = value;
    else if (text_is(t, "keep"))
        rule->tag = 0;
    else
        WRONG(x, t.at,
              "\"%.*s\" says nothing here; there are low=, high=, option=, weight= "
              "and keep",
              QUOTE(t));
}

static void read_give(struct reading *x, struct text rest)
{
    struct rule *rule = &x->node->rule;
    struct text kind, word;
    if (!x->when || x->give) {
        WRONG(x, text_trim(x->line->text).at,
              x->give ? "a second `give`; make it a rule of its own"
                      : "`give` stands after `when`");
        x->give = true;
        return;
    }
    x->give = true;
    line_word(&rest, &kind);
    if (!kind_find(kind, &rule->kind)) {
        WRONG(x, kind.at, "unknown kind \"%.*s\"; kinds.def lists them", QUOTE(kind));
        return;
    }
    rule->tag = kind_tag(rule->kind);
    if (rule->kind == RULE_retag)
        read_retag(x, &rest);
    while (line_word(&rest, &word))
        read_setting(x, word);
    if (rule->kind == RULE_number && !x->low)
        WRONG(x, kind.at, "`give number` needs low=");
}

static bool is_number(struct text t)
{
    return ratio_finite(ratio_read(t.at, t.length));
}

/* "10..12", "10.." or "10" */
static bool is_range(struct text t)
{
    size_t i = 0;
    while (i + 1 < t.length && (t.at[i] != '.' || t.at[i + 1] != '.'))
        i++;
    if (i + 1 >= t.length)
        return is_number(t);
    struct text high = text_slice(t, i + 2, t.length);
    return is_number(text_slice(t, 0, i)) && (!high.length || is_number(high));
}

static void check_expectation(struct reading *x, struct text t)
{
    struct text word, rest = t;
    enum slot slot;
    while (line_word(&rest, &word)) {
        size_t sign = text_find(word, '=', 0);
        struct text name = text_slice(word, 0, sign);
        bool option = text_is(name, "option");
        if (sign == word.length && !text_is(word, "nothing") && !text_is(word, "match")
            && !is_range(word))
            WRONG(x, word.at,
                  "\"%.*s\" is neither `match`, `nothing`, a number, a range 10..12 nor slot=words",
                  QUOTE(word));
        else if (sign < word.length && !option && !slot_find(name, &slot))
            WRONG(x, word.at, "unknown slot \"%.*s\"; slots.def lists them", QUOTE(name));
        else if (sign + 1 == word.length)
            WRONG(x, word.at, "no words after \"%.*s=\"", QUOTE(name));
    }
}

/* `"words" -> expectation` */
static void read_example(struct reading *x, struct text t)
{
    size_t close = text_find(t, '"', 1);
    struct text words = text_trim(text_slice(t, 1, close));
    struct text rest = text_trim(text_slice(t, close + 1, t.length));
    struct text expected = text_trim(text_slice(rest, 2, rest.length));
    if (!text_starts(t, "\"") || close == t.length || !words.length || !text_starts(rest, "->")
        || !expected.length) {
        WRONG(x, t.at, "an example is written: ex \"words\" -> what the rule gives, or nothing");
        return;
    }
    const struct rule_node *n = x->node;
    for (size_t i = 0; i < n->examples.count && i < 32; i++)
        if (text_equal(n->examples.at[i].words, words))
            WRONG(x, words.at, "the same example as at line %u", n->examples.at[i].line);
    check_expectation(x, expected);
    *LIST_ADD(&x->loader->arena, &x->node->examples) =
        (struct listed_example){words, expected, x->line->number};
}

static void read_line(struct reading *x)
{
    struct text rest = x->line->text, word;
    line_word(&rest, &word);
    rest = text_trim(rest);
    if (text_is(word, "stage")) {
        read_stage(x, rest);
    } else if (text_is(word, "rule")) {
        finish_rule(x);
        read_rule(x, rest);
    } else if (!text_is(word, "when") && !text_is(word, "give") && !text_is(word, "ex")) {
        WRONG(x, word.at, "unknown word \"%.*s\"; a line begins with stage, rule, when, give or ex",
              QUOTE(word));
    } else if (!x->node) {
        WRONG(x, word.at, "`%.*s` stands within a rule; begin one with `rule NAME`", QUOTE(word));
    } else if (text_is(word, "when")) {
        read_when(x, rest);
    } else if (text_is(word, "give")) {
        read_give(x, rest);
    } else {
        read_example(x, rest);
    }
}

void rule_file_read(struct loader *l, const struct pack_file *file)
{
    struct lines lines = lines_open(file, l->problems);
    struct reading x = {.loader = l, .line = &lines.line};
    while (lines_next(&lines))
        read_line(&x);
    finish_rule(&x);
}
