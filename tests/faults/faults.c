/* faults/faults.c: memory that fails: `faults SAMPLE [EVERY]`.
 *
 * The Nth allocation of the whole process fails, ours, PCRE2's and Jansson's alike: once, and from
 * then on; for every N until a run needs no more. And the arena's ceiling is raised step by step.
 * Each run must end with the result that says so, and give back every byte. This program's own
 * malloc stands before libc's, so it is built without sanitizers. (Method: sqlite.org, "How SQLite
 * Is Tested", out-of-memory testing.)
 * SPDX-License-Identifier: MIT */
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "dishtake.h"

void *__libc_malloc(size_t size);
void *__libc_calloc(size_t count, size_t size);
void *__libc_realloc(void *at, size_t size);
void __libc_free(void *at);

static struct {
    long count, fail_at; /* fail_at 0: none */
    long held;           /* blocks given and not taken back */
    bool from_then_on;
} memory;

static bool fails(void)
{
    memory.count++;
    return memory.fail_at
           && (memory.count == memory.fail_at
               || (memory.from_then_on && memory.count > memory.fail_at));
}

static void *given(void *at)
{
    memory.held += at != NULL;
    return at;
}

void *malloc(size_t size)
{
    return fails() ? NULL : given(__libc_malloc(size));
}

void *calloc(size_t count, size_t size)
{
    return fails() ? NULL : given(__libc_calloc(count, size));
}

void *realloc(void *at, size_t size)
{
    if (fails())
        return NULL;
    void *moved = __libc_realloc(at, size);
    memory.held += !at && moved;
    return moved;
}

void free(void *at)
{
    memory.held -= at != NULL;
    __libc_free(at);
}

struct sample {
    const char *name;
    char *bytes;
    size_t length;
};

enum outcome { DONE, REFUSED, WRONG };

static enum outcome write_all(struct dishtake *d)
{
    struct dishtake_format f;
    size_t length, refused = 0;
    for (size_t i = 0; dishtake_format(i, &f); i++) {
        const char *out = dishtake_write(d, f.output, f.as, NULL, &length);
        if (out && strlen(out) > length)
            return WRONG;
        refused += out == NULL;
    }
    return refused ? REFUSED : DONE;
}

/* Edits that begin at different parts of the pipeline, and back to none. */
static enum outcome do_edits(struct dishtake *d)
{
    static const char *const EDITS[] = {
        "{\"kind\":\"dish-add\",\"on\":[0,0],\"to\":[0,0]}",
        "{\"kind\":\"word\",\"on\":[0,0],\"value\":\"hello\",\"everywhere\":false}"};
    bool done = true;
    size_t length;
    for (size_t i = 0; i < sizeof EDITS / sizeof *EDITS; i++) {
        const char *file = dishtake_edit(d, EDITS[i], strlen(EDITS[i]), &length);
        if (!file)
            return REFUSED;
        enum dishtake_result result = dishtake_read_edits(d, file, length);
        if (result == DISHTAKE_UNREADABLE || result == DISHTAKE_NOT_READY)
            return WRONG;
        done &= result == DISHTAKE_DONE;
    }
    done &= dishtake_read_edits(d, NULL, 0) == DISHTAKE_DONE;
    return done ? DONE : REFUSED;
}

/* What the commands shopping and measure and the page do beside writing. */
static enum outcome do_others(struct dishtake *d)
{
    struct dishtake_write_options o = {.size = sizeof o, .at = -1};
    size_t length;
    struct dishtake_shopping *s = dishtake_shopping_new(d);
    bool done =
        s && dishtake_shopping_add(s, d, 0, &o) && dishtake_shopping_write(s, "html", &o, &length);
    dishtake_shopping_free(s);
    enum outcome edits = do_edits(d);
    if (edits == WRONG)
        return WRONG;
    done = edits == DONE && done;
    return dishtake_measure(d, "2 cups flour", "gram", NULL, &length) && done ? DONE : REFUSED;
}

/* From nothing to every output and back to nothing. */
static enum outcome run(const struct sample *s, size_t ceiling)
{
    struct dishtake_read_options o = {.size = sizeof o, .memory = ceiling, .keep = true};
    enum outcome outcome = REFUSED;
    struct dishtake *d = dishtake_new(NULL, 0);
    if (d && dishtake_ready(d)) {
        enum dishtake_result result = dishtake_read(d, s->bytes, s->length, s->name, &o);
        if (result == DISHTAKE_DONE) {
            outcome = write_all(d);
            enum outcome others = do_others(d);
            outcome = outcome == DONE ? others : outcome;
        } else if (result != DISHTAKE_NO_MEMORY && result != DISHTAKE_UNREADABLE) {
            outcome = WRONG;
        }
    }
    dishtake_free(d);
    return outcome;
}

static int complain(const char *what, long n)
{
    printf("FAILED at %ld: %s\n", n, what);
    return 1;
}

/* A run whose nth allocation fails. `*enough`: it needed fewer. */
static int fail_one(const struct sample *s, long n, bool from_then_on, bool *enough)
{
    long held = memory.held;
    memory.count = 0;
    memory.fail_at = n;
    memory.from_then_on = from_then_on;
    enum outcome outcome = run(s, 0);
    memory.fail_at = 0;
    *enough = memory.count < n;
    if (memory.held != held)
        return complain(from_then_on ? "blocks were lost (fails from then on)"
                                     : "blocks were lost (fails once)",
                        n);
    if (outcome == WRONG)
        return complain("the wrong result", n);
    if (*enough && outcome != DONE)
        return complain("no allocation failed, and yet it was refused", n);
    return 0;
}

static int fail_each(const struct sample *s, bool from_then_on, long every)
{
    int bad = 0;
    bool enough = false;
    long n = 1, runs = 0;
    for (; !enough && bad < 10; n += every, runs++)
        bad += fail_one(s, n, from_then_on, &enough);
    printf("figure: %s: %ld allocations, %ld of them failed %s\n", s->name, memory.count, runs - 1,
           from_then_on ? "with all after them" : "alone");
    return bad;
}

/* One handle, since the ceiling is the recording's. */
static int raise_ceiling(const struct sample *s)
{
    struct dishtake *d = dishtake_new(NULL, 0);
    int bad = d ? 0 : 1, steps = 0;
    enum dishtake_result result = DISHTAKE_NO_MEMORY;
    for (size_t ceiling = 1; d && result != DISHTAKE_DONE; ceiling += ceiling / 20 + 64, steps++) {
        struct dishtake_read_options o = {.size = sizeof o, .memory = ceiling};
        result = dishtake_read(d, s->bytes, s->length, s->name, &o);
        if (result != DISHTAKE_DONE && result != DISHTAKE_NO_MEMORY)
            bad += complain("the wrong result below the ceiling", (long) ceiling);
    }
    dishtake_free(d);
    printf("figure: %s: %d ceilings until one was high enough\n", s->name, steps);
    return bad;
}

static bool load(struct sample *s, const char *name)
{
    FILE *file = fopen(name, "rb");
    s->name = name;
    s->bytes = malloc(1 << 20);
    s->length = file && s->bytes ? fread(s->bytes, 1, 1 << 20, file) : 0;
    if (file)
        fclose(file);
    return s->length > 0;
}

int main(int argc, char **argv)
{
    struct sample s;
    long every = argc > 2 ? strtol(argv[2], NULL, 10) : 1;
    setvbuf(stdout, NULL, _IONBF, 0);
    if (argc < 2 || every < 1 || !load(&s, argv[1])) {
        fputs("usage: faults SAMPLE [EVERY]\n", stderr);
        return 2;
    }
    if (run(&s, 0) != DONE) /* also lets libraries make what they keep */
        return complain("it does not even work with memory", 0);
    int bad = fail_each(&s, false, every) + fail_each(&s, true, every) + raise_ceiling(&s);
    free(s.bytes);
    printf("%d passed, %d failed\n", 3 - (bad > 0), bad > 0);
    return bad > 0;
}
