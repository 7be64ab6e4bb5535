/* check/unmeasured.c: foods that go in, and nobody said how much: no amount, a vague one, a number
 * without its unit.
 * SPDX-License-Identifier: MIT */
#include "check/report.h"
#include "match/capture.h"

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
    struct span where;
    return in_list(c, line) || vague_behind(c, line, &where);
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

/* "Beer. Three quarters of a cup", "sunflower oil, about a centimeter deep": the amount stands
 * behind the food, in words that the grammar does not put together. */
#define BEHIND_WORDS 9
#define NEXT_WORDS 4

/* Whether words (from, to] name a food that is not the line's. */
static bool other_food(const struct checker *c, const struct ingredient *line, size_t from,
                       size_t to)
{
    for (size_t i = from + 1; i <= to && i <= c->dish->words.last; i++) {
        const struct word *w = &c->r->words.at[i];
        if (w->tag == TAG_FOOD && w->entry && !(w->entry->marks & MARK_OF(generic))
            && !text_share_part(entry_shown(w->entry), line->food, ' '))
            return true;
    }
    return false;
}

/* "And corn. Two cups of beans": what follows an amount is another food, if only a kind of food. */
static bool counts_other(const struct checker *c, const struct ingredient *line, size_t last)
{
    size_t i = last + 1;
    if (i < c->r->words.count && c->r->words.at[i].tag == TAG_OF)
        i++;
    const struct word *w = i < c->r->words.count ? &c->r->words.at[i] : NULL;
    return w && w->tag == TAG_FOOD && w->entry
           && !text_share_part(entry_shown(w->entry), line->food, ' ');
}

static bool is_amount(const struct match *m)
{
    return m->rule->kind == RULE_amount && ratio_finite(m->low);
}

static bool amount_behind(const struct checker *c, const struct ingredient *line)
{
    const size_t end = c->r->words.count - 1;
    const size_t most = line->id + BEHIND_WORDS < end ? line->id + BEHIND_WORDS : end,
                 until = sentence_until(c->r, most);
    struct span where, behind = {line->id + 1, most};
    if (said_find(&c->sayings, c->r, "amount_behind", behind, &where)
        && !other_food(c, line, line->id, where.first))
        return true;
    for (size_t i = sentence_from(c->r, line->id); i < until; i++) {
        const struct sentence *s = &c->r->sentences.at[i];
        for (size_t n = s->match_first; n < s->match_first + s->match_count; n++) {
            const struct match *m = &c->r->matches.at[n];
            if (is_amount(m) && m->words.first > line->id && m->words.first <= most)
                return !other_food(c, line, line->id, m->words.last + NEXT_WORDS)
                       && !counts_other(c, line, m->words.last);
        }
    }
    return false;
}

/* "Put in that teaspoon of salt": a measure that was spoken of before. */
static bool measured(const struct checker *c, const struct ingredient *line)
{
    for (size_t i = line->id; i > 1 && i + NEXT_WORDS > line->id; i--) {
        if (c->r->words.at[i].tag == TAG_OF)
            return c->r->words.at[i - 1].tag == TAG_UNIT;
        if (i < line->id && c->r->words.at[i].after >= AFTER_COMMA)
            return false;
        if (i < line->id && c->r->words.at[i].tag == TAG_FOOD)
            return false;
    }
    return false;
}

/* "Do you put chilli in?": nobody does yet. "Garlic. How many is that? Four cloves": it is told. */
#define ASKED_WORDS 20
static bool is_asked(const struct checker *c, const struct ingredient *line)
{
    struct span where, behind = {line->id + 1, line->id + ASKED_WORDS};
    if (behind.last > c->dish->words.last)
        behind.last = c->dish->words.last;
    return said_with(c, "asked", line->words)
           || (said_find(&c->sayings, c->r, "asks_amount", behind, &where)
               && said_find(&c->sayings, c->r, "answers",
                            (struct span){where.last + 1, behind.last}, &where));
}

/* "The meat", "some spices": a kind, which stands for foods that are listed. */
static bool names_kind(const struct ingredient *line)
{
    return line->entry && line->entry->marks & (MARK_OF(generic) | MARK_OF(water));
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

/* "A sauce with a lot of spice to it": the spices themselves are named beside it. */
static bool all_spices(const struct ingredient *line)
{
    const uint64_t both = MARK_OF(generic) | MARK_OF(spice);
    return line->entry && (line->entry->marks & both) == both;
}

/* "That's a lot of oil", "some blueberries if you've got them": a judgement, or as much as there
 * is.
 */
#define AS_YOU_WORDS 8
static bool no_measure(const struct checker *c, const struct ingredient *line)
{
    struct span where, behind = {line->id, line->id + AS_YOU_WORDS},
                       from = {line->words.first > 2 ? line->words.first - 2 : 0, line->words.last};
    if (behind.last > c->dish->words.last)
        behind.last = c->dish->words.last;
    return said_find(&c->sayings, c->r, "judges", from, &where)
           || said_find(&c->sayings, c->r, "as_you_have", behind, &where);
}

/* "A lump of bicarb tastes of soap", after a teaspoon of it went in, is talk. */
static bool vague_amount(const struct checker *c, const struct ingredient *line)
{
    return !line->to_taste && !said_with(c, "to_taste", line->words) && !is_share(c, line)
           && !no_measure(c, line) && !said_with(c, "served_beside", line->words)
           && !all_spices(line) && !is_serving(c, line)
           && !(matters(line) && amount_elsewhere(c->dish, line));
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

/* "A little more oil": more than before, and nobody said how much. */
static bool vague_more(const struct checker *c, const struct ingredient *line)
{
    const struct word *w = food_word(c, line);
    return w && !line->amount.known && !line->vague && line->words.first < line->id
           && span_has_tag(c->r, (struct span){line->words.first, line->id}, TAG_MORE);
}

static bool is_vague(const struct checker *c, const struct ingredient *line, struct span *where)
{
    *where = (struct span){line->id ? line->id - 1 : 0, line->id};
    return said_find(&c->sayings, c->r, "vague_bare", *where, where) || vague_said(c, line, where)
           || vague_behind(c, line, where);
}

/* "My sister puts peas in hers", "until a drop of water skates", "like popcorn", "hot sauce on
 * mine": nothing goes in there. */
static bool in_passing(const struct checker *c, const struct ingredient *line)
{
    const struct word *w = food_word(c, line);
    const struct sentence *s = w ? sentence_of(c->r, line->id) : NULL;
    struct span where, rest = s ? (struct span){s->first, s->last} : NO_WORDS;
    if (s && s->flags & SENTENCE_QUESTION && s->last + 1 < c->r->words.count)
        rest.last =
            sentence_of(c->r, s->last + 1)->last; /* "Raisins? Some families put raisins." */
    while (s && rest.first <= rest.last && said_find(&c->sayings, c->r, "passing", rest, &where)) {
        if ((where.first <= line->id && line->id <= where.last) || where.first > s->last)
            return true;
        rest.first = where.first + 1;
    }
    return w && w->scope & (SCOPE_UNREAL | SCOPE_UNTIL);
}

/* "Butter them while they're hot": a verb. */
static bool is_verb(const struct checker *c, const struct ingredient *line)
{
    return line->id < c->dish->words.last && c->r->words.at[line->id].after < AFTER_COMMA
           && c->r->words.at[line->id + 1].tag == TAG_IT;
}

/* Whether the talk around the food tells how much of it, or that none goes in. */
static bool told(const struct checker *c, const struct ingredient *line)
{
    return is_verb(c, line) || resumed(c, line->id) || is_asked(c, line) || measured(c, line)
           || known_elsewhere(c, line) || amount_behind(c, line)
           || (line->id && c->r->words.at[line->id - 1].tag == TAG_NOT);
}

static bool needs_amount(const struct checker *c, const struct ingredient *line)
{
    return !in_passing(c, line) && !line->amount.known && !line->to_taste && !line->optional
           && line->role == ROLE_INGREDIENT && !names_kind(line) && goes_in(c, line)
           && !amount_elsewhere(c->dish, line) && !is_place(c, line)
           && !said_with(c, "laid_out", line->words) && !(food_word(c, line) && told(c, line));
}

/* A run-down's food that has not gone in yet; "one plate has some flour on it" is in its place. */
static bool waits(const struct checker *c, const struct ingredient *line)
{
    bool placed = line->vague && line->id < c->dish->words.last
                  && c->r->words.at[line->id + 1].tag == TAG_INTO;
    return line->announced && !line->used && !placed;
}

/* "A handful of -- hey, boots off": what follows is no food. */
static bool breaks_off(const struct checker *c, const struct ingredient *line)
{
    struct span where;
    return said_with(c, "cut_off", line->words)
           && said_find(&c->sayings, c->r, "cut_off", line->words, &where) && !line->entry;
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
        } else if (line->vague || vague_more(c, line)) {
            if (!in_passing(c, line) && vague_amount(c, line)
                && !said_with(c, "laid_out", line->words))
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
