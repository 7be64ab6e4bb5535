/* write/description.c: the text under a video: what it is, the chapters, each dish's list, cautions
 * and allergens; plain text. What does not fit the length is left out from the least needed on, and
 * said.
 * SPDX-License-Identifier: MIT */
#include "write/card.h"
#include "write/chapters.h"
#include "write/ingredient_line.h"
#include "write/publish.h"
#include "write/wrap.h"

/* Many hosts take about as much (common practice, no source). */
#define LETTERS_USUAL 5000

/* How much of a dish there is room for. Cautions and allergens always are. */
enum fullness { FULL_METHOD, FULL_INGREDIENTS, FULL_NAMES };

/* A host takes "1:10" for a marker, wherever it stands, and turns the whole list off; some refuse
 * angle brackets. */
static void put_plain(struct buffer *b, struct text t)
{
    for (size_t i = 0; i < t.length; i++) {
        char c = t.at[i];
        bool clock =
            c == ':' && i && i + 1 < t.length && is_digit(t.at[i - 1]) && is_digit(t.at[i + 1]);
        if (clock)
            buffer_put_string(b, " : ");
        else if (c == '<')
            buffer_put_string(b, "\xE2\x80\xB9");
        else if (c == '>')
            buffer_put_string(b, "\xE2\x80\xBA");
        else
            buffer_put_char(b, c == '\n' || c == '\r' ? ' ' : c);
    }
}

static void put_line(struct buffer *b, const char *before, struct text t)
{
    buffer_put_string(b, before);
    put_plain(b, t);
    buffer_put_char(b, '\n');
}

static void put_lines(struct buffer *b, const char *before, const text_list *lines)
{
    for (size_t i = 0; i < lines->count; i++)
        put_line(b, before, lines->at[i]);
}

static void put_hook(struct buffer *b, const struct recording *r, const struct writing *w)
{
    struct text names = TEXT_EMPTY;
    for (size_t i = 0; i < r->dishes.count; i++)
        names = listed(w, names, capital(w, r->dishes.at[i].title));
    if (names.length)
        put_line(b, "", PHRASE_1(w, text_hook, names));
}

/* The times stand first in the line, as hosts want them; everything else is made harmless. */
static void put_chapters(struct buffer *b, const struct recording *r, const struct writing *w,
                         struct problems *p)
{
    chapter_list list;
    chapters_make(&list, r, w, p);
    put_line(b, "\n", PHRASE_0(w, text_chapters));
    for (size_t i = 0; i < list.count; i++) {
        buffer_format(b, "%.*s ", TEXT(clock_text(w->scratch, list.at[i].start)));
        put_line(b, "", list.at[i].title);
    }
}

static void put_parts(struct buffer *b, const struct card *c)
{
    for (size_t i = 0; i < c->parts.count; i++) {
        if (c->parts.at[i].heading.length)
            put_line(b, "", c->parts.at[i].heading);
        put_lines(b, "- ", &c->parts.at[i].lines);
    }
}

static void put_method(struct buffer *b, const struct writing *w, const struct card *c)
{
    put_line(b, "", PHRASE_0(w, card_method));
    for (size_t i = 0; i < c->steps.count; i++) {
        buffer_format(b, "%zu. ", i + 1);
        put_line(b, "", c->steps.at[i].text);
    }
}

static bool put_dish(struct buffer *b, const struct recording *r, const struct writing *w,
                     size_t dish, enum fullness full, struct problems *p)
{
    struct card c;
    if (!card_make(&c, r, w, dish, p))
        return false;
    buffer_put_char(b, '\n');
    put_line(b, "", c.title);
    put_lines(b, "", &c.facts);
    if (c.draft)
        put_line(b, "", PHRASE_0(w, card_draft));
    if (full <= FULL_INGREDIENTS)
        put_parts(b, &c);
    if (full <= FULL_METHOD && c.steps.count)
        put_method(b, w, &c);
    put_lines(b, "", &c.allergens);
    put_lines(b, "! ", &c.cautions);
    return true;
}

static bool put_all(struct buffer *b, const struct recording *r, const struct writing *w,
                    enum fullness full, struct problems *p)
{
    put_hook(b, r, w);
    put_chapters(b, r, w, p);
    for (size_t i = 0; i < r->dishes.count; i++)
        if (!put_dish(b, r, w, i, full, p))
            return false;
    if (full == FULL_NAMES)
        put_line(b, "\n", PHRASE_0(w, text_recipes));
    put_line(b, "\n", PHRASE_0(w, card_silence));
    return true;
}

bool write_description(const struct recording *r, const struct writing *w, struct buffer *out,
                       struct problems *p)
{
    static const char *const left_out[] = {"", "the methods were",
                                           "the methods and ingredients were"};
    size_t most = w->letters ? w->letters : LETTERS_USUAL, begin = out->length, letters = 0;
    struct place here = {.file = r->file};
    for (int full = FULL_METHOD; full <= FULL_NAMES; full++) {
        out->length = begin;
        if (!put_all(out, r, w, (enum fullness) full, p))
            return false;
        letters = text_letters(buffer_text(out)) - begin;
        if (letters > most)
            continue;
        if (full > FULL_METHOD)
            problem_note(p, here, "%s left out of the description, to keep to %zu letters",
                         left_out[full], most);
        return true;
    }
    problem_note(
        p, here,
        "the description has %zu letters, over the %zu asked for: chapters, allergens and cautions "
        "are not cut",
        letters, most);
    return true;
}
