/* read/sounds.c: what stands in brackets: sounds, speakers, links, and speech after all.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "read/cleaner.h"

static bool has_letter(struct text t)
{
    for (size_t i = 0; i < t.length; i++)
        if (is_letter(t.at[i]))
            return true;
    return false;
}

static bool has_digit(struct text t)
{
    for (size_t i = 0; i < t.length; i++)
        if (is_digit(t.at[i]))
            return true;
    return false;
}

/* "[Music]" is a sound, "[Ines]:" a speaker. A number inside makes it speech ("[250 g]"), and so
 * does a letter that touches it ("[un]salted"); a gap ("[ __ ]") stays as a word that nobody knows.
 */
bool take_bracket(struct cleaner *c)
{
    struct text inside;
    if (!clean_find(c, ']', '[', SOUND_BYTES_MAX, &inside) || has_digit(inside))
        return false;
    char next = clean_peek(c, inside.length + 2);
    bool touches = is_letter(next) || (!c->pending && c->length && is_letter(c->last));
    bool link = c->markdown && next == '(';
    if (next == ':' && !c->line_started && has_letter(inside)) {
        clean_note_voice(c, inside);
        c->at += inside.length + 3;
        return true;
    }
    if (touches || link || !has_letter(inside)) {
        c->at++;
        c->bracket_open = true;
        return true;
    }
    clean_put_blank(c, ' ');
    c->at += inside.length + 2;
    return true;
}

/* Of a Markdown link "[words](address)" the words stay. */
bool take_closing(struct cleaner *c)
{
    struct text address;
    if (!c->bracket_open)
        return false;
    c->bracket_open = false;
    c->at++;
    if (c->markdown && clean_peek(c, 0) == '(' && clean_find(c, ')', ' ', TAG_BYTES_MAX, &address))
        c->at += address.length + 2;
    return true;
}

/* "(laughs)" as a line of its own is a sound; anywhere else it may be speech, "(chopped)". */
bool take_parenthesis(struct cleaner *c)
{
    struct text inside;
    bool sentence_ended = !c->length || strchr(".?!", c->last);
    if (c->line_started || !sentence_ended || !clean_find(c, ')', '(', SOUND_BYTES_MAX, &inside)
        || has_digit(inside) || !has_letter(inside))
        return false;
    struct text rest = text_slice(c->in, c->at + inside.length + 2, c->in.length);
    if (!line_is_blank(text_slice(rest, 0, text_find(rest, '\n', 0))))
        return false;
    c->at += inside.length + 2;
    return true;
}
