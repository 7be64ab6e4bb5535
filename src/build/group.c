/* build/group.c: the part of the dish that things go into now: "for the sauce".
 * SPDX-License-Identifier: MIT */
#include "build/line.h"

#include "build/stepwords.h"
#include "match/capture.h"
#include "match/matches.h"

/* A component's name holds while its things go in; after this many sentences without one it is
 * over. */
#define GROUP_SENTENCES 2

static bool makes(const struct builder *b, const struct entry *verb)
{
    return verb && step_words_list(b->k, "makes", entry_value(verb));
}

/* The part that a rule's words name. */
static const struct entry *part_named(const struct builder *b, const struct match *m)
{
    const struct entry *verb = match_entry(b->r, m, SLOT_action);
    return verb && !makes(b, verb) ? NULL /* "pour the sauce" */
                                   : match_entry(b->r, m, SLOT_part);
}

/* "Gravy", "the syrup": a food without amount that is a part by another reading; NULL for others.
 */
static const struct entry *part_of_food(const struct builder *b, const struct chunk *c)
{
    const struct word *w = &b->r->words.at[c->last];
    bool bare = c->tag == TAG_LINE && w->tag == TAG_FOOD
                && (w->entry_first == c->first
                    || (w->entry_first == c->first + 1 && b->r->words.at[c->first].tag == TAG_THE));
    return bare ? entry_as(w->readings, TAG_PART) : NULL;
}

/* "Now the gravy", "for the gravy", "you make the gravy". */
static bool leads_to_part(const struct builder *b, size_t i)
{
    const struct chunk *before = i ? &b->chunks.at[i - 1] : NULL;
    if (!before || before->tag == TAG_SO || before->tag == TAG_AND || before->tag == TAG_MEANWHILE
        || before->tag == TAG_OPENER || before->tag == TAG_FOR)
        return true;
    return (before->tag == TAG_ACTION || before->tag == TAG_DONE) && makes(b, before->entry);
}

/* What may stand behind the name of a part that is begun: nothing is done with it yet. */
static bool follows_part(unsigned char tag)
{
    return tag == TAG_SO || tag == TAG_ME || tag == TAG_YOU || tag == TAG_WILL || tag == TAG_BE
           || tag == TAG_HAVE || tag == TAG_THERE || tag == TAG_AMOUNT || tag == TAG_NUMBER
           || tag == TAG_FOR;
}

/* "The syrup is a cup of sugar" */
static bool is_told_of(const struct chunks *c, size_t i)
{
    unsigned char what = chunk_tag(c, i + 2);
    return chunk_tag(c, i + 1) == TAG_BE
           && (what == TAG_LINE || what == TAG_AMOUNT || what == TAG_NUMBER);
}

/* Rules see such a food as a line like any other. */
static const struct entry *food_named(const struct builder *b)
{
    const struct entry *found = NULL;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct entry *part = part_of_food(b, &b->chunks.at[i]);
        bool begins = part && leads_to_part(b, i)
                      && (i + 1 == b->chunks.count || follows_part(b->chunks.at[i + 1].tag)
                          || chunk_tag(&b->chunks, i - 1) == TAG_FOR);
        if (begins || (part && is_told_of(&b->chunks, i)))
            found = part;
    }
    return found;
}

/* What the dish is called is no part of it, nor is what stands by itself (rows "whole"): "the
 * stock", "the slaw". */
static bool is_whole(const struct builder *b, struct text part)
{
    struct text title = text_last_word(b->dish->title);
    return step_words_list(b->k, "whole", part)
           || (part.length > 1 && title.length == part.length
               && text_equal(text_slice(title, 1, title.length), text_slice(part, 1, part.length)));
}

static void begin_part(struct builder *b, const struct entry *part)
{
    if (!part || is_whole(b, entry_value(part)))
        return;
    b->group = entry_value(part);
    b->group_age = 0;
}

static bool has_food(const struct recording *r, struct span words)
{
    return span_has_tag(r, words, TAG_FOOD);
}

/* "Four spoons of butter, and that chills while we make the batter": its things are yet to come,
 * and those of the sentence are another's. */
static bool is_made_next(const struct builder *b, const struct match *m)
{
    const struct span before = {b->sentence->first, m->words.first},
                      behind = {m->words.last, b->sentence->last};
    return text_is(m->rule->option, "made") && has_food(b->r, before) && !has_food(b->r, behind);
}

void name_group(struct builder *b)
{
    begin_part(b, b->next_part);
    b->next_part = NULL;
    begin_part(b, food_named(b));
    struct matches groups = matches_of(b->r, b->sentence, KIND_OF(group));
    for (const struct match *m; (m = matches_next(&groups));) {
        if (is_made_next(b, m))
            b->next_part = part_named(b, m);
        else
            begin_part(b, part_named(b, m));
    }
    if (b->group_age > GROUP_SENTENCES)
        b->group = TEXT_EMPTY;
}

/* What goes into the oven, is served or waits is done with: a part ends with it, until one is named
 * again. */
static bool part_ends(const struct builder *b)
{
    const uint64_t whole = MARK_OF(ovens) | MARK_OF(grills) | MARK_OF(deep) | MARK_OF(serves);
    bool waits = false, time = false;
    for (size_t i = 0; i < b->chunks.count; i++) {
        const struct chunk *c = &b->chunks.at[i];
        time |= c->tag == TAG_DURATION;
        if (c->tag != TAG_ACTION || c->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL))
            continue;
        if (chunk_marks(c) & whole && !(chunk_marks(c) & MARK_OF(changes)))
            return true;
        waits |= (chunk_marks(c) & (MARK_OF(waits) | MARK_OF(idle))) != 0;
    }
    return waits && time;
}

void end_group(struct builder *b)
{
    if (b->group.length && part_ends(b))
        b->group = TEXT_EMPTY;
}
