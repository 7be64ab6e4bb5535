/* check/dusting.c: flour on the board, butter in the tin: what goes beside the dough, unmeasured.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "check/report.h"

/* The food that the words name, or that their verb hides; NULL where there is none, or it is salt.
 */
static const struct entry *food_in(const struct checker *c, struct span words)
{
    for (size_t i = words.first; i <= words.last; i++) {
        const struct word *w = &c->r->words.at[i];
        const struct entry *food =
            w->entry ? entry_as(pack_find(c->k, entry_value(w->entry), NULL), TAG_FOOD) : NULL;
        if (food)
            return food->marks & MARK_OF(salt) ? NULL : food;
    }
    return NULL;
}

/* Whether the dish's list has the food of these words, or has it near them. */
static bool has_line(const struct dish *d, struct text kind, size_t word)
{
    for (size_t i = 0; i < d->ingredients.count; i++) {
        const struct ingredient *line = &d->ingredients.at[i];
        bool far =
            line->words.first > word + OTHER_PART_WORDS; /* what goes in later has the amount */
        bool here = line->id == word && (!line->amount.known || far);
        if (!here && line->id + OTHER_PART_WORDS > word && line->id < word + OTHER_PART_WORDS
            && text_share_part(line->kind, kind, ' '))
            return true;
    }
    return false;
}

/* "Of butter the", "some flour on the": the words belong to an amount. */
static bool has_amount(const struct checker *c, size_t word)
{
    static const unsigned char TAGS[] = {TAG_OF,    TAG_UNIT, TAG_NUMBER,  TAG_ONES,
                                         TAG_VAGUE, TAG_MORE, TAG_THE,     TAG_DONE,
                                         TAG_STATE, TAG_WITH, TAG_COUNTER, TAG_NOT};
    return word && c->r->words.at[word - 1].after < AFTER_STOP
           && memchr(TAGS, c->r->words.at[word - 1].tag, sizeof TAGS);
}

static bool is_question(const struct checker *c, struct span words)
{
    const struct sentence *s = sentence_of(c->r, words.first);
    return s && s->flags & SENTENCE_QUESTION;
}

/* "Now you salt it ... just do it to taste". */
#define TASTE_WORDS 20
bool tasted_behind(const struct checker *c, struct span words)
{
    struct span where, behind = {words.last + 1, words.last + TASTE_WORDS};
    return behind.last < c->r->words.count
           && said_find(&c->sayings, c->r, "to_taste", behind, &where);
}

/* "Salt and pepper on both sides": each food that the dish's list has not. */
static void find_seasoning(struct checker *c, struct span part)
{
    struct span where;
    while (part.first <= part.last && said_find(&c->sayings, c->r, "seasons", part, &where)) {
        part.first = where.last + 1;
        if (has_amount(c, where.first) || c->r->words.at[where.first].scope & SCOPE_NOT_DONE
            || said_with(c, "to_taste", where) || is_question(c, where)
            || said_with(c, "asked", where) || tasted_behind(c, where))
            continue;
        for (size_t i = where.first; i <= where.last; i++) {
            const struct word *w = &c->r->words.at[i];
            const struct entry *food =
                w->entry ? entry_as(pack_find(c->k, entry_value(w->entry), NULL), TAG_FOOD) : NULL;
            bool none = i && c->r->words.at[i - 1].tag == TAG_NOT; /* "pepper but no salt" */
            if (food && !none && !(food->marks & MARK_OF(water)) && w->tag != TAG_INSIDE
                && !has_line(c->dish, entry_value(food), i))
                REPORT_PLAIN(c, no_amount,
                             ((struct subject_of){w->start, where,
                                                  w->tag == TAG_FOOD ? entry_shown(w->entry)
                                                                     : entry_shown(food)}));
        }
    }
}

/* "Butter the tin, a tablespoon of butter does it". */
#define AMOUNT_WORDS 12
static bool told_near(const struct dish *d, const struct entry *food, struct span words)
{
    for (size_t i = 0; i < d->ingredients.count; i++) {
        const struct ingredient *line = &d->ingredients.at[i];
        if (line->amount.known && !line->vague && line->id >= words.first
            && line->id <= words.last + AMOUNT_WORDS
            && text_share_part(line->kind, entry_value(food), ' '))
            return true;
    }
    return false;
}

/* "Flour the board", "butter a tin": more of it goes in than the dough or the batter had, and
 * nobody said how much. */
void find_dusting(struct checker *c)
{
    for (size_t i = 0; i < c->parts.count; i++) {
        struct span where, rest = c->parts.at[i];
        find_seasoning(c, rest);
        while (rest.first <= rest.last && said_find(&c->sayings, c->r, "dusts", rest, &where)) {
            const struct entry *food = food_in(c, where);
            rest.first = where.last + 1;
            if (!food || has_amount(c, where.first) || told_near(c->dish, food, where)
                || c->r->words.at[where.first].scope & SCOPE_NOT_DONE)
                continue;
            struct subject_of what = {c->r->words.at[where.first].start, where, entry_shown(food)};
            if (dusted_vaguely(c, where.last))
                REPORT_PLAIN(c, vague_amount, what);
            else
                REPORT_PLAIN(c, no_amount, what);
        }
    }
}
