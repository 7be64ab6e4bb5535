/* build/steplist.c: foods that are listed before the verb that takes them up.
 * SPDX-License-Identifier: MIT */
#include "build/implied.h"
#include "build/line.h"
#include "build/stephead.h"

void say_pending(struct writer *w)
{
    struct builder *b = w->b;
    const struct sentence *here = b->sentence;
    for (size_t i = 0; i < w->pending_count; i++) {
        b->sentence = w->pending[i].sentence;
        if (i && i + 1 == w->pending_count)
            prose_word(&w->p, step_word(b->k, "and"), true);
        else if (i)
            prose_comma(&w->p);
        say_food(b, &w->p, &w->pending[i].chunk, i == 0);
    }
    b->sentence = here;
    w->pending_count = 0;
}

void say_taken(struct writer *w)
{
    const struct chunk *c = &w->pending[0].chunk;
    struct text the = step_word(w->b->k, "the");
    if (c->match->rule->kind != RULE_line && c->match->words.first == c->first
        && w->b->r->words.at[c->first].tag != TAG_THE
        && !text_equal(w->b->r->words.at[c->first].key, the))
        prose_word(&w->p, the, true);
    say_pending(w);
}

bool is_food(const struct chunk *c)
{
    return c->tag == TAG_LINE && c->match && !is_sort(c)
           && !(c->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL | SCOPE_TITLE | SCOPE_YIELD));
}

/* "Onion powder" and "garlic powder", but not "chicken thighs" and "thighs". */
static bool are_two_foods(const struct writer *w, const struct chunk *a, const struct chunk *c)
{
    const struct entry *one = chunk_food(w->b->r, a), *other = chunk_food(w->b->r, c);
    return one && other && one->words_count > 1 && other->words_count > 1
           && !text_equal(entry_value(one), entry_value(other));
}

static bool is_pending(const struct writer *w, const struct chunk *c)
{
    for (size_t i = 0; i < w->pending_count; i++)
        if (text_equal(w->b->r->words.at[w->pending[i].chunk.last].key,
                       w->b->r->words.at[c->last].key)
            && !are_two_foods(w, &w->pending[i].chunk, c))
            return true;
    return false;
}

void gather(struct writer *w)
{
    for (size_t i = w->begin; i < w->end && w->pending_count < PENDING_MOST; i++) {
        if (!is_food(&w->b->chunks.at[i]) || is_pending(w, &w->b->chunks.at[i]))
            continue;
        w->pending[w->pending_count].chunk = w->b->chunks.at[i];
        w->pending[w->pending_count++].sentence = w->b->sentence;
    }
}

/* Whether the food is listed here, not only spoken of again. */
static bool is_new(const struct writer *w, const struct chunk *c)
{
    for (size_t i = 0; i < w->b->dish->ingredients.count; i++) {
        size_t id = w->b->dish->ingredients.at[i].id;
        if (id >= c->first && id <= c->last)
            return true;
    }
    return false;
}

/* Whether another food that waits has the same last word. */
static bool shares_word(const struct writer *w, const struct chunk *c)
{
    const struct text last = w->b->r->words.at[c->last].key;
    for (size_t i = 0; i < w->pending_count; i++) {
        const struct chunk *other = &w->pending[i].chunk;
        if (other->last != c->last && text_equal(w->b->r->words.at[other->last].key, last))
            return true;
    }
    return false;
}

/* Whether the step has named the food already, by its last word, or by all of them where that is
 * another's too. */
static bool is_written(const struct writer *w, const struct chunk *c)
{
    const struct entry *food = chunk_food(w->b->r, c);
    return is_written_from(
        w, 0, food && shares_word(w, c) ? entry_words(food) : w->b->r->words.at[c->last].key);
}

void keep_new(struct writer *w)
{
    size_t kept = 0;
    for (size_t i = 0; i < w->pending_count; i++)
        if (is_new(w, &w->pending[i].chunk) && !is_written(w, &w->pending[i].chunk))
            w->pending[kept++] = w->pending[i];
    w->pending_count = kept;
}

void flush_pending(struct writer *w)
{
    if (!w->pending_count)
        return;
    for (size_t i = 0; i < w->s->actions.count && w->pending_count; i++) {
        const struct entry *e = action_entry(w->b->k, w->s->actions.at[i]);
        if (e && e->marks & MARK_OF(puts))
            say_action(w, w->s->actions.at[i], true);
    }
    keep_new(w);
    if (w->pending_count)
        (void) say_action(w, implied_list(w->b->k), true);
    w->pending_count = 0;
    prose_stop(&w->p);
}
