/* tests/write/made.h: a recording made by hand, as the stages before the writers would leave it:
 * one dish with two components, a divided food, a garnish, and findings. Invented.
 * SPDX-License-Identifier: MIT */
#ifndef TESTS_WRITE_MADE_H
#define TESTS_WRITE_MADE_H

#include "kitchen/open.h"
#include "write/write.h"

static inline struct ingredient *made_line(struct recording *r, struct dish *d, size_t id,
                                           const char *said, const char *food, const char *min,
                                           const char *max, const char *unit)
{
    struct ingredient *in = LIST_ADD(r->arena, &d->ingredients);
    *in = (struct ingredient){.id = id, .words = {id, id}, .at = 1.5 * (double) id};
    in->said = text_from(said);
    in->food = in->kind = text_from(food);
    in->amount.unit = TEXT_EMPTY;
    if (min)
        in->amount = open_amount(min, max, unit);
    in->package.unit = in->size = in->group = TEXT_EMPTY;
    in->rule = TEXT_OF("plain-amount");
    in->weight.source = TEXT_EMPTY;
    return in;
}

static inline void made_word(struct recording *r, const char *at, size_t length)
{
    struct word *w = LIST_ADD(r->arena, &r->words);
    w->rare = &WORD_USUAL;
    w->text = w->key = (struct text){at, length};
    w->start = 1.5 * (double) (r->words.count - 1);
    w->end = w->start + 1;
    w->tag = TAG_OTHER;
}

/* One cue of two lines, cut into words; its text begins at line 3, column 5 of the file. */
static inline void made_words(struct recording *r, const char *words)
{
    struct cue *cue = LIST_ADD(r->arena, &r->cues);
    *cue = (struct cue){.start = 0, .end = 60, .text = text_from(words), .line = 3, .column = 5};
    for (const char *at = words; *at;) {
        size_t n = strcspn(at, " \n");
        made_word(r, at, n);
        at += n + (at[n] != '\0');
    }
}

static inline void made_step(struct recording *r, struct dish *d, size_t id, double start,
                             const char *text, const char *group)
{
    struct step *s = LIST_ADD(r->arena, &d->steps);
    *s = (struct step){.id = id, .start = start, .end = start + 3, .words = {id, id + 1}};
    s->text = text_from(text);
    s->until = s->vessel = s->heat = TEXT_EMPTY;
    s->group = text_from(group);
    *LIST_ADD(r->arena, &s->actions) = TEXT_OF("mix");
}

static inline struct dish *made_dish(struct recording *r, const char *title, double start,
                                     double end)
{
    struct dish *d = LIST_ADD(r->arena, &r->dishes);
    *d = (struct dish){.id = 0, .words = {0, 9}, .start = start, .end = end};
    d->title = text_from(title);
    d->yield.of = TEXT_EMPTY;
    *LIST_ADD(r->arena, &d->spans) = (struct span){0, 9};
    return d;
}

static inline void made_open(struct recording *r, struct arena *a, const char *file)
{
    *r = (struct recording){.arena = a, .file = file, .kind = KIND_SUBRIP, .length = 60};
    r->language = r->source = TEXT_EMPTY;
    made_words(r, "two cups of blueberries and\nhalf a stick of butter, please now");
}

static inline struct finding *made_finding(struct recording *r, const char *kind,
                                           enum finding_level level, size_t dish, size_t word)
{
    struct finding *f = LIST_ADD(r->arena, &r->findings);
    *f = (struct finding){
        .kind = text_from(kind), .level = level, .dish = dish, .words = {word, word}};
    f->at = 1.5 * (double) word;
    f->about = f->said = f->source = f->suggest = TEXT_EMPTY;
    f->why = TEXT_OF("no amount was heard for it.");
    return f;
}

/* A writer's whole output, NUL-ended; its arena is the test's. */
static inline const char *made_output(struct open_kitchen *o, const struct recording *r,
                                      writer *write, size_t dish, struct problems *p)
{
    struct buffer out = {0};
    struct writing w = {.kitchen = o->kitchen, .scratch = &o->arena, .dish = dish, .at = -1};
    assert_true(arena_open(&o->arena));
    assert_true(write(r, &w, &out, p));
    assert_false(out.failed);
    const char *copy = open_string(o, buffer_text(&out));
    buffer_release(&out);
    return copy;
}

#endif
