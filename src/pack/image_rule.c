/* pack/image_rule.c: rules with their examples.
 * SPDX-License-Identifier: MIT */
#include "pack/image_maker.h"

/* Copied as it is, since the gaps between its fields are 0 in the arena and so are in the block. */
static void put_rule(struct maker *m, struct image_rule *to, const struct rule_node *n,
                     size_t number)
{
    if (!to)
        return;
    memcpy(&to->rule, &n->rule, sizeof to->rule);
    to->rule.name = to->rule.file = to->rule.pattern = NULL;
    to->rule.option = to->rule.sieve = to->rule.codes = (struct text){NULL, 0};
    to->rule.number = (unsigned) number;
    to->rule.ex_count = n->examples.count;
    image_put_text(m, &to->name, text_from(n->rule.name));
    image_put_text(m, &to->file, text_from(n->rule.file));
    image_put_text(m, &to->pattern, text_from(n->rule.pattern));
    image_put_text(m, &to->option, n->rule.option);
    image_put_text(m, &to->sieve, n->rule.sieve);
    image_put_text(m, &to->codes, n->rule.codes);
}

static void put_examples(struct maker *m, struct image_rule *rule, const struct rule_node *n,
                         size_t number)
{
    struct section s;
    struct example *to = image_section(m, &s, n->examples.count, sizeof *to);
    for (size_t i = 0; to && i < n->examples.count; i++) {
        image_put_text(m, &to[i].words, n->examples.at[i].words);
        image_put_text(m, &to[i].expected, n->examples.at[i].expected);
        to[i].line = n->examples.at[i].line;
    }
    if (rule)
        rule->examples = s.at;
    (void) number;
}

/* Stage by stage; `to` NULL: the first round. */
static void each_rule(struct maker *m, struct image_rule *to,
                      void (*put)(struct maker *, struct image_rule *, const struct rule_node *,
                                  size_t number))
{
    size_t done = 0;
    for (int stage = 0; stage < STAGE_COUNT; stage++)
        for (const struct rule_node *n = m->l->first_rule; n; n = n->next)
            if (!n->refused && (int) n->rule.stage == stage) {
                put(m, to ? &to[done] : NULL, n, done);
                done++;
            }
}

/* The examples stand behind all else, texts too, since no recording needs them. */
void image_put_rules(struct maker *m, struct image *out)
{
    size_t count = 0;
    for (const struct rule_node *n = m->l->first_rule; n; n = n->next)
        count += !n->refused;
    struct image_rule *to = image_section(m, &out->rules, count, sizeof *to);
    each_rule(m, to, put_rule);
    each_rule(m, to, put_examples);
}
