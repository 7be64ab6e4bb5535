/* check/hazard.h: a row of the pack's safety.tsv, what it reports, and whether it was told already.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CHECK_HAZARD_H
#define DISHTAKE_CHECK_HAZARD_H

#include "check/report.h"

enum safety_column {
    RULE_NAME,
    RULE_SAID,
    RULE_WITH,
    RULE_FOODS,
    RULE_UNLESS,
    RULE_NEAR,
    RULE_LEVEL,
    RULE_WHY,
    RULE_SUGGEST,
    RULE_SOURCE
};

struct safety_rule {
    const struct table *table;
    size_t row;
};

struct text rule_cell(const struct safety_rule *rule, enum safety_column column);
/* The published figure in Fahrenheit of that row of safe-temperatures.tsv, none when it has none;
 * `*publication` is untouched where there is no such row. */
struct ratio rule_published(const struct checker *c, struct text id, struct text *publication);
/* Adds the rule's finding; `value` is what its words call {2}. */
void report_rule(struct checker *c, const struct safety_rule *rule, struct subject_of what,
                 struct text value);
/* Whether another rule of the same publication has spoken of the dish: "until the juices run
 * clear". */
bool rule_told(const struct checker *c, const struct safety_rule *rule);
/* "I pull mine at 150, a little pink is fine": whether one spoke in the same breath, `at` seconds,
 * or one of another publication about the same words. */
bool rule_told_at(const struct checker *c, const struct safety_rule *rule, double at);
/* "Until it says 165": whatever the number was taken for. */
bool inside_said(const struct checker *c);
/* The rules that need no words: an inside temperature that is too low, or none (undercooked.c);
 * false where it is none of them. */
bool checked_alone(struct checker *c, const struct safety_rule *rule);

#endif
