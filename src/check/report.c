/* check/report.c
 * SPDX-License-Identifier: MIT */
#include "check/report.h"

#include "build/instruction.h"
#include "kitchen/kitchen.h"
#include "kitchen/rows.h"

static const char *const CASE_NAMES[] = {
#define FINDING(name) #name,
#include "check/findings.def"
#undef FINDING
};

enum findings_column { COLUMN_CASE, COLUMN_KIND, COLUMN_LEVEL, COLUMN_WHY, COLUMN_SUGGEST };

/* FINDING_CASES for a name that is none. */
static size_t case_index(struct text name)
{
    size_t i = 0;
    while (i < FINDING_CASES && !text_is(name, CASE_NAMES[i]))
        i++;
    return i;
}

bool findings_load(struct checker *c, struct problems *p)
{
    struct rows rows;
    if (!rows_open(&rows, c->k, "findings", "case kind level why suggest", p))
        return false;
    size_t errors = p->errors;
    for (size_t i = 0; i < rows.count; i++) {
        struct text name = rows_cell(&rows, i, COLUMN_CASE),
                    level = rows_cell(&rows, i, COLUMN_LEVEL);
        size_t which = case_index(name);
        enum finding_level l = LEVEL_NOTE;
        if (which == FINDING_CASES)
            problem(p, rows_place(&rows, i), "there is no case \"%.*s\"; see check/findings.def",
                    TEXT(name));
        else if (!level_read(level, &l))
            problem(p, rows_place(&rows, i), "level \"%.*s\": note, ask, fix or stop is needed",
                    TEXT(level));
        else
            c->rows[which] = (struct finding_row){rows_cell(&rows, i, COLUMN_KIND),
                                                  rows_cell(&rows, i, COLUMN_WHY),
                                                  rows_cell(&rows, i, COLUMN_SUGGEST), l};
    }
    return p->errors == errors;
}

struct text said_words(const struct recording *r, struct span words)
{
    struct text out = TEXT_EMPTY;
    for (size_t i = words.first; i <= words.last && i < r->words.count; i++)
        out = out.length ? arena_format(r->arena, "%.*s %.*s", TEXT(out), TEXT(r->words.at[i].text))
                         : r->words.at[i].text;
    return out;
}

struct text filled(const struct checker *c, struct text words, const struct text *blanks,
                   size_t count)
{
    return fill_blanks(c->r->arena, words, blanks, count);
}

#define BLANKS 8

struct finding *report(struct checker *c, enum finding_case which, struct subject_of what,
                       const struct text *more, size_t count)
{
    const struct finding_row *row = &c->rows[which];
    if (!row->kind.length)
        return NULL;
    struct text blanks[BLANKS] = {what.about};
    if (count > BLANKS - 1)
        count = BLANKS - 1;
    for (size_t i = 0; i < count; i++)
        blanks[i + 1] = more[i];
    struct finding *f = LIST_ADD(c->r->arena, &c->r->findings);
    f->kind = row->kind;
    f->level = row->level;
    f->dish = c->number;
    f->at = what.at;
    f->words = what.words;
    f->about = what.about;
    f->said = said_words(c->r, what.words);
    f->why = filled(c, row->why, blanks, count + 1);
    f->suggest = filled(c, row->suggest, blanks, count + 1);
    f->source = TEXT_EMPTY;
    return f;
}

struct subject_of subject_line(const struct ingredient *line)
{
    return (struct subject_of){line->at, line->words, line->food};
}

struct subject_of subject_words(const struct checker *c, struct span words)
{
    return (struct subject_of){c->r->words.at[words.first].start, words, said_words(c->r, words)};
}

struct subject_of subject_step(const struct recording *r, const struct step *step)
{
    struct text about = step->actions.count ? step->actions.at[0] : said_words(r, step->words);
    return (struct subject_of){step->start, step->words, about};
}

uint64_t step_marks(const struct checker *c, const struct step *s)
{
    if (!s->actions.count)
        return 0;
    const struct entry *e = action_entry(c->k, s->actions.at[0]);
    return e ? e->marks : 0;
}

bool said_with(const struct checker *c, const char *set, struct span words)
{
    const struct sentence *s = sentence_of(c->r, words.first);
    struct span where;
    return s && said_in(c, set, s, &where);
}

/* Whether all words of `part` are among those of `whole`. */
static bool words_within(struct text part, struct text whole)
{
    struct text word;
    while (text_part(&part, ' ', &word))
        if (!text_share_part(word, whole, ' '))
            return false;
    return true;
}

bool one_names_both(struct text a, struct text b)
{
    return words_within(a, b) || words_within(b, a);
}

/* "Vanilla ice cream" is no vanilla; chicken thighs are chicken, lemon juice is lemon. */
static bool only_begins(const struct ingredient *other, const struct ingredient *line)
{
    const uint64_t meats =
        MARK_OF(meat) | MARK_OF(ground) | MARK_OF(poultry) | MARK_OF(fish) | MARK_OF(shellfish);
    const uint64_t both =
        other->entry && line->entry ? other->entry->marks & line->entry->marks : 0;
    const struct text name = line->food;
    const bool whole = line->entry && line->entry->marks & MARK_OF(produce);
    return !(both & meats) && !whole && other->food.length > name.length
           && other->food.at[name.length] == ' '
           && text_equal((struct text){other->food.at, name.length}, name);
}

/* Whether another line that may be the same food says how much: "chicken" after "eight chicken
 * thighs", "peaches" after "three ripe peaches". */
static bool tells_amount(const struct ingredient *other, const struct ingredient *line)
{
    return other != line && (other->amount.known || other->to_taste)
           && (text_equal(other->kind, line->kind)
               || (one_names_both(other->food, line->food) && !only_begins(other, line)));
}

bool amount_elsewhere(const struct dish *d, const struct ingredient *line)
{
    for (size_t i = 0; i < d->ingredients.count; i++)
        if (tells_amount(&d->ingredients.at[i], line))
            return true;
    return false;
}

bool amount_near(const struct dish *d, const struct ingredient *line)
{
    for (size_t i = 0; i < d->ingredients.count; i++) {
        const struct ingredient *other = &d->ingredients.at[i];
        if (tells_amount(other, line) && other->id < line->id + OTHER_PART_WORDS
            && other->id + OTHER_PART_WORDS > line->id)
            return true;
    }
    return false;
}

/* "The turkey" where another dish has two pounds of it: what lies between dishes is spoken of as
 * known. */
bool known_elsewhere(const struct checker *c, const struct ingredient *line)
{
    size_t first = line->words.first;
    if (c->r->words.at[first].tag != TAG_THE
        && (!first || c->r->words.at[first - 1].tag != TAG_THE))
        return false;
    for (size_t i = 0; i < c->r->dishes.count; i++)
        if (i != c->number && amount_elsewhere(&c->r->dishes.at[i], line))
            return true;
    return false;
}
