/* write/html.h: HTML and XML, element after element, straight into a buffer. Every text that comes
 * from outside goes through the escaper of the place where it lands, so that it reads as it was
 * said and never as markup.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_WRITE_HTML_H
#define DISHTAKE_WRITE_HTML_H

#include "base/arena.h"
#include "base/buffer.h"

#define HTML_DEPTH 24

/* Zeroed but for `out`. Tag and attribute names are ours, never a user's. */
struct html {
    struct buffer *out; /* borrowed */
    const char *open[HTML_DEPTH];
    unsigned depth;
    bool in_tag; /* attributes may follow */
};

void html_begin(struct html *h, const char *tag);
void html_end(struct html *h); /* what was begun last */
/* An element without content: <meta>, <img>. */
void html_empty(struct html *h, const char *tag);
/* Of the element begun last, before it has content. */
void html_attribute(struct html *h, const char *name, struct text value);
void html_attribute_string(struct html *h, const char *name, const char *value);
/* An address; one that is none of http, https and a path becomes "#". */
void html_url(struct html *h, const char *name, struct text url);
void html_put(struct html *h, struct text t);
void html_line(struct html *h);     /* a line end, where it means nothing */
void html_end_line(struct html *h); /* html_end(), and a line end */
/* An element with a text in it, on a line of its own; `class` may be NULL. */
void html_element(struct html *h, const char *tag, const char *class, struct text t);
/* A style sheet: nothing in it ends the element. */
void html_style(struct html *h, struct text css);

/* The escapers. Characters that HTML and XML do not allow, and bytes that are no UTF-8, become
 * U+FFFD. The text of an element and of a quoted attribute, in both languages: */
void put_escaped(struct buffer *b, struct text t);
/* The text of a WebVTT cue, where only tags and references mean something (W3C WebVTT, 3.4). */
void put_caption_text(struct buffer *b, struct text t);
/* Of an address, percent signs for all that may not stand in one (RFC 3986); what is written as %41
 * already stays. */
void put_url(struct buffer *b, struct text url);
/* Whether it is http, https, a path or empty, and so runs no script. */
bool url_is_plain(struct text url);

#endif
