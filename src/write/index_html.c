/* write/index_html.c: the first page of a published folder: the recording drawn as a band, the
 * dishes with their files, chapters, and what is still to be mended.
 * SPDX-License-Identifier: MIT */
#include "base/path.h"
#include "write/chapters.h"
#include "write/index.h"
#include "write/ingredient_line.h"
#include "write/pages.h"
#include "write/publish.h"

struct text index_span_text(const struct sheet *s, double start, double end)
{
    return PHRASE_2(s->w, index_span, clock_text(s->w->scratch, start),
                    clock_text(s->w->scratch, end));
}

struct text index_card_link(const struct sheet *s, size_t dish, const size_t *step)
{
    struct text file = dish_file(s->w, s->r, dish);
    return step ? arena_format(s->w->scratch, "%.*s.html#%c%zu", TEXT(file), ID_STEP, *step)
                : arena_format(s->w->scratch, "%.*s.html", TEXT(file));
}

struct text index_anchor(const struct sheet *s, size_t i)
{
    return arena_format(s->w->scratch, "f%zu", i + 1);
}

static void begin_part(struct sheet *s, struct text heading, const char *list)
{
    html_begin(s->h, "section");
    html_line(s->h);
    html_element(s->h, "h2", NULL, heading);
    html_begin(s->h, list);
    html_line(s->h);
}

static void end_part(struct sheet *s)
{
    html_end_line(s->h);
    html_end_line(s->h);
}

static void put_link(struct sheet *s, struct text url, struct text words)
{
    html_begin(s->h, "a");
    html_url(s->h, "href", url);
    html_put(s->h, words);
    html_end(s->h);
}

static void put_small(struct sheet *s, struct text words)
{
    html_put(s->h, TEXT_OF(" "));
    html_element(s->h, "small", NULL, words);
}

static struct text ending(struct text name)
{
    size_t dot = name.length;
    while (dot && name.at[dot - 1] != '.')
        dot--;
    return text_slice(name, dot, name.length);
}

/* The dish's other files, named by their endings. */
static void put_files_of(struct sheet *s, size_t dish)
{
    struct published f;
    for (size_t i = 0; published_at(s->r, i, &f); i++) {
        struct text name = arena_text(s->w->scratch, text_from(f.name));
        if (f.dish != dish + 1 || text_ends(name, ".html"))
            continue;
        html_put(s->h, TEXT_OF(" "));
        put_link(s, name, ending(name));
    }
}

static void put_dishes(struct sheet *s)
{
    begin_part(s, PHRASE_0(s->w, index_dishes), "ol");
    for (size_t i = 0; i < s->r->dishes.count; i++) {
        const struct dish *d = &s->r->dishes.at[i];
        html_begin(s->h, "li");
        put_link(s, index_card_link(s, i, NULL), capital(s->w, d->title));
        put_small(s, index_span_text(s, d->start, d->end));
        put_files_of(s, i);
        html_end_line(s->h);
    }
    end_part(s);
}

static void put_moment(struct sheet *s, double at)
{
    struct text url = moment_url(s->w, at), clock = clock_text(s->w->scratch, at);
    if (url.length)
        put_link(s, url, clock);
    else
        html_put(s->h, clock);
}

static void put_chapters(struct sheet *s, struct problems *p)
{
    chapter_list list;
    chapters_make(&list, s->r, s->w, p);
    begin_part(s, PHRASE_0(s->w, index_chapters), "ul");
    for (size_t i = 0; i < list.count; i++) {
        html_begin(s->h, "li");
        put_moment(s, list.at[i].start);
        html_put(s->h, TEXT_OF(" "));
        html_put(s->h, list.at[i].title);
        html_end_line(s->h);
    }
    html_end_line(s->h);
    if (list.notes.count)
        html_element(s->h, "h3", NULL, PHRASE_0(s->w, index_kept));
    for (size_t i = 0; i < list.notes.count; i++)
        html_element(s->h, "p", "soft", list.notes.at[i]);
    html_end_line(s->h);
}

static void put_finding(struct sheet *s, size_t i)
{
    const struct finding *f = &s->r->findings.at[i];
    html_begin(s->h, "li");
    html_attribute(s->h, "id", index_anchor(s, i));
    html_begin(s->h, "b");
    html_attribute_string(s->h, "class", level_name(f->level));
    html_put(s->h, text_from(level_name(f->level)));
    html_end(s->h);
    html_put(s->h, TEXT_OF(" "));
    put_moment(s, f->at);
    html_put(s->h, TEXT_OF(" "));
    html_put(s->h, f->why);
    html_put(s->h, TEXT_OF(" "));
    html_put(s->h, f->suggest);
    if (f->source.length)
        put_small(s, f->source);
    html_end_line(s->h);
}

static void put_findings(struct sheet *s)
{
    size_t open = 0;
    begin_part(s, PHRASE_0(s->w, index_findings), "ul");
    for (int level = LEVEL_STOP; level >= LEVEL_NOTE; level--)
        for (size_t i = 0; i < s->r->findings.count; i++)
            if (!s->r->findings.at[i].dismissed && (int) s->r->findings.at[i].level == level) {
                put_finding(s, i);
                open++;
            }
    if (!open)
        html_element(s->h, "li", NULL, PHRASE_0(s->w, index_none));
    end_part(s);
}

static void put_files(struct sheet *s)
{
    struct published f;
    begin_part(s, PHRASE_0(s->w, index_files), "ul");
    for (size_t i = 0; published_at(s->r, i, &f); i++) {
        if (f.dish || text_is(text_from(f.output), "index"))
            continue;
        html_begin(s->h, "li");
        put_link(s, text_from(f.name), text_from(f.name));
        html_end_line(s->h);
    }
    end_part(s);
    if (!s->w->stills_count)
        html_element(s->h, "p", "soft", PHRASE_0(s->w, index_stills));
}

bool write_index_html(const struct recording *r, const struct writing *w, struct buffer *out,
                      struct problems *p)
{
    struct html h = {.out = out};
    struct sheet s = {&h, r, w};
    /* Where it lay on somebody's disk is nobody's business. */
    struct text title = PHRASE_1(w, index_title, text_from(path_file(r->file)));
    page_begin(&h, w, title, "base index");
    html_element(&h, "h1", NULL, title);
    index_put_band(&s);
    html_begin(&h, "div");
    html_attribute_string(&h, "class", "sides");
    html_line(&h);
    put_dishes(&s);
    put_chapters(&s, p);
    html_end_line(&h);
    put_findings(&s);
    html_begin(&h, "div");
    html_attribute_string(&h, "class", "files");
    html_line(&h);
    put_files(&s);
    html_end_line(&h);
    html_element(&h, "p", "soft", PHRASE_0(w, card_silence));
    page_end(&h);
    return true;
}
