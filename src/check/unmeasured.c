/* check/unmeasured.c: foods that go in, and nobody said how much: no amount, a vague one, a number
 * without its unit.
 * SPDX-License-Identifier: MIT */
#include "check/unmeasured.h"

/* "The meat", "some spices": a kind, which stands for foods that are listed. */
static bool names_kind(const struct ingredient *line)
{
    return line->entry && line->entry->marks & (MARK_OF(generic) | MARK_OF(water));
}

/* A gap of what was said is none of what is shown: where the list has the amount, it is told, and
 * the finding weighs no more than a note. */
static void report_amount(struct checker *c, enum finding_case which, const struct ingredient *line)
{
    struct finding *f = report(c, which, subject_line(line), NULL, 0);
    const struct listed *l = listed_amount(c, line);
    if (!f || !l)
        return;
    const struct finding_row *row = &c->rows[CASE_list_fills];
    struct text blanks[] = {l->said, arena_format(c->r->arena, "%u", l->line)};
    f->level = LEVEL_NOTE;
    f->why =
        arena_format(c->r->arena, "%.*s %.*s", TEXT(f->why), TEXT(filled(c, row->why, blanks, 2)));
    f->suggest = row->suggest;
}

/* "Pour the custard over": what was stirred together before. */
#define MIXED_LINES 2
static bool is_own_mixture(const struct checker *c, const struct ingredient *line)
{
    const size_t first = line->words.first ? line->words.first - 1 : 0;
    struct span where;
    size_t before = 0;
    for (size_t i = 0; i < c->dish->ingredients.count; i++)
        before += c->dish->ingredients.at[i].id < first;
    return before >= MIXED_LINES
           && said_find(&c->sayings, c->r, "own_mixture", (struct span){first, line->words.last},
                        &where);
}

/* A part's seasoning is its own: salt in the dough says nothing of the salt on the fish. */
static bool amount_known(const struct checker *c, const struct ingredient *line)
{
    return only_seasons(c, line) ? amount_near(c->dish, line) : amount_elsewhere(c->dish, line);
}

static bool needs_amount(const struct checker *c, const struct ingredient *line)
{
    return !line->amount.known && !line->to_taste && !line->optional
           && line->role == ROLE_INGREDIENT && !names_kind(line) && !in_passing(c, line)
           && (goes_in(c, line) || only_seasons(c, line)) && !amount_known(c, line)
           && !is_place(c, line) && !is_own_mixture(c, line)
           && !said_with(c, "laid_out", line->words)
           && !(food_word(c, line) && amount_told(c, line));
}

/* A run-down's food that has not gone in yet; "one plate has some flour on it" is in its place. */
static bool waits(const struct checker *c, const struct ingredient *line)
{
    bool placed =
        line->vague && line->id < c->dish->words.last
        && (c->r->words.at[line->id + 1].tag == TAG_INTO
            || (line->words.first && c->r->words.at[line->words.first - 1].tag == TAG_INTO));
    return line->announced && !line->used && !placed;
}

/* "A bunch of pepper" is only much of it; herbs and vegetables come in bunches. */
static bool odd_bunch(const struct ingredient *line)
{
    return line->entry && line->amount.known && text_is(line->amount.unit, "bunch")
           && !(line->entry->marks & (MARK_OF(herb) | MARK_OF(produce)));
}

/* "A handful of -- hey, boots off": what follows is no food. */
static bool breaks_off(const struct checker *c, const struct ingredient *line)
{
    struct span where;
    return !line->entry && said_with(c, "cut_off", line->words)
           && said_find(&c->sayings, c->r, "cut_off", line->words, &where);
}

void find_unmeasured(struct checker *c)
{
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (line->role == ROLE_SERVE_WITH || waits(c, line) || says_spoon(c, line->words)
            || breaks_off(c, line))
            continue;
        if (line->no_unit) {
            if (lacks_unit(c, line))
                report_amount(c, CASE_no_unit, line);
        } else if (line->vague || vague_more(c, line) || odd_bunch(line)) {
            if (!in_passing(c, line) && lacks_measure(c, line)
                && !said_with(c, "laid_out", line->words))
                report_amount(c, vague_matters(line) ? CASE_vague_matters : CASE_vague_amount,
                              line);
        } else if (needs_amount(c, line)) {
            struct ingredient vague = *line;
            if (is_vague(c, line, &vague.words)) {
                vague.at = c->r->words.at[vague.words.first].start;
                if (lacks_measure(c, &vague))
                    report_amount(c, CASE_vague_amount, &vague);
            } else
                report_amount(c, CASE_no_amount, line);
        }
    }
}
