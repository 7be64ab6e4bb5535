/* shopping.c: one shopping list over several recordings.
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "handle.h"
#include "write/shopping.h"

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
    if (!d->read || (options && !writing_read(&w, options, &d->problems)))
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
    bool good = format_find("shopping", as) && (!options || writing_read(&w, options, &p));
    problems_release(&p);
    if (!good || !shop_within_arena(s, &w, strcmp(as, "html") == 0))
        return NULL;
    *length = s->out.length;
    return buffer_text(&s->out).at;
}
