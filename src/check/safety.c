/* check/safety.c: published food-safety rules that are broken, or not met, by what was said. The
 * rules are rows of the pack's safety.tsv; each names its publication. A rule that cannot tell
 * keeps silent, and silence is no proof of safety.
 * SPDX-License-Identifier: MIT */
#include "check/holds.h"
#include "check/inside.h"

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

static struct text cell(const struct safety_rule *rule, enum safety_column column)
{
    return table_cell(rule->table, rule->row, column);
}

/* The published figure in Fahrenheit; none when the row has none. */
static struct ratio published(const struct checker *c, struct text id, struct text *publication)
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

static void report_rule(struct checker *c, const struct safety_rule *rule, struct subject_of what,
                        struct text value)
{
    struct text publication = TEXT_EMPTY, blanks[] = {what.about, value};
    published(c, cell(rule, RULE_SOURCE), &publication);
    struct text why = fill(c, cell(rule, RULE_WHY), blanks, 2), suggest = cell(rule, RULE_SUGGEST);
    bool named = !text_equal(what.about, said_words(c->r, what.words));
    struct finding *f =
        named ? REPORT(c, unsafe, what, why, suggest) : REPORT(c, unsafe_said, what, why, suggest);
    if (!f)
        return;
    f->source = publication;
    level_read(cell(rule, RULE_LEVEL), &f->level);
}

/* ---- rules that listen */

static unsigned long number_cell(struct text t, unsigned long otherwise)
{
    struct ratio n = ratio_read(t.at, t.length);
    return ratio_finite(n) ? (unsigned long) n.over : otherwise;
}

static bool real(const struct checker *c, struct span words)
{
    for (size_t i = words.first; i <= words.last; i++)
        if (c->r->words.at[i].scope & (SCOPE_NEGATED | SCOPE_INSTEAD))
            return false;
    return true;
}

/* "Overnight on the stove, and then it goes in the fridge": too late. */
static bool too_late(const struct checker *c, struct span said, struct span where)
{
    struct span between = {said.last + 1, where.first}, then;
    return between.first <= between.last
           && said_find(&c->sayings, c->r, "afterwards", between, &then);
}

/* "The muffins go in the freezer. The chilli's done. I leave the pot on the bench": what keeps cold
 * is said in the same sentence, or right before. */
#define JUST_BEFORE_WORDS 6
static size_t begins_before(const struct checker *c, struct span said)
{
    const struct sentence *s = sentence_of(c->r, said.first);
    const size_t near = said.first > JUST_BEFORE_WORDS ? said.first - JUST_BEFORE_WORDS : 0;
    return s && s->first < near ? s->first : near;
}

/* Whether what the rule's `column` names is said around the words. */
static bool said_around(const struct checker *c, const struct safety_rule *rule,
                        enum safety_column column, struct span said)
{
    struct text set = cell(rule, column), word;
    const bool at_once = text_starts(set, "at-once ") && text_part(&set, ' ', &word);
    unsigned long near = number_cell(cell(rule, RULE_NEAR), c->r->words.count);
    struct span where, around = c->dish->words;
    if (said.first > around.first + near)
        around.first = said.first - near;
    if (said.last + near < around.last)
        around.last = said.last + near;
    if (at_once && around.first < begins_before(c, said))
        around.first = begins_before(c, said);
    for (; around.first <= around.last && said_find_set(&c->sayings, c->r, set, around, &where);
         around.first = where.last + 1)
        if ((real(c, where) || span_has_tag(c->r, where, TAG_NOT))
            && !(at_once && too_late(c, said, where)))
            return true; /* "no need to wash it" is no washing, "don't pour it over" is no use */
    return false;
}

/* "Until it says 165": whatever the number was taken for. */
static bool inside_said(const struct checker *c)
{
    struct span where;
    return said_find(&c->sayings, c->r, "inside_said", c->dish->words, &where);
}

/* Whether the rule's words stand as they must, and nothing that satisfies it is said. */
static bool broken(const struct checker *c, const struct safety_rule *rule, struct span said)
{
    if (cell(rule, RULE_WITH).length && !said_around(c, rule, RULE_WITH, said))
        return false;
    if (text_is(cell(rule, RULE_UNLESS), "inside"))
        return !checked_beside(c, cell(rule, RULE_FOODS)) && !inside_said(c);
    return !cell(rule, RULE_UNLESS).length || !said_around(c, rule, RULE_UNLESS, said);
}

/* "Will I lick the spoon? You will not." */
#define TAKEN_BACK_WORDS 4
static bool taken_back(const struct checker *c, struct span words)
{
    struct span where, behind = {words.last + 1, words.last + TAKEN_BACK_WORDS};
    if (behind.last > c->dish->words.last)
        behind.last = c->dish->words.last;
    return said_find(&c->sayings, c->r, "taken_back", behind, &where);
}

/* Whether the dish holds one of the foods, or they are spoken of right before; and no other meat is
 * nearer to the words. */
static bool is_of(const struct checker *c, struct text foods, struct span said)
{
    if (text_starts(foods, "nearest ")) {
        struct text nearest;
        text_part(&foods, ' ', &nearest);
        return nearest_food_is(c, foods, said.first);
    }
    return !foods.length
           || ((food_of(c, c->dish, foods) || food_before(c, foods, said.first))
               && !other_animal(c, foods, said.first));
}

/* Whether another rule of the same publication has spoken of the dish: "until the juices run
 * clear".
 */
static bool told(const struct checker *c, const struct safety_rule *rule)
{
    struct text publication = TEXT_EMPTY;
    published(c, cell(rule, RULE_SOURCE), &publication);
    for (size_t i = 0; i < c->r->findings.count; i++) {
        const struct finding *f = &c->r->findings.at[i];
        if (f->dish == c->number && text_equal(f->kind, c->rows[CASE_unsafe].kind)
            && text_equal(f->source, publication))
            return true;
    }
    return false;
}

/* "I pull mine at 150, a little pink is fine": what was said of it in the same breath is enough. */
#define SAME_BREATH_SECONDS 20
/* Two rules about the same words: "rice sat out since Sunday". */
#define SAME_WORDS_SECONDS 3
static bool told_at(const struct checker *c, const struct safety_rule *rule, double at)
{
    struct text publication = TEXT_EMPTY;
    published(c, cell(rule, RULE_SOURCE), &publication);
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

#define UNEATEN_WORDS 5
/* "It stands in the sun all afternoon and nobody minds": what is denied is said behind it. */
static bool denied_before(const struct checker *c, struct span words)
{
    const struct sentence *s = sentence_of(c->r, words.first);
    return !s || span_has_tag(c->r, (struct span){s->first, words.last}, TAG_NOT)
           || span_has_tag(c->r, (struct span){s->first, words.last}, TAG_INSTEAD);
}

/* "What we don't eat stays in the pan": the "don't" is of the eating. */
static bool of_uneaten(const struct checker *c, struct span words)
{
    struct span where,
        near = {words.first > UNEATEN_WORDS ? words.first - UNEATEN_WORDS : 0, words.last};
    return said_find(&c->sayings, c->r, "uneaten", near, &where);
}

static void listen(struct checker *c, const struct safety_rule *rule, struct span part)
{
    struct span where;
    const bool once = text_is(cell(rule, RULE_UNLESS), "inside");
    while (part.first <= part.last
           && said_find_set(&c->sayings, c->r, cell(rule, RULE_SAID), part, &where)) {
        part.first = where.last + 1;
        /* Its own words are a "don't". */
        bool kept = text_starts(cell(rule, RULE_SAID), "kept")
                    || text_starts(cell(rule, RULE_SAID), "judged");
        if ((!kept && !real(c, where) && denied_before(c, where) && !of_uneaten(c, where))
            || !broken(c, rule, where) || taken_back(c, where) || (once && told(c, rule))
            || !is_of(c, cell(rule, RULE_FOODS), where)
            || told_at(c, rule, c->r->words.at[where.first].start))
            continue;
        struct subject_of what = {c->r->words.at[where.first].start, where,
                                  said_words(c->r, where)};
        report_rule(c, rule, what, TEXT_EMPTY);
    }
}

/* ---- rules of least temperatures */

static void check_low(struct checker *c, const struct safety_rule *rule)
{
    struct text publication = TEXT_EMPTY;
    const struct temperature *t = inside_most(c->dish);
    struct ratio least = published(c, cell(rule, RULE_SOURCE), &publication);
    if (!t || !ratio_finite(least) || other_animal(c, cell(rule, RULE_FOODS), t->words.first)
        || ratio_compare(ratio_add(fahrenheit(t), RATIO(1)), least) >= 0)
        return;
    if (told_at(c, rule, t->at))
        return;
    struct text said = said_words(c->r, t->words);
    report_rule(c, rule, (struct subject_of){t->at, t->words, said}, said);
}

/* "Lid on low, six hours", "that's her for fifty minutes": no verb says that it cooks. */
#define COOKS_SECONDS (20 * 60)
static bool cooks_long(const struct checker *c, const struct step *s)
{
    struct span where;
    if ((!said_with(c, "cooks_on", s->words)
         && !said_find(&c->sayings, c->r, "cooks_on", s->words, &where))
        || said_with(c, "fridge", s->words) || step_marks(c, s) & (MARK_OF(waits) | MARK_OF(cold)))
        return false;
    for (size_t i = 0; i < s->durations.count; i++)
        if (s->durations.at[i].min >= COOKS_SECONDS)
            return true;
    return false;
}

/* The last step that cooks by dry heat, which browns the outside long before the middle is done, or
 * for so long that it cooks; NULL: none does, or it is simmered, which is left alone. */
static const struct step *cooked_in(const struct checker *c)
{
    const struct step *last = NULL, *longest = NULL;
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        uint64_t marks = step_marks(c, s);
        if (marks & MARK_OF(boils))
            return NULL;
        if (marks & (MARK_OF(ovens) | MARK_OF(grills) | MARK_OF(fries)))
            last = s;
        if (cooks_long(c, s))
            longest = s;
    }
    return last ? last : longest;
}

static void check_none(struct checker *c, const struct safety_rule *rule,
                       const struct ingredient *food)
{
    const struct step *s = cooked_in(c);
    if (!s || checked_beside(c, cell(rule, RULE_FOODS)) || inside_said(c) || told(c, rule))
        return;
    struct subject_of what = subject_step(c->r, s);
    what.about = food->kind;
    report_rule(c, rule, what, TEXT_EMPTY);
}

/* Talk beside the dish may be of it: "I leave that in the pot till tonight", after its last step.
 */
static void listen_everywhere(struct checker *c, const struct safety_rule *rule)
{
    for (size_t i = 0; i < c->parts.count; i++)
        listen(c, rule, c->parts.at[i]);
    for (size_t i = 0; i < c->beside_count; i++)
        listen(c, rule, c->beside[i]);
}

/* The rules that need no words; false where it is none of them. */
static bool checked_alone(struct checker *c, const struct safety_rule *rule)
{
    const bool low = text_is(cell(rule, RULE_SAID), "low");
    if (!low && !text_is(cell(rule, RULE_SAID), "none"))
        return false;
    const struct ingredient *food = food_of(c, c->dish, cell(rule, RULE_FOODS));
    if (food && low)
        check_low(c, rule);
    else if (food)
        check_none(c, rule, food);
    return true;
}

void find_unsafe(struct checker *c)
{
    struct safety_rule rule = {pack_table(c->k, "safety"), 0};
    for (; rule.table && rule.row < rule.table->rows; rule.row++)
        if (!checked_alone(c, &rule))
            listen_everywhere(c, &rule);
}
