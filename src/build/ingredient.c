/* build/ingredient.c: foods with or without amounts -> ingredient lines.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "base/arena.h"
#include "build/wording.h"
#include "match/capture.h"
#include "match/subject.h"

/* Words that stand in no lexicon, with no comma behind. */
static bool is_unknown(const struct builder *b, struct span words)
{
    for (size_t i = words.first; i <= words.last; i++)
        if (b->r->words.at[i].entry || b->r->words.at[i].after >= AFTER_COMMA
            || b->r->words.at[i].filler)
            return false;
    return true;
}

/* A food of the lexicon, or words that no lexicon knows where a food must stand. */
static bool is_food(const struct builder *b, const struct chunk *c, struct span food)
{
    const struct entry *e = entry_at(b->r, food);
    struct text option = c->match->rule->option;
    if (text_is(option, "compound"))
        return true;
    if (text_is(option, "strange") && !is_unknown(b, match_slot(c->match, SLOT_state)))
        return false; /* "a cup of what you like" */
    if (!text_is(option, "unknown"))
        return e && e->tag == TAG_FOOD;
    if (chunk_tag(&b->chunks, (size_t) (c - b->chunks.at) + 1) == TAG_EACH)
        return false; /* "a quarter cup of batter each" */
    for (size_t i = food.first; i <= food.last; i++)
        if ((b->r->words.at[i].entry && b->r->words.at[i].tag == TAG_OTHER)
            || step_text(b->k, "particle", b->r->words.at[i].key).length)
            return false; /* "150 grams of dark, broken up" */
    return true;
}

/* "onion soup", "fruit meringue tarts": the food only says what kind of dish or part it is. */
static bool is_compound(const struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index], *next = c + 1;
    if (index + 1 >= b->chunks.count || b->r->words.at[c->last].after >= AFTER_COMMA)
        return false;
    const struct entry *food = entry_at(b->r, match_slot(c->match, SLOT_food));
    bool several = food && food->marks & MARK_OF(plural) /* "two avocados, mash those" */
                   && !span_is_empty(match_slot(c->match, SLOT_number));
    if (several || !span_is_empty(match_slot(c->match, SLOT_amount)))
        return false;
    return next->tag == TAG_LIKE /* "walnut-sized balls" */
           || next->tag == TAG_DISH || next->tag == TAG_PART;
}

/* "A cup of sugar, not sugar, flour": what was denied is the line before. */
static bool is_denied(const struct builder *b, const struct chunk *c, size_t index,
                      const struct ingredient *line)
{
    const struct chunk *denied = c - 1;
    const struct entry *food = index > 2 && denied->tag == TAG_LINE && denied->match
                                   ? entry_at(b->r, match_slot(denied->match, SLOT_food))
                                   : NULL;
    return food && denied->scope & SCOPE_NEGATED && b->chunks.at[index - 2].tag == TAG_NOT
           && line->words.last == b->chunks.at[index - 3].last
           && text_equal(entry_value(food), line->kind);
}

/* "one red pepper, sorry, one green pepper": the food that was said last was not meant. */
static bool replaces_food(const struct builder *b, const struct chunk *c, size_t index,
                          struct ingredient *line)
{
    if (!index || !line)
        return false;
    const struct chunk *next = c + 1, *before = c - 1;
    bool last = before->tag == TAG_LINE && line->words.last == before->last;
    if (last && index + 1 < b->chunks.count && next->tag == TAG_SORRY
        && b->r->words.at[line->words.last].after == AFTER_COMMA)
        return index + 2 == b->chunks.count || b->r->words.at[next->last].after >= AFTER_COMMA;
    bool actual =
        b->r->words.at[c->first - 1].filler && b->r->words.at[c->first - 1].tag == TAG_SORRY;
    if (last && actual) /* "one red pepper, actually one green pepper" */
        return true;
    if (b->r->words.at[c->first].tag == TAG_THE && span_is_empty(match_slot(c->match, SLOT_amount)))
        return false; /* "no, the sausage has so much fat" */
    const bool taken_back =
        b->r->words.at[c->first - 1].tag == TAG_SORRY || is_no_by_itself(b->r, c->first - 1);
    if (index == 1 && taken_back && before->first == line->words.last + 1)
        return true; /* "a cup of white sugar. No, brown sugar" */
    if (index < 2 || b->chunks.at[index - 2].tag != TAG_LINE
        || line->words.last != b->chunks.at[index - 2].last)
        return is_denied(b, c, index, line);
    return taken_back;
}

static void replace_food(struct builder *b, struct ingredient *line, const struct chunk *c,
                         struct span food, const struct entry *entry, struct text name,
                         const struct said_amount *said)
{
    name_line(line, food, entry, name);
    line->words.last = c->last;
    if (said->amount.known)
        set_said(line, said);
    read_prep_inside(b, line, c->match);
}

/* "two tablespoons of its juice": of the fruit that was spoken of last. */
static void build_its(struct builder *b, const struct chunk *c)
{
    const struct ingredient *fruit = last_line(b);
    struct span part = match_slot(c->match, SLOT_extract);
    if (!fruit || is_left_out(c))
        return;
    struct text words = arena_format(b->r->arena, "%.*s %.*s", TEXT(fruit->food),
                                     TEXT(b->r->words.at[part.last].key));
    const struct entry *food = entry_as(pack_find(b->k, words, NULL), TAG_FOOD);
    if (!food)
        return;
    struct said_amount said;
    line_amount(b->r, b->sentence, c->match, &said);
    struct ingredient *line = add_line(b, c, part, food, entry_shown(food));
    set_said(line, &said);
    if (!span_is_empty(match_slot(c->match, SLOT_number)))
        read_prep_inside(b, line, c->match);
    b->last_said = said_at(b, c->first);
    b->last_line = b->dish->ingredients.count;
}

/* "Taste it, and salt if you want": seasoned to taste, not left away at will. */
static bool is_tasted_first(const struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    const struct entry *food = entry_at(b->r, match_slot(c->match, SLOT_food));
    for (size_t i = 0; i < index; i++)
        if (b->chunks.at[i].tag == TAG_ACTION && chunk_marks(&b->chunks.at[i]) & MARK_OF(tastes))
            return food && food->marks & (MARK_OF(salt) | MARK_OF(spice));
    return false;
}

/* "... a clove of garlic and cumin to taste": what has an amount is to taste only where that stands
 * right behind it. */
static unsigned line_scope(const struct builder *b, size_t index, const struct said_amount *said)
{
    const struct chunks *c = &b->chunks;
    size_t next = index + 1;
    while (next < c->count && (c->at[next].tag == TAG_OR || c->at[next].tag == TAG_AND))
        next++;
    bool taste = next < c->count && c->at[next].tag == TAG_TASTE;
    if (is_tasted_for(b, index))
        return c->at[index].scope | SCOPE_TASTE;
    if (c->at[index].scope & SCOPE_OPTIONAL && !said->amount.known && is_tasted_first(b, index))
        return (c->at[index].scope | SCOPE_TASTE) & ~(unsigned) SCOPE_OPTIONAL;
    bool keep = taste || !said->amount.known || said->vague || b->r->punctuated;
    return keep ? c->at[index].scope : c->at[index].scope & ~(unsigned) SCOPE_TASTE;
}

/* "Butter or oil, two tablespoons": the amount is that of either. */
static void give_to_both(struct ingredient *line, const struct said_amount *said)
{
    if (line->amount.known || !said->amount.known)
        return;
    set_said(line, said);
    line->questioned = false;
}

/* "A bunch of cilantro no a bunch of parsley" without its commas: not denied, but corrected. */
static bool corrects_denied(struct builder *b, size_t index)
{
    const struct chunk *c = &b->chunks.at[index];
    struct ingredient *line = last_line(b);
    const struct entry *food = entry_at(b->r, match_slot(c->match, SLOT_food));
    struct said_amount said;
    if (index < 2 || !(c->scope & SCOPE_NEGATED) || !line || !food || !line->entry
        || b->chunks.at[index - 1].tag != TAG_NOT
        || line->words.last != b->chunks.at[index - 2].last)
        return false;
    line_amount(b->r, b->sentence, c->match, &said);
    bool same = text_equal(entry_value(food), line->kind);
    if (!said.amount.known || (!same && (b->r->punctuated || !line->amount.known)))
        return false;
    if (!same) {
        struct span words = match_slot(c->match, SLOT_food);
        name_line(line, words, food, entry_shown(food));
    }
    set_said(line, &said);
    line->words.last = c->last;
    return true;
}

void build_line(struct builder *b, const struct chunk *c, size_t index)
{
    struct span food = food_slot(b, c->match);
    struct said_amount said;
    if (is_sort(c))
        build_sort(b, c);
    if (text_is(c->match->rule->option, "its"))
        build_its(b, c);
    if (corrects_denied(b, index))
        return;
    bool offered = is_offered(b, index);
    bool no_food = !span_is_empty(food) && !is_left_out(c) && !is_food(b, c, food);
    if (no_food && text_is(c->match->rule->option, "unknown")) {
        line_amount(b->r, b->sentence, c->match, &said);
        keep_broken(b, index, &said);
    }
    if (span_is_empty(food) || (is_left_out(c) && !offered) || !is_food(b, c, food)
        || is_compound(b, index))
        return;
    const struct entry *entry = food_entry(b, index, &food);
    struct text name = name_of_food(b, food);
    line_amount(b->r, b->sentence, c->match, &said);
    add_top(b->r, b->k, b->sentence, c->match, &said);
    carry_each(b, c, index, &said);
    carry_unit(b, c, entry, &said);
    carry_same(b, c, &said);
    count_pieces(entry, &said, &name);
    take_broken(b, index, &said);
    if (yields_title(b, c, index, entry, &said.amount))
        return;
    if (offered) {
        add_alternative(b, last_line(b), name);
        return;
    }
    if (is_alternative(b, index)) {
        give_to_both(last_line(b), &said);
        add_alternative(b, last_line(b), name);
        return;
    }
    if (names_kind(b, index, &said))
        return;
    if (replaces_food(b, c, index, last_line(b))) {
        replace_food(b, last_line(b), c, food, entry, name, &said);
        return;
    }
    struct ingredient *old = find_food(b, entry, name);
    bool share = text_is(c->match->rule->option, "share");
    bool used = is_used_here(b, c, index, &said);
    if ((!old || old->questioned) && !share) {
        struct ingredient *meant = generic_of(b, c, entry, &said);
        old = meant && !meant->questioned ? meant : old;
    }
    if (!share
        && (is_no_line(b, index, entry, old, &said)
            || (!old && is_made_here(b, index, entry, &said))))
        return;
    const unsigned scope = is_tasted_for(b, index) ? c->scope | SCOPE_TASTE : c->scope;
    const bool again = old && !share && goes_in_again(b, index, old, &said);
    enum repeat repeat = old && !again ? judge(b, old, c->match, &said, scope) : REPEAT_NEW;
    if (old && (share || repeat == REPEAT_SAME)) {
        if (!share)
            read_prep_before(b, old, index);
        if (!share && chunk_tag(&b->chunks, index - 1) == TAG_THERE && index && old == last_line(b))
            read_prep_after(b, old, index); /* "it's white bread, with the crusts off" */
        use_again(b, old, c, used && !share);
        return;
    }
    if (share)
        return;
    if (old && repeat != REPEAT_NEW) {
        if (old->questioned)
            name_line(old, food, entry, name);
        set_said(old, &said);
        old->questioned = false;
        old->at = said_at(b, c->first);
        old->words = (struct span){c->first, c->last};
        read_prep_before(b, old, index);
        read_prep_inside(b, old, c->match);
        read_prep_after(b, old, index);
        use_again(b, old, c, used);
        return;
    }
    if (text_is(c->match->rule->option, "both"))
        add_first_of_both(b, c, &said);
    struct ingredient *line = add_line(b, c, food, entry, name);
    set_said(line, &said);
    set_scope(line, line_scope(b, index, &said));
    line->questioned = !used && !again;
    line->laid_out = is_laid_out(b, index);
    read_prep_before(b, line, index);
    read_prep_inside(b, line, c->match);
    if (text_is(c->match->rule->option, "either"))
        name_either(b, line, match_slot(c->match, SLOT_state));
    read_prep_after(b, line, index);
    b->last_said = said_at(b, c->first);
    b->last_line = b->dish->ingredients.count;
    b->group_age = 0;
    if (text_is(c->match->rule->option, "each"))
        carry_back(b, index, &said);
}
