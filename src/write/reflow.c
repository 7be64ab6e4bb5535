/* write/reflow.c: captions broken anew. Where a break may be is asked of the words' tags: a number
 * stays with its unit, a preposition with what it leads to.
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "pack/pack.h"
#include "write/captions.h"
#include "write/wrap.h"

/* A silence this long ends a caption. */
#define PAUSE_SECONDS 1.5

struct flow {
    const struct recording *r;
    const struct writing *w;
    struct text *words; /* as they are printed, with their signs; empty: left out */
};

/* A word with the signs around it: from the end of the word before to where the next begins. */
static struct text with_signs(const struct recording *r, size_t i)
{
    const struct word *w = &r->words.at[i];
    struct text cue = r->cues.at[w->cue].text;
    bool first = !i || r->words.at[i - 1].cue != w->cue;
    bool last = i + 1 == r->words.count || r->words.at[i + 1].cue != w->cue;
    size_t begin = first ? 0 : (size_t) (w->text.at - cue.at);
    size_t end = last ? cue.length : (size_t) (r->words.at[i + 1].text.at - cue.at);
    return w->text.length ? text_trim(text_slice(cue, begin, end)) : TEXT_EMPTY;
}

static void print_words(struct flow *f)
{
    mend_list mends = {NULL, 0, 0};
    f->words = arena_alloc(f->w->scratch, (f->r->words.count + 1) * sizeof *f->words);
    for (size_t i = 0; i < f->r->words.count; i++)
        f->words[i] = with_signs(f->r, i);
    mends_make(&mends, f->r, f->w, false);
    for (size_t i = 0; i < mends.count; i++) {
        const struct mend *m = &mends.at[i];
        const struct word *last = &f->r->words.at[m->last];
        struct text signs = f->words[m->last];
        const char *behind = last->text.at + last->text.length;
        struct text rest = {behind, (size_t) (signs.at + signs.length - behind)};
        for (size_t n = m->first; n <= m->last; n++)
            f->words[n] = TEXT_EMPTY;
        if (m->now.length)
            f->words[m->first] = arena_format(f->w->scratch, "%.*s%.*s", TEXT(m->now), TEXT(rest));
    }
}

/* How bad a break behind a word is: 0 where a sentence ends. */
static int cost_behind(const struct recording *r, size_t i)
{
    const struct word *w = &r->words.at[i], *next = w + 1;
    if (i + 1 >= r->words.count || w->after == AFTER_STOP || w->after == AFTER_QUESTION)
        return 0;
    if (w->after == AFTER_HYPHEN)
        return 9;
    if (w->after == AFTER_COMMA)
        return 1;
    bool holds = w->tag == TAG_NUMBER || w->tag == TAG_HEDGE || w->tag == TAG_SIZE
                 || w->tag == TAG_OF || w->tag == TAG_TO || w->tag == TAG_AND
                 || next->tag == TAG_UNIT || w->tag == '_';
    return holds ? 6 : 3;
}

static size_t letters_of(const struct flow *f, size_t first, size_t last)
{
    size_t n = 0;
    for (size_t i = first; i <= last; i++)
        if (f->words[i].length)
            n += text_letters(f->words[i]) + (n > 0);
    return n;
}

/* The word behind which the first of two lines ends; `last` where all fits one. The lines are about
 * as long where a break is as good. A word longer than a line stays whole. */
static size_t line_end(const struct flow *f, size_t first, size_t last)
{
    size_t best = last;
    double least = INFINITY;
    if (letters_of(f, first, last) <= CAPTION_LINE_LETTERS)
        return last;
    for (size_t i = first; i < last; i++) {
        size_t a = letters_of(f, first, i), b = letters_of(f, i + 1, last);
        double cost = cost_behind(f->r, i) + fabs((double) a - (double) b) / 8;
        if (a > CAPTION_LINE_LETTERS || b > CAPTION_LINE_LETTERS)
            cost += 100 + (double) (a > b ? a : b);
        if (cost < least) {
            least = cost;
            best = i;
        }
    }
    return best;
}

static bool fits(const struct flow *f, size_t first, size_t last)
{
    size_t end = line_end(f, first, last);
    return letters_of(f, first, end) <= CAPTION_LINE_LETTERS
           && (end == last || letters_of(f, end + 1, last) <= CAPTION_LINE_LETTERS)
           && f->r->words.at[last].end - f->r->words.at[first].start <= CAPTION_SECONDS_MOST;
}

static bool ends_here(const struct recording *r, size_t i)
{
    const struct word *next = &r->words.at[i] + 1;
    return i + 1 >= r->words.count || next->new_speaker
           || next->start - r->words.at[i].end > PAUSE_SECONDS;
}

/* The last word of the caption that begins at `first`: as much as fits, cut where it is best; a
 * caption shorter than a third of what fits is not cut for that. */
static size_t caption_end(const struct flow *f, size_t first)
{
    size_t last = first;
    while (!ends_here(f->r, last) && fits(f, first, last + 1))
        last++;
    if (ends_here(f->r, last))
        return last;
    size_t best = last, shortest = first + (last - first) / 3;
    for (size_t i = last; i > shortest; i--)
        if (cost_behind(f->r, i) < cost_behind(f->r, best))
            best = i;
    return best;
}

static struct text line_text(const struct flow *f, size_t first, size_t last)
{
    struct text done = TEXT_EMPTY;
    for (size_t i = first; i <= last; i++) {
        struct text word = f->words[i];
        bool glued = i > first && f->r->words.at[i - 1].after == AFTER_HYPHEN;
        if (word.length)
            done = arena_format(f->w->scratch, "%.*s%s%.*s", TEXT(done),
                                done.length && !glued ? " " : "", TEXT(word));
    }
    return done;
}

static void add_caption(caption_list *list, const struct flow *f, size_t first, size_t last)
{
    size_t end = line_end(f, first, last);
    const struct word *w = f->r->words.at;
    struct text text = line_text(f, first, end);
    double from = w[first].start;
    double read = (double) letters_of(f, first, last) / CAPTION_LETTERS_PER_SECOND;
    double until = fmax(w[last].end, from + fmax(CAPTION_SECONDS_LEAST, read));
    if (last + 1 < f->r->words.count && until > w[last + 1].start)
        until = fmax(w[last + 1].start, from + 0.001);
    if (end < last)
        text = arena_format(f->w->scratch, "%.*s\n%.*s", TEXT(text),
                            TEXT(line_text(f, end + 1, last)));
    struct text speaker = w[first].new_speaker ? f->r->cues.at[w[first].cue].speaker : TEXT_EMPTY;
    if (text.length)
        *LIST_ADD(f->w->scratch, list) = (struct caption){from, until, text, speaker};
}

void captions_reflow(caption_list *list, const struct recording *r, const struct writing *w)
{
    struct flow f = {r, w, NULL};
    print_words(&f);
    for (size_t i = 0; i < r->words.count;) {
        size_t last = caption_end(&f, i);
        add_caption(list, &f, i, last);
        i = last + 1;
    }
}
