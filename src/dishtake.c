/* dishtake.c: the handle around the pipeline: a grammar, and one recording at a time.
 * SPDX-License-Identifier: MIT */
#include "handle.h"

#include <stdlib.h>
#include <string.h>

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
    d->ear = g->ear ? g->ear : ear_new(g->pack);
    if (!d->matcher || !d->ear) {
        if (!g->ear)
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

struct dishtake *dishtake_new(const struct dishtake_file *files, size_t count)
{
    struct grammar *g = grammar_new(files, count);
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
    if (d->ear != d->grammar->ear)
        ear_free(d->ear);
    if (d->owns_grammar)
        grammar_free(d->grammar);
    matcher_free(d->matcher);
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

void handle_forget(struct dishtake *d)
{
    d->began = true;
    d->read = d->keeps = false;
    d->kept.count = 0;
    arena_reset(&d->arena);
    problems_release(&d->problems);
    forget_edits(d);
    d->recording = (struct recording){.arena = &d->arena};
}

void options_take(void *to, size_t room, const void *from)
{
    size_t given = 0;
    memset(to, 0, room);
    if (!from)
        return;
    memcpy(&given, from, sizeof given);
    memcpy(to, from, given && given < room ? given : room);
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

const struct profile *handle_profile(struct dishtake *d, const char *name)
{
    struct buffer known = {0};
    const struct units *units = &d->grammar->kitchen->units;
    const struct profile *found = profile_find(units, text_from(name));
    if (found)
        return found;
    for (size_t i = 0; i < units->profiles.count; i++)
        buffer_format(&known, "%s%.*s", i ? ", " : "", TEXT(units->profiles.at[i].name));
    problem(&d->problems, (struct place){0}, "there is no kitchen \"%s\"; there are %.*s", name,
            TEXT(buffer_text(&known)));
    buffer_release(&known);
    return NULL;
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

/* What the recording will be read with. False where there is no such kitchen. */
static bool take_options(struct dishtake *d, const struct dishtake_read_options *o)
{
    d->means = (struct means){.k = d->grammar->pack,
                              .kitchen = d->grammar->kitchen,
                              .profile = o->kitchen ? handle_profile(d, o->kitchen) : NULL,
                              .matcher = d->matcher,
                              .ear = d->ear,
                              .sayings = d->grammar->sayings};
    if (o->kitchen && !d->means.profile)
        return false;
    if (o->list) {
        d->means.list = (struct text){o->list, o->list_length};
        d->means.list_name = o->list_name ? o->list_name : "list";
    }
    d->keeps = o->keep;
    d->edits_name = o->edits_name;
    d->recording.one_dish = o->one_dish;
    d->recording.told_dishes = o->dishes < DISHTAKE_DISHES_MOST ? o->dishes : DISHTAKE_DISHES_MOST;
    d->arena.ceiling = o->memory ? o->memory : MEMORY_BYTES_USUAL;
    return true;
}

enum dishtake_result dishtake_read(struct dishtake *d, const char *bytes, size_t length,
                                   const char *name, const struct dishtake_read_options *options)
{
    struct dishtake_read_options o;
    const bool first = !d->began;
    if (!dishtake_ready(d))
        return DISHTAKE_NOT_READY;
    options_take(&o, sizeof o, options);
    handle_forget(d);
    d->recording.bytes = (struct text){bytes, length};
    d->recording.file = name;
    if (!take_options(d, &o))
        return DISHTAKE_NO_SUCH_KITCHEN;
    d->means.sparing = first; /* many are read sooner where the pack stays */
    if (!read_edits(d, o.edits, o.edits_length, o.edits_name))
        return DISHTAKE_BAD_EDITS;
    return finish(d, extract(d));
}

/* From nothing, with what it was read with before. */
static enum dishtake_result read_anew(struct dishtake *d)
{
    const struct recording asked = d->recording;
    arena_reset(&d->arena);
    problems_release(&d->problems);
    d->recording = (struct recording){.arena = &d->arena,
                                      .bytes = asked.bytes,
                                      .file = asked.file,
                                      .one_dish = asked.one_dish,
                                      .told_dishes = asked.told_dishes};
    return finish(d, extract(d));
}

enum dishtake_result dishtake_read_edits(struct dishtake *d, const char *edits, size_t length)
{
    if (!d->keeps)
        return DISHTAKE_NOT_READY;
    struct edits *before = d->edits;
    d->edits = NULL;
    d->read = false;
    d->means.sparing = false;
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
