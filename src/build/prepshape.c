/* build/prepshape.c: how a food is cut where no verb says it: "rough chop", "small dice", "chunks",
 * "the same".
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "base/arena.h"
#include "build/instruction.h"
#include "build/wording.h"

/* Words between the food that a cut was said of, and the next that gets the same one. */
#define SAME_WORDS 40

static bool ends_here(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    unsigned char next = chunk_tag(c, i + 1);
    return b->r->words.at[c->at[i].last].after >= AFTER_COMMA || next == TAG_SO || next == TAG_AND
           || next == TAG_LIKE || next == TAG_FROM
           || (!b->r->punctuated && (next == TAG_LINE || next == TAG_AMOUNT));
}

/* Where captions have commas one stands before what is said of a food without a verb. */
static bool begins_here(const struct builder *b, size_t i)
{
    return !i || !b->r->punctuated || b->r->words.at[b->chunks.at[i - 1].last].after >= AFTER_COMMA;
}

/* What a word makes of a cut: "finely" of "fine" and "small"; empty where it says nothing of it. */
static bool tells_how(const struct builder *b, size_t i, struct text *how)
{
    const struct chunk *c = &b->chunks.at[i];
    bool may = c->tag == TAG_OTHER || c->tag == TAG_HEDGE || c->tag == TAG_SIZE
               || c->tag == TAG_STATE || c->tag == TAG_FULLNESS || c->tag == TAG_MANNER;
    unsigned char next = chunk_tag(&b->chunks, i + 1);
    may &= next == TAG_ACTION || next == TAG_OTHER || next == TAG_SIZE || next == TAG_FULLNESS;
    struct text key = b->r->words.at[c->last].key;
    struct text said = may ? step_text(b->k, "how", key) : TEXT_EMPTY;
    if (!said.length)
        return false;
    *how = text_is(said, "-") ? TEXT_EMPTY : said;
    return true;
}

/* "Dice" of "small dice", where it is no order: "roughly chop the nuts". */
static struct text cut_noun(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    const uint64_t cut = MARK_OF(cuts) | MARK_OF(prep);
    bool noun = c->tag == TAG_ACTION && c->entry && c->entry->words_count == 1
                && (c->entry->marks & cut) == cut && ends_here(b, i);
    const struct entry *done = noun ? participle(b->k, c->entry) : NULL;
    return done ? entry_shown(done) : TEXT_EMPTY;
}

/* "Rough chop", "very small dice" at chunk `i`. */
static struct prep_phrase cut_at(const struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    struct text how, first = TEXT_EMPTY;
    size_t k = i + (c->at[i].tag == TAG_ARTICLE);
    for (; k < c->count && tells_how(b, k, &how); k++)
        first = how.length ? how : first;
    if (k == i || k >= c->count || c->at[k - 1].tag == TAG_ARTICLE)
        return (struct prep_phrase){0};
    struct text done = cut_noun(b, k);
    if (done.length && first.length)
        done = arena_format(b->r->arena, "%.*s %.*s", TEXT(first), TEXT(done));
    return (struct prep_phrase){done, k};
}

/* "Chunks", "thin rings", behind a comma or as all that is said. */
static struct prep_phrase bare_pieces_at(struct builder *b, size_t i)
{
    const struct chunks *c = &b->chunks;
    size_t k = i;
    while (
        k < c->count
        && (c->at[k].tag == TAG_SIZE || c->at[k].tag == TAG_FULLNESS
            || (c->at[k].tag == TAG_STATE && k + 1 < c->count && c->at[k + 1].tag == TAG_COUNTER)))
        k++;
    bool pieces = k < c->count && c->at[k].tag == TAG_COUNTER && !c->at[k].match
                  && chunk_marks(&c->at[k]) & MARK_OF(plural) && ends_here(b, k)
                  && pieces_word(b, k, k).length; /* "stalks and all" are no cut */
    if (!pieces || (i && b->r->words.at[c->at[i - 1].last].after < AFTER_COMMA))
        return (struct prep_phrase){0};
    struct text done = pieces_word(b, i, k);
    if (!done.length)
        done = arena_format(b->r->arena, "%.*s into %.*s", TEXT(step_word(b->k, "cut")),
                            TEXT(printed_prep(b, c->at[i].first, c->at[k].last)));
    return (struct prep_phrase){done, k};
}

struct prep_phrase shape_at(struct builder *b, size_t i)
{
    if (!begins_here(b, i))
        return (struct prep_phrase){0};
    struct prep_phrase p = cut_at(b, i);
    return p.prep.length ? p : bare_pieces_at(b, i);
}

/* The line before this one, if its food was cut and was spoken of shortly before. */
static const struct ingredient *cut_before(const struct builder *b, const struct ingredient *line)
{
    const struct ingredient *found = NULL;
    for (size_t n = 0; n < b->dish->ingredients.count; n++) {
        const struct ingredient *other = &b->dish->ingredients.at[n];
        if (other != line && other->id < line->id && line->id - other->id <= SAME_WORDS
            && other->prep.count && (!found || other->id > found->id))
            found = other;
    }
    return found;
}

size_t give_same(struct builder *b, struct ingredient *line, size_t i)
{
    const struct chunks *c = &b->chunks;
    size_t k = i;
    while (k < c->count && (c->at[k].tag == TAG_THE || c->at[k].tag == TAG_DONE))
        k++;
    if (k >= c->count || c->at[k].tag != TAG_OTHER || !begins_here(b, i)
        || !step_words_list(b->k, "same", b->r->words.at[c->at[k].last].key))
        return 0;
    size_t end = k;
    while (end + 1 < c->count && c->at[end + 1].tag == TAG_OTHER
           && b->r->words.at[c->at[end].last].after < AFTER_COMMA)
        end++; /* "the same way", "same size as" */
    unsigned char next = chunk_tag(c, end + 1);
    if (end == k && next == TAG_LINE && b->r->words.at[c->at[end].last].after < AFTER_COMMA)
        return 0; /* "the same caster sugar" */
    give_same_package(b, line);
    const struct ingredient *before = cut_before(b, line);
    for (size_t n = 0; before && n < before->prep.count; n++)
        add_prep(b->r->arena, &line->prep, before->prep.at[n]);
    return end;
}
