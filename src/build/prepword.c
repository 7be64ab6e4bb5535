/* build/prepword.c: the words in which a line says what was done to its food, each thing once.
 * SPDX-License-Identifier: MIT */
#include "build/prepodds.h"

#include "base/arena.h"
#include "build/instruction.h"
#include "build/stepwords.h"
#include "build/wording.h"

static bool has_text(const text_list *list, struct text t)
{
    for (size_t i = 0; i < list->count; i++)
        if (text_equal(list->at[i], t))
            return true;
    return false;
}

/* "Cut in cubes" says all that "cut" and "in cubes" say. */
static bool says_all(struct text said, struct text t)
{
    if (said.length <= t.length)
        return false;
    size_t rest = said.length - t.length;
    bool begins = said.at[t.length] == ' ' && text_equal(text_slice(said, 0, t.length), t),
         ends = said.at[rest - 1] == ' ' && text_equal(text_slice(said, rest, said.length), t);
    return begins || ends;
}

bool preps_alike(struct text a, struct text b)
{
    return text_equal(a, b) || says_all(a, b) || says_all(b, a);
}

static bool is_said(const text_list *list, struct text t)
{
    for (size_t i = 0; i < list->count; i++)
        if (says_all(list->at[i], t))
            return true;
    return has_text(list, t);
}

void add_prep(struct arena *a, text_list *list, struct text t)
{
    if (!t.length || is_said(list, t))
        return;
    for (size_t i = 0; i < list->count; i++) /* "broken into florets" says "broken" too */
        if (says_all(t, list->at[i])) {
            list->at[i] = t;
            return;
        }
    *LIST_ADD(a, list) = t;
}

/* "Usual" rows "egg whisked", "milk warm"; "fat hot" tells of the pan, and is nothing. Most do not
 * depend on the food: those that do have a row that says so. */
struct text usual_prep(const struct builder *b, const struct ingredient *line, struct text t)
{
    bool depends = t.length && step_row(b, "depends", t).length;
    struct text usual = depends ? food_row(b, line, "usual", t) : TEXT_EMPTY;
    return !usual.length ? t : text_is(usual, "-") ? TEXT_EMPTY : usual;
}

void add_state(struct builder *b, struct ingredient *line, const struct entry *state, bool before)
{
    if (before && food_row(b, line, "named", entry_value(state)).length)
        add_prep(b->r->arena, &line->state, entry_value(state)); /* "hot water" is drawn so */
    else
        add_line_prep(b, line, entry_value(state));
}

void add_line_prep(struct builder *b, struct ingredient *line, struct text t)
{
    t = usual_prep(b, line, t);
    const struct table *parts = pack_table(b->k, "removed-parts");
    if (parts && t.length && line->entry && line->entry->marks & MARK_OF(produce))
        for (size_t i = 0; i < parts->rows; i++) {
            struct text produce = table_cell(parts, i, table_column(parts, "produce"));
            if (produce.length && text_equal(table_cell(parts, i, table_column(parts, "done")), t))
                t = produce; /* a chicken is skinned, a peach peeled */
        }
    add_prep(b->r->arena, &line->prep, t);
}

struct text printed_prep(struct builder *b, size_t first, size_t last)
{
    struct prose p = {.begun = PROSE_BYTES}; /* begins inside a sentence: no capital */
    say_words(b, &p, first, last);
    return prose_text(&p, b->r->arena);
}

const struct entry *participle(const struct pack *k, const struct entry *verb)
{
    size_t count;
    const struct entry *all = pack_entries(k, &count);
    for (size_t i = (size_t) (verb - all);
         i < count && entry_file(&all[i]) == entry_file(verb) && all[i].line == verb->line; i++)
        if (all[i].tag == TAG_DONE && text_equal(entry_value(&all[i]), entry_value(verb)))
            return &all[i];
    return NULL;
}

struct text plain_participle(const struct builder *b, const struct entry *done)
{
    if (done->words_count == 1) {
        struct text usual = step_text(b->k, "usual", entry_shown(done));
        return usual.length ? usual : entry_shown(done); /* "stoned" is pitted */
    }
    const struct entry *verb = action_entry(b->k, entry_value(done));
    const struct entry *plain = verb ? participle(b->k, verb) : NULL;
    return plain && plain->marks & MARK_OF(prep) ? entry_shown(plain) : entry_shown(done);
}

struct text with_manner(const struct builder *b, size_t word, const struct entry *done,
                        struct text t)
{
    const struct word *before = word ? &b->r->words.at[word - 1] : NULL;
    bool told = before && before->tag == TAG_MANNER && before->entry && before->after < AFTER_COMMA
                && done->marks & MARK_OF(cuts) && t.length;
    struct text how = told ? step_text(b->k, "how", entry_value(before->entry)) : TEXT_EMPTY;
    if (how.length < 2) /* "-": says nothing of the cut */
        return t;
    return arena_format(b->r->arena, "%.*s %.*s", TEXT(how), TEXT(t));
}
