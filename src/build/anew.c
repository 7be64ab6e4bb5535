/* build/anew.c: a food that went in before and is named again, with an amount of its own behind.
 * SPDX-License-Identifier: MIT */
#include "build/dangling.h"

/* So near behind an amount its food's name is only said again. */
#define ANEW_WORDS 12
/* "Carrots now, the fat ones, four": so far behind the name an amount may stand. */
#define BEHIND_WORDS 8

/* "All", "the rest of", "the" */
static bool tells_which(const struct builder *b, size_t word)
{
    const struct word *w = &b->r->words.at[word];
    const unsigned char tag = w->tag, alone = w->alone ? w->alone->tag : tag;
    return tag == TAG_THE || tag == TAG_WHOLE || tag == TAG_REST || alone == TAG_THE;
}

bool is_the_food(const struct builder *b, const struct chunk *c)
{
    size_t index = (size_t) (c - b->chunks.at);
    while (index > 1 && chunk_tag(&b->chunks, index - 1) == TAG_AND
           && chunk_tag(&b->chunks, index - 2) == TAG_LINE)
        index -= 2;
    const size_t first = b->chunks.at[index].first;
    for (size_t i = first > b->sentence->first ? first - 1 : first; i <= c->last; i++)
        if (tells_which(b, i))
            return true;
    return false;
}

void note_named_again(struct builder *b, const struct ingredient *old, const struct chunk *c,
                      const struct entry *food)
{
    const bool bare = c->match && c->match->rule->kind != RULE_line;
    if (!bare || !old->amount.known || !food || !text_equal(entry_value(food), old->kind)
        || is_the_food(b, c) || c->first - old->words.last < ANEW_WORDS
        || old->words.last >= b->sentence->first)
        return;
    b->anew = food;
    b->anew_line = b->last_line;
    b->anew_words = chunk_words(c);
}

bool is_named_again(const struct builder *b, const struct chunk *c, size_t index)
{
    const unsigned char before = index ? b->chunks.at[index - 1].tag : 0;
    const bool apart = /* "rice, use a cup", "water it, in a jar" */
        before == TAG_WITH || before == TAG_AND || before == TAG_ACTION || before == TAG_FROM
        || (before == TAG_INTO && span_has_tag(b->r, chunk_words(c), TAG_CONTAINER));
    return b->anew && b->anew_line == b->last_line && !apart && c->first > b->anew_words.last
           && c->first - b->anew_words.last <= BEHIND_WORDS
           && !span_has_tag(b->r, (struct span){b->anew_words.last + 1, c->last}, TAG_FOOD)
           && chunk_tag(&b->chunks, index + 1) != TAG_EATER
           && chunk_tag(&b->chunks, index + 1) != TAG_EACH;
}

void add_named_again(struct builder *b, const struct chunk *c, size_t index,
                     const struct said_amount *said)
{
    const struct span name = b->anew_words;
    struct ingredient *line = add_again(b, c, said);
    name_line(line, name, b->anew, entry_shown(b->anew));
    line->words.first = name.first;
    line->at = said_at(b, name.first);
    b->anew = NULL;
    read_prep_after(b, line, index);
}
