/* write/captions.c
 * SPDX-License-Identifier: MIT */
#include "write/captions.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "edits/edits.h"
#include "pack/pack.h"
#include "read/limits.h"
#include "read/read.h"
#include "write/html.h"
#include "write/ingredient_line.h"
#include "write/stamp.h"
#include "write/wrap.h"

/* ---- in the captions' own file */

struct piece {
    size_t begin, end; /* of r->source */
    struct text now;
};
typedef LIST(struct piece) piece_list;

static struct captioned_word word_was(const struct recording *r, size_t i)
{
    const struct word *w = &r->words.at[i];
    if (r->edited && r->edited->words)
        return r->edited->words[i];
    return (struct captioned_word){w->text, (size_t) (w->text.at - r->cues.at[w->cue].text.at)};
}

/* A word that goes takes one blank with it. */
static struct piece piece_of(const struct recording *r, const struct mend *m)
{
    const struct cue *cue = &r->cues.at[r->words.at[m->first].cue];
    struct captioned_word first = word_was(r, m->first), last = word_was(r, m->last);
    struct piece p = {cue_origin(r, cue, first.offset),
                      cue_origin(r, cue, last.offset + last.text.length - 1) + 1, m->now};
    while (p.end < r->source.length && byte_goes_on(r->source.at[p.end]))
        p.end++;
    if (!m->now.length && p.end < r->source.length && r->source.at[p.end] == ' ')
        p.end++;
    return p;
}

static bool is_word_byte(char c)
{
    return (c >= '0' && c <= '9') || ((c | 0x20) >= 'a' && (c | 0x20) <= 'z')
           || (unsigned char) c >= 0x80;
}

/* Times and numbers of captions are no words. */
static bool in_frame(struct text source, size_t at)
{
    size_t begin = at, end = text_find(source, '\n', at);
    bool digits = true;
    while (begin && source.at[begin - 1] != '\n')
        begin--;
    for (size_t i = begin; i < end; i++) {
        if (text_starts(text_slice(source, i, end), "-->"))
            return true;
        digits = digits && source.at[i] >= '0' && source.at[i] <= '9';
    }
    return digits;
}

/* Rolling captions show a line again in the next one or two: it is mended there too. */
static void add_repeats(piece_list *list, const struct recording *r, const struct writing *w,
                        const struct mend *m, struct piece p)
{
    size_t cue = r->words.at[m->first].cue, until = p.end;
    struct text was = text_slice(r->source, p.begin, p.end);
    for (size_t n = cue + 1; n < r->cues.count && n <= cue + 2 && r->cues.at[n].skipped; n++)
        until = cue_origin(r, &r->cues.at[n], 0);
    for (size_t i = p.end; i + was.length <= until; i++) {
        size_t end = i + was.length;
        bool same = memcmp(r->source.at + i, was.at, was.length) == 0;
        bool whole = !is_word_byte(r->source.at[i - 1])
                     && (end >= r->source.length || !is_word_byte(r->source.at[end]));
        if (same && whole && !in_frame(r->source, i))
            *LIST_ADD(w->scratch, list) = (struct piece){i, end, p.now};
    }
}

static int by_begin(const void *a, const void *b)
{
    const struct piece *x = a, *y = b;
    return (x->begin > y->begin) - (x->begin < y->begin);
}

/* With the file's own line ends. */
static void put_source(struct buffer *b, struct text t, bool returns)
{
    for (size_t i = 0; i < t.length; i++) {
        if (returns && t.at[i] == '\n')
            buffer_put_char(b, '\r');
        buffer_put_char(b, t.at[i]);
    }
}

static bool has_returns(struct text bytes)
{
    size_t at = text_find(bytes, '\n', 0);
    return at && at < bytes.length && bytes.at[at - 1] == '\r';
}

static void put_in_place(const struct recording *r, const struct writing *w, struct buffer *out,
                         const mend_list *mends)
{
    piece_list pieces = {NULL, 0, 0};
    bool returns = has_returns(r->bytes);
    size_t done = 0;
    for (size_t i = 0; i < mends->count; i++) {
        struct piece p = piece_of(r, &mends->at[i]);
        *LIST_ADD(w->scratch, &pieces) = p;
        add_repeats(&pieces, r, w, &mends->at[i], p);
    }
    qsort(pieces.at, pieces.count, sizeof *pieces.at, by_begin);
    if (text_starts(r->bytes, "\xEF\xBB\xBF"))
        buffer_put_string(out, "\xEF\xBB\xBF");
    for (size_t i = 0; i < pieces.count; i++) {
        const struct piece *p = &pieces.at[i];
        if (p->begin < done) /* two mends of one place: the first one counts */
            continue;
        put_source(out, text_slice(r->source, done, p->begin), returns);
        if (r->kind == KIND_WEBVTT)
            put_caption_text(out, p->now);
        else
            put_source(out, p->now, false);
        done = p->end;
    }
    put_source(out, text_slice(r->source, done, r->source.length), returns);
}

/* ---- written anew */

/* The cue's text with the mends of its words, which are the next ones from `*m` on. */
static struct text mended_text(const struct recording *r, const struct writing *w, size_t cue,
                               const mend_list *mends, size_t *m)
{
    struct text t = r->cues.at[cue].text, done = TEXT_EMPTY;
    size_t at = 0;
    for (; *m < mends->count && r->words.at[mends->at[*m].first].cue == cue; ++*m) {
        const struct mend *one = &mends->at[*m];
        const struct word *first = &r->words.at[one->first], *last = &r->words.at[one->last];
        size_t begin = (size_t) (first->text.at - t.at);
        done = arena_format(w->scratch, "%.*s%.*s%.*s", TEXT(done), TEXT(text_slice(t, at, begin)),
                            TEXT(one->now));
        at = (size_t) (last->text.at - t.at) + last->text.length;
    }
    return at ? arena_format(w->scratch, "%.*s%.*s", TEXT(done), TEXT(text_slice(t, at, t.length)))
              : t;
}

/* Of a caption without an end: until the next one, or as long as it takes to read. */
static double end_of(const struct recording *r, size_t i)
{
    const struct cue *c = &r->cues.at[i];
    double read =
        c->start + fmax(CAPTION_SECONDS_LEAST, (double) text_letters(c->text) / LETTERS_PER_SECOND);
    if (c->end >= 0)
        return c->end;
    return i + 1 < r->cues.count && r->cues.at[i + 1].start > c->start
               ? fmin(read, r->cues.at[i + 1].start)
               : read;
}

/* The cues, mended. */
static void captions_make(caption_list *list, const struct recording *r, const struct writing *w)
{
    mend_list mends = {NULL, 0, 0};
    size_t m = 0;
    struct text speaker = TEXT_EMPTY;
    mends_make(&mends, r, w, false);
    for (size_t i = 0; i < r->cues.count; i++) {
        const struct cue *c = &r->cues.at[i];
        struct caption made = {c->start, end_of(r, i), mended_text(r, w, i, &mends, &m),
                               TEXT_EMPTY};
        if (!text_equal(c->speaker, speaker))
            made.speaker = speaker = c->speaker;
        if (text_trim(made.text).length)
            *LIST_ADD(w->scratch, list) = made;
    }
}

static void put_srt(struct buffer *out, const struct writing *w, const caption_list *list)
{
    for (size_t i = 0; i < list->count; i++) {
        const struct caption *c = &list->at[i];
        buffer_format(out, "%s%zu\n%.*s --> %.*s\n", i ? "\n" : "", i + 1,
                      TEXT(stamp_text(w->scratch, c->start, ',')),
                      TEXT(stamp_text(w->scratch, c->end, ',')));
        if (speaker_is_named(c->speaker))
            buffer_format(out, "%.*s: ", TEXT(c->speaker));
        else if (c->speaker.length)
            buffer_put_string(out, "- ");
        buffer_put(out, c->text);
        buffer_put_char(out, '\n');
    }
}

static void put_webvtt(struct buffer *out, const struct writing *w, const caption_list *list)
{
    buffer_put_string(out, "WEBVTT\n");
    for (size_t i = 0; i < list->count; i++) {
        const struct caption *c = &list->at[i];
        buffer_format(out, "\n%.*s --> %.*s\n", TEXT(stamp_text(w->scratch, c->start, '.')),
                      TEXT(stamp_text(w->scratch, c->end, '.')));
        if (speaker_is_named(c->speaker)) {
            buffer_put_string(out, "<v ");
            put_caption_text(out, c->speaker);
            buffer_put_char(out, '>');
        } else if (c->speaker.length) {
            buffer_put_string(out, "- ");
        }
        put_caption_text(out, c->text);
        buffer_put_char(out, '\n');
    }
}

static bool write_captions(const struct recording *r, const struct writing *w, struct buffer *out,
                           enum transcript_kind as)
{
    mend_list mends = {NULL, 0, 0};
    caption_list list = {NULL, 0, 0};
    mends_make(&mends, r, w, true);
    if (r->kind == as && !w->reflow && mends.count) {
        put_in_place(r, w, out, &mends);
        return true;
    }
    if (r->kind == as && !w->reflow && r->bytes.length) {
        buffer_put(out, r->bytes);
        return true;
    }
    if (w->reflow)
        captions_reflow(&list, r, w);
    else
        captions_make(&list, r, w);
    if (as == KIND_SUBRIP)
        put_srt(out, w, &list);
    else
        put_webvtt(out, w, &list);
    return true;
}

bool write_captions_srt(const struct recording *r, const struct writing *w, struct buffer *out,
                        struct problems *p)
{
    (void) p;
    return write_captions(r, w, out, KIND_SUBRIP);
}

bool write_captions_webvtt(const struct recording *r, const struct writing *w, struct buffer *out,
                           struct problems *p)
{
    (void) p;
    return write_captions(r, w, out, KIND_WEBVTT);
}
