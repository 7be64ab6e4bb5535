/* build/stepunused.c: foods that go in and that no step names: the step behind them takes them up.
 * SPDX-License-Identifier: MIT */
#include "build/writer.h"

#include <assert.h>
#include <string.h>

#include "build/implied.h"
#include "build/stepjoin.h"

/* Seconds after a food in which a step that speaks of "it" is of that food; in which a step puts it
 * in besides what it does itself. */
#define NAMED_SECONDS 25.0
#define TAKEN_SECONDS 12.0
/* What is laid out and put in with a shorter name goes in within so many. */
#define LATER_SECONDS 120.0
/* Foods of one such step at most. */
#define FOODS_MOST 8

/* Foods that follow each other with no step between. */
struct unnamed {
    const struct ingredient *at[FOODS_MOST];
    size_t count;
    size_t step; /* the first step behind them; the count of steps when there is none */
};

static bool span_has(struct span words, size_t word)
{
    return word >= words.first && word <= words.last;
}

/* "Add the chicken", of the chicken thighs that were laid out. */
static bool speaks_of(const struct builder *b, const struct step *s, const struct ingredient *line)
{
    struct text rest = s->text, word, said = b->r->words.at[line->again].text;
    if (!line->again || !span_has(s->words, line->again) || s->start - line->at > LATER_SECONDS)
        return false;
    while (text_part(&rest, ' ', &word))
        if (text_equal(text_slice(word, 0, said.length), said))
            return true;
    return false;
}

static bool is_used(const struct builder *b, const struct ingredient *line)
{
    const struct dish *d = b->dish;
    for (size_t i = 0; i < d->steps.count; i++) {
        const struct step *s = &d->steps.at[i];
        if (span_has(s->words, line->id) || speaks_of(b, s, line))
            return true;
        for (size_t n = 0; n < s->uses.count; n++)
            if (s->uses.at[n] == line->id)
                return true;
    }
    return false;
}

/* Whether it was said to go in here, with its amount; not only laid out, or to serve beside. */
static bool goes_in(const struct builder *b, const struct ingredient *line)
{
    return line->amount.known && !line->vague && !line->announced && !line->questioned
           && !(line->entry && line->entry->marks & MARK_OF(water)) && line->role == ROLE_INGREDIENT
           && !is_used(b, line);
}

static size_t step_behind(const struct dish *d, const struct ingredient *line)
{
    size_t n = 0;
    while (n < d->steps.count && d->steps.at[n].words.first < line->id)
        n++;
    return n;
}

/* The food as it was said, without its amount. */
static void say_line(struct builder *b, struct prose *p, const struct ingredient *line)
{
    b->sentence = &b->r->sentences.at[sentence_from(b->r, line->id)];
    prose_word(p, step_word(b->k, "the"), true);
    const struct word *w = &b->r->words.at[line->id];
    say_words(b, p, w->entry && w->entry_first < line->id ? w->entry_first : line->id, line->id);
}

static void say_lines(struct builder *b, struct prose *p, const struct unnamed *u)
{
    for (size_t i = 0; i < u->count; i++) {
        if (i && i + 1 == u->count)
            prose_word(p, step_word(b->k, "and"), true);
        else if (i)
            prose_comma(p);
        say_line(b, p, u->at[i]);
    }
}

static bool is_many(const struct builder *b, const struct unnamed *u)
{
    const struct entry *e = b->r->words.at[u->at[0]->id].entry;
    return u->count > 1 || (e && e->marks & MARK_OF(plural));
}

/* "That to the pot": nothing that "that" could point to stands behind it. */
static bool stands_alone(const struct builder *b, struct text behind)
{
    struct text word;
    (void) text_part(&behind, ' ', &word); /* the space before it */
    if (!text_part(&behind, ' ', &word))
        return true;
    const struct entry *e = pack_find(b->k, word, NULL);
    return e
           && (e->tag == TAG_TO || e->tag == TAG_INTO || e->tag == TAG_UNTIL || e->tag == TAG_FOR
               || e->tag == TAG_WITH);
}

/* "Pull it off the stems": "it" is the kale that was named before; false where the step begins
 * otherwise. */
static bool name_in_step(struct builder *b, struct step *s, const struct unnamed *u)
{
    size_t space = text_find(s->text, ' ', 0), next = text_find(s->text, ' ', space + 1);
    if (next > s->text.length)
        next = s->text.length;
    struct text said = text_slice(s->text, space + 1, next);
    while (said.length && (said.at[said.length - 1] == '.' || said.at[said.length - 1] == ','))
        said.length--;
    const struct entry *e = said.length ? pack_find(b->k, said, NULL) : NULL;
    bool many = step_words_list(b->k, "many", said);
    bool that = e && !many && e->tag == TAG_THE
                && stands_alone(b, text_slice(s->text, next, s->text.length));
    if (!e || (e->tag != TAG_IT && !many && !that) || many != is_many(b, u))
        return false;
    struct prose p = {.length = 0};
    (void) prose_add(&p, text_slice(s->text, 0, space));
    say_lines(b, &p, u);
    (void) prose_add(&p, text_slice(s->text, space + 1 + said.length, s->text.length));
    s->text = prose_text(&p, b->r->arena);
    return true;
}

/* "Add the kale.", before what the step says. */
static void put_before(struct builder *b, struct step *s, const struct unnamed *u)
{
    struct prose p = {.length = 0};
    struct text add = implied_list(b->k);
    prose_word(&p, add, false);
    say_lines(b, &p, u);
    prose_stop(&p);
    if (s->text.length) {
        (void) prose_add(&p, TEXT_OF(" "));
        (void) prose_add(&p, s->text);
    }
    s->text = tidy_text(b, (struct text){p.at, p.length});
    if (s->actions.count < STEP_ACTIONS && !step_has(s, add))
        *LIST_ADD(b->r->arena, &s->actions) = add;
}

static struct step *insert_step(struct builder *b, size_t at, const struct ingredient *line)
{
    struct dish *d = b->dish;
    struct step *s = LIST_INSERT(b->r->arena, &d->steps, at);
    *s = (struct step){.id = line->id,
                       .start = b->r->words.at[line->id].start,
                       .end = b->r->words.at[line->id].end,
                       .words = {line->id, line->id},
                       .group = line->group};
    return s;
}

static void take_up(struct builder *b, const struct unnamed *u)
{
    assert(u->count && u->at[0]);
    struct step *s = u->step < b->dish->steps.count ? &b->dish->steps.at[u->step] : NULL;
    double gap = s ? s->start - u->at[u->count - 1]->at : NAMED_SECONDS + 1;
    bool same = s && text_equal(s->group, u->at[0]->group);
    if (!s || gap > NAMED_SECONDS || !name_in_step(b, s, u)) {
        if (gap > TAKEN_SECONDS || !same)
            s = insert_step(b, u->step, u->at[0]);
        put_before(b, s, u);
    }
    for (size_t i = 0; i < u->count; i++)
        *LIST_ADD(b->r->arena, &s->uses) = u->at[i]->id;
}

void take_up_unnamed(struct builder *b)
{
    struct dish *d = b->dish;
    if (!d->steps.count && d->ingredients.count < 2)
        return; /* one food alone goes into nothing */
    for (size_t i = d->ingredients.count; i-- > 0;) {
        if (!goes_in(b, &d->ingredients.at[i]))
            continue;
        struct unnamed u = {.step = step_behind(d, &d->ingredients.at[i])};
        size_t first = i;
        while (first && i - first + 1 < FOODS_MOST && goes_in(b, &d->ingredients.at[first - 1])
               && step_behind(d, &d->ingredients.at[first - 1]) == u.step)
            first--;
        for (size_t n = first; n <= i; n++)
            u.at[u.count++] = &d->ingredients.at[n];
        take_up(b, &u);
        i = first;
    }
}
