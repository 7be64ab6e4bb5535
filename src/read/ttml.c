/* read/ttml.c: TTML, by Expat. Source: W3C, Timed Text Markup Language 2, of November 2018,
 * sections 8.1 (p, span, br) and 12 (times). Nothing is expanded: reading stops at a DOCTYPE.
 * SPDX-License-Identifier: MIT */
#include <expat.h>
#include <string.h>

#include "read/clock.h"
#include "read/drafts.h"
#include "read/limits.h"
#include "read/ttml_time.h"

struct element {
    double start, end; /* seconds; end < 0 when it is open */
    bool timed, text;  /* has times of its own; its letters are speech */
    bool broken;       /* its start cannot be read */
};

struct ttml {
    struct reader *rd;
    XML_Parser parser;
    struct drafts drafts;
    struct element stack[TTML_DEPTH_MAX];
    size_t depth;
    struct draft open; /* text is being put behind drafts.length; line 0: none */
    size_t open_text;  /* where its text begins in drafts.text */
    struct ttml_rates rates;
    char language[NAME_BYTES_MAX];
    const char *refused; /* why reading was stopped */
    bool is_ttml;
};

static const char *local_name(const char *name)
{
    const char *colon = strrchr(name, ':');
    return colon ? colon + 1 : name;
}

static void stop(struct ttml *t, const char *why)
{
    if (!t->refused)
        t->refused = why;
    XML_StopParser(t->parser, XML_FALSE);
}

static bool read_attribute_time(struct ttml *t, const char *value, double *seconds)
{
    struct text text = text_trim(text_from(value));
    if (ttml_time(text, &t->rates, seconds))
        return true;
    problem_note(t->rd->p, read_place(t->rd, (unsigned) XML_GetCurrentLineNumber(t->parser)),
                 "the time \"%.*s\" cannot be read", TEXT(text_cut(text, QUOTE_BYTES)));
    return false;
}

static double min_end(double a, double b)
{
    return a < 0 || (b >= 0 && b < a) ? b : a;
}

/* The times of an element count from the start of the one around it. */
static struct element read_element_times(struct ttml *t, const char **attributes,
                                         const struct element *around)
{
    struct element e = {.text = around->text, .broken = around->broken};
    double begin = 0, end = -1, duration = -1;
    for (size_t i = 0; attributes[i]; i += 2) {
        const char *name = local_name(attributes[i]), *value = attributes[i + 1];
        double *to = !strcmp(name, "begin") ? &begin
                     : !strcmp(name, "end") ? &end
                     : !strcmp(name, "dur") ? &duration
                                            : NULL;
        if (!to)
            continue;
        e.timed = true;
        if (!read_attribute_time(t, value, to) && to == &begin)
            e.broken = true;
    }
    e.start = around->start + begin;
    if (end >= 0)
        end += around->start;
    if (duration >= 0)
        end = min_end(end, e.start + duration);
    e.end = min_end(end, around->end);
    return e;
}

static double read_rate(const char *value, double otherwise)
{
    double rate;
    bool whole;
    return number_read(text_from(value), &rate, &whole) && rate > 0 ? rate : otherwise;
}

/* The root's frame rate (times a multiplier "1000 1001"), tick rate and language. A tick is a frame
 * where no tick rate is given (section 7.2.21). */
static void read_root(struct ttml *t, const char **attributes)
{
    bool ticks = false;
    for (size_t i = 0; attributes[i]; i += 2) {
        const char *name = local_name(attributes[i]), *value = attributes[i + 1];
        struct text over, under = text_from(value);
        if (!strcmp(name, "frameRate")) {
            t->rates.frames *= read_rate(value, 30) / 30;
        } else if (!strcmp(name, "tickRate")) {
            t->rates.ticks = read_rate(value, 1);
            ticks = true;
        } else if (!strcmp(name, "frameRateMultiplier") && text_part(&under, ' ', &over)
                   && under.at) {
            double a, b;
            bool whole;
            if (number_read(over, &a, &whole) && number_read(under, &b, &whole) && a > 0 && b > 0)
                t->rates.frames *= a / b;
        } else if (!strcmp(name, "lang") && strlen(value) < sizeof t->language) {
            memcpy(t->language, value, strlen(value) + 1);
        }
    }
    if (!ticks)
        t->rates.ticks = t->rates.frames;
}

static void close_draft(struct ttml *t)
{
    struct draft *d = &t->open;
    if (!d->line)
        return;
    d->text = (struct text){t->drafts.text + t->open_text, t->drafts.length - t->open_text};
    d->raw_end = (size_t) XML_GetCurrentByteIndex(t->parser);
    struct draft *kept = line_is_blank(d->text) ? NULL : drafts_add(&t->drafts);
    if (kept)
        *kept = *d;
    d->line = 0;
}

static void open_draft(struct ttml *t)
{
    const struct element *e = &t->stack[t->depth - 1];
    t->open_text = t->drafts.length;
    t->open = (struct draft){.start = e->broken ? -1 : e->start,
                             .end = e->end,
                             .raw = (size_t) XML_GetCurrentByteIndex(t->parser),
                             .line = (unsigned) XML_GetCurrentLineNumber(t->parser),
                             .column = (unsigned) XML_GetCurrentColumnNumber(t->parser) + 1};
}

_Static_assert(TTML_DEPTH_MAX == 64 && TTML_ATTRIBUTES_MAX == 64, "the messages below name them");

static void XMLCALL on_start(void *user, const char *qualified, const char **attributes)
{
    struct ttml *t = user;
    const char *name = local_name(qualified);
    const struct element root = {.end = -1};
    if (!t->depth && strcmp(name, "tt") != 0) {
        stop(t, "is XML, but not TTML");
        return;
    }
    if (t->depth == TTML_DEPTH_MAX) {
        stop(t, "has elements nested too deep: more than 64");
        return;
    }
    if (XML_GetSpecifiedAttributeCount(t->parser) > 2 * (int) TTML_ATTRIBUTES_MAX) {
        stop(t, "has an element with too many attributes: more than 64");
        return;
    }
    if (!t->depth) {
        t->is_ttml = true;
        read_root(t, attributes);
    }
    struct element e =
        read_element_times(t, attributes, t->depth ? &t->stack[t->depth - 1] : &root);
    bool paragraph = !strcmp(name, "p");
    e.text = paragraph || (e.text && strcmp(name, "metadata") != 0);
    if (paragraph || (e.timed && e.text))
        close_draft(t);
    if (!strcmp(name, "br") && t->open.line)
        drafts_keep(&t->drafts, TEXT_OF("\n"));
    t->stack[t->depth++] = e;
}

static void XMLCALL on_end(void *user, const char *qualified)
{
    struct ttml *t = user;
    if (!t->depth)
        return;
    const struct element *e = &t->stack[t->depth - 1];
    if (e->timed || !strcmp(local_name(qualified), "p"))
        close_draft(t);
    t->depth--;
}

/* A line break in the file is a space; only <br/> breaks a caption's line. */
static void XMLCALL on_text(void *user, const char *at, int length)
{
    struct ttml *t = user;
    if (!t->depth || !t->stack[t->depth - 1].text)
        return;
    if (!t->open.line) {
        if (line_is_blank((struct text){at, (size_t) length}))
            return;
        open_draft(t);
    }
    for (int i = 0; i < length; i++) {
        char c = at[i] == '\n' || at[i] == '\t' ? ' ' : at[i];
        drafts_keep(&t->drafts, (struct text){&c, 1});
    }
}

static void XMLCALL on_doctype(void *user, const char *name, const char *system, const char *public,
                               int internal)
{
    (void) name, (void) system, (void) public, (void) internal;
    stop(user, "has a DOCTYPE; TTML needs none, and for safety it is not read");
}

static size_t count_tags(struct text t)
{
    size_t count = 1;
    for (size_t i = text_find(t, '<', 0); i < t.length; i = text_find(t, '<', i + 1))
        count++;
    return count;
}

/* Collects the drafts; true when the file was well-formed up to its end. */
static bool parse(struct ttml *t, unsigned *line, const char **why)
{
    struct text source = t->rd->r->source;
    t->parser = XML_ParserCreate("UTF-8");
    if (!t->parser) {
        *why = "there is no memory left to read it";
        return false;
    }
    XML_SetUserData(t->parser, t);
    XML_SetElementHandler(t->parser, on_start, on_end);
    XML_SetCharacterDataHandler(t->parser, on_text);
    XML_SetStartDoctypeDeclHandler(t->parser, on_doctype);
    bool good = XML_Parse(t->parser, source.at, (int) source.length, XML_TRUE) == XML_STATUS_OK;
    *line = (unsigned) XML_GetCurrentLineNumber(t->parser);
    *why = t->refused ? t->refused : XML_ErrorString(XML_GetErrorCode(t->parser));
    if (!good && t->open.line && !t->refused)
        close_draft(t);
    XML_ParserFree(t->parser);
    return good;
}

bool read_ttml(struct reader *rd)
{
    struct ttml *t = arena_alloc(rd->r->arena, sizeof *t);
    unsigned line = 0;
    const char *why = "";
    *t = (struct ttml){.rd = rd, .rates = {.frames = 30, .ticks = 1}};
    drafts_make(&t->drafts, rd->r->arena, count_tags(rd->r->source), rd->r->source.length, false);
    bool good = parse(t, &line, &why);
    if (t->refused || !t->is_ttml || (!good && !t->drafts.count))
        return problem(rd->p, read_place(rd, line), "%s: " EXPECTED, why);
    if (!good)
        problem_note(rd->p, read_place(rd, line), "breaks off here (%s); read up to this place",
                     why);
    if (t->drafts.full)
        return problem(rd->p, read_place(rd, 0), "has more than %u captions", READ_CUES_MAX);
    rd->r->language = arena_text(rd->r->arena, text_from(t->language));
    for (size_t i = 0; i < t->drafts.count; i++)
        if (!add_cue(rd, &t->drafts.at[i]))
            return false;
    return true;
}
