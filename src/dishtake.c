/* dishtake.c: the handle around the pipeline: a grammar, and one recording at a time.
 * SPDX-License-Identifier: MIT */
#include "dishtake.h"

#include <stdlib.h>
#include <string.h>

#include "kitchen/calculate.h"
#include "pipeline.h"
#include "write/html.h"
#include "write/publish.h"
#include "write/shopping.h"
#include "write/write.h"

#define MEMORY_BYTES_USUAL ((size_t) 1 << 30)

/* The grammar and what was said of it; shared, read-only, by every handle made from the first one.
 */
struct grammar {
    struct pack *pack;
    struct kitchen *kitchen;
    struct problems problems;
};

struct dishtake {
    struct grammar *grammar;
    bool owns_grammar;
    struct matcher *matcher;
    struct ear *ear;
    struct arena arena, scratch; /* of the recording; of one output */
    struct recording recording;
    struct edits *edits;            /* of this recording; owned; NULL without any */
    struct problems edits_problems; /* of their file */
    struct problems problems;       /* of this recording */
    struct means means;             /* that it was read with */
    struct kept kept;               /* where it is to be read with other edits */
    bool keeps;
    const char *edits_name; /* borrowed */
    struct buffer out;
    bool began; /* a recording was asked for: messages are of it, no longer of the grammar */
    bool read;  /* recording is whole */
};

/* The Makefile's VERSION, a bare word on the compiler's command line, as a string. */
#define QUOTED(word) QUOTED_AS_IT_IS(word)
#define QUOTED_AS_IT_IS(word) #word

const char *dishtake_version(void)
{
    return QUOTED(DISHTAKE_VERSION);
}

/* A handle that shares `g`; `owns` says who frees it. Frees nothing of `g` on failure. */
static struct dishtake *handle_make(struct grammar *g, bool owns)
{
    struct dishtake *d = calloc(1, sizeof *d);
    if (!d)
        return NULL;
    d->matcher = matcher_new(g->pack);
    d->ear = ear_new(g->pack);
    if (!d->matcher || !d->ear) {
        ear_free(d->ear);
        matcher_free(d->matcher);
        free(d);
        return NULL;
    }
    d->grammar = g;
    d->owns_grammar = owns;
    arena_init(&d->arena, MEMORY_BYTES_USUAL);
    arena_init(&d->scratch, MEMORY_BYTES_USUAL);
    return d;
}

static void grammar_free(struct grammar *g)
{
    kitchen_free(g->kitchen);
    pack_free(g->pack);
    problems_release(&g->problems);
    free(g);
}

/* Takes the pack; NULL: there is none, and why is in the problems of the grammar. */
static struct grammar *grammar_finish(struct grammar *g, struct pack *k)
{
    g->pack = k;
    if (k && !g->problems.errors)
        g->kitchen = kitchen_new(k, &g->problems);
    return g;
}

/* The same files as the pack's loader wants them. */
static struct grammar *grammar_of(const struct dishtake_file *files, size_t count)
{
    struct grammar *g = calloc(1, sizeof *g);
    struct pack_file *list = calloc(count, sizeof *list);
    if (!g || !list) {
        free(g);
        free(list);
        return NULL;
    }
    for (size_t i = 0; i < count; i++)
        list[i] = (struct pack_file){files[i].name, {files[i].bytes, files[i].length}};
    struct pack *k = pack_load(list, count, &g->problems);
    free(list);
    return grammar_finish(g, k);
}

static struct grammar *grammar_builtin(void)
{
    struct grammar *g = calloc(1, sizeof *g);
    struct pack *k = pack_builtin();
    struct kitchen *kitchen = k ? kitchen_builtin(k) : NULL;
    if (g && kitchen) {
        g->pack = k;
        g->kitchen = kitchen;
        return g;
    }
    kitchen_free(kitchen);
    pack_free(k);
    free(g);
    return NULL;
}

struct dishtake *dishtake_new(const struct dishtake_file *files, size_t count)
{
    struct grammar *g = count ? grammar_of(files, count) : grammar_builtin();
    if (!g)
        return NULL;
    struct dishtake *d = handle_make(g, true);
    if (!d)
        grammar_free(g);
    return d;
}

struct dishtake *dishtake_again(const struct dishtake *d)
{
    return handle_make(d->grammar, false);
}

static void forget_edits(struct dishtake *d)
{
    edits_free(d->edits);
    d->edits = NULL;
    problems_release(&d->edits_problems);
}

void dishtake_free(struct dishtake *d)
{
    if (!d)
        return;
    if (d->owns_grammar)
        grammar_free(d->grammar);
    matcher_free(d->matcher);
    ear_free(d->ear);
    arena_release(&d->arena);
    arena_release(&d->scratch);
    forget_edits(d);
    problems_release(&d->problems);
    buffer_release(&d->out);
    free(d);
}

bool dishtake_ready(const struct dishtake *d)
{
    return d->grammar->kitchen && !d->grammar->problems.errors;
}

static void forget_recording(struct dishtake *d)
{
    d->began = true;
    d->read = d->keeps = false;
    d->kept.count = 0;
    arena_reset(&d->arena);
    problems_release(&d->problems);
    forget_edits(d);
    d->recording = (struct recording){.arena = &d->arena};
}

/* Functions of their own, so that no local variable changes between setjmp and the jump. */
static enum dishtake_result extract(struct dishtake *d)
{
    if (!arena_open(&d->arena))
        return DISHTAKE_NO_MEMORY;
    d->read = recording_extract(&d->recording, &d->means, d->keeps ? &d->kept : NULL, &d->problems);
    return d->read ? DISHTAKE_DONE : DISHTAKE_UNREADABLE;
}

static enum dishtake_result extract_again(struct dishtake *d, enum edit_stage from)
{
    if (!arena_open(&d->arena))
        return DISHTAKE_NO_MEMORY;
    d->read = recording_again(&d->recording, from, &d->means, &d->kept, &d->problems);
    return d->read ? DISHTAKE_DONE : DISHTAKE_UNREADABLE;
}

static enum dishtake_result no_such_kitchen(struct dishtake *d, const char *name)
{
    struct buffer known = {0};
    const struct units *units = &d->grammar->kitchen->units;
    for (size_t i = 0; i < units->profiles.count; i++)
        buffer_format(&known, "%s%.*s", i ? ", " : "", TEXT(units->profiles.at[i].name));
    problem(&d->problems, (struct place){0}, "there is no kitchen \"%s\"; there are %.*s", name,
            TEXT(buffer_text(&known)));
    buffer_release(&known);
    return DISHTAKE_NO_SUCH_KITCHEN;
}

static const struct edits NO_EDITS;

/* The edits live outside the arena, since they own JSON. The bytes may be those that dishtake_edit
 * gave, which end here. False when there are some that cannot be used. */
static bool read_edits(struct dishtake *d, const char *bytes, size_t length, const char *name)
{
    if (bytes)
        d->edits = edits_read((struct text){bytes, length}, name, &d->edits_problems);
    buffer_clear(&d->out);
    d->means.edits = d->edits || !d->keeps ? d->edits : &NO_EDITS;
    return d->edits || !bytes;
}

/* What becomes of a run; where it came to no end nothing is kept. */
static enum dishtake_result finish(struct dishtake *d, enum dishtake_result result)
{
    if (result != DISHTAKE_DONE)
        d->kept.count = 0;
    if (result == DISHTAKE_NO_MEMORY)
        problem(&d->problems, (struct place){.file = d->recording.file},
                "too large: reading it needs more than %zu MB of memory", d->arena.ceiling >> 20);
    return result;
}

enum dishtake_result dishtake_read(struct dishtake *d, const char *bytes, size_t length,
                                   const char *name, const struct dishtake_read_options *options)
{
    static const struct dishtake_read_options USUAL;
    const struct dishtake_read_options *o = options ? options : &USUAL;
    if (!dishtake_ready(d))
        return DISHTAKE_NOT_READY;
    forget_recording(d);
    d->means = (struct means){.k = d->grammar->pack,
                              .kitchen = d->grammar->kitchen,
                              .matcher = d->matcher,
                              .ear = d->ear};
    if (o->kitchen) {
        d->means.profile = profile_find(&d->means.kitchen->units, text_from(o->kitchen));
        if (!d->means.profile)
            return no_such_kitchen(d, o->kitchen);
    }
    d->keeps = o->keep;
    d->recording.bytes = (struct text){bytes, length};
    d->recording.file = name;
    d->recording.one_dish = o->one_dish;
    d->arena.ceiling = o->memory ? o->memory : MEMORY_BYTES_USUAL;
    d->edits_name = o->edits_name;
    if (o->list) {
        d->means.list = (struct text){o->list, o->list_length};
        d->means.list_name = o->list_name ? o->list_name : "list";
    }
    if (!read_edits(d, o->edits, o->edits_length, o->edits_name))
        return DISHTAKE_BAD_EDITS;
    return finish(d, extract(d));
}

/* From nothing, with what it was read with before. */
static enum dishtake_result read_anew(struct dishtake *d)
{
    const struct recording asked = d->recording;
    arena_reset(&d->arena);
    problems_release(&d->problems);
    d->recording = (struct recording){
        .arena = &d->arena, .bytes = asked.bytes, .file = asked.file, .one_dish = asked.one_dish};
    return finish(d, extract(d));
}

enum dishtake_result dishtake_read_edits(struct dishtake *d, const char *edits, size_t length)
{
    if (!d->keeps)
        return DISHTAKE_NOT_READY;
    struct edits *before = d->edits;
    d->edits = NULL;
    d->read = false;
    forget_edits(d);
    bool usable = read_edits(d, edits, length, d->edits_name);
    enum edit_stage from =
        usable ? edits_differ(before ? before : &NO_EDITS, d->means.edits) : EDITS_WORDS;
    edits_free(before);
    if (!usable) {
        d->kept.count = 0; /* they are no longer known that it was made with */
        return DISHTAKE_BAD_EDITS;
    }
    return recording_kept(&d->kept, from) ? finish(d, extract_again(d, from)) : read_anew(d);
}

/* A function of its own, so that no local variable changes between setjmp and the jump. */
static bool write_within_arena(struct dishtake *d, const struct format *f, const struct writing *w)
{
    struct problems *p = &d->problems;
    if (arena_open(&d->scratch)) {
        if (!f->write(&d->recording, w, &d->out, p))
            return false;
        if (!d->out.failed)
            return true;
    }
    return problem(p, (struct place){.file = d->recording.file},
                   "too large: no memory is left to write %s", f->output);
}

static bool write_output(struct dishtake *d, const char *output, const char *as,
                         const struct writing *w)
{
    struct place here = {.file = d->recording.file};
    struct problems *p = &d->problems;
    const struct format *f = format_find(output, as);
    buffer_clear(&d->out);
    arena_reset(&d->scratch);
    if (!d->read)
        return problem(p, here, "nothing was read");
    if (!f)
        return problem(p, here, "%s cannot be written as %s", output, as);
    if (w->dish > d->recording.dishes.count)
        return problem(p, here, "there is no dish %zu; the recording has %zu", w->dish,
                       d->recording.dishes.count);
    return write_within_arena(d, f, w);
}

/* In the order of enum units_shown; the first has no name, since it is what is not asked for. */
static bool read_units(const char *name, enum units_shown *units, struct problems *p)
{
    static const char *const names[] = {"", "us", "metric", "both"};
    for (int i = UNITS_US; name && i <= UNITS_BOTH; i++)
        if (strcmp(name, names[i]) == 0) {
            *units = (enum units_shown) i;
            return true;
        }
    return !name
           || problem(p, (struct place){0}, "units \"%s\": us, metric or both is needed", name);
}

static bool read_number(const char *typed, const char *what, struct ratio *n, struct problems *p)
{
    if (!typed)
        return true;
    *n = ratio_read(typed, strlen(typed));
    return (ratio_finite(*n) && n->over > 0)
           || problem(p, (struct place){0},
                      "%s \"%s\": a number above 0 is needed, as 12, 1/2 or 1.5", what, typed);
}

static bool read_write_options(struct writing *w, const struct dishtake_write_options *o,
                               struct problems *p)
{
    w->dish = o->dish;
    w->at = o->at;
    w->one_line = o->one_line;
    w->style = (struct text){o->style ? o->style : "", o->style_length};
    w->video_url = text_from(o->video_url);
    w->detail = o->detail;
    w->reflow = o->reflow;
    w->letters = o->letters;
    w->stills = o->stills;
    w->stills_count = o->stills_count;
    if (!url_is_plain(w->video_url))
        return problem(p, (struct place){0},
                       "video address \"%s\": http://..., https://... or a path is needed",
                       o->video_url);
    return read_units(o->units, &w->units, p) && read_number(o->serves, "serves", &w->serves, p)
           && read_number(o->times, "times", &w->times, p);
}

const char *dishtake_write(struct dishtake *d, const char *output, const char *as,
                           const struct dishtake_write_options *options, size_t *length)
{
    struct writing w = {.kitchen = d->grammar->kitchen,
                        .scratch = &d->scratch,
                        .at = -1,
                        .profile = d->means.profile};
    if (options && !read_write_options(&w, options, &d->problems))
        return NULL;
    if (!write_output(d, output, as, &w))
        return NULL;
    *length = d->out.length;
    return buffer_text(&d->out).at;
}

const char *dishtake_edit(struct dishtake *d, const char *asked, size_t asked_length,
                          size_t *length)
{
    struct text request = {asked, asked_length};
    buffer_clear(&d->out);
    if (!d->read) {
        problem(&d->problems, (struct place){.file = d->recording.file}, "nothing was read");
        return NULL;
    }
    if (!edits_append(&d->recording, d->edits, request, &d->out, &d->problems))
        return NULL;
    *length = d->out.length;
    return buffer_text(&d->out).at;
}

size_t dishtake_edits(const struct dishtake *d)
{
    return d->edits ? d->edits->count : 0;
}

/* Undo and redo have no place of their own; they always take effect. */
const char *dishtake_edit_unplaced(const struct dishtake *d, size_t n)
{
    if (!d->read || !n || n > dishtake_edits(d))
        return "there is no such edit";
    const struct edit_outcome *o = &d->recording.edited->at[n - 1];
    enum edit_kind kind = d->edits->at[n - 1].kind;
    if (kind == EDIT_UNDO || kind == EDIT_REDO || o->placed)
        return NULL;
    return o->why ? o->why : "it is not applied";
}

bool dishtake_edit_known(const struct dishtake *d, const char *key, size_t length)
{
    return d->edits && edits_have_key(d->edits, (struct text){key, length});
}

static void put_calculation(struct buffer *out, const struct calculation *c)
{
    const struct text parts[] = {c->line, c->source, c->rounding};
    for (size_t i = 0; i < sizeof parts / sizeof *parts; i++)
        if (parts[i].length)
            buffer_format(out, "%s%.*s\n", i ? "  " : "", TEXT(parts[i]));
}

/* A function of its own, so that no local variable changes between setjmp and the jump. */
static bool calculate_within_arena(struct dishtake *d, const struct profile *profile,
                                   struct text input, struct text to)
{
    struct calculation c = {0};
    if (!arena_open(&d->scratch))
        return problem(&d->problems, (struct place){0}, "no memory is left");
    if (!calculate(d->grammar->kitchen, &d->scratch, profile, input, to, &c, &d->problems))
        return false;
    put_calculation(&d->out, &c);
    return !d->out.failed || problem(&d->problems, (struct place){0}, "no memory is left");
}

const char *dishtake_measure(struct dishtake *d, const char *amount, const char *unit,
                             const char *kitchen, size_t *length)
{
    const struct profile *profile = NULL;
    if (!dishtake_ready(d))
        return NULL;
    forget_recording(d);
    arena_reset(&d->scratch);
    buffer_clear(&d->out);
    if (kitchen) {
        profile = profile_find(&d->grammar->kitchen->units, text_from(kitchen));
        if (!profile) {
            no_such_kitchen(d, kitchen);
            return NULL;
        }
    }
    if (!calculate_within_arena(d, profile, text_from(amount), text_from(unit)))
        return NULL;
    *length = d->out.length;
    return buffer_text(&d->out).at;
}

bool dishtake_format(size_t i, struct dishtake_format *format)
{
    const struct format *f = format_at(i);
    if (f)
        *format = (struct dishtake_format){f->output, f->as, f->about};
    return f != NULL;
}

bool dishtake_published(const struct dishtake *d, size_t i, struct dishtake_published *file)
{
    struct published f;
    if (!d->read || !published_at(&d->recording, i, &f))
        return false;
    *file = (struct dishtake_published){"", f.output, f.as, f.dish};
    memcpy(file->name, f.name, sizeof file->name);
    return true;
}

bool dishtake_still(const struct dishtake *d, size_t i, struct dishtake_still *still)
{
    struct still s;
    if (!d->read || !still_at(&d->recording, i, &s))
        return false;
    *still = (struct dishtake_still){"", s.at};
    memcpy(still->name, s.name, sizeof still->name);
    return true;
}

_Static_assert(FILE_NAME_BYTES == DISHTAKE_NAME_BYTES, "names are copied whole");

/* ---- a shopping list over recordings */

struct dishtake_shopping {
    const struct grammar *grammar; /* borrowed */
    struct arena arena, scratch;   /* of all that was added; of one output */
    struct shopping_basket basket;
    struct buffer out;
};

struct dishtake_shopping *dishtake_shopping_new(const struct dishtake *d)
{
    struct dishtake_shopping *s = calloc(1, sizeof *s);
    if (!s)
        return NULL;
    s->grammar = d->grammar;
    arena_init(&s->arena, MEMORY_BYTES_USUAL);
    arena_init(&s->scratch, MEMORY_BYTES_USUAL);
    return s;
}

void dishtake_shopping_free(struct dishtake_shopping *s)
{
    if (!s)
        return;
    arena_release(&s->arena);
    arena_release(&s->scratch);
    buffer_release(&s->out);
    free(s);
}

/* Functions of their own, so that no local variable changes between setjmp and the jump. */
static bool add_within_arena(struct dishtake_shopping *s, struct dishtake *d, struct writing *w,
                             size_t number)
{
    w->scratch = &s->arena;
    if (arena_open(&s->arena))
        return basket_add(&s->basket, &d->recording, w, number, &d->problems);
    return problem(&d->problems, (struct place){.file = d->recording.file}, "no memory is left");
}

bool dishtake_shopping_add(struct dishtake_shopping *s, struct dishtake *d, size_t number,
                           const struct dishtake_write_options *options)
{
    struct writing w = {.kitchen = d->grammar->kitchen, .at = -1, .profile = d->means.profile};
    if (!d->read || (options && !read_write_options(&w, options, &d->problems)))
        return false;
    return add_within_arena(s, d, &w, number);
}

static bool shop_within_arena(struct dishtake_shopping *s, const struct writing *w, bool html)
{
    arena_reset(&s->scratch);
    buffer_clear(&s->out);
    if (!arena_open(&s->scratch))
        return false;
    basket_put(&s->basket, w, html, &s->out);
    return !s->out.failed;
}

const char *dishtake_shopping_write(struct dishtake_shopping *s, const char *as,
                                    const struct dishtake_write_options *options, size_t *length)
{
    struct problems p = {0};
    struct writing w = {.kitchen = s->grammar->kitchen, .scratch = &s->scratch, .at = -1};
    bool good = format_find("shopping", as) && (!options || read_write_options(&w, options, &p));
    problems_release(&p);
    if (!good || !shop_within_arena(s, &w, strcmp(as, "html") == 0))
        return NULL;
    *length = s->out.length;
    return buffer_text(&s->out).at;
}

size_t dishtake_dishes(const struct dishtake *d)
{
    return d->read ? d->recording.dishes.count : 0;
}

size_t dishtake_findings(const struct dishtake *d, enum dishtake_level level)
{
    size_t n = 0;
    for (size_t i = 0; d->read && i < d->recording.findings.count; i++) {
        const struct finding *f = &d->recording.findings.at[i];
        n += !f->dismissed && (int) f->level >= (int) level;
    }
    return n;
}

static void tell(const struct problem *p, struct dishtake_message *out)
{
    *out = (struct dishtake_message){p->at.file, p->message, p->at.line, p->at.column,
                                     p->level == PROBLEM_ERROR};
}

/* Those of the edits' file come first, since it is read first. */
bool dishtake_message(const struct dishtake *d, size_t i, struct dishtake_message *out)
{
    const struct problems *of_edits = &d->edits_problems;
    const struct problems *list = d->began ? &d->problems : &d->grammar->problems;
    if (i < of_edits->count)
        tell(&of_edits->at[i], out);
    else if (i - of_edits->count < list->count)
        tell(&list->at[i - of_edits->count], out);
    else
        return false;
    return true;
}

size_t dishtake_messages_dropped(const struct dishtake *d)
{
    return d->edits_problems.dropped + (d->began ? d->problems : d->grammar->problems).dropped;
}
