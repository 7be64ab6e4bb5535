/* check/hazard.c
 * SPDX-License-Identifier: MIT */
#include "check/hazard.h"

struct text rule_cell(const struct safety_rule *rule, enum safety_column column)
{
    return table_cell(rule->table, rule->row, column);
}

struct ratio rule_published(const struct checker *c, struct text id, struct text *publication)
{
    const struct table *t = pack_table(c->k, "safe-temperatures");
    size_t row = t ? table_find(t, id) : 0;
    if (t && row < t->rows) {
        struct text f = table_cell(t, row, table_column(t, "temp_f"));
        *publication = table_cell(t, row, table_column(t, "publication"));
        return ratio_read(f.at, f.length);
    }
    return RATIO_NONE;
}

void report_rule(struct checker *c, const struct safety_rule *rule, struct subject_of what,
                 struct text value)
{
    struct text publication = TEXT_EMPTY, blanks[] = {what.about, value};
    rule_published(c, rule_cell(rule, RULE_SOURCE), &publication);
    struct text why = filled(c, rule_cell(rule, RULE_WHY), blanks, 2),
                suggest = rule_cell(rule, RULE_SUGGEST);
    bool named = !text_equal(what.about, said_words(c->r, what.words));
    struct finding *f =
        named ? REPORT(c, unsafe, what, why, suggest) : REPORT(c, unsafe_said, what, why, suggest);
    if (!f)
        return;
    f->source = publication;
    level_read(rule_cell(rule, RULE_LEVEL), &f->level);
}

bool rule_told(const struct checker *c, const struct safety_rule *rule)
{
    struct text publication = TEXT_EMPTY;
    rule_published(c, rule_cell(rule, RULE_SOURCE), &publication);
    for (size_t i = 0; i < c->r->findings.count; i++) {
        const struct finding *f = &c->r->findings.at[i];
        if (f->dish == c->number && text_equal(f->kind, c->rows[CASE_unsafe].kind)
            && text_equal(f->source, publication))
            return true;
    }
    return false;
}

#define SAME_BREATH_SECONDS 20
/* Two rules about the same words: "rice sat out since Sunday". */
#define SAME_WORDS_SECONDS 3
bool rule_told_at(const struct checker *c, const struct safety_rule *rule, double at)
{
    struct text publication = TEXT_EMPTY;
    rule_published(c, rule_cell(rule, RULE_SOURCE), &publication);
    for (size_t i = 0; i < c->r->findings.count; i++) {
        const struct finding *f = &c->r->findings.at[i];
        const double breath =
            text_equal(f->source, publication) ? SAME_BREATH_SECONDS : SAME_WORDS_SECONDS;
        if (f->dish == c->number && text_equal(f->kind, c->rows[CASE_unsafe].kind)
            && f->at < at + breath && at < f->at + breath)
            return true;
    }
    return false;
}

bool inside_said(const struct checker *c)
{
    struct span where;
    return said_find(&c->sayings, c->r, "inside_said", c->dish->words, &where);
}
