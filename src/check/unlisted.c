/* check/unlisted.c: vague amounts that no line of the list has: "a bit of oil on the grate", where
 * the oil's line has what went in before.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "check/report.h"
#include "check/unmeasured.h"
#include "match/capture.h"

/* Whether the list has the match's words, or says there is a vague amount of the food near them. */
static bool listed(const struct checker *c, const struct match *m, const struct entry *food)
{
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        bool meets = line->words.first <= m->words.last && m->words.first <= line->words.last;
        if (meets
            || ((line->vague || !line->amount.known) && text_equal(line->kind, entry_value(food))))
            return true;
    }
    return false;
}

/* "That's a lot of oil", "with it some cream": a judgement, or what it is eaten with. */
#define BESIDE_WORDS 2
static bool beside(const struct checker *c, const struct match *m)
{
    static const unsigned char TAGS[] = {TAG_WITH, TAG_BESIDE, TAG_THERE, TAG_BE, TAG_LIKE};
    for (size_t i = m->words.first; i-- > 0 && i + BESIDE_WORDS >= m->words.first;)
        if (memchr(TAGS, c->r->words.at[i].tag, sizeof TAGS)
            || (i + 1 == m->words.first && c->r->words.at[i].tag == TAG_THE))
            return true;
    return false;
}

/* "A lump of bicarb tastes of soap", "a few nuts on top if you like": nothing that must be
 * measured.
 */
static bool only_talk(const struct checker *c, const struct match *m, struct span food)
{
    const struct ingredient line = {.id = food.last, .words = m->words};
    return in_passing(c, &line) || no_measure(c, &line);
}

/* "A bit of oil on the grate", where the list has another oil's amount: that one is no less vague.
 */
static void check_unlisted(struct checker *c, const struct sentence *s, const struct match *m)
{
    struct said_amount said;
    struct span words = match_slot(m, SLOT_food);
    const struct entry *food = entry_at(c->r, words);
    if (!food || c->r->words.at[words.last].scope & (SCOPE_NOT_DONE | SCOPE_UNTIL))
        return;
    line_amount(c->r, s, m, &said);
    if (said.vague && !said.more && !beside(c, m) && !listed(c, m, food)
        && !span_has_tag(c->r, (struct span){m->words.first, words.last}, TAG_THE)
        && !said_with(c, "to_taste", m->words) && !only_talk(c, m, words)
        && !said_with(c, "laid_out", m->words))
        REPORT_PLAIN(c, vague_amount,
                     ((struct subject_of){c->r->words.at[m->words.first].start, m->words,
                                          entry_shown(food)}));
}

void find_unlisted(struct checker *c)
{
    for (const struct sentence *s = NULL; (s = next_sentence(c, s));) {
        struct matches lines = matches_of(c->r, s, KIND_OF(line));
        for (const struct match *m; (m = matches_next(&lines));)
            check_unlisted(c, s, m);
    }
}
