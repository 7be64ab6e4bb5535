/* build/stepname.c: what "it" is, where a step begins with it and the step before tells.
 * SPDX-License-Identifier: MIT */
#include "build/floured.h"
#include "build/writer.h"
#include "match/capture.h"

/* A pronoun speaks of what was done so many seconds before, not longer ago. */
#define NAME_SECONDS 45.0

static bool is_named(const struct chunk *c)
{
    return (c->tag == TAG_LINE || c->tag == TAG_PART) && !(c->scope & SCOPE_NOT_DONE);
}

/* "They", "those": speaks of several. */
static bool is_many(const struct writer *w, const struct chunk *c)
{
    return step_words_list(w->b->k, "many", w->b->r->words.at[c->last].key);
}

/* The one thing that the sentence has named before the verb; the verb itself when none or several.
 */
static size_t named_before(const struct writer *w, size_t verb)
{
    size_t found = verb;
    for (size_t i = 0; i < verb; i++) {
        if (!is_named(&w->b->chunks.at[i]) || is_on_board(w->b, i))
            continue;
        if (found < verb)
            return verb;
        found = i;
    }
    return found;
}

/* Whether the thing in chunk `c` is several. */
static bool is_many_of(const struct writer *w, const struct chunk *c)
{
    struct span food = c->match ? match_slot(c->match, SLOT_food) : (struct span){c->last, c->last};
    const struct entry *e = entry_at(w->b->r, food);
    return e && e->marks & MARK_OF(plural);
}

/* As it was said, but for "the tofu's". */
static void say_name(struct writer *w, struct span food)
{
    const struct entry *e = entry_at(w->b->r, food);
    if (e && food.first == food.last && e->words_count == 1)
        prose_word(&w->p, entry_words(e), false);
    else
        say_words(w->b, &w->p, food.first, food.last);
}

static void say_named(struct writer *w, size_t i)
{
    const struct chunk *c = &w->b->chunks.at[i];
    struct span food = c->match ? match_slot(c->match, SLOT_food) : NO_WORDS;
    prose_word(&w->p, step_word(w->b->k, "the"), true);
    say_name(w, span_is_empty(food) ? (struct span){c->last, c->last} : food);
}

/* The step before, when its component is the same and it has just been done; NULL else. */
static const struct step *step_before(const struct writer *w)
{
    const struct step *last = w->index ? w->s - 1 : NULL;
    return last && w->s->start - last->end < NAME_SECONDS && text_equal(last->group, w->s->group)
                   && last->uses.count
               ? last
               : NULL;
}

static bool says_many(const struct writer *w, const struct ingredient *line)
{
    const struct entry *e = w->b->r->words.at[line->id].entry;
    return e && e->marks & MARK_OF(plural);
}

/* Whether what follows the pronoun tells how long, how hot, until when: then no object is needed.
 */
static bool needs_no_object(const struct writer *w, size_t verb, size_t i, size_t end)
{
    const uint64_t alone = MARK_OF(mixes) | MARK_OF(heats) | MARK_OF(ovens) | MARK_OF(cold);
    if (!(chunk_marks(&w->b->chunks.at[verb]) & alone))
        return false;
    unsigned char next = i + 1 < end ? w->b->chunks.at[i + 1].tag : (unsigned char) TAG_FOR;
    return next == TAG_FOR || next == TAG_DURATION || next == TAG_UNTIL || next == TAG_AT
           || next == TAG_LONG;
}

/* Not what only seasons or greases: "it" is hardly the salt. */
static bool is_main(const struct ingredient *line)
{
    return line->entry
           && !(line->entry->marks
                & (MARK_OF(fat) | MARK_OF(salt) | MARK_OF(spice) | MARK_OF(herb) | MARK_OF(water)));
}

/* Whether each action of the step leaves its food what it was: cut, rinsed; several that went in
 * ("the meatballs") are still told apart, but what was stirred in is gone. */
static bool keeps_food(const struct writer *w, const struct step *s, bool many)
{
    const uint64_t keeps = MARK_OF(cuts) | MARK_OF(takes) | (many ? MARK_OF(puts) : 0);
    for (size_t i = 0; i < s->actions.count; i++) {
        const struct entry *e = action_entry(w->b->k, s->actions.at[i]);
        if (!e || !(e->marks & keeps) || e->marks & MARK_OF(mixes))
            return false;
    }
    return true;
}

/* By what the step before did: its one food, else its component, else all of it. */
static bool name_by_step(struct writer *w, const struct step *last, size_t verb, bool many)
{
    uint64_t moves = MARK_OF(puts) | MARK_OF(finishes);
    const struct ingredient *line =
        last->uses.count == 1 ? dish_ingredient(w->b->dish, last->uses.at[0]) : NULL;
    if (line && is_main(line) && says_many(w, line) == many && keeps_food(w, last, many)) {
        prose_word(&w->p, step_word(w->b->k, "the"), true);
        say_name(w, (struct span){line->id, line->id});
        return true;
    }
    if (line || many || !last->group.length || !(chunk_marks(&w->b->chunks.at[verb]) & moves))
        return false;
    prose_word(&w->p, step_word(w->b->k, "the"), true);
    prose_word(&w->p, last->group, false);
    return true;
}

bool name_pronoun(struct writer *w, size_t verb, size_t i, size_t end)
{
    const struct chunk *c = &w->b->chunks.at[i];
    bool many = is_many(w, c);
    size_t here = named_before(w, verb);
    if (w->named || w->pending_count)
        return false;
    if (here < verb && i != here && is_many_of(w, &w->b->chunks.at[here]) == many) {
        say_named(w, here);
        return true;
    }
    const struct step *last = here == verb ? step_before(w) : NULL;
    if (!last)
        return false;
    return needs_no_object(w, verb, i, end) || name_by_step(w, last, verb, many);
}
