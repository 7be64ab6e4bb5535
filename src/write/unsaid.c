/* write/unsaid.c: temperatures of a step that its text does not say.
 * SPDX-License-Identifier: MIT */
#include "kitchen/print.h"
#include "write/card.h"

/* Whether the word is that number, a sign behind it or not. */
static bool is_number(struct text word, struct text number)
{
    return word.length >= number.length && text_equal(text_slice(word, 0, number.length), number)
           && (word.length == number.length || !is_digit(word.at[number.length]));
}

static bool has_number(struct text text, struct text number)
{
    struct text word;
    while (text_part(&text, ' ', &word))
        if (is_number(word, number))
            return true;
    return false;
}

/* "400 °F", "gas mark 4": whether its number is in the text. */
static bool says(const struct writing *w, struct text text, const struct temperature *t)
{
    struct text shown = print_degrees(w->kitchen, w->scratch, t->value, t->value, t->unit), word;
    while (text_part(&shown, ' ', &word))
        if (word.length && is_digit(word.at[0]))
            return has_number(text, word);
    return true; /* none that could be missed */
}

/* Of the same thing two are one, told in two scales: one of them is enough. */
static bool says_of(const struct writing *w, const struct step *s, struct text of)
{
    for (size_t i = 0; i < s->temperatures.count; i++)
        if (text_equal(s->temperatures.at[i].of, of) && says(w, s->text, &s->temperatures.at[i]))
            return true;
    return false;
}

/* But a fan oven's heat and a gas mark are for those who have no other oven. */
static bool is_needed(const struct temperature *t)
{
    return t->fan || t->unit == 'G';
}

bool lacks_heat(const struct writing *w, const struct step *s)
{
    for (size_t i = 0; i < s->temperatures.count; i++) {
        const struct temperature *t = &s->temperatures.at[i];
        if (is_needed(t) ? !says(w, s->text, t) : !says_of(w, s, t->of))
            return true;
    }
    return false;
}
