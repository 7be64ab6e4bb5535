/* split/title.c
 * SPDX-License-Identifier: MIT */
#include "split/title.h"

#include "match/clause.h"

#define TITLE_WORDS 9

/* Whether a word can be what a finished dish is called: "stew", and "rolls" though it is first of
 * all a verb. */
static bool word_names_dish(const struct word *w)
{
    const struct entry *dish = w->tag == TAG_DISH     ? w->entry
                               : w->tag != TAG_INSIDE ? entry_as(w->readings, TAG_DISH)
                                                      : NULL;
    return dish && !(dish->marks & MARK_OF(generic)); /* "supper" is any dish */
}

bool is_own_name(const struct word *w)
{
    const struct entry *dish = w->tag == TAG_DISH ? w->entry : entry_as(w->readings, TAG_DISH);
    return dish && dish->marks & MARK_OF(names);
}

/* Whether a noun phrase goes on with a word of this tag. */
static bool goes_on(unsigned char tag)
{
    switch (tag) {
    case TAG_LONG:
    case TAG_UNIT:
    case TAG_FOOD:
    case TAG_DISH:
    case TAG_PART:
    case TAG_STATE:
    case TAG_SIZE:
    case TAG_DONE:
    case TAG_OTHER:
    case TAG_WITH:
    case TAG_AND:
    case TAG_OF:
    case TAG_INTO:
    case TAG_ARTICLE:
    case TAG_THE:
    case TAG_COUNTER:
    case TAG_CONTAINER:
    case TAG_OVEN:
    case TAG_VESSEL:
    case TAG_EXTRACT:
    case TAG_INSIDE:
        return true;
    default:
        return false;
    }
}

/* The same for the entry that begins at word `i`. */
static bool entry_names_dish(const struct recording *r, const struct sentence *s, size_t i)
{
    return word_names_dish(&r->words.at[entry_last(r, s, i)]);
}

/* "Because", "today": listed as words that no rule cares about, where a name's own are unknown. */
static bool is_function_word(const struct recording *r, size_t i)
{
    return r->words.at[i].tag == TAG_OTHER && r->words.at[i].entry;
}

/* "The lemon tart is done": no part of the name. */
static bool is_ready(const struct word *w)
{
    return w->tag == TAG_STATE && w->entry && w->entry->marks & MARK_OF(serves);
}

/* "The chicken goes back in": where it goes, said by a word that the lexicon leaves unread. */
static bool is_put(const struct recording *r, const struct sentence *s, size_t i, size_t first)
{
    size_t next = next_word(r, s, i);
    for (size_t n = first; n < i; n++)
        if (r->words.at[n].tag == TAG_WITH)
            return false; /* "tarts with a hat on" */
    return i > first && r->words.at[i].tag == TAG_OTHER && next <= s->last
           && word_tag(r, s, next) == TAG_INTO;
}

/* Words that join, and so cannot end a name. */
static bool joins(unsigned char tag)
{
    return tag == TAG_WITH || tag == TAG_AND || tag == TAG_OF || tag == TAG_INTO
           || tag == TAG_ARTICLE || tag == TAG_THE;
}

/* "fifteen fruit tarts" are fruit tarts, "my stew" is a stew. */
static bool stands_before(unsigned char tag)
{
    return tag == TAG_THE || tag == TAG_ARTICLE || tag == TAG_NUMBER || tag == TAG_ONES
           || tag == TAG_TEENS || tag == TAG_TENS || tag == TAG_DOZEN;
}

static bool names_food(const struct recording *r, struct span words)
{
    for (size_t i = words.first; i <= words.last; i++)
        if (r->words.at[i].tag == TAG_FOOD || word_names_dish(&r->words.at[i]))
            return true;
    return false;
}

/* "That's the potato fry", "cheese toast": a verb's word behind a food, where the clause is over.
 */
static bool is_made_by(const struct recording *r, const struct sentence *s, size_t i, size_t first)
{
    const struct word *w = &r->words.at[i];
    if (w->tag != TAG_ACTION || !w->entry || !(w->entry->marks & MARK_OF(heats)) || i <= first
        || r->words.at[i - 1].tag != TAG_FOOD)
        return false;
    size_t next = next_word(r, s, i);
    unsigned char tag = next <= s->last ? word_tag(r, s, next) : (unsigned char) TAG_FOR;
    return w->after >= AFTER_COMMA || tag == TAG_FOR || tag == TAG_AND || tag == TAG_WITH
           || tag == TAG_SO;
}

static bool same_noun(const struct recording *r, struct span a, struct span b)
{
    return b.first <= b.last && text_equal(r->words.at[a.last].key, r->words.at[b.last].key);
}

/* "A pot of chili" is chili. */
static size_t behind_vessel(const struct recording *r, const struct sentence *s, size_t i)
{
    unsigned char tag = word_tag(r, s, i);
    size_t last = entry_last(r, s, i);
    return (tag == TAG_VESSEL || tag == TAG_SIDE || r->words.at[last].tag == TAG_VESSEL)
                   && last + 1 < s->last && r->words.at[last + 1].tag == TAG_OF
               ? last + 2
               : i;
}

struct span title_span(const struct recording *r, const struct sentence *s, size_t first)
{
    struct span title = {first, first};
    size_t count = 0, last;
    bool joined =
        true; /* "that's the soup that went well": only a joining word has a "the" behind it */
    while (first < s->last && stands_before(word_tag(r, s, first)))
        first = next_word(r, s, first);
    first = behind_vessel(r, s, first);
    title.first = last = first;
    for (size_t i = first; i <= s->last && count < TITLE_WORDS; i = next_word(r, s, i), count++) {
        unsigned char tag = word_tag(r, s, i);
        if (is_put(r, s, i, title.first))
            return NO_WORDS;
        if (tag == TAG_ARTICLE && !joined && i > title.first && i < s->last) {
            struct span again = title_span(r, s, i + 1);
            if (same_noun(r, (struct span){title.first, last}, again))
                return again; /* "a crisp, a plum crisp" */
        }
        if ((!goes_on(tag) && !entry_names_dish(r, s, i) && !is_made_by(r, s, i, title.first))
            || (is_ready(&r->words.at[i]) && i > title.first) || is_function_word(r, i)
            || ((tag == TAG_THE || tag == TAG_ARTICLE) && !joined))
            break;
        joined = joins(tag);
        if (!joins(tag) || r->words.at[i].tag == TAG_INSIDE)
            last = i;
        if (r->words.at[i].after >= AFTER_COMMA)
            break;
        if (tag == TAG_AND && clause_ends(r, s, i - 1))
            break;
    }
    /* Its last word may be said twice over: "your peach cobbler. Cobbler in a skillet". */
    title.last = entry_last(r, s, last);
    return names_food(r, title) ? title : NO_WORDS;
}

/* Whether the food that ends at word `i` follows another one at once: "honey mustard chicken". */
static bool word_is_next(const struct recording *r, size_t i)
{
    size_t first = r->words.at[i].entry_first;
    return r->punctuated && first > 0 && r->words.at[first - 1].tag == TAG_FOOD
           && r->words.at[first - 1].after < AFTER_COMMA;
}

int title_weight(const struct recording *r, struct span title)
{
    bool food = false, join = false, joined = false, done = false;
    if (span_is_empty(title))
        return 0;
    for (size_t i = title.first; i <= title.last; i++) {
        unsigned char tag = r->words.at[i].tag;
        uint64_t marks = r->words.at[i].entry ? r->words.at[i].entry->marks : 0;
        bool generic = marks & MARK_OF(generic) && !(marks & MARK_OF(aside)); /* bread is one */
        if (word_names_dish(&r->words.at[i])
            && (tag == TAG_DISH || i > title.first || is_own_name(&r->words.at[i])))
            return 3;
        food |= tag == TAG_DISH;
        joined |= food && (tag == TAG_PART || (tag == TAG_FOOD && (join || word_is_next(r, i))));
        join |= food && (tag == TAG_WITH || tag == TAG_INTO);
        food |= tag == TAG_FOOD && !generic;
        done |= tag == TAG_DONE;
    }
    return !food ? 0 : joined || done ? 2 : 1;
}

static bool is_telling(const struct word *w)
{
    return w->entry && (w->tag == TAG_FOOD || w->tag == TAG_DISH);
}

bool title_has(const struct recording *r, struct span title, struct text value)
{
    for (size_t i = title.first; i <= title.last; i++)
        if (is_telling(&r->words.at[i]) && text_equal(entry_value(r->words.at[i].entry), value))
            return true;
    return false;
}

static bool title_tells(const struct recording *r, struct span title)
{
    for (size_t i = title.first; i <= title.last; i++)
        if (is_telling(&r->words.at[i]))
            return true;
    return false;
}

bool titles_alike(const struct recording *r, struct span a, struct span b)
{
    for (size_t i = a.first; i <= a.last; i++)
        if (is_telling(&r->words.at[i]) && title_has(r, b, entry_value(r->words.at[i].entry)))
            return true;
    return !title_tells(r, a) || !title_tells(r, b);
}

/* Foods that no dish is named by alone. */
#define PLAIN (MARK_OF(salt) | MARK_OF(water) | MARK_OF(fat) | MARK_OF(spice) | MARK_OF(herb))

/* Behind it comes what goes in, who it is for or where it is from: "roti, two cups of atta". */
static bool begins_anew(unsigned char tag)
{
    return tag == TAG_ONES || tag == TAG_TEENS || tag == TAG_NUMBER || tag == TAG_ARTICLE
           || tag == TAG_SERVE || tag == TAG_FOR || tag == TAG_AND || tag == TAG_FROM;
}

/* "And romesco.", "then the roti: two cups": nothing stands before it but words that turn to it. */
static bool is_turned_to(const struct recording *r, const struct sentence *s, struct span title)
{
    for (size_t i = s->first; i < title.first; i++) {
        const unsigned char tag = r->words.at[i].tag;
        if (tag != TAG_SO && tag != TAG_AND && tag != TAG_THE && tag != TAG_ARTICLE
            && tag != TAG_INSIDE)
            return false;
    }
    return is_own_name(&r->words.at[title.last]);
}

/* "Salt, pepper" is a list; "chicken with rice" and "onion soup" are names. */
bool title_alone(const struct recording *r, const struct sentence *s, struct span title)
{
    bool dish = false, joined = false, listed = false;
    size_t foods = 0, plain = 0, next = next_word(r, s, title.last);
    for (size_t i = title.first; i <= title.last; i++) {
        unsigned char tag = r->words.at[i].tag;
        dish |= word_names_dish(&r->words.at[i]);
        joined |=
            foods
            && (tag == TAG_WITH || tag == TAG_INTO || (tag == TAG_FOOD && word_is_next(r, i)));
        foods += tag == TAG_FOOD;
        plain += tag == TAG_FOOD && r->words.at[i].entry && r->words.at[i].entry->marks & PLAIN;
        listed |= tag == TAG_AND;
    }
    joined |=
        listed && foods == 2 && plain == 0; /* "sausage and cabbage", never "salt and pepper" */
    bool word = title.first == title.last
                && (title.first == s->first || r->words.at[title.first].tag != TAG_DISH);
    if ((word && !is_turned_to(r, s, title)) || (!dish && !(joined && foods > 1)))
        return false;
    if (next > s->last || (next == s->last && word_tag(r, s, next) == TAG_INTO))
        return true;
    unsigned char tag = word_tag(r, s, next);
    return r->words.at[title.last].after == AFTER_COMMA && begins_anew(tag);
}

bool sentence_says(const struct recording *r, const struct sentence *s, const struct entry *e)
{
    for (size_t i = s->first; i <= s->last; i++)
        if (r->words.at[i].entry && text_equal(entry_value(r->words.at[i].entry), entry_value(e)))
            return true;
    return false;
}
