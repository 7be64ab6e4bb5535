/* check/contradiction.c: two statements that cannot both be right, told by arithmetic: amounts,
 * pieces, yields. A correction in the next breath is none: the builder has dropped what was taken
 * back.
 * SPDX-License-Identifier: MIT */
#include "build/quantity.h"
#include "check/again.h"

/* ---- amounts */

/* "What's a poblano?", "the other two tablespoons": no amount that is told again. */
static bool tells_none(const struct checker *c, const struct match *m,
                       const struct said_amount *said)
{
    struct span where, words = {m->words.first ? m->words.first - 1 : 0, m->words.last};
    bool article = !said->amount.unit.length && ratio_equal(said->amount.max, RATIO(1))
                   && c->r->words.at[m->words.first].tag == TAG_ARTICLE;
    return !said->amount.known || said->vague || said->more || said->each || article
           || said_find(&c->sayings, c->r, "another_part", words, &where);
}

/* "A quarter cup of honey. Did I say a quarter? A third": said in the next breath. */
#define BREATH_WORDS 20
static bool corrects(const struct checker *c, const struct match *m, const struct went_in *in)
{
    return in->dish == c->number && in->other->id + BREATH_WORDS > m->words.first
           && said_with(c, "did_i_say", m->words);
}

static void check_recap(struct checker *c, const struct sentence *s, const struct match *m)
{
    struct said_amount said = {0};
    struct went_in in;
    const struct entry *food = match_entry(c->r, m, SLOT_food);
    line_amount(c->r, s, m, &said);
    if (!food || tells_none(c, m, &said)
        || !told_otherwise(c, food, m->words.first, &said.amount, &in) || corrects(c, m, &in))
        return;
    report_otherwise(c, m->words, entry_shown(food), in.dish, in.other);
}

/* "All six of the | chicken thighs". */
static void check_count(struct checker *c, const struct sentence *s, struct span where)
{
    struct went_in in;
    struct amount count = {0};
    struct text unit = TEXT_EMPTY;
    for (size_t i = where.last + 1; i <= s->last && i <= where.last + 3; i++) {
        const struct word *w = &c->r->words.at[i];
        if ((w->tag == TAG_UNIT || w->tag == TAG_COUNTER) && w->entry)
            unit = entry_value(w->entry); /* "all six cloves of garlic" */
        if (w->tag != TAG_FOOD || !w->entry)
            continue;
        bool counted = number_in(c, s, where, &count);
        count.unit = unit;
        if (counted && told_otherwise(c, w->entry, where.first, &count, &in))
            report_otherwise(c, (struct span){where.first, i}, entry_shown(w->entry), c->number,
                             in.other);
        return;
    }
}

/* "To go over it again: ...": all amounts of the next sentences look back. */
#define RECAP_SENTENCES 2
static bool in_recap(const struct checker *c, const struct sentence *s)
{
    struct span where;
    for (size_t i = 0; i <= RECAP_SENTENCES && s >= c->r->sentences.at + i; i++)
        if (said_find(&c->sayings, c->r, "recap_list", (struct span){(s - i)->first, (s - i)->last},
                      &where))
            return true;
    return false;
}

/* "Somebody asked about that rub. It's half a cup of pepper": told again, from `where` on. */
static bool answers(const struct checker *c, const struct sentence *s, struct span *where)
{
    size_t back = (size_t) (s - c->r->sentences.at);
    struct span asked,
        all = {(s - (back < RECAP_SENTENCES ? back : RECAP_SENTENCES))->first, s->last};
    if (!said_find(&c->sayings, c->r, "asked_again", all, &asked) || asked.last >= s->last)
        return false;
    all.first = asked.last + 1;
    return said_find(&c->sayings, c->r, "answered_so", all, where);
}

/* "Sorry, did I say two? It's one", "I lied about the sugar": said there or right before, it is a
 * correction. */
static bool takes_back(const struct checker *c, const struct sentence *s)
{
    struct span where, near = {s > c->r->sentences.at ? (s - 1)->first : s->first, s->last};
    return said_find(&c->sayings, c->r, "takes_back", near, &where);
}

/* "So three avocados, three limes and the salt": nothing is done, and one of the amounts is as it
 * was told. */
static bool sums_up(const struct checker *c, const struct sentence *s)
{
    size_t lines = 0, alike = 0;
    const struct span all = {s->first, s->last};
    if (c->r->words.at[s->first].tag != TAG_SO || span_has_tag(c->r, all, TAG_ACTION)
        || span_has_tag(c->r, all, TAG_MORE))
        return false;
    struct matches told = matches_of(c->r, s, KIND_OF(line));
    for (const struct match *m; (m = matches_next(&told));) {
        struct said_amount said = {0};
        struct went_in in;
        const struct entry *food = match_entry(c->r, m, SLOT_food);
        if (!food)
            continue;
        line_amount(c->r, s, m, &said);
        lines += said.amount.known;
        alike += said.amount.known && went_in(c, food, m->words.first, &said.amount, &in);
    }
    return alike && lines > alike;
}

static void check_sentence(struct checker *c, const struct sentence *s)
{
    struct span where, all = {s->first, s->last};
    if (said_find(&c->sayings, c->r, "recap_count", all, &where))
        check_count(c, s, where);
    if (!match_in(c->r, s, KIND_OF(line)) || takes_back(c, s))
        return;
    if (in_recap(c, s) || sums_up(c, s) || said_find(&c->sayings, c->r, "firm_amount", all, &where))
        where = all; /* "eight chilies for one coconut, not less" */
    else if (!said_find(&c->sayings, c->r, "recap_amount", all, &where)
             && !said_find(&c->sayings, c->r, "written_amount", all, &where)
             && !answers(c, s, &where))
        return;
    struct matches lines = matches_of(c->r, s, KIND_OF(line));
    for (const struct match *m; (m = matches_next(&lines));)
        if (m->words.last >= where.first)
            check_recap(c, s, m);
}

/* "So all six of the chicken thighs": amounts in a sentence that looks back. */
void find_amounts_again(struct checker *c)
{
    const struct span talk = talk_near(c);
    for (const struct sentence *s = NULL; (s = sentence_next(c->r, talk, s));)
        if (in_talk(c, s->first))
            check_sentence(c, s);
}

/* ---- yields */

/* "It serves eight", "should feed eight", not "I get two of them": said in the match, or right
 * before it. */
#define STATES_WORDS 2
static bool states_yield(const struct checker *c, const struct match *m)
{
    struct span where, words = m->words;
    words.first -= words.first < STATES_WORDS ? words.first : STATES_WORDS;
    return said_find(&c->sayings, c->r, "states_yield", words, &where)
           && where.last >= m->words.first;
}

/* What the yield counts; NULL where it counts people: "pasta for six" is no six of pasta. */
static const struct entry *counted(const struct checker *c, const struct match *yield)
{
    struct span what = match_slot(yield, SLOT_eater), number = match_slot(yield, SLOT_number);
    bool before = !span_is_empty(what) && !span_is_empty(number) && what.last < number.first;
    return before ? NULL : entry_at(c->r, what);
}

static bool is_people(const struct entry *e)
{
    return !e || e->tag == TAG_EATER || e->tag == TAG_VESSEL;
}

/* "Feeds four", "four people", "pasta for six"; "makes twelve" may be of anything. */
static bool is_served(const struct checker *c, const struct match *yield, const struct entry *e)
{
    struct span where;
    return text_is(yield->rule->option, "serving")
           || (e && is_people(e) && !yield->rule->option.length)
           || (!e && said_find(&c->sayings, c->r, "serves_people", yield->words, &where));
}

/* "Serves eight" and "makes six bowls": what both count must be the same. */
static bool counts_same(const struct checker *c, const struct match *a, const struct match *b)
{
    const struct entry *x = counted(c, a), *y = counted(c, b);
    if (is_people(x) && is_people(y))
        return text_equal(a->rule->option, b->rule->option)
               || (is_served(c, a, x) && is_served(c, b, y));
    return x && y && text_equal(entry_value(x), entry_value(y));
}

/* "It'll feed four, or it'll feed two of my brothers". */
#define OR_WORDS 6
static bool either(const struct checker *c, const struct match *a, const struct match *b)
{
    struct span between = {a->words.last + 1, b->words.first - 1};
    return b->words.first <= a->words.last + OR_WORDS && span_has_tag(c->r, between, TAG_OR);
}

void find_yields_again(struct checker *c)
{
    match_list yields = {0};
    add_matches(c, KIND_OF(yield), SCOPE_NOT_DONE, &yields);
    for (size_t n = 1; n < yields.count; n++) {
        const struct match *a = yields.at[n - 1], *b = yields.at[n];
        if (states_yield(c, a) && states_yield(c, b) && counts_same(c, a, b) && !either(c, a, b)
            && !overlap(ratio_double(a->low), ratio_double(a->high), ratio_double(b->low),
                        ratio_double(b->high)))
            REPORT(c, said_otherwise, subject_words(c, b->words), said_words(c->r, a->words));
    }
}
