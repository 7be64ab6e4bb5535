/* build/ingredient.c: foods with or without amounts -> ingredient lines.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "base/arena.h"
#include "build/wording.h"
#include "match/capture.h"
#include "match/subject.h"

/* Words that stand in no lexicon, with no comma behind; or "of the same yoghurt". */
static bool is_unknown(const struct builder *b, struct span words)
{
    for (size_t i = words.first; i <= words.last; i++)
        if ((b->r->words.at[i].entry && !step_words_list(b->k, "same", b->r->words.at[i].key))
            || b->r->words.at[i].after >= AFTER_COMMA || b->r->words.at[i].filler)
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
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
    bool several = food && food->marks & MARK_OF(plural) /* "two avocados, mash those" */
                   && !span_is_empty(match_slot(c->match, SLOT_number));
    if (several || !span_is_empty(match_slot(c->match, SLOT_amount)))
        return false;
    return next->tag == TAG_LIKE /* "walnut-sized balls" */
           || next->tag == TAG_DISH || next->tag == TAG_PART;
}

/* A food as it was said, with its amount. */
struct said_food {
    const struct chunk *c;
    size_t index;      /* the chunk's */
    struct span words; /* the food's */
    const struct entry *entry;
    struct text name;
    struct said_amount said;
    bool offered; /* in place of the one before */
    bool share;   /* "half of the sugar": of what is listed */
    bool used;    /* it goes in here */
};

static void replace_food(struct builder *b, struct ingredient *line, const struct said_food *f)
{
    name_line(line, f->words, f->entry, f->name);
    line->words.last = f->c->last;
    if (f->said.amount.known)
        set_said(line, &f->said);
    read_prep_inside(b, line, f->c->match);
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
    const struct entry *food = match_entry(b->r, c->match, SLOT_food);
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

/* Whether the chunk names a food that may be a line. */
static bool names_food(struct builder *b, struct said_food *f)
{
    const struct chunk *c = f->c;
    f->words = food_slot(b, c->match);
    f->offered = is_offered(b, f->index);
    if (span_is_empty(f->words) || (is_left_out(c) && !f->offered))
        return false;
    if (is_food(b, c, f->words))
        return !is_compound(b, f->index);
    if (!is_left_out(c) && text_is(c->match->rule->option, "unknown")) {
        line_amount(b->r, b->sentence, c->match, &f->said);
        keep_broken(b, f->index, &f->said);
    }
    return false;
}

/* The food, and how much of it, as said here or before. */
static void read_food(struct builder *b, struct said_food *f)
{
    f->entry = food_entry(b, f->index, &f->words);
    f->name = name_of_food(b, f->words);
    line_amount(b->r, b->sentence, f->c->match, &f->said);
    take_piece_food(b, f->c, f->entry, &f->said);
    take_size(b, f->c, f->index, &f->said);
    add_top(b->r, b->k, b->sentence, f->c->match, &f->said);
    carry_each(b, f->c, f->index, &f->said);
    carry_unit(b, f->c, f->entry, &f->said);
    carry_same(b, f->c, &f->said);
    count_pieces(f->entry, &f->said, &f->name);
    take_broken(b, f->index, &f->said);
}

/* Whether it only tells more of what was said before: a yield, the other one of two, the kind, the
 * right one. */
static bool tells_more(struct builder *b, const struct said_food *f)
{
    if (yields_title(b, f->c, f->index, f->entry, &f->said.amount))
        return true;
    if (f->offered || is_alternative(b, f->index)) {
        if (!f->offered)
            give_to_both(last_line(b), &f->said);
        add_alternative(b, last_line(b), f->name);
        return true;
    }
    if (names_kind(b, f->index, &f->said))
        return true;
    if (!replaces_food(b, f->c, f->index, last_line(b)))
        return false;
    replace_food(b, last_line(b), f);
    return true;
}

/* The line that it may be said of again; NULL: there is none. */
static struct ingredient *line_of(struct builder *b, const struct said_food *f)
{
    struct ingredient *old = find_food(b, f->entry, f->name);
    if ((old && !old->questioned) || f->share)
        return old;
    struct ingredient *meant = generic_of(b, f->c, f->entry, &f->said);
    return meant && !meant->questioned ? meant : old;
}

/* "I'm doing the beef ... one pound of ground beef": the name tells more now. */
static bool is_fuller(struct text name, struct text than)
{
    return name.length > than.length + 1 && name.at[name.length - than.length - 1] == ' '
           && text_equal(text_slice(name, name.length - than.length, name.length), than);
}

/* The line was there, and is the one that was meant. */
static void change_line(struct builder *b, struct ingredient *line, const struct said_food *f)
{
    if (line->questioned || is_fuller(f->name, line->food))
        name_line(line, f->words, f->entry, f->name);
    set_said(line, &f->said);
    line->questioned = false;
    say_line(b, line, f->c);
    read_prep_before(b, line, f->index);
    read_prep_inside(b, line, f->c->match);
    read_prep_after(b, line, f->index);
    use_again(b, line, f->c, f->used);
}

/* `again`: as a portion more of what is listed. */
static void add_new_line(struct builder *b, const struct said_food *f, bool again)
{
    const struct text option = f->c->match->rule->option;
    if (text_is(option, "both"))
        add_first_of_both(b, f->c, &f->said);
    share_last_word(b, f->index, f->name);
    struct ingredient *line = add_line(b, f->c, f->words, f->entry, f->name);
    set_said(line, &f->said);
    set_scope(line, line_scope(b, f->index, &f->said));
    line->questioned = !f->used && !again;
    line->laid_out = is_laid_out(b, f->index);
    read_prep_before(b, line, f->index);
    read_prep_inside(b, line, f->c->match);
    if (text_is(option, "either"))
        name_either(b, line, match_slot(f->c->match, SLOT_state));
    read_prep_after(b, line, f->index);
    b->last_said = said_at(b, f->c->first);
    b->last_line = b->dish->ingredients.count;
    b->group_age = 0;
    if (text_is(option, "each"))
        carry_back(b, f->index, &f->said);
}

static void take_food(struct builder *b, const struct said_food *f)
{
    struct ingredient *old = line_of(b, f);
    if (!f->share
        && (is_no_line(b, f->index, f->entry, old, &f->said)
            || (!old && is_made_here(b, f->index, f->entry, &f->said))))
        return;
    const unsigned scope = line_scope(b, f->index, &f->said);
    const bool again = old && !f->share && goes_in_again(b, f->index, old, &f->said);
    enum repeat repeat = old && !again ? judge(b, old, f->c->match, &f->said, scope) : REPEAT_NEW;
    if (old && (f->share || repeat == REPEAT_SAME)) {
        if (!f->share)
            read_prep_before(b, old, f->index);
        if (!f->share && f->index && chunk_tag(&b->chunks, f->index - 1) == TAG_THERE
            && old == last_line(b))
            read_prep_after(b, old, f->index); /* "it's white bread, with the crusts off" */
        use_again(b, old, f->c, f->used && !f->share);
        note_named_again(b, old, f->c, f->share ? NULL : f->entry);
    } else if (old && repeat != REPEAT_NEW) {
        change_line(b, old, f);
    } else if (!f->share) {
        add_new_line(b, f, again);
    } else {
        return;
    }
    note_pieces(b, last_line(b), f->entry, &f->said);
}

void build_line(struct builder *b, const struct chunk *c, size_t index)
{
    struct said_food f = {.c = c, .index = index};
    if (is_sort(c))
        build_sort(b, c);
    if (text_is(c->match->rule->option, "its"))
        build_its(b, c);
    if (corrects_denied(b, index) || !names_food(b, &f))
        return;
    read_food(b, &f);
    if (is_piece_food(b, c, f.entry, &f.said) || tells_more(b, &f))
        return;
    f.share = text_is(c->match->rule->option, "share")
              || (text_is(c->match->rule->option, "part") && !f.said.amount.unit.length
                  && find_food(b, f.entry, f.name)); /* "half of butter goes in now" */
    f.used = is_used_here(b, c, index, &f.said);
    take_food(b, &f);
}
