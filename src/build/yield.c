/* build/yield.c: how much the dish makes, as it was said.
 * SPDX-License-Identifier: MIT */
#include "build/builder.h"
#include "match/capture.h"

/* A yield of a hundred thousand is a subscriber count. */
#define YIELD_MOST 2000

/* Whether the words say how many pieces come of it: "makes twelve", not "feeds twelve". */
static bool counts_pieces(const struct recording *r, const struct match *m)
{
    const struct word *w = &r->words.at[m->words.first];
    while (w->tag == TAG_INSIDE)
        w++;
    return w->tag == TAG_SERVE && w->entry->marks & MARK_OF(counts);
}

/* What a dish's title says in the plural: "muffin" of "Banana oat muffins". */
static const struct entry *titled_piece(const struct builder *b)
{
    const struct entry *e = pack_find(b->k, text_last_word(b->dish->title), NULL),
                       *dish = entry_as(e, TAG_DISH), *piece = dish ? dish : entry_as(e, TAG_FOOD);
    return piece && piece->marks & MARK_OF(plural) ? piece : NULL;
}

static struct text counted(const struct builder *b, const struct match *m)
{
    const struct entry *e = entry_at(b->r, match_slot(m, SLOT_eater));
    if (!e && counts_pieces(b->r, m))
        e = titled_piece(b);
    if (text_is(m->rule->option, "serving") || !e || e->tag == TAG_SIDE || e->tag == TAG_PART)
        return TEXT_OF("serving");
    const struct entry *eater = entry_as(pack_find(b->k, entry_shown(e), NULL), TAG_EATER);
    return eater ? entry_value(eater) : entry_shown(e);
}

static bool is_said(const struct recording *r, const struct match *m)
{
    for (size_t i = m->words.first; i <= m->words.last; i++)
        if (r->words.at[i].scope & SCOPE_UNREAL)
            return false;
    return true;
}

/* The last one said counts, since it is said with the finished dish in sight; what is only cut or
 * named ("so that's twelve squares") gives way to what is said to be served. */
void build_yield(struct builder *b)
{
    const struct sentence *s = b->sentence;
    for (size_t i = 0; i < s->match_count; i++) {
        const struct match *m = &b->r->matches.at[s->match_first + i];
        if (m->rule->kind != RULE_yield || !ratio_finite(m->high) || !is_said(b->r, m)
            || ratio_compare(m->high, RATIO(YIELD_MOST)) > 0)
            continue;
        bool weak = text_is(m->rule->option, "weak");
        if (weak && (b->yield_sure || ratio_equal(m->high, RATIO(1))))
            continue; /* "here's a plate" counts nothing */
        b->yield_sure = !weak;
        b->dish->yield = (struct yield){true, m->low, m->high, counted(b, m), m->words};
    }
}
