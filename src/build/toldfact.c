/* build/toldfact.c: what speaks for a verb being a step, or against it, but for the weights.
 * SPDX-License-Identifier: MIT */
#include "build/told.h"

#include "build/doer.h"
#include "build/instruction.h"
#include "build/noorder.h"

/* So many words of the caption before the verb are many. */
#define WORDS_MOST 8

/* What stands around a verb, for the conditions of told.def. */
struct way {
    unsigned char tag;
    bool third;                      /* "goes" */
    int pause;                       /* before it: 2 a stop or nothing, 1 a comma, 0 none */
    bool last;                       /* a pause behind it */
    bool object;                     /* a thing behind it */
    bool same;                       /* the last step before it in the sentence is the same */
    size_t words;                    /* of its caption, before it */
    bool amount, time, vessel, heat; /* between the pauses around it */
};

static unsigned char after(const struct builder *b, size_t i)
{
    return b->r->words.at[b->chunks.at[i].last].after;
}

static void look_at(const struct chunk *c, struct way *w)
{
    w->amount |= c->tag == TAG_LINE && c->match && c->match->rule->kind == RULE_line;
    w->time |= c->tag == TAG_DURATION;
    w->vessel |= c->tag == TAG_VESSEL;
    w->heat |= c->tag == TAG_HEAT || c->tag == TAG_HEATED || c->tag == TAG_OVEN;
}

/* What stands between the pauses around chunk `i`. */
static void look_around(const struct builder *b, size_t i, struct way *w)
{
    size_t n = i;
    while (n && after(b, n - 1) < AFTER_COMMA)
        n--;
    for (bool ends = false; n < b->chunks.count && !ends; n++) {
        look_at(&b->chunks.at[n], w);
        ends = n >= i && after(b, n) >= AFTER_COMMA;
    }
}

/* How many words its caption has before it, up to WORDS_MOST. */
static size_t words_of_caption(const struct recording *r, size_t word)
{
    size_t n = 0;
    while (n < WORDS_MOST && n < word && r->words.at[word - n - 1].cue == r->words.at[word].cue)
        n++;
    return n;
}

static bool is_same(const struct builder *b, size_t i)
{
    size_t n = i;
    while (n > 0 && !is_step_verb(b, n - 1))
        n--;
    return n > 0
           && text_equal(entry_value(b->chunks.at[n - 1].entry),
                         entry_value(b->chunks.at[i].entry));
}

static struct way way_of(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    unsigned char before = i ? after(b, i - 1) : (unsigned char) AFTER_STOP;
    struct way w = {.tag = c->tag,
                    .third = is_third_person(c->entry),
                    .pause = before < AFTER_COMMA    ? 0
                             : before == AFTER_COMMA ? 1
                                                     : 2,
                    .last = i + 1 == b->chunks.count || after(b, i) >= AFTER_COMMA,
                    .object = has_object(b, i),
                    .same = is_same(b, i),
                    .words = words_of_caption(b->r, c->first)};
    look_around(b, i, &w);
    return w;
}

/* The last words before chunk `i` that are no foods. */
static void find_near(const struct builder *b, size_t i, struct told *out)
{
    for (size_t n = i; n-- > 0 && out->nears < TOLD_WORDS;) {
        const struct chunk *c = &b->chunks.at[n];
        if (n + 1 < i && after(b, n) > AFTER_COMMA)
            return;
        if (c->tag != TAG_LINE && c->tag != TAG_FOOD)
            for (size_t k = c->last + 1; k-- > c->first && out->nears < TOLD_WORDS;)
                out->near[out->nears++] = b->r->words.at[k].key;
    }
}

/* The words with which the chunks behind chunk `i` begin. */
static void find_next(const struct builder *b, size_t i, struct told *out)
{
    for (size_t n = i + 1; n < b->chunks.count && n <= i + TOLD_WORDS; n++) {
        const struct chunk *c = &b->chunks.at[n];
        if (c->tag != TAG_LINE && c->tag != TAG_FOOD)
            out->next[out->nexts++] = b->r->words.at[c->first].key;
    }
}

void find_told(const struct builder *b, size_t i, struct text does, struct told *out)
{
    const struct chunk *c = &b->chunks.at[i];
    const struct way w = way_of(b, i);
    *out = (struct told){
        .is =
            {
#define TOLD(name, ordered, other, holds, what) holds,
#include "build/told.def"
            },
        .marks = chunk_marks(c),
        .before = w.pause ? 0 : b->chunks.at[i - 1].tag,
        .behind = w.last ? 0 : b->chunks.at[i + 1].tag,
        .says = entry_words(c->entry),
        .does = does,
    };
    find_near(b, i, out);
    find_next(b, i, out);
}
