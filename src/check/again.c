/* check/again.c
 * SPDX-License-Identifier: MIT */
#include "check/again.h"

/* Words that look back stand so near to what they are about. */
#define LEAD_WORDS 6
#define BEHIND_WORDS 2
#define AFTER_WORDS 8
#define TIMER_WORDS 9
#define NEXT_WORDS 4

/* Whether the set's words stand right before word `next`. */
static bool leads_to(const struct checker *c, const char *set, size_t from, size_t next)
{
    struct span where = {from, from};
    while (from < next
           && said_find(&c->sayings, c->r, set, (struct span){from, next - 1}, &where)) {
        if (where.last + 1 == next
            || (where.last + 2 == next && c->r->words.at[next - 1].tag == TAG_OTHER))
            return true; /* "took us, what, ten minutes" */
        from = where.first + 1;
    }
    return false;
}

/* "That's my timer. Thirty-five minutes." */
static bool timer_before(const struct checker *c, const struct sentence *s, struct span words)
{
    size_t from = words.first > TIMER_WORDS ? words.first - TIMER_WORDS : 0;
    struct span where;
    return words.first == s->first && from < words.first
           && said_find(&c->sayings, c->r, "timer", (struct span){from, words.first - 1}, &where);
}

bool stands_before(const struct checker *c, const char *set, struct span words)
{
    const struct sentence *s = sentence_of(c->r, words.first);
    if (!s || words.first <= s->first)
        return false;
    size_t from = words.first > s->first + LEAD_WORDS ? words.first - LEAD_WORDS : s->first;
    return leads_to(c, set, from, words.first);
}

bool stands_behind(const struct checker *c, const char *set, struct span words)
{
    const struct span behind = {words.last + 1, words.last + NEXT_WORDS};
    struct span where;
    return behind.last < c->r->words.count && said_find(&c->sayings, c->r, set, behind, &where)
           && where.first == behind.first;
}

/* "The full thirty minutes". */
static bool full_time(const struct checker *c, const struct sentence *s, struct span words)
{
    return c->r->words.at[words.first].tag == TAG_FULLNESS && words.first > s->first
           && c->r->words.at[words.first - 1].tag == TAG_THE;
}

/* "Three hours at 150, like I said": the last word of the heat that stands behind a time. */
static size_t with_heat(const struct checker *c, const struct sentence *s, size_t last)
{
    struct matches heats = matches_of(c->r, s, KIND_OF(temperature));
    for (const struct match *m; (m = matches_next(&heats));)
        if (m->words.first > last && m->words.first <= last + BEHIND_WORDS)
            return m->words.last;
    return last;
}

bool looks_back(const struct checker *c, const char *before, struct span words)
{
    const struct sentence *s = sentence_of(c->r, words.first);
    struct span where;
    if (!s)
        return false;
    words.last = with_heat(c, s, words.last);
    size_t from = words.first > s->first + LEAD_WORDS ? words.first - LEAD_WORDS : s->first;
    size_t to = words.last + AFTER_WORDS < s->last ? words.last + AFTER_WORDS : s->last;
    return leads_to(c, before, from, words.first) || timer_before(c, s, words)
           || full_time(c, s, words)
           || (said_find(&c->sayings, c->r, "recap", (struct span){words.last + 1, to}, &where)
               && where.first <= words.last + BEHIND_WORDS);
}

/* Only the dish's words: going through the whole recording for each dish took most of a long one's
 * time. */
void add_matches(struct checker *c, uint64_t kinds, unsigned not_in, match_list *list)
{
    for (size_t n = 0; n < c->parts.count; n++) {
        struct matches said = matches_among(c->r, c->parts.at[n], kinds);
        for (const struct match *m; (m = matches_next(&said));)
            if (ratio_finite(m->low) && !(c->r->words.at[m->words.last].scope & not_in))
                *LIST_ADD(c->r->arena, list) = m;
    }
}

bool number_in(const struct checker *c, const struct sentence *s, struct span where,
               struct amount *count)
{
    struct matches numbers = matches_of(c->r, s, KIND_OF(number));
    for (const struct match *m; (m = matches_next(&numbers));) {
        if (m->words.first < where.first || m->words.last > where.last)
            continue;
        *count = (struct amount){true, m->low, m->high, TEXT_EMPTY, false};
        return true;
    }
    for (size_t i = where.first; i <= where.last; i++) {
        const struct word *w = &c->r->words.at[i]; /* digits, which no rule reads */
        *count = (struct amount){true, w->rare->number, w->rare->number, TEXT_EMPTY, false};
        if (w->tag == TAG_NUMBER && ratio_finite(w->rare->number))
            return true;
    }
    return false;
}

bool first_number(const struct checker *c, const struct sentence *s, struct span within,
                  struct amount *count, struct span *where)
{
    const struct recording *r = c->r;
    size_t at = within.first;
    while (at <= within.last && r->words.at[at].tag != TAG_NUMBER)
        at++;
    bool found = at <= within.last && ratio_finite(r->words.at[at].rare->number);
    if (found) {
        *count = (struct amount){true, r->words.at[at].rare->number, r->words.at[at].rare->number,
                                 TEXT_EMPTY, false};
        *where = (struct span){at, at};
    }
    struct matches numbers = matches_of(r, s, KIND_OF(number));
    for (const struct match *m; (m = matches_next(&numbers));) {
        if (m->words.first < within.first || m->words.last > within.last
            || (found && m->words.first >= where->first))
            continue;
        *count = (struct amount){true, m->low, m->high, TEXT_EMPTY, false};
        *where = m->words;
        found = true;
    }
    return found && ratio_finite(count->max);
}

bool overlap(double low, double high, double other_low, double other_high)
{
    return low <= other_high * 1.001 && other_low <= high * 1.001;
}

/* The entry of the title's last word, which says what the dish is; NULL for a word that no lexicon
 * has. */
static const struct entry *title_head(const struct checker *c, const struct dish *d)
{
    struct text title = d->title, word = TEXT_EMPTY, last = TEXT_EMPTY;
    char folded[64];
    while (title.length && text_part(&title, ' ', &word))
        last = word;
    if (!d->title_said || !last.length || last.length * 3 > sizeof folded)
        return NULL;
    struct text key = {folded, fold_word(last, folded, sizeof folded)};
    return pack_find(c->k, key, NULL);
}

static bool spoken(const struct checker *c, const struct entry *what, struct span where)
{
    for (size_t i = where.first; i <= where.last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->entry && (w->tag == TAG_FOOD || w->tag == TAG_DISH)
            && text_equal(entry_value(w->entry), entry_value(what)))
            return true;
    }
    return false;
}

size_t dish_named(const struct checker *c, struct span words)
{
    const struct sentence *s = sentence_of(c->r, words.first);
    size_t named = NO_DISH;
    for (size_t back = 0; s && back < 2 && named == NO_DISH && s >= c->r->sentences.at + back;
         back++)
        for (size_t i = 0; i < c->r->dishes.count; i++) {
            const struct entry *head = title_head(c, &c->r->dishes.at[i]);
            if (!head || !spoken(c, head, (struct span){(s - back)->first, (s - back)->last}))
                continue;
            if (named != NO_DISH)
                return NO_DISH;
            named = i;
        }
    return named;
}
