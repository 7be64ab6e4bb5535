/* write/json_print.c
 * SPDX-License-Identifier: MIT */
#include "write/json_print.h"

#include <math.h>
#include <stdio.h>
#include <string.h>
#include <utf8proc.h>

static void new_line(struct json *j)
{
    buffer_put_char(j->out, '\n');
    for (unsigned i = 0; i < j->depth; i++)
        buffer_put_string(j->out, "  ");
}

/* What stands between this value and the one before. */
static void begin_value(struct json *j)
{
    if (j->keyed) {
        j->keyed = false;
        return;
    }
    if (!j->depth)
        return;
    if (!j->first)
        buffer_put_char(j->out, ',');
    if (j->depth <= j->spread)
        new_line(j);
    else if (!j->first)
        buffer_put_char(j->out, ' ');
    j->first = false;
}

void json_open(struct json *j, char bracket)
{
    begin_value(j);
    buffer_put_char(j->out, bracket);
    j->depth++;
    j->first = true;
}

void json_close(struct json *j, char bracket)
{
    bool spread = j->depth <= j->spread && !j->first;
    j->depth--;
    if (spread)
        new_line(j);
    buffer_put_char(j->out, bracket);
    j->first = false;
}

void json_put_key(struct json *j, struct text key)
{
    begin_value(j);
    buffer_put_char(j->out, '"');
    buffer_put(j->out, key);
    buffer_put(j->out, TEXT_OF("\": "));
    j->keyed = true;
}

static void put_escaped_char(struct buffer *b, unsigned char c)
{
    static const char SHORT[] = "\"\"\\\\\bb\ff\nn\rr\tt";
    for (const char *s = SHORT; *s; s += 2)
        if (c == (unsigned char) *s) {
            buffer_format(b, "\\%c", s[1]);
            return;
        }
    buffer_format(b, "\\u%04x", c);
}

/* Bytes at the front that may stand as they are. */
static size_t plain_length(const struct json *j, struct text t)
{
    size_t i = 0;
    for (; i < t.length; i++) {
        unsigned char c = (unsigned char) t.at[i];
        if (c < 0x20 || c >= 0x80 || c == '"' || c == '\\')
            break;
        if (j->in_script && (c == '<' || c == '>' || c == '&'))
            break;
    }
    return i;
}

void json_put_text(struct json *j, struct text t)
{
    begin_value(j);
    buffer_put_char(j->out, '"');
    while (t.length) {
        size_t n = plain_length(j, t);
        buffer_put(j->out, text_slice(t, 0, n));
        t = text_slice(t, n, t.length);
        if (!t.length)
            break;
        n = 1;
        if ((unsigned char) t.at[0] < 0x80) {
            put_escaped_char(j->out, (unsigned char) t.at[0]);
        } else {
            utf8proc_int32_t code;
            utf8proc_ssize_t read = utf8proc_iterate((const utf8proc_uint8_t *) t.at,
                                                     (utf8proc_ssize_t) t.length, &code);
            n = read > 0 ? (size_t) read : 1;
            buffer_put(j->out, read > 0 ? text_slice(t, 0, n) : TEXT_OF("\xEF\xBF\xBD"));
        }
        t = text_slice(t, n, t.length);
    }
    buffer_put_char(j->out, '"');
}

void json_put_string(struct json *j, const char *string)
{
    if (string)
        json_put_text(j, text_from(string));
    else
        json_put_null(j);
}

void json_put_text_or_null(struct json *j, struct text t)
{
    if (t.length)
        json_put_text(j, t);
    else
        json_put_null(j);
}

/* Digits of the usual ones: whole numbers, and those with three decimals at most, which need no
 * more than 15 digits and so are what "%.15g" would print of them. False for any other. */
#define THOUSANDTHS_MOST 1e14
static bool put_thousandths(struct buffer *b, double value)
{
    double thousandths = round(fabs(value) * 1000);
    if (!(thousandths < THOUSANDTHS_MOST) || thousandths / 1000 != fabs(value))
        return false;
    uint64_t n = (uint64_t) thousandths, rest = n % 1000;
    char decimals[] = {'.', (char) ('0' + rest / 100), (char) ('0' + rest / 10 % 10),
                       (char) ('0' + rest % 10)};
    size_t length = sizeof decimals;
    while (length > 1 && decimals[length - 1] == '0')
        length--;
    if (value < 0)
        buffer_put_char(b, '-');
    buffer_put_whole(b, n / 1000);
    buffer_put(b, (struct text){decimals, length > 1 ? length : 0});
    return true;
}

static void put_any_number(struct buffer *b, double value)
{
    char digits[64];
    int length = snprintf(digits, sizeof digits, "%.15g", value);
    /* The host program may have set a locale with another decimal point. */
    for (int i = 0; i < length; i++)
        if (!strchr("0123456789+-e", digits[i]))
            digits[i] = '.';
    buffer_put_string(b, digits);
}

void json_put_number(struct json *j, double value)
{
    if (!isfinite(value)) {
        json_put_null(j);
        return;
    }
    begin_value(j);
    if (!put_thousandths(j->out, value))
        put_any_number(j->out, value);
}

void json_put_seconds(struct json *j, double value)
{
    json_put_number(j, round(value * 1000) / 1000);
}

void json_put_ratio(struct json *j, struct ratio value)
{
    json_put_number(j, ratio_double(value));
}

void json_put_whole(struct json *j, size_t value)
{
    begin_value(j);
    buffer_put_whole(j->out, value);
}

void json_put_bool(struct json *j, bool value)
{
    begin_value(j);
    buffer_put_string(j->out, value ? "true" : "false");
}

void json_put_null(struct json *j)
{
    begin_value(j);
    buffer_put_string(j->out, "null");
}
