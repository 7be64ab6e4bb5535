/* build/linefact.c: what speaks for a food being a line of the recipe, or against it.
 * SPDX-License-Identifier: MIT */
#include "build/lineodds.h"

#include "build/beside.h"

/* So many lines before one and behind it are looked at: those of its sentence, and its food's. */
#define LINES_AROUND 24

/* What stands around a line, for the conditions of lineodds.def. */
struct way {
    const struct ingredient *line;
    unsigned flags, before, behind; /* of its sentence and those beside it: enum sentence_flag */
    size_t steps, steps_before, steps_behind; /* in them */
    bool story, story_before, story_behind;   /* in them is a word of a story */
    bool past;                                /* "I made" is in its sentence */
    size_t words;                             /* of its sentence */
    size_t lines, known;        /* other lines of its sentence; those of them with an amount */
    size_t ordinal, all;        /* lines before it; of the dish */
    size_t all_steps;           /* of the dish */
    bool said_before;           /* a line before it has this food */
    uint64_t verb, verb_behind; /* marks of the verb before it in its sentence, and behind it */
    double talk;                /* log odds that nothing is cooked in the recording */
    bool article, the, measured, in_title, is_part, is_dish, punctuated;
};

static const struct word *at(const struct builder *b, size_t i)
{
    return &b->r->words.at[i];
}

/* How many steps that a recipe tells stand in the sentence: steps are in spoken order. */
static size_t steps_in(const struct dish *d, const struct sentence *s)
{
    size_t begin = 0, end = d->steps.count, found = 0;
    while (begin < end) {
        size_t middle = begin + (end - begin) / 2;
        if (d->steps.at[middle].words.last < s->first)
            begin = middle + 1;
        else
            end = middle;
    }
    for (; begin < d->steps.count && d->steps.at[begin].words.first <= s->last; begin++)
        found += d->steps.at[begin].told.count > 0;
    return found;
}

static bool tells_story(const struct recording *r, const struct sentence *s)
{
    return span_has_tag(r, sentence_words(s), TAG_STORY);
}

/* "I made", "she put": somebody did something. */
static bool tells_past(const struct builder *b, const struct sentence *s)
{
    for (size_t i = s->first; i < s->last; i++)
        if ((at(b, i)->tag == TAG_ME || at(b, i)->tag == TAG_STORY)
            && at(b, i + 1)->tag == TAG_DONE)
            return true;
    return false;
}

/* What puts foods in, and what is said of anything. */
#define PUTTING (MARK_OF(puts) | MARK_OF(mixes) | MARK_OF(seasons) | MARK_OF(finishes))
#define LIGHT (MARK_OF(light) | MARK_OF(idle) | MARK_OF(hidden))

/* The lexicon's marks of word `i`, if it is a verb. */
static uint64_t verb_marks(const struct builder *b, size_t i)
{
    const struct word *w = at(b, i);
    const bool verb = w->tag == TAG_ACTION || w->tag == TAG_DONE || w->tag == TAG_DOING;
    return verb && w->entry ? w->entry->marks : 0;
}

static void look_at_verbs(const struct builder *b, const struct sentence *s, struct way *w)
{
    for (size_t i = w->line->words.first; i > s->first && !w->verb;)
        w->verb = verb_marks(b, --i);
    for (size_t i = w->line->words.last + 1; i <= s->last && !w->verb_behind; i++)
        w->verb_behind = verb_marks(b, i);
}

/* The sentence `s`, whose number is `i`, and those beside it. */
static void look_at_sentences(const struct builder *b, const struct sentence *s, size_t i,
                              struct way *w)
{
    look_at_verbs(b, s, w);
    w->flags = s->flags;
    w->steps = steps_in(b->dish, s);
    w->story = tells_story(b->r, s);
    w->past = tells_past(b, s);
    w->words = s->last - s->first + 1;
    if (i > 0) {
        w->before = s[-1].flags;
        w->steps_before = steps_in(b->dish, s - 1);
        w->story_before = tells_story(b->r, s - 1);
    }
    if (i + 1 < b->r->sentences.count) {
        w->behind = s[1].flags;
        w->steps_behind = steps_in(b->dish, s + 1);
        w->story_behind = tells_story(b->r, s + 1);
    }
}

static enum line_way way_by_rules(const struct ingredient *line)
{
    if (line->amount.known && !line->vague)
        return LINE_KNOWN;
    return line->questioned && !line->amount.known ? LINE_ASKED : LINE_BARE;
}

static void look_at_line(const struct ingredient *other, const struct sentence *s, struct way *w)
{
    const enum line_way way = way_by_rules(other);
    bool here =
        way != LINE_ASKED && other->words.first >= s->first && other->words.first <= s->last;
    w->lines += here;
    w->known += here && way == LINE_KNOWN;
    w->said_before |= other->words.first < w->line->words.first
                      && text_equal(text_last_word(other->kind), text_last_word(w->line->kind));
}

static void look_at_lines(const struct dish *d, const struct sentence *s, size_t index,
                          struct way *w)
{
    size_t n = index > LINES_AROUND ? index - LINES_AROUND : 0;
    for (; n < d->ingredients.count && n < index + LINES_AROUND; n++)
        if (n != index)
            look_at_line(&d->ingredients.at[n], s, w);
}

static bool has_word(struct text title, struct text word)
{
    struct text rest = title, part;
    while (text_part(&rest, ' ', &part))
        if (text_equal(part, word))
            return true;
    return false;
}

static struct way way_of(const struct builder *b, size_t index)
{
    const struct ingredient *line = &b->dish->ingredients.at[index];
    const struct entry *e = line->entry ? pack_find(b->k, entry_words(line->entry), NULL) : NULL;
    const size_t i = sentence_from(b->r, line->words.first);
    struct way w = {.line = line,
                    .ordinal = index,
                    .all = b->dish->ingredients.count,
                    .talk = b->talk,
                    .all_steps = b->dish->steps.count,
                    .article = at(b, line->words.first)->tag == TAG_ARTICLE,
                    .the = at(b, line->words.first)->tag == TAG_THE,
                    .measured = line->amount.known
                                && entry_as(pack_find(b->k, line->amount.unit, NULL), TAG_UNIT),
                    .in_title = has_word(b->dish->title, text_last_word(line->kind)),
                    .is_part = entry_as(e, TAG_PART),
                    .is_dish = entry_as(e, TAG_DISH),
                    .punctuated = b->r->punctuated};
    if (i < b->r->sentences.count) {
        look_at_sentences(b, &b->r->sentences.at[i], i, &w);
        look_at_lines(b->dish, &b->r->sentences.at[i], index, &w);
    }
    return w;
}

static void find_words(const struct builder *b, struct line_case *c)
{
    const struct span words = c->line->words;
    for (size_t i = words.first; i-- > 0 && c->nears < LINE_NEAR;)
        c->near[c->nears++] = at(b, i)->key;
    for (size_t i = words.last + 1; i < b->r->words.count && c->nexts < LINE_NEAR; i++)
        c->next[c->nexts++] = at(b, i)->key;
}

void find_line_case(const struct builder *b, size_t index, struct line_case *out)
{
    const struct way w = way_of(b, index);
    const struct ingredient *line = w.line;
    *out = (struct line_case){
        .line = line,
        .way = way_by_rules(line),
        .is =
            {
#define FACT(name, known, bare, asked, holds, what) holds,
#include "build/lineodds.def"
            },
        .before = tag_before(b->r, line->words.first),
        .behind = tag_behind(b->r, line->words.last),
        .scope = at(b, line->id)->scope,
    };
    find_words(b, out);
}
