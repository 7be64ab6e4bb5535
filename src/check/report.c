/* check/report.c
 * SPDX-License-Identifier: MIT */
#include "check/report.h"

#include <string.h>

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

struct text fill(const struct checker *c, struct text words, const struct text *blanks,
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
    f->why = fill(c, row->why, blanks, count + 1);
    f->suggest = fill(c, row->suggest, blanks, count + 1);
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

bool in_dish(const struct checker *c, size_t word)
{
    for (size_t i = 0; i < c->parts.count; i++)
        if (word >= c->parts.at[i].first && word <= c->parts.at[i].last)
            return true;
    return false;
}

uint64_t step_marks(const struct checker *c, const struct step *s)
{
    if (!s->actions.count)
        return 0;
    const struct entry *e = action_entry(c->k, s->actions.at[0]);
    return e ? e->marks : 0;
}

/* Whether a dish has words among [first, last]. */
static bool taken(const struct recording *r, size_t first, size_t last)
{
    for (size_t i = 0; i < r->dishes.count; i++)
        for (size_t n = 0; n < r->dishes.at[i].spans.count; n++)
            if (r->dishes.at[i].spans.at[n].first <= last
                && r->dishes.at[i].spans.at[n].last >= first)
                return true;
    return false;
}

struct span talk_around(const struct checker *c)
{
    struct span around = {0, c->r->words.count - 1};
    for (size_t i = 0; i < c->r->dishes.count; i++)
        for (size_t n = 0; n < c->r->dishes.at[i].spans.count; n++) {
            struct span s = c->r->dishes.at[i].spans.at[n];
            if (s.last < c->dish->words.first && s.last >= around.first)
                around.first = s.last + 1;
            if (s.first > c->dish->words.last && s.first <= around.last)
                around.last = s.first - 1;
        }
    return around;
}

/* Talk so near a dish is told with it. */
#define BESIDE_WORDS 120

/* How far the word is from the dish's stretches; 0 inside. */
static size_t words_from(const struct dish *d, size_t word)
{
    size_t least = SIZE_MAX;
    for (size_t i = 0; i < d->spans.count; i++) {
        struct span s = d->spans.at[i];
        size_t far = word < s.first ? s.first - word : word > s.last ? word - s.last : 0;
        least = far < least ? far : least;
    }
    return least;
}

/* Whether no dish is nearer to the word: the later one of two as near, since talk leads up to a
 * dish. */
static bool nearest(const struct checker *c, size_t word)
{
    size_t own = words_from(c->dish, word);
    for (size_t i = 0; i < c->r->dishes.count && own <= BESIDE_WORDS; i++) {
        const struct dish *d = &c->r->dishes.at[i];
        if (word + own < d->words.first || word > d->words.last + own)
            continue;
        size_t far = words_from(d, word);
        if (far < own || (far == own && i > c->number))
            return false;
    }
    return own <= BESIDE_WORDS;
}

/* Cuts the words that are not nearest to this dish off both ends; false where none are left. */
static bool keep_nearest(const struct checker *c, struct span *part)
{
    while (part->first <= part->last && !nearest(c, part->first))
        part->first++;
    while (part->first <= part->last && part->last && !nearest(c, part->last))
        part->last--;
    return part->first <= part->last;
}

/* Talk there may be of the dish, though no dish has it. */
static void find_beside(struct checker *c)
{
    struct span around = talk_around(c), own = c->dish->words;
    struct span parts[2] = {
        {own.first > around.first + BESIDE_WORDS ? own.first - BESIDE_WORDS : around.first,
         own.first ? own.first - 1 : 0},
        {own.last + 1,
         own.last + BESIDE_WORDS < around.last ? own.last + BESIDE_WORDS : around.last}};
    c->beside_count = 0;
    for (size_t i = 0; i < 2; i++)
        if ((i || own.first > around.first) && parts[i].last < c->r->words.count
            && keep_nearest(c, &parts[i]))
            c->beside[c->beside_count++] = parts[i];
}

void look_at(struct checker *c, size_t dish)
{
    c->number = dish;
    c->dish = &c->r->dishes.at[dish];
    c->parts.count = 0;
    for (size_t i = 0; i < c->dish->spans.count; i++) {
        struct span s = c->dish->spans.at[i];
        struct span *before = c->parts.count ? &c->parts.at[c->parts.count - 1] : NULL;
        if (before && s.first > before->last
            && (s.first == before->last + 1 || !taken(c->r, before->last + 1, s.first - 1)))
            before->last = s.last;
        else
            *LIST_ADD(c->r->arena, &c->parts) = s;
    }
    find_beside(c);
}

bool in_talk(const struct checker *c, size_t word)
{
    for (size_t i = 0; i < c->beside_count; i++)
        if (word >= c->beside[i].first && word <= c->beside[i].last)
            return true;
    return in_dish(c, word);
}

struct span talk_near(const struct checker *c)
{
    struct span all = c->dish->words;
    for (size_t i = 0; i < c->beside_count; i++) {
        all.first = c->beside[i].first < all.first ? c->beside[i].first : all.first;
        all.last = c->beside[i].last > all.last ? c->beside[i].last : all.last;
    }
    return all;
}

bool said_with(const struct checker *c, const char *set, struct span words)
{
    const struct sentence *s = sentence_of(c->r, words.first);
    struct span where;
    return s && said_find(&c->sayings, c->r, set, (struct span){s->first, s->last}, &where);
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
bool amount_elsewhere(const struct dish *d, const struct ingredient *line)
{
    for (size_t i = 0; i < d->ingredients.count; i++) {
        const struct ingredient *other = &d->ingredients.at[i];
        if (other != line && (other->amount.known || other->to_taste)
            && (text_equal(other->kind, line->kind)
                || (one_names_both(other->food, line->food) && !only_begins(other, line))))
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
