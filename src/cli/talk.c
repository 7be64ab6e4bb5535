/* cli/talk.c
 * SPDX-License-Identifier: MIT */
#include "cli/talk.h"

#include <stdio.h>

static void put_message(struct buffer *b, const struct dishtake_message *m)
{
    buffer_put_string(b, m->file ? m->file : "dishtake");
    if (m->line)
        buffer_format(b, ":%u", m->line);
    if (m->line && m->column)
        buffer_format(b, ":%u", m->column);
    buffer_format(b, ": %s%s\n", m->error ? "" : "note: ", m->text);
}

static void put_dropped(struct buffer *b, size_t dropped)
{
    if (dropped)
        buffer_format(b, "dishtake: and %zu more like these\n", dropped);
}

void talk_messages(struct buffer *b, const struct dishtake *d, bool notes)
{
    struct dishtake_message m;
    for (size_t i = 0; dishtake_message(d, i, &m); i++)
        if (m.error || notes)
            put_message(b, &m);
    if (notes)
        put_dropped(b, dishtake_messages_dropped(d));
}

void talk_problems(struct buffer *b, const struct problems *list, bool notes)
{
    for (size_t i = 0; i < list->count; i++) {
        const struct problem *p = &list->at[i];
        struct dishtake_message m = {p->at.file, p->message, p->at.line, p->at.column,
                                     p->level == PROBLEM_ERROR};
        if (m.error || notes)
            put_message(b, &m);
    }
    put_dropped(b, list->dropped);
}

void talk_print(const struct problems *list)
{
    struct buffer b = {0};
    talk_problems(&b, list, true);
    fwrite(b.at ? b.at : "", 1, b.length, stderr);
    buffer_release(&b);
}
