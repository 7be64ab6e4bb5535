/* write/html.c
 * SPDX-License-Identifier: MIT */
#include "write/html.h"

#include <assert.h>
#include <string.h>
#include <utf8proc.h>

#define NO_CHARACTER "\xEF\xBF\xBD"

/* XML 1.0, 2.2; HTML forbids the same and a few more. */
static bool is_allowed(utf8proc_int32_t code)
{
    if (code < 0x20)
        return code == '\t' || code == '\n' || code == '\r';
    return code < 0x7F || (code > 0x9F && (code & 0xFFFE) != 0xFFFE);
}

static const char *const ESCAPES[128] = {
    ['&'] = "&amp;", ['<'] = "&lt;", ['>'] = "&gt;", ['"'] = "&quot;", ['\''] = "&#39;"};

static void put_character(struct buffer *b, struct text character, utf8proc_int32_t code)
{
    if (code >= 0 && code < 128 && ESCAPES[code])
        buffer_put_string(b, ESCAPES[code]);
    else
        buffer_put(b, character);
}

void put_escaped(struct buffer *b, struct text t)
{
    while (t.length) {
        utf8proc_int32_t code;
        utf8proc_ssize_t read =
            utf8proc_iterate((const utf8proc_uint8_t *) t.at, (utf8proc_ssize_t) t.length, &code);
        size_t n = read > 0 ? (size_t) read : 1;
        if (read > 0 && is_allowed(code))
            put_character(b, text_slice(t, 0, n), code);
        else
            buffer_put_string(b, NO_CHARACTER);
        t = text_slice(t, n, t.length);
    }
}

void put_caption_text(struct buffer *b, struct text t)
{
    for (size_t i = 0; i < t.length; i++) {
        char c = t.at[i];
        if (c == '&' || c == '<' || c == '>')
            buffer_put_string(b, ESCAPES[(unsigned char) c]);
        else if (c == '\0')
            buffer_put_string(b, NO_CHARACTER);
        else
            buffer_put_char(b, c);
    }
}

/* RFC 3986, 2.2 and 2.3; the quote signs among them would have to be escaped once more. */
static bool stands_in_url(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9')
           || (c && strchr("-._~:/?#[]@!$()*+,;=%", c));
}

void put_url(struct buffer *b, struct text url)
{
    for (size_t i = 0; i < url.length; i++) {
        char c = url.at[i];
        if (c == '&')
            buffer_put_string(b, "&amp;");
        else if (stands_in_url(c))
            buffer_put_char(b, c);
        else
            buffer_format(b, "%%%02X", (unsigned) (unsigned char) c);
    }
}

static bool starts_like(struct text t, const char *start)
{
    size_t n = strlen(start);
    for (size_t i = 0; i < n; i++)
        if (i >= t.length || (t.at[i] | 0x20) != start[i])
            return false;
    return true;
}

/* A colon before the first slash ends a scheme. Browsers drop blanks and control characters in
 * front of one and inside it, so an address with any of them at its front is not plain. */
bool url_is_plain(struct text url)
{
    if (starts_like(url, "http://") || starts_like(url, "https://"))
        return true;
    for (size_t i = 0; i < url.length && !strchr("/?#", url.at[i]); i++)
        if (url.at[i] == ':' || (unsigned char) url.at[i] <= ' ')
            return false;
    return true;
}

/* ---- elements */

static void close_tag(struct html *h)
{
    if (h->in_tag)
        buffer_put_char(h->out, '>');
    h->in_tag = false;
}

void html_empty(struct html *h, const char *tag)
{
    close_tag(h);
    buffer_format(h->out, "<%s", tag);
    h->in_tag = true;
}

void html_begin(struct html *h, const char *tag)
{
    assert(h->depth < HTML_DEPTH);
    html_empty(h, tag);
    h->open[h->depth++] = tag;
}

void html_end(struct html *h)
{
    assert(h->depth);
    close_tag(h);
    buffer_format(h->out, "</%s>", h->open[--h->depth]);
}

void html_attribute(struct html *h, const char *name, struct text value)
{
    assert(h->in_tag);
    buffer_format(h->out, " %s=\"", name);
    put_escaped(h->out, value);
    buffer_put_char(h->out, '"');
}

void html_attribute_string(struct html *h, const char *name, const char *value)
{
    html_attribute(h, name, text_from(value));
}

void html_url(struct html *h, const char *name, struct text url)
{
    assert(h->in_tag);
    buffer_format(h->out, " %s=\"", name);
    put_url(h->out, url_is_plain(url) ? url : TEXT_OF("#"));
    buffer_put_char(h->out, '"');
}

void html_put(struct html *h, struct text t)
{
    close_tag(h);
    put_escaped(h->out, t);
}

void html_line(struct html *h)
{
    close_tag(h);
    buffer_put_char(h->out, '\n');
}

void html_end_line(struct html *h)
{
    html_end(h);
    html_line(h);
}

void html_element(struct html *h, const char *tag, const char *class, struct text t)
{
    html_begin(h, tag);
    if (class)
        html_attribute_string(h, "class", class);
    html_put(h, t);
    html_end_line(h);
}

/* "</" can only be in a string or a comment of a style sheet, where a backslash before '/' means
 * just '/'. */
void html_style(struct html *h, struct text css)
{
    html_begin(h, "style");
    html_line(h);
    for (size_t i = 0; i < css.length; i++) {
        if (css.at[i] == '/' && i && css.at[i - 1] == '<')
            buffer_put_char(h->out, '\\');
        buffer_put_char(h->out, css.at[i] ? css.at[i] : ' ');
    }
    html_end_line(h);
}
