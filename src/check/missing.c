/* check/missing.c: what a cook at home needs and has not heard: amounts, units, temperatures,
 * times, a yield.
 * SPDX-License-Identifier: MIT */
#include "check/report.h"
#include "match/capture.h"

/* Whether another line that may be the same food says how much: "chicken" after "eight chicken
 * thighs", "peaches" after "three ripe peaches". */
static bool amount_elsewhere(const struct dish *d, const struct ingredient *line)
{
    for (size_t i = 0; i < d->ingredients.count; i++) {
        const struct ingredient *other = &d->ingredients.at[i];
        if (other != line && (other->amount.known || other->to_taste)
            && (text_equal(other->kind, line->kind)
                || text_share_part(other->food, line->food, ' ')))
            return true;
    }
    return false;
}

/* "Two teaspoons of salt and oregano", "And vanilla.": named in a row of amounts, or alone in its
 * sentence. */
#define LIST_WORDS 3
#define ALONE_WORDS 4
static bool in_list(const struct checker *c, const struct ingredient *line)
{
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *other = &c->dish->ingredients.at[i];
        if (other->amount.known && other->id < line->words.first
            && line->words.first - other->id <= LIST_WORDS)
            return true;
    }
    const struct sentence *s = sentence_of(c->r, line->id);
    return s && s->last - s->first < ALONE_WORDS && !(s->flags & SENTENCE_QUESTION);
}

/* Whether the food is spoken of where a step puts it in; a mention in passing tells nothing. */
static bool goes_in(const struct checker *c, const struct ingredient *line)
{
    const uint64_t no = MARK_OF(serves) | MARK_OF(light) | MARK_OF(hidden) | MARK_OF(takes);
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        if (line->id >= s->words.first && line->id <= s->words.last && !(step_marks(c, s) & no))
            return true;
    }
    return in_list(c, line);
}

/* The word that names the food; NULL for a line that the cook added. */
static const struct word *food_word(const struct checker *c, const struct ingredient *line)
{
    return line->id < c->r->words.count ? &c->r->words.at[line->id] : NULL;
}

/* "Pour all of that into the flour": the food is where something else goes, and in already. */
#define PLACE_WORDS 5
static bool is_place(const struct checker *c, const struct ingredient *line)
{
    const struct word *w = food_word(c, line);
    const struct sentence *s = w ? sentence_of(c->r, line->id) : NULL;
    size_t food = w && w->entry && w->entry->words_count > 1 ? w->entry_first : line->id;
    if (!s || food == s->first)
        return false;
    struct span where, before = {s->first, food};
    if (food - s->first > PLACE_WORDS)
        before.first = food - PLACE_WORDS;
    while (before.first <= before.last
           && said_find(&c->sayings, c->r, "place_food", before, &where)) {
        if (where.last >= food)
            return true;
        before.first = where.first + 1;
    }
    return false;
}

/* "The meat", "some spices": a kind, which stands for foods that are listed. */
static bool names_kind(const struct ingredient *line)
{
    return line->entry && line->entry->marks & (MARK_OF(generic) | MARK_OF(water));
}

/* "Two bay leaves" is a count, though herbs are measured by the spoon; "110 of butter" is none. */
#define COUNT_MOST 20
static bool counted(const struct checker *c, const struct ingredient *line)
{
    const struct word *w = food_word(c, line);
    const struct entry *said = w ? w->entry : NULL;
    bool one = ratio_equal(line->amount.min, RATIO(1));
    return ratio_compare(line->amount.min, RATIO(COUNT_MOST)) < 0
           && (one || (said && said->marks & MARK_OF(plural)));
}

/* "With a bit of the syrup over": a part of what the dish has already. */
static bool is_share(const struct checker *c, const struct ingredient *line)
{
    return line->words.first < line->id
           && span_has_tag(c->r, (struct span){line->words.first, line->id - 1}, TAG_THE);
}

/* "Serves four with some crusty bread", "two thighs each, and a spoonful of potatoes". */
static bool is_serving(const struct checker *c, const struct ingredient *line)
{
    if (line->entry && line->entry->marks & MARK_OF(aside))
        return said_with(c, "states_yield", line->words);
    const struct sentence *s = sentence_of(c->r, line->words.first);
    return s && amount_elsewhere(c->dish, line) && s->first < line->words.first
           && span_has_tag(c->r, (struct span){s->first, line->words.first}, TAG_EACH);
}

/* A cake does not rise by "a bit of" baking powder. */
static bool matters(const struct ingredient *line)
{
    return line->entry && line->entry->marks & MARK_OF(leavening);
}

/* "A lump of bicarb tastes of soap", after a teaspoon of it went in, is talk. */
static bool vague_amount(const struct checker *c, const struct ingredient *line)
{
    return !line->to_taste && !said_with(c, "to_taste", line->words) && !is_share(c, line)
           && !is_serving(c, line) && !(matters(line) && amount_elsewhere(c->dish, line));
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
        arena_format(c->r->arena, "%.*s %.*s", TEXT(f->why), TEXT(fill(c, row->why, blanks, 2)));
    f->suggest = row->suggest;
}

/* The words of a vague amount of the food, wherever in the dish: "and some black pepper", after a
 * run-down that named the pepper only. False when there are none. */
static bool vague_said(const struct checker *c, const struct ingredient *line, struct span *where)
{
    const size_t until = sentence_until(c->r, c->dish->words.last);
    for (size_t i = sentence_from(c->r, c->dish->words.first); i < until; i++) {
        const struct sentence *s = &c->r->sentences.at[i];
        for (size_t n = s->match_first; n < s->match_first + s->match_count; n++) {
            const struct match *m = &c->r->matches.at[n];
            struct said_amount said;
            struct span food = match_slot(m, SLOT_food);
            const struct entry *e = span_is_empty(food) ? NULL : entry_at(c->r, food);
            if (m->rule->kind != RULE_line || !e || !in_dish(c, m->words.first)
                || !foods_alike(entry_value(e), entry_shown(e), line->kind, line->food))
                continue;
            line_amount(c->r, s, m, &said);
            *where = m->words;
            if (said.vague)
                return true;
        }
    }
    return false;
}

/* "Black pepper. Plenty.", "pearl sugar on the top, a little bit": what is vague stands behind. */
#define VAGUE_WORDS 8
static bool vague_behind(const struct checker *c, const struct ingredient *line, struct span *where)
{
    const size_t last = c->dish->words.last;
    for (size_t i = line->id + 1; i <= last && i <= line->id + VAGUE_WORDS; i++) {
        const struct word *w = &c->r->words.at[i];
        unsigned char next = i < last ? w[1].tag : TAG_OTHER;
        if (w->tag == TAG_FOOD || w->tag == TAG_PART || w->tag == TAG_UNIT)
            return false;
        if (w->tag != TAG_VAGUE)
            continue;
        *where = (struct span){line->id, i};
        return w->after >= AFTER_STOP || next == TAG_DOWN || next == TAG_FOR;
    }
    return false;
}

static bool is_vague(const struct checker *c, const struct ingredient *line, struct span *where)
{
    return vague_said(c, line, where) || vague_behind(c, line, where);
}

/* "My sister puts peas in hers", "until a drop of water skates": nothing goes in there. */
static bool in_passing(const struct checker *c, const struct ingredient *line)
{
    const struct word *w = food_word(c, line);
    return w && w->scope & (SCOPE_UNREAL | SCOPE_UNTIL);
}

static bool needs_amount(const struct checker *c, const struct ingredient *line)
{
    return !in_passing(c, line) && !line->amount.known && !line->to_taste && !line->optional
           && line->role == ROLE_INGREDIENT && !names_kind(line) && goes_in(c, line)
           && !amount_elsewhere(c->dish, line) && !is_place(c, line)
           && !said_with(c, "laid_out", line->words)
           && !(line->id && food_word(c, line) && c->r->words.at[line->id - 1].tag == TAG_NOT);
}

static void find_amounts(struct checker *c)
{
    for (size_t i = 0; i < c->dish->ingredients.count; i++) {
        const struct ingredient *line = &c->dish->ingredients.at[i];
        if (line->role == ROLE_SERVE_WITH || (line->announced && !line->used))
            continue;
        if (line->no_unit) {
            if (!counted(c, line))
                report_amount(c, CASE_no_unit, line);
        } else if (line->vague) {
            if (vague_amount(c, line))
                report_amount(c, matters(line) ? CASE_vague_matters : CASE_vague_amount, line);
        } else if (needs_amount(c, line)) {
            struct ingredient vague = *line;
            if (is_vague(c, line, &vague.words)) {
                vague.at = c->r->words.at[vague.words.first].start;
                report_amount(c, CASE_vague_amount, &vague);
            } else
                report_amount(c, CASE_no_amount, line);
        }
    }
}

/* Whether a temperature of that thing was said. What is hotter than boiling water is the oven's or
 * the oil's, whatever stood nearest to the number. */
static bool temperature_of(const struct dish *d, const char *of)
{
    for (size_t i = 0; i < d->steps.count; i++)
        for (size_t n = 0; n < d->steps.at[i].temperatures.count; n++) {
            const struct temperature *t = &d->steps.at[i].temperatures.at[n];
            if (text_is(t->of, of) || (!text_is(t->of, "oven") && ratio_double(t->value) > 212))
                return true;
        }
    return false;
}

/* ---- flour for the board */

/* "Flour the board", where the dough has had its flour: more of it goes in, and nobody said how
 * much. */
static void find_dusting(struct checker *c)
{
    for (size_t i = c->dish->words.first; i < c->dish->words.last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->tag != TAG_ACTION || !w->entry || !(w->entry->marks & MARK_OF(seasons))
            || w->scope & SCOPE_NOT_DONE || w[1].tag != TAG_THE || !in_dish(c, i))
            continue;
        const struct entry *food = entry_as(pack_find(c->k, entry_value(w->entry), NULL), TAG_FOOD);
        for (size_t n = 0; food && n < c->dish->ingredients.count; n++) {
            const struct ingredient *line = &c->dish->ingredients.at[n];
            if (line->id == i || food->marks & MARK_OF(salt)
                || !foods_alike(line->kind, line->food, entry_value(food), entry_shown(food)))
                continue;
            REPORT_PLAIN(c, no_amount, ((struct subject_of){w->start, {i, i}, entry_shown(food)}));
            break;
        }
    }
}

/* Whether the step's sentence says what needs it: the builder fills in a verb where a cook left it
 * out. */
static bool heat_said(const struct checker *c, const struct step *s, uint64_t marks, const char *of)
{
    const struct sentence *said = sentence_of(c->r, s->words.first);
    for (size_t i = said ? said->first : s->words.first; i <= s->words.last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->entry && !(w->scope & SCOPE_SUPPOSED)
            && (text_is(entry_value(w->entry), of) || w->entry->marks & marks))
            return true;
    }
    return false;
}

/* The first step that needs a temperature where the whole dish has none. */
static void find_temperature(struct checker *c, uint64_t marks, const char *of)
{
    if (temperature_of(c->dish, of))
        return;
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        if (step_marks(c, s) & marks && heat_said(c, s, marks, of)) {
            REPORT(c, no_temperature, subject_step(c->r, s), text_from(of));
            return;
        }
    }
}

/* A time or a sign of doneness in the step, or in the one that carries it on. */
static bool has_end(const struct dish *d, size_t i)
{
    for (size_t n = i; n < d->steps.count && n <= i + 1; n++)
        if (d->steps.at[n].durations.count || d->steps.at[n].until.length)
            return true;
    return false;
}

/* Rests, chills, rises and the like: what the set "needs_time" lists. */
static void find_times(struct checker *c)
{
    for (size_t i = 0; i < c->dish->steps.count; i++) {
        const struct step *s = &c->dish->steps.at[i];
        struct span where;
        if (has_end(c->dish, i) || !said_find(&c->sayings, c->r, "needs_time", s->words, &where)
            || c->r->words.at[where.last].scope & (SCOPE_NOT_DONE | SCOPE_UNTIL))
            continue;
        struct subject_of what = {c->r->words.at[where.first].start, where,
                                  said_words(c->r, where)};
        REPORT_PLAIN(c, no_time, what);
    }
}

/* Talk so near a dish may be of it. */
#define BESIDE_WORDS 60

/* A count that the builder took for no yield is still one that a reader can work with. */
static bool yield_heard(const struct checker *c)
{
    struct span where, around = talk_around(c);
    size_t first = c->dish->words.first, last = c->dish->words.last;
    const struct span beside[] = {
        {first > around.first + BESIDE_WORDS ? first - BESIDE_WORDS : around.first, first - 1},
        {last + 1, last + BESIDE_WORDS < around.last ? last + BESIDE_WORDS : around.last}};
    for (size_t i = 0; i < c->parts.count; i++)
        if (said_find(&c->sayings, c->r, "yield_heard", c->parts.at[i], &where))
            return true;
    for (size_t i = 0; i < 2; i++)
        if (beside[i].first <= beside[i].last && beside[i].last < c->r->words.count
            && said_find(&c->sayings, c->r, "yield_heard", beside[i], &where))
            return true;
    return false;
}

/* A stretch that nobody named may be a part of the dish beside it, whose yield was said there. */
static void find_yield(struct checker *c)
{
    const struct dish *d = c->dish;
    if (!d->yield.known && d->title_said && !yield_heard(c))
        REPORT_PLAIN(c, no_yield, ((struct subject_of){d->start, NO_WORDS, d->title}));
}

void find_missing(struct checker *c)
{
    find_amounts(c);
    find_dusting(c);
    find_temperature(c, MARK_OF(ovens), "oven");
    find_temperature(c, MARK_OF(deep), "oil");
    find_times(c);
    find_yield(c);
}
