/* read/markup.c: tags, references, and what other subtitles leave behind.
 * SPDX-License-Identifier: MIT */
#include <utf8proc.h>

#include "read/cleaner.h"
#include "read/clock.h"

static const struct entity {
    const char *name;
    int32_t point;
} entities[] = {
#define ENTITY(name, point) {name, point},
#include "read/entities.def"
#undef ENTITY
};

static int digit_value(char c)
{
    if (is_digit(c))
        return c - '0';
    c = (char) (c | 0x20);
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : 16;
}

/* "#189" or "#xBD". -1 when it is none; U+FFFD for what is no letter. */
static int32_t numeric_entity(struct text name)
{
    int base = name.length > 1 && (name.at[1] | 0x20) == 'x' ? 16 : 10;
    size_t i = base == 16 ? 2 : 1;
    int32_t point = 0;
    if (i >= name.length)
        return -1;
    for (; i < name.length; i++) {
        int value = digit_value(name.at[i]);
        if (value >= base)
            return -1;
        point = point > 0x10FFFF ? point : point * base + value;
    }
    return point && utf8proc_codepoint_valid(point) ? point : 0xFFFD;
}

static int32_t entity_point(struct text name)
{
    if (name.length && name.at[0] == '#')
        return numeric_entity(name);
    for (size_t i = 0; i < sizeof entities / sizeof *entities; i++)
        if (text_is(name, entities[i].name))
            return entities[i].point;
    return -1;
}

bool take_entity(struct cleaner *c)
{
    struct text name;
    utf8proc_uint8_t bytes[4];
    if (!clean_find(c, ';', '&', 12, &name))
        return false;
    int32_t point = entity_point(name);
    if (point < 0)
        return false;
    size_t n = (size_t) utf8proc_encode_char(point, bytes);
    clean_put_point(c, point, (const char *) bytes, n, c->at);
    c->at += name.length + 2;
    return true;
}

void clean_note_voice(struct cleaner *c, struct text raw)
{
    char bytes[NAME_BYTES_MAX * 2];
    raw = text_trim(text_cut(raw, sizeof bytes));
    if (!c->rd)
        return;
    struct cleaner name = {.in = raw, .out = bytes, .wanted = SIZE_MAX, .time = -1};
    while (name.at < raw.length) {
        if (raw.at[name.at] != '&' || !take_entity(&name)) {
            clean_put(&name, raw.at + name.at, 1, name.at);
            name.at++;
        }
    }
    struct text whole = arena_text(c->rd->r->arena, (struct text){bytes, name.length});
    *LIST_ADD(c->rd->r->arena, &c->found->voices) = (struct voice){c->length, whole};
}

/* The name of a tag ends at white space, at a class (".loud") or at the slash of "<br/>". */
static struct text tag_name_of(struct text tag)
{
    size_t end = tag.length && tag.at[0] == '/';
    while (end < tag.length && is_letter(tag.at[end]))
        end++;
    return text_slice(tag, 0, end);
}

static void take_element(struct cleaner *c, struct text tag)
{
    struct text name = tag_name_of(tag);
    if (text_is(name, "br"))
        clean_put_blank(c, '\n');
    if (text_is(name, "/v"))
        clean_note_voice(c, TEXT_EMPTY);
    if (text_is(name, "v")) {
        size_t space = 0;
        while (space < tag.length && !line_is_blank(text_slice(tag, space, space + 1)))
            space++;
        clean_note_voice(c, text_slice(tag, space, tag.length));
    }
}

bool take_tag(struct cleaner *c)
{
    struct text tag;
    struct clock clock;
    size_t end = 0;
    if (!clean_find(c, '>', '<', TAG_BYTES_MAX, &tag))
        return false;
    if (tag.length && is_digit(tag.at[0])) {
        if (!clock_read(tag, &end, &clock) || end < tag.length)
            return false;
        c->time = clock.seconds;
    } else if (tag.length && (is_letter(tag.at[0]) || tag.at[0] == '/')) {
        take_element(c, tag);
    } else if (tag.length) {
        return false;
    }
    c->at += tag.length + 2;
    return true;
}

/* "{\an8}": a position or style that subtitles for another format left behind. */
bool take_override(struct cleaner *c)
{
    struct text inside;
    if (clean_peek(c, 1) != '\\' || !clean_find(c, '}', '{', TAG_BYTES_MAX, &inside))
        return false;
    c->at += inside.length + 2;
    return true;
}

/* "\N" and "\n" break the line there, "\h" is a space that does not. */
bool take_backslash(struct cleaner *c)
{
    char next = clean_peek(c, 1);
    if (next != 'N' && next != 'n' && next != 'h')
        return false;
    clean_put_blank(c, next == 'h' ? ' ' : '\n');
    c->at += 2;
    return true;
}
