/* review/delta.c
 * SPDX-License-Identifier: MIT */
#include "review/delta.h"

/* A list of the page before, from the element after the one that was found last. */
struct old_list {
    struct text rest;
    size_t place; /* of the next element */
};

/* Keys stand two spaces in, elements four. */
static bool is_element(struct text line)
{
    return text_starts(line, "    ");
}

static struct text without_comma(struct text line)
{
    return text_ends(line, ",") ? text_slice(line, 0, line.length - 1) : line;
}

/* The old list that this line began, too; an empty one where none did. */
static struct old_list list_begun(struct text before, struct text key)
{
    struct text line;
    while (before.length && text_part(&before, '\n', &line))
        if (text_equal(line, key))
            return (struct old_list){before, 0};
    return (struct old_list){TEXT_EMPTY, 0};
}

/* Looks on from where the last one was, since elements hardly ever change places. */
static bool find(struct old_list *list, struct text element, size_t *place)
{
    struct old_list at = *list;
    struct text line;
    while (at.rest.length && text_part(&at.rest, '\n', &line) && is_element(line)) {
        *place = at.place++;
        if (text_equal(without_comma(line), element)) {
            *list = at;
            return true;
        }
    }
    return false;
}

void delta_put(struct text before, struct text now, struct buffer *out)
{
    struct old_list list = {TEXT_EMPTY, 0};
    struct text line;
    while (now.length && text_part(&now, '\n', &line)) {
        struct text element = without_comma(line);
        size_t place;
        if (!is_element(line))
            list = list_begun(before, line);
        if (is_element(line) && find(&list, element, &place))
            buffer_format(out, "%zu%s", place, element.length < line.length ? "," : "");
        else
            buffer_put(out, line);
        buffer_put_char(out, '\n');
    }
}
