/* build/doer.c
 * SPDX-License-Identifier: MIT */
#include "build/doer.h"

#include "build/noorder.h"
#include "build/wording.h"

bool is_third_person(const struct entry *e)
{
    return !text_equal(entry_words(e), entry_shown(e));
}

bool is_weak(const struct builder *b, uint64_t marks)
{
    return marks & (MARK_OF(hidden) | MARK_OF(light))
           || (marks & MARK_OF(idle) && !says_how_long(b));
}

bool is_that(const struct builder *b, const struct chunk *c)
{
    return c->tag == TAG_THE && c->entry
           && (text_equal(entry_value(c->entry), step_word(b->k, "that"))
               || is_step_word(b, c, "many"));
}

bool is_thing_before(const struct builder *b, size_t i)
{
    const struct chunk *c = i ? &b->chunks.at[i - 1] : NULL;
    return c
           && (c->tag == TAG_LINE || c->tag == TAG_PART || c->tag == TAG_DISH || c->tag == TAG_IT
               || is_that(b, c));
}

bool is_done_by_thing(const struct builder *b, size_t i, uint64_t marks)
{
    if (marks
        & MARK_OF(takes)) /* "the corn comes off", but not "it drains", "it comes out clean" */
        return is_thing_before(b, i) && b->chunks.at[i].first < b->chunks.at[i].last
               && !says_how_it_is(b, i);
    return marks & (MARK_OF(puts) | MARK_OF(ovens))
           || (marks & (MARK_OF(boils) | MARK_OF(fries) | MARK_OF(waits)) && says_how_long(b));
}

bool is_order(const struct builder *b, size_t i)
{
    const struct chunk *before = i > 1 ? &b->chunks.at[i - 1] : NULL;
    return before && !is_third_person(b->chunks.at[i].entry)
           && (has_object(b, i) || has_object_inside(b, i))
           && (before->tag == TAG_OTHER || before->tag == TAG_IT || before->tag == TAG_THE)
           && !text_equal(b->r->words.at[before->last].key, step_word(b->k, "subject"));
}

/* How far behind "get" the place may stand. */
#define INTO_CHUNKS 6

/* Whether an object and a place that it goes to follow chunk `i`, and little else. */
static bool leads_into(const struct builder *b, size_t i)
{
    const struct chunk *at = b->chunks.at;
    bool object = false, into = false;
    for (size_t n = i + 1; n < b->chunks.count && n <= i + INTO_CHUNKS; n++) {
        unsigned char tag = at[n].tag;
        if (tag == TAG_INTO && object)
            into = true;
        else if (into && (tag == TAG_VESSEL || tag == TAG_OVEN || tag == TAG_PLACE))
            return true;
        else if (tag == TAG_IT || tag == TAG_LINE || tag == TAG_PART || tag == TAG_THE)
            object = true;
        else if (tag != TAG_ARTICLE && tag != TAG_STATE && tag != TAG_SIZE && tag != TAG_AMOUNT)
            return false;
        if (b->r->words.at[at[n].last].after >= AFTER_COMMA)
            return false;
    }
    return false;
}

/* The verb is looked at last: for that the table is asked. */
bool is_get_into(const struct builder *b, size_t i)
{
    const struct entry *e = b->chunks.at[i].entry;
    return e && leads_into(b, i) && text_equal(entry_value(e), step_word(b->k, "passive"));
}
