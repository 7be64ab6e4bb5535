/* write/card_text.c: cards to read in a terminal or paste anywhere.
 * SPDX-License-Identifier: MIT */
#include <stdio.h>

#include "write/card.h"
#include "write/wrap.h"

static void put_heading(struct buffer *b, struct text heading, char rule)
{
    buffer_format(b, "%.*s\n", TEXT(heading));
    put_rule(b, rule, text_letters(heading));
}

static void put_parts(struct buffer *b, const struct writing *w, const struct card *c)
{
    if (!c->parts.count)
        return;
    buffer_put_char(b, '\n');
    put_heading(b, PHRASE_0(w, card_ingredients), '-');
    for (size_t i = 0; i < c->parts.count; i++) {
        const struct card_part *part = &c->parts.at[i];
        if (part->heading.length)
            buffer_format(b, "%s%.*s\n", i ? "\n" : "", TEXT(part->heading));
        for (size_t n = 0; n < part->lines.count; n++)
            put_wrapped(b, "  ", part->lines.at[n]);
    }
}

/* " 9. Whisk in the flour. [3:15]" */
static void put_step(struct buffer *b, const struct writing *w, const struct card_step *s,
                     size_t number)
{
    char first[24];
    snprintf(first, sizeof first, "%2zu. ", number);
    struct text at = clock_text(w->scratch, s->start);
    put_wrapped(b, first, arena_format(w->scratch, "%.*s [%.*s]", TEXT(s->text), TEXT(at)));
    if (shows_heat(w, s))
        put_wrapped(b, "    ", s->heat);
}

static void put_steps(struct buffer *b, const struct writing *w, const struct card *c)
{
    if (!c->steps.count)
        return;
    buffer_put_char(b, '\n');
    put_heading(b, PHRASE_0(w, card_method), '-');
    for (size_t i = 0; i < c->steps.count; i++) {
        const struct card_step *s = &c->steps.at[i];
        const struct text heading = step_heading(w, s);
        if (heading.length)
            buffer_format(b, "%s%.*s\n", i ? "\n" : "", TEXT(heading));
        put_step(b, w, s, i + 1);
    }
}

static void put_facts(struct buffer *b, const struct writing *w, const struct card *c)
{
    struct text line = TEXT_EMPTY;
    for (size_t i = 0; i < c->facts.count; i++)
        line = arena_format(w->scratch, "%.*s%s%.*s", TEXT(line), i ? " · " : "",
                            TEXT(c->facts.at[i]));
    if (line.length)
        put_wrapped(b, "", line);
}

static void put_notes(struct buffer *b, const struct writing *w, const struct card *c)
{
    if (c->notes.count)
        buffer_put_char(b, '\n');
    for (size_t i = 0; i < c->notes.count; i++)
        put_wrapped(b, "* ", c->notes.at[i]);
    if (c->allergens.count)
        buffer_put_char(b, '\n');
    for (size_t i = 0; i < c->allergens.count; i++)
        put_wrapped(b, "", c->allergens.at[i]);
    buffer_put_char(b, '\n');
    if (c->cautions.count)
        put_heading(b, PHRASE_0(w, card_cautions), '-');
    for (size_t i = 0; i < c->cautions.count; i++)
        put_wrapped(b, "- ", c->cautions.at[i]);
    if (c->cautions.count)
        buffer_put_char(b, '\n');
    put_wrapped(b, "", PHRASE_0(w, card_silence));
}

static void put_card(struct buffer *b, const struct recording *r, const struct writing *w,
                     const struct card *c, bool first)
{
    (void) r;
    buffer_put_string(b, first ? "" : "\n\n");
    put_heading(b, c->title, '=');
    put_facts(b, w, c);
    if (c->draft)
        put_wrapped(b, "", PHRASE_0(w, card_draft));
    if (c->open)
        put_wrapped(b, "", PHRASE_1(w, card_open, arena_format(w->scratch, "%zu", c->open)));
    put_parts(b, w, c);
    put_steps(b, w, c);
    put_notes(b, w, c);
}

bool write_card_text(const struct recording *r, const struct writing *w, struct buffer *out,
                     struct problems *p)
{
    return cards_write(r, w, out, p, put_card);
}
