/* write/pages.c
 * SPDX-License-Identifier: MIT */
#include "write/pages.h"

#include <stdio.h>
#include <string.h>

static void put_sheet(struct html *h, struct text name)
{
    size_t count;
    const struct pack_file *files = page_files(&count);
    char wanted[64];
    snprintf(wanted, sizeof wanted, "write/pages/%.*s.css", TEXT(name));
    for (size_t i = 0; i < count; i++)
        if (strcmp(files[i].name, wanted) == 0)
            html_style(h, files[i].bytes);
}

static void put_meta(struct html *h, const char *name, const char *content)
{
    html_empty(h, "meta");
    html_attribute_string(h, "name", name);
    html_attribute_string(h, "content", content);
    html_line(h);
}

void page_begin(struct html *h, const struct writing *w, struct text title, const char *sheets)
{
    struct text rest = text_from(sheets), name;
    buffer_put_string(h->out, "<!doctype html>\n");
    html_begin(h, "html");
    html_attribute(h, "lang", PHRASE_0(w, language));
    html_line(h);
    html_begin(h, "head");
    html_line(h);
    html_empty(h, "meta");
    html_attribute_string(h, "charset", "utf-8");
    html_line(h);
    put_meta(h, "viewport", "width=device-width, initial-scale=1");
    put_meta(h, "color-scheme", "light dark");
    html_element(h, "title", NULL, title);
    while (text_part(&rest, ' ', &name))
        put_sheet(h, name);
    if (w->style.length)
        html_style(h, w->style);
    html_end_line(h);
    html_begin(h, "body");
    html_line(h);
    html_begin(h, "main");
    html_line(h);
}

void page_end(struct html *h)
{
    while (h->depth) {
        html_end_line(h);
    }
}
