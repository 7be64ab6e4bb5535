/* build/preplist.c: what was done to several foods that were listed: "all diced", "grate two
 * apples, one pear", "chop those up".
 * SPDX-License-Identifier: MIT */
#include "build/prep.h"

#include "build/wording.h"

/* "One onion, two carrots, two stalks of celery, all diced": the lines of the sentence before word
 * `end` all have it. */
void give_all(struct builder *b, size_t end, struct text prep)
{
    size_t bare = 0;
    for (int turn = 0; turn < 2; turn++)
        for (size_t n = 0; n < b->dish->ingredients.count; n++) {
            struct ingredient *line = &b->dish->ingredients.at[n];
            if (line->id < b->sentence->first || line->id >= end)
                continue;
            if (!turn)
                bare += !line->prep.count;
            else if (bare < 2 || !line->prep.count) /* "a leek, sliced, two beets and a swede, both
                                                       cubed" */
                add_prep(b->r->arena, &line->prep, prep);
        }
}

/* "Two carrots and two parsnips cut into batons": what is counted beside a food, with nothing but
 * an "and" between, is cut as that is. */
void give_pair(struct builder *b, const struct ingredient *line, struct text prep)
{
    struct ingredient *before = line > b->dish->ingredients.at
                                    ? &b->dish->ingredients.at[line - b->dish->ingredients.at - 1]
                                    : NULL;
    bool pair = before && before->words.last + 2 == line->words.first
                && b->r->words.at[before->words.last + 1].tag == TAG_AND
                && b->r->words.at[before->words.last].after < AFTER_COMMA && !before->prep.count;
    bool counts = pair && before->amount.known && line->amount.known && !before->amount.unit.length
                  && !line->amount.unit.length && before->entry && line->entry
                  && before->entry->marks & line->entry->marks & MARK_OF(produce);
    if (counts)
        add_prep(b->r->arena, &before->prep, prep);
}

/* "Grate two apples, one pear", "pound together two shallots": where the verbs end that are done to
 * the food at chunk `index` and to all that was listed before it; oil and spices in it are not
 * grated. */
size_t verbs_end(const struct builder *b, const struct ingredient *line, size_t index)
{
    const struct chunks *c = &b->chunks;
    size_t first = index;
    if (!line->entry || !(line->entry->marks & (MARK_OF(produce) | MARK_OF(herb))))
        return index;
    while (first > 1) {
        size_t before = first - 1;
        bool and = c->at[before].tag == TAG_AND;
        before -= and;
        if (c->at[before].tag != TAG_LINE
            || (!and&&b->r->words.at[c->at[before].last].after != AFTER_COMMA))
            break;
        first = before;
    }
    size_t particle = first ? first - 1 : 0;
    first -=
        first
        && (c->at[particle].tag == TAG_MANNER
            || (c->at[particle].tag == TAG_OTHER && is_step_word(b, &c->at[particle], "particle")));
    bool verb = first && c->at[first - 1].tag == TAG_ACTION
                && c->at[first - 1].entry->words_count == 1
                && chunk_marks(&c->at[first - 1]) & MARK_OF(cuts);
    return verb ? first : index;
}

/* "Three carrots and two stalks of celery, chop those up": whether the chunk says it of several. */
bool means_several(const struct builder *b, size_t index)
{
    size_t it = object_of(b, index);
    return it && b->chunks.at[it].entry && b->chunks.at[it].entry->marks & MARK_OF(plural);
}

struct ingredient *list_of(const struct builder *b, struct ingredient *line)
{
    while (line > b->dish->ingredients.at) {
        size_t last = line[-1].words.last, first = line->words.first;
        if (last >= first || line[-1].id < b->sentence->first || !line[-1].amount.known)
            break;
        for (size_t i = last + 1; i < first; i++)
            if (b->r->words.at[i].tag != TAG_AND)
                return line;
        line--;
    }
    return line;
}

/* "Two slices of bread, soaked in milk and squeezed": what a food was put in has not been squeezed.
 * The line of which the words behind the food at chunk `index` tell. */
struct ingredient *told_of(const struct builder *b, struct ingredient *line, size_t index)
{
    const struct chunks *c = &b->chunks;
    bool in = index > 1 && index < c->count && c->at[index - 1].tag == TAG_INTO
              && c->at[index - 2].tag == TAG_DONE && chunk_tag(c, index + 1) == TAG_AND
              && chunk_tag(c, index + 2) == TAG_DONE;
    bool other = in && line > b->dish->ingredients.at && line[-1].id >= b->sentence->first;
    return other ? line - 1 : line;
}

/* "A handful of dill, chopped, fresh dill": what belongs to the food before, though it stands with
 * the next one's words. */
void read_prep_of_next(struct builder *b, struct ingredient *line, size_t index)
{
    const struct chunks *c = &b->chunks;
    if (index >= c->count || chunk_tag(c, index + 1) != TAG_LINE) /* none before the first */
        return;
    size_t i = c->at[index + 1].first;
    const struct word *w = &b->r->words.at[i];
    bool commas = b->r->words.at[c->at[index].last].after == AFTER_COMMA && w->after == AFTER_COMMA;
    if (w->tag == TAG_DONE && w->entry->marks & MARK_OF(prep) && (commas || ends_caption(b, i))
        && !(w->scope & SCOPE_NOT_DONE))
        add_line_prep(b, line, plain_participle(b, w->entry));
}
