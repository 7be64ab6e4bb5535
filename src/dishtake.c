/* dishtake.c: the pipeline, a line a stage; the only file that knows all of them. And the handle
 * around it.
 * SPDX-License-Identifier: MIT */
#include "dishtake.h"

#include <stdlib.h>
#include <string.h>

#include "build/build.h"
#include "build/untitled.h"
#include "check/check.h"
#include "check/list.h"
#include "edits/edits.h"
#include "kitchen/add.h"
#include "kitchen/allergen.h"
#include "kitchen/calculate.h"
#include "kitchen/caution.h"
#include "kitchen/time.h"
#include "match/matcher.h"
#include "read/read.h"
#include "split/split.h"
#include "tag/misheard.h"
#include "tag/tag.h"
#include "words/words.h"
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
    struct edits *edits;      /* of this recording; owned; NULL without any */
    struct problems problems; /* of this recording */
    struct buffer out;
    bool began; /* a recording was asked for: messages are of it, no longer of the grammar */
    bool read;  /* recording is whole */
    const struct profile *profile; /* that it was read with; NULL: none */
};

/* What a recording is read with. */
struct means {
    const struct pack *k;
    const struct kitchen *kitchen;
    const struct profile *profile; /* whose cups and spoons; NULL: a unit is what its name says */
    struct matcher *matcher;
    struct ear *ear;
    const struct edits *edits; /* the cook's; NULL: none */
    struct text list;          /* the cook's ingredient list */
    const char *list_name;     /* NULL: there is none */
};

static bool reckon_recipes(struct recording *r, const struct means *m)
{
    for (size_t i = 0; i < r->dishes.count; i++) {
        struct dish *d = &r->dishes.at[i];
        for (size_t n = 0; n < d->ingredients.count; n++) {
            struct ingredient *in = &d->ingredients.at[n];
            in->weight = weigh(m->kitchen, r->arena, m->profile, in, NULL);
        }
        add_dish(m->kitchen, r->arena, m->profile, d);
        time_dish(m->kitchen, r->arena, d, 0);
        find_allergens(m->kitchen, r->arena, d, NULL);
        find_cautions(m->kitchen, r->arena, d);
    }
    return true;
}

/* The list is read once the dishes are known, since its headings name them. */
static bool check_with_list(struct recording *r, const struct means *m, struct problems *p)
{
    struct ingredient_list list;
    if (!m->list_name)
        return check_recipes(r, m->k, NULL, p);
    return list_read(&list, m->list, m->list_name, r, m->k, m->matcher, p)
           && check_recipes(r, m->k, &list, p);
}

/* The cook's edits enter where what they correct has been found, and before anything is made of it.
 */
static bool recording_extract(struct recording *r, struct text bytes, const struct means *m,
                              struct problems *p)
{
    const struct pack *k = m->k;
    return read_cues(r, bytes, p)                      /* bytes -> timed cues */
           && number_words(r, k, p)                    /* cues -> numbered words, sentences */
           && edit_words(r, m->edits, k, p)            /* the cook's corrections of words */
           && tag_words(r, k, p)                       /* words -> one tag each */
           && hear_words(r, m->ear, p)                 /* misheard words -> what was meant */
           && match_rules(r, k, m->matcher, p)         /* tag string -> amounts, foods, actions */
           && split_dishes(r, k, p)                    /* sentences -> dishes */
           && edit_borders(r, m->edits, k, p)          /* of which words are whose */
           && build_recipes(r, k, p)                   /* matches -> ingredients, steps */
           && title_recipes(r, m->kitchen, m->profile) /* titles of what nobody named */
           && edit_values(r, m->edits, k, p)           /* the cook's corrections of values */
           && reckon_recipes(r, m)              /* recipes -> weights, sums, times, cautions */
           && check_with_list(r, m, p)          /* recipes -> findings */
           && edit_findings(r, m->edits, k, p); /* the cook's answers */
}

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
    if (g && k)
        return grammar_finish(g, k);
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
    edits_free(d->edits);
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
    d->read = false;
    arena_reset(&d->arena);
    problems_release(&d->problems);
    buffer_clear(&d->out);
    edits_free(d->edits);
    d->edits = NULL;
    d->recording = (struct recording){.arena = &d->arena};
}

/* A function of its own, so that no local variable changes between setjmp and the jump. */
static enum dishtake_result extract(struct dishtake *d, struct text bytes, const struct means *m)
{
    if (!arena_open(&d->arena))
        return DISHTAKE_NO_MEMORY;
    d->recording.bytes = bytes;
    d->read = recording_extract(&d->recording, bytes, m, &d->problems);
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

/* The edits live outside the arena, since they own JSON. False when there are some that cannot be
 * used. */
static bool read_edits(struct dishtake *d, const struct dishtake_read_options *o)
{
    if (!o->edits)
        return true;
    d->edits = edits_read((struct text){o->edits, o->edits_length}, o->edits_name, &d->problems);
    return d->edits != NULL;
}

enum dishtake_result dishtake_read(struct dishtake *d, const char *bytes, size_t length,
                                   const char *name, const struct dishtake_read_options *options)
{
    static const struct dishtake_read_options USUAL;
    const struct dishtake_read_options *o = options ? options : &USUAL;
    if (!dishtake_ready(d))
        return DISHTAKE_NOT_READY;
    struct means m = {.k = d->grammar->pack,
                      .kitchen = d->grammar->kitchen,
                      .matcher = d->matcher,
                      .ear = d->ear};
    forget_recording(d);
    if (o->kitchen) {
        m.profile = profile_find(&m.kitchen->units, text_from(o->kitchen));
        if (!m.profile)
            return no_such_kitchen(d, o->kitchen);
    }
    if (!read_edits(d, o))
        return DISHTAKE_BAD_EDITS;
    m.edits = d->edits;
    if (o->list) {
        m.list = (struct text){o->list, o->list_length};
        m.list_name = o->list_name ? o->list_name : "list";
    }
    d->profile = m.profile;
    d->recording.file = name;
    d->recording.one_dish = o->one_dish;
    d->arena.ceiling = o->memory ? o->memory : MEMORY_BYTES_USUAL;
    enum dishtake_result result = extract(d, (struct text){bytes, length}, &m);
    if (result == DISHTAKE_NO_MEMORY)
        problem(&d->problems, (struct place){.file = name},
                "too large: reading it needs more than %zu MB of memory", d->arena.ceiling >> 20);
    return result;
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
    struct writing w = {
        .kitchen = d->grammar->kitchen, .scratch = &d->scratch, .at = -1, .profile = d->profile};
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
    struct writing w = {.kitchen = d->grammar->kitchen, .at = -1, .profile = d->profile};
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

static const struct problems *messages(const struct dishtake *d)
{
    return d->began ? &d->problems : &d->grammar->problems;
}

bool dishtake_message(const struct dishtake *d, size_t i, struct dishtake_message *out)
{
    const struct problems *list = messages(d);
    if (i >= list->count)
        return false;
    const struct problem *p = &list->at[i];
    *out = (struct dishtake_message){p->at.file, p->message, p->at.line, p->at.column,
                                     p->level == PROBLEM_ERROR};
    return true;
}

size_t dishtake_messages_dropped(const struct dishtake *d)
{
    return messages(d)->dropped;
}
