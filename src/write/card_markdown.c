/* write/card_markdown.c: cards as CommonMark.
 * SPDX-License-Identifier: MIT */
#include "write/card.h"
#include "write/markdown.h"

static void put_heading(struct buffer *b, const char *marks, struct text heading)
{
    buffer_format(b, "\n%s ", marks);
    put_markdown(b, heading);
    buffer_put_string(b, "\n\n");
}

static void put_item(struct buffer *b, const char *mark, struct text t)
{
    buffer_put_string(b, mark);
    put_markdown(b, t);
    buffer_put_char(b, '\n');
}

static void put_parts(struct buffer *b, const struct writing *w, const struct card *c)
{
    if (c->parts.count)
        put_heading(b, "##", PHRASE_0(w, card_ingredients));
    for (size_t i = 0; i < c->parts.count; i++) {
        const struct card_part *part = &c->parts.at[i];
        if (part->heading.length)
            put_heading(b, "###", part->heading);
        for (size_t n = 0; n < part->lines.count; n++)
            put_item(b, "- ", part->lines.at[n]);
    }
}

static void put_steps(struct buffer *b, const struct writing *w, const struct card *c)
{
    if (c->steps.count)
        put_heading(b, "##", PHRASE_0(w, card_method));
    for (size_t i = 0; i < c->steps.count; i++) {
        const struct card_step *s = &c->steps.at[i];
        const struct text heading = step_heading(w, s);
        if (heading.length)
            put_heading(b, "###", heading);
        buffer_format(b, "%zu. ", i + 1);
        put_markdown(b, s->text);
        buffer_format(b, " (%.*s)\n", TEXT(clock_text(w->scratch, s->start)));
        if (shows_heat(w, s))
            put_item(b, "   ", s->heat);
    }
}

static void put_facts(struct buffer *b, const struct card *c)
{
    for (size_t i = 0; i < c->facts.count; i++) {
        buffer_put_string(b, i ? " · **" : "\n**");
        put_markdown(b, c->facts.at[i]);
        buffer_put_string(b, "**");
    }
    if (c->facts.count)
        buffer_put_char(b, '\n');
}

static void put_state(struct buffer *b, const struct writing *w, const struct card *c)
{
    if (c->draft) {
        buffer_put_string(b, "\n*");
        put_markdown(b, PHRASE_0(w, card_draft));
        buffer_put_string(b, "*\n");
    }
    if (c->open)
        put_item(b, "\n", PHRASE_1(w, card_open, arena_format(w->scratch, "%zu", c->open)));
}

static void put_notes(struct buffer *b, const struct writing *w, const struct card *c)
{
    if (c->notes.count)
        buffer_put_char(b, '\n');
    for (size_t i = 0; i < c->notes.count; i++)
        put_item(b, "- ", c->notes.at[i]);
    for (size_t i = 0; i < c->allergens.count; i++)
        put_item(b, "\n", c->allergens.at[i]);
    if (c->cautions.count)
        put_heading(b, "##", PHRASE_0(w, card_cautions));
    for (size_t i = 0; i < c->cautions.count; i++)
        put_item(b, "- ", c->cautions.at[i]);
    put_item(b, "\n", PHRASE_0(w, card_silence));
}

static void put_card(struct buffer *b, const struct recording *r, const struct writing *w,
                     const struct card *c, bool first)
{
    (void) r;
    buffer_put_string(b, first ? "" : "\n");
    put_item(b, "# ", c->title);
    put_facts(b, c);
    put_state(b, w, c);
    put_parts(b, w, c);
    put_steps(b, w, c);
    put_notes(b, w, c);
}

bool write_card_markdown(const struct recording *r, const struct writing *w, struct buffer *out,
                         struct problems *p)
{
    return cards_write(r, w, out, p, put_card);
}
