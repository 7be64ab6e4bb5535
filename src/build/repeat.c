/* build/repeat.c: what becomes of a food that the dish already has.
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "build/wording.h"
#include "match/capture.h"
#include "match/subject.h"

/* An amount said again so soon after is the same one. */
#define REPEAT_SECONDS 6.0
/* And by another speaker so soon. */
#define ECHO_SECONDS 15.0

/* "the cream" is the heavy cream, "the stock" the beef stock; "black pepper" is no bell pepper. */
static bool same_food(const struct ingredient *line, struct text kind, struct text name)
{
    if (text_equal(line->kind, kind) || text_equal(line->food, name))
        return true;
    struct text head = text_last_word(line->food), other = text_last_word(name);
    return text_equal(head, name) || text_equal(other, line->food);
}

struct ingredient *find_food(struct builder *b, const struct entry *food, struct text name)
{
    struct text kind = food ? entry_value(food) : name;
    struct ingredient *found = NULL;
    for (size_t i = b->dish->ingredients.count; i-- > 0 && !found;)
        if (same_food(&b->dish->ingredients.at[i], kind, name))
            found = &b->dish->ingredients.at[i];
    return found;
}

static bool same_amount(const struct amount *a, const struct amount *b)
{
    return a->known && b->known && ratio_equal(a->min, b->min) && ratio_equal(a->max, b->max)
           && text_equal(a->unit, b->unit);
}

/* "Two teaspoons of nutmeg. No, get away, one teaspoon of nutmeg." */
static bool is_no_first(const struct recording *r, size_t i)
{
    const struct word *w = &r->words.at[i];
    return w->tag == TAG_NOT && w->after == AFTER_COMMA && i
           && r->words.at[i - 1].after >= AFTER_STOP && w->entry && w->entry->words_count == 1;
}

static bool is_taken_back(const struct builder *b, size_t first, size_t last)
{
    for (size_t i = first; i <= last; i++)
        if (b->r->words.at[i].tag == TAG_SORRY || is_no_by_itself(b->r, i) || is_no_first(b->r, i))
            return true;
    return false;
}

/* Whether the words of `part` stand in `whole`. */
static bool has_words(struct text whole, struct text part)
{
    struct text word, first, rest = part;
    if (!text_part(&rest, ' ', &first))
        return false;
    while (whole.length && text_part(&whole, ' ', &word))
        if (text_equal(word, first))
            return true;
    return false;
}

/* "The beef" is the beef brisket, "the pork" the pork shoulder; bacon is no lamb. */
static bool names_animal_of(const struct ingredient *line, const struct entry *food)
{
    return food->marks & MARK_OF(generic) || has_words(line->kind, entry_value(food))
           || has_words(line->food, entry_value(food));
}

/* The kinds of animal food that are named by the animal once they are in the pot. */
#define ANIMAL \
    (MARK_OF(poultry) | MARK_OF(meat) | MARK_OF(ground) | MARK_OF(fish) | MARK_OF(shellfish))

/* Marks that put a food into one class, out of another. */
#define CLASSED (ANIMAL | MARK_OF(produce) | MARK_OF(herb) | MARK_OF(spice) | MARK_OF(dairy))

struct ingredient *generic_of(struct builder *b, const struct chunk *c, const struct entry *food,
                              const struct said_amount *said)
{
    if (!food || said->amount.known || c->scope & SCOPE_BESIDE)
        return NULL;
    uint64_t sort = food->marks & ANIMAL;
    if (food->marks & MARK_OF(egg) && span_has_tag(b->r, c->match->words, TAG_THE)
        && !span_has_tag(b->r, (struct span){b->sentence->first, c->first}, TAG_ACTION))
        sort = MARK_OF(egg); /* "the whites set, the yolks firm" */
    if (!sort && step_words_list(b->k, "classes", entry_value(food)))
        sort = food->marks & ~(MARK_OF(generic) | MARK_OF(uncounted) | MARK_OF(plural));
    const uint64_t other = CLASSED & ~food->marks; /* beans are no onion, though both are savory */
    for (size_t i = b->dish->ingredients.count; i-- > 0;) {
        struct ingredient *line = &b->dish->ingredients.at[i];
        if (said->vague && !(line->amount.known && sort & ANIMAL))
            continue; /* "a little bit of chicken" is some of the breasts */
        if (line->entry && line->entry->marks & sort && !(line->entry->marks & other)
            && (sort == MARK_OF(egg) || names_animal_of(line, food)))
            return line;
    }
    return NULL;
}

/* "A bit of flour on the tray ... then 450 grams of flour": so many words behind some of a food an
 * amount is of more of it. */
#define APART_WORDS 14

static bool is_apart(const struct ingredient *old, const struct match *m)
{
    return old->vague && !old->questioned && m->words.first > old->words.last + APART_WORDS;
}

/* What the word before is, by itself. */
static unsigned char tag_before(const struct recording *r, size_t i)
{
    if (!i)
        return TAG_SO;
    const struct word *word = &r->words.at[i - 1];
    if (word->tag == TAG_THERE)
        return TAG_THERE;
    return word->alone ? word->alone->tag : (unsigned char) TAG_SO;
}

/* "The fennel. Two. | Two bulbs of fennel, shaved": another speaker says the number again. */
static bool is_echoed(const struct builder *b, const struct ingredient *old, const struct match *m,
                      const struct said_amount *now)
{
    return now->amount.known && old->amount.known && ratio_equal(old->amount.min, now->amount.min)
           && ratio_equal(old->amount.max, now->amount.max)
           && b->r->words.at[b->sentence->first].new_speaker && old->words.last < b->sentence->first
           && said_at(b, m->words.first) - old->at < ECHO_SECONDS;
}

/* "You need half a cup of flour for the crumbs ... two cups of flour in here": more than there was
 * is another flour. */
static bool is_over_all(const struct amount *all, const struct amount *now)
{
    return all->known && now->known && text_equal(all->unit, now->unit)
           && ratio_compare(now->min, all->max) > 0;
}

/* "Some green onions", of which the lexicon knows that they are another kind than the onion. */
static bool is_other_sort(const struct builder *b, const struct ingredient *old,
                          const struct match *m)
{
    const struct entry *food = match_entry(b->r, m, SLOT_food);
    return food && food->tag == TAG_FOOD && old->entry && !(old->entry->marks & MARK_OF(generic))
           && !text_equal(entry_value(food), old->kind)
           && !text_equal(entry_words(food), text_last_word(old->food));
}

enum repeat judge(const struct builder *b, const struct ingredient *old, const struct match *m,
                  const struct said_amount *now, unsigned scope)
{
    bool said = now->amount.known, the = span_has_tag(b->r, m->words, TAG_THE);
    the = the && !span_has_tag(b->r, m->words, TAG_EXTRACT); /* "the zest of a lemon" */
    if (!said && scope & SCOPE_TASTE && old->amount.known)
        return REPEAT_NEW;
    unsigned char before = tag_before(b->r, m->words.first);
    the |= said && before == TAG_THE && !now->more /* "the four cups of stock that are left" */
           && b->r->words.at[m->words.first].tag != TAG_FOOD;
    if (now->vague && (before == TAG_THERE || before == TAG_THE))
        return REPEAT_SAME; /* "that's a lot of sugar", "isn't that a lot of sugar" */
    if (!said && !now->more) {
        bool anew = (old->amount.known && !old->announced) || is_other_sort(b, old, m);
        return now->vague && !the && anew ? REPEAT_NEW : REPEAT_SAME;
    }
    if (now->more) /* "more salt, if it asks for it" */
        return said || now->vague || (!old->amount.known && !old->to_taste) ? REPEAT_NEW
                                                                            : REPEAT_SAME;
    if (m->words.first - old->words.last < 12 && is_taken_back(b, old->words.last, m->words.first))
        return REPEAT_CORRECTS;
    bool rough = old->amount.known && ratio_equal(old->amount.max, RATIO(1))
                 && step_words_list(b->k, "lumps", old->amount.unit);
    if (rough && now->amount.unit.length && !text_equal(now->amount.unit, old->amount.unit)
        && m->words.first - old->words.last < 12)
        return REPEAT_CORRECTS; /* "a piece of ginger. Ginger, I'd say three centimetres" */
    if (!old->amount.known)
        return is_apart(old, m) ? REPEAT_NEW : REPEAT_FILLS;
    if ((old->announced && !is_over_all(&old->amount, &now->amount)) || the)
        return REPEAT_SAME;
    if (old->had && same_amount(&old->amount, &now->amount))
        return REPEAT_SAME;
    if (is_echoed(b, old, m, now))
        return old->amount.unit.length ? REPEAT_SAME : REPEAT_CORRECTS;
    if (same_amount(&old->amount, &now->amount)
        && said_at(b, m->words.first) - old->at < REPEAT_SECONDS)
        return REPEAT_SAME;
    return REPEAT_NEW;
}
