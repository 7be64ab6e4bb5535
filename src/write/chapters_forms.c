/* write/chapters_forms.c: chapters as files that players and muxers read. Sources beside each form.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "write/chapters.h"
#include "write/html.h"
#include "write/stamp.h"

/* On one line, whatever was said. */
static struct text one_line(const struct writing *w, struct text title)
{
    char *copy = arena_alloc(w->scratch, title.length + 1);
    for (size_t i = 0; i < title.length; i++)
        copy[i] = strchr("\r\n", title.at[i]) ? ' ' : title.at[i];
    return (struct text){copy, title.length};
}

/* WebVTT, W3C Candidate Recommendation of April 2019, chapter cues: '&', '<' and '>' are escaped,
 * so that "-->" cannot stand in a title either. */
bool write_chapters_webvtt(const struct recording *r, const struct writing *w, struct buffer *out,
                           struct problems *p)
{
    chapter_list list;
    chapters_make(&list, r, w, p);
    buffer_put_string(out, "WEBVTT\n");
    for (size_t i = 0; i < list.count; i++) {
        const struct chapter *c = &list.at[i];
        buffer_format(out, "\n%.*s --> %.*s\n", TEXT(stamp_text(w->scratch, c->start, '.')),
                      TEXT(stamp_text(w->scratch, c->end, '.')));
        put_caption_text(out, one_line(w, c->title));
        buffer_put_char(out, '\n');
    }
    return true;
}

/* FFmpeg's documentation, "Metadata": '=', ';', '#', '\\' and line ends take a backslash. */
static void put_metadata(struct buffer *b, struct text t)
{
    for (size_t i = 0; i < t.length; i++) {
        if (t.at[i] && strchr("=;#\\\n", t.at[i]))
            buffer_put_char(b, '\\');
        buffer_put_char(b, t.at[i] ? t.at[i] : ' ');
    }
}

bool write_chapters_ffmetadata(const struct recording *r, const struct writing *w,
                               struct buffer *out, struct problems *p)
{
    chapter_list list;
    chapters_make(&list, r, w, p);
    buffer_put_string(out, ";FFMETADATA1\n");
    for (size_t i = 0; i < list.count; i++) {
        const struct chapter *c = &list.at[i];
        buffer_format(out, "\n[CHAPTER]\nTIMEBASE=1/1000\nSTART=%llu\nEND=%llu\ntitle=",
                      stamp_milliseconds(c->start), stamp_milliseconds(c->end));
        put_metadata(out, one_line(w, c->title));
        buffer_put_char(out, '\n');
    }
    return true;
}

static void put_leaf(struct html *h, const char *name, struct text value)
{
    html_element(h, name, NULL, value);
}

static void put_atom(struct html *h, const struct writing *w, const struct chapter *c,
                     size_t number)
{
    struct arena *a = w->scratch;
    html_begin(h, "ChapterAtom");
    html_line(h);
    put_leaf(h, "ChapterUID", arena_format(a, "%zu", number));
    put_leaf(h, "ChapterTimeStart", stamp_text(a, c->start, '.'));
    put_leaf(h, "ChapterTimeEnd", stamp_text(a, c->end, '.'));
    html_begin(h, "ChapterDisplay");
    html_line(h);
    put_leaf(h, "ChapterString", one_line(w, c->title));
    put_leaf(h, "ChapLanguageIETF", PHRASE_0(w, language));
    html_end_line(h);
    html_end_line(h);
}

/* The elements of RFC 9559, 5.1.7 (a ChapterUID is never 0), in the text form that general muxers
 * read. */
bool write_chapters_matroska(const struct recording *r, const struct writing *w, struct buffer *out,
                             struct problems *p)
{
    struct html h = {.out = out};
    chapter_list list;
    chapters_make(&list, r, w, p);
    buffer_put_string(out, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    html_begin(&h, "Chapters");
    html_line(&h);
    html_begin(&h, "EditionEntry");
    html_line(&h);
    for (size_t i = 0; i < list.count; i++)
        put_atom(&h, w, &list.at[i], i + 1);
    html_end_line(&h);
    html_end_line(&h);
    return true;
}

/* Podlove Simple Chapters 1.2: starts only. */
bool write_chapters_podlove(const struct recording *r, const struct writing *w, struct buffer *out,
                            struct problems *p)
{
    struct html h = {.out = out};
    chapter_list list;
    chapters_make(&list, r, w, p);
    buffer_put_string(out, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    html_begin(&h, "psc:chapters");
    html_attribute_string(&h, "version", "1.2");
    html_attribute_string(&h, "xmlns:psc", "http://podlove.org/simple-chapters");
    html_line(&h);
    for (size_t i = 0; i < list.count; i++) {
        html_begin(&h, "psc:chapter");
        html_attribute(&h, "start", stamp_text(w->scratch, list.at[i].start, '.'));
        html_attribute(&h, "title", one_line(w, list.at[i].title));
        html_end_line(&h);
    }
    html_end_line(&h);
    return true;
}
