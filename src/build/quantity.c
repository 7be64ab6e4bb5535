/* build/quantity.c
 * SPDX-License-Identifier: MIT */
#include "build/quantity.h"

#include "match/capture.h"

void number_at(const struct recording *r, const struct sentence *s, struct span words,
               struct ratio *low, struct ratio *high)
{
    *low = *high = RATIO_NONE;
    if (span_is_empty(words))
        return;
    const struct match *m = chunk_match(r, s, words, RULE_number);
    const struct word *w = &r->words.at[words.last];
    if (m) {
        *low = m->low;
        *high = m->high;
    } else {
        *low = *high = ratio_known(w->rare->number) ? w->rare->number
                       : w->entry                   ? entry_number(w->entry)
                                                    : RATIO_NONE;
    }
}

static bool is_number(const struct recording *r, size_t i)
{
    unsigned char tag = r->words.at[i].tag;
    return tag == TAG_NUMBER || tag == TAG_ONES || tag == TAG_TEENS || tag == TAG_TENS;
}

/* What the words of an amount say beside number and unit: hedges, "at least", "another". */
static void read_around(const struct recording *r, struct span words, struct said_amount *out)
{
    for (size_t i = words.first; i <= words.last; i++) {
        const struct word *w = &r->words.at[i];
        if (!w->entry || w->tag == TAG_INSIDE)
            continue;
        if (w->tag == TAG_HEDGE && i > words.first && i < words.last && is_number(r, i + 1)
            && (is_number(r, i - 1) || r->words.at[i - 1].tag == TAG_OR))
            continue; /* "two maybe three": the range says so */
        if (w->tag == TAG_HEDGE && i + 3 <= words.last && is_number(r, i + 1)
            && r->words.at[i + 2].tag == TAG_AND && is_number(r, i + 3))
            continue; /* "between two and three" */
        if (w->tag == TAG_HEDGE || w->entry->marks & MARK_OF(approx))
            out->amount.approx = true;
        if (w->tag == TAG_ATLEAST)
            out->amount.max = RATIO_UPWARDS;
        out->more |= w->tag == TAG_MORE;
        out->each |= w->tag == TAG_EACH;
    }
}

static void set_amount(struct amount *a, struct ratio low, struct ratio high, struct text unit)
{
    if (!ratio_known(low))
        return;
    a->known = true;
    a->min = low;
    a->max = high;
    a->unit = unit;
}

void read_amount(const struct recording *r, const struct sentence *s, const struct match *m,
                 struct said_amount *out)
{
    const struct entry *unit = match_entry(r, m, SLOT_unit);
    struct ratio low = m->low, high = m->high;
    *out = (struct said_amount){0};
    if (m->rule->kind == RULE_vague) {
        out->vague = true;
        return;
    }
    /* "Two spoons": counted, and nobody says what of. */
    out->unsized = unit && unit->tag == TAG_UNIT && unit->marks & MARK_OF(generic);
    set_amount(&out->amount, low, high, unit && !out->unsized ? entry_value(unit) : TEXT_EMPTY);
    out->vague = unit && unit->marks & MARK_OF(vague);
    struct span package = match_slot(m, SLOT_package);
    const struct entry *packunit = match_entry(r, m, SLOT_packunit);
    if (packunit) {
        number_at(r, s, package, &low, &high);
        set_amount(&out->package, low, high, entry_value(packunit));
    }
    read_around(r, m->words, out);
}

/* "In a cup, two tablespoons of oil", "that is one sachet, half a teaspoon of salt": the amount
 * belongs to what stands before it. */
static bool is_of_another(const struct recording *r, const struct match *first)
{
    const size_t i = first->words.first;
    const unsigned char before = i ? r->words.at[i - 1].tag : (unsigned char) TAG_SO;
    return first->rule->kind == RULE_amount
           && (before == TAG_THERE
               || (before == TAG_INTO && r->words.at[first->words.last].after >= AFTER_COMMA));
}

/* Of two amounts before one food the second is another way to say the first ("1 cup (250 g)"),
 * unless it takes it back: then it has the same unit, or a "sorry" before it. */
static const struct match *meant_amount(const struct recording *r, const struct sentence *s,
                                        const struct match *line, const struct match *first)
{
    struct span second = match_slot(line, SLOT_amount2);
    const struct match *m = span_is_empty(second) ? NULL : chunk_match(r, s, second, RULE_amount);
    if (!m && first && !span_is_empty(second)) /* "half a cup, some mustard" */
        m = chunk_match(r, s, second, RULE_vague);
    if (!m || !first || m->rule->kind == RULE_vague || is_of_another(r, first))
        return m ? m : first;
    const struct entry *a = match_entry(r, first, SLOT_unit), *b = match_entry(r, m, SLOT_unit);
    bool taken_back = (!a && b) || (a && b && text_equal(entry_value(a), entry_value(b)));
    for (size_t i = first->words.last; i < m->words.first; i++)
        taken_back |= r->words.at[i].tag == TAG_SORRY || r->words.at[i].tag == TAG_NOT;
    return taken_back ? m : first;
}

/* How much of `to` one `from` is, where table units gives both a size; none where not. */
static struct ratio unit_times(const struct pack *k, struct text from, struct text to)
{
    const struct table *t = pack_table(k, "units");
    size_t a = t ? table_find(t, from) : 0, b = t ? table_find(t, to) : 0;
    if (!t || a >= t->rows || b >= t->rows)
        return RATIO_NONE;
    size_t kind = table_column(t, "dimension"), size = table_column(t, "factor");
    struct text one = table_cell(t, a, size), other = table_cell(t, b, size);
    struct ratio x = ratio_read(one.at, one.length), y = ratio_read(other.at, other.length);
    if (!text_equal(table_cell(t, a, kind), table_cell(t, b, kind)) || !ratio_finite(x)
        || !ratio_finite(y))
        return RATIO_NONE;
    return ratio_divide(x, y);
}

void add_top(const struct recording *r, const struct pack *k, const struct sentence *s,
             const struct match *line, struct said_amount *out)
{
    struct span slot = match_slot(line, SLOT_top);
    const struct match *m = span_is_empty(slot) ? NULL : chunk_match(r, s, slot, RULE_amount);
    struct said_amount top = {0};
    if (!m)
        return;
    read_amount(r, s, m, &top);
    struct ratio times = unit_times(k, top.amount.unit, out->amount.unit);
    if (!ratio_finite(times) || !ratio_finite(out->amount.max) || !ratio_finite(top.amount.max))
        return;
    out->amount.min = ratio_add(out->amount.min, ratio_multiply(top.amount.min, times));
    out->amount.max = ratio_add(out->amount.max, ratio_multiply(top.amount.max, times));
}

/* "ginger, a two-inch piece": the size is the amount. */
static void length_amount(const struct recording *r, const struct sentence *s, struct span slot,
                          struct said_amount *out)
{
    const struct match *m = chunk_match(r, s, slot, RULE_measure);
    const struct entry *unit = match_entry(r, m, SLOT_unit);
    struct ratio low, high;
    if (!unit)
        return;
    number_at(r, s, match_slot(m, SLOT_number), &low, &high);
    set_amount(&out->amount, low, high, entry_value(unit));
}

/* "Another egg", "one more egg", not "more salt". */
static bool adds_one(const struct recording *r, const struct match *line)
{
    const struct entry *more = match_entry(r, line, SLOT_more);
    return more && more->marks & MARK_OF(counts);
}

void line_amount(const struct recording *r, const struct sentence *s, const struct match *line,
                 struct said_amount *out)
{
    struct span slot = match_slot(line, SLOT_amount), number = match_slot(line, SLOT_number);
    struct ratio low, high;
    *out = (struct said_amount){0};
    if (!span_is_empty(slot)) {
        const struct match *m = chunk_match(r, s, slot, RULE_amount);
        m = meant_amount(r, s, line, m);
        if (!m)
            m = meant_amount(r, s, line, chunk_match(r, s, slot, RULE_vague));
        if (m)
            read_amount(r, s, m, out);
        else if (text_is(line->rule->option, "length"))
            length_amount(r, s, slot, out);
    } else if (!span_is_empty(number)) {
        number_at(r, s, number, &low, &high);
        const struct entry *unit = match_entry(r, line, SLOT_unit);
        set_amount(&out->amount, low, high, unit ? entry_value(unit) : TEXT_EMPTY);
    } else if (text_is(line->rule->option, "one") || adds_one(r, line)) {
        set_amount(&out->amount, RATIO(1), RATIO(1), TEXT_EMPTY);
    }
    read_around(r, line->words, out);
}
