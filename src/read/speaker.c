/* read/speaker.c: one cue a speaker's turn. A dash or ">>" begins another, unnamed one; "NAME:"
 * names him. The turns of a caption share its time by their letters, unless its words have times.
 * SPDX-License-Identifier: MIT */
#include <math.h>
#include <string.h>

#include "read/limits.h"
#include "read/reader.h"

struct turns {
    struct reader *rd;
    LIST(struct cue) cues;
    bool labels; /* "Name:" names a speaker in this file */
    bool second; /* which of UNNAMED was given last */
};

static bool at_line_start(struct text t, size_t i)
{
    return !i || t.at[i - 1] == '\n';
}

/* The length of a dash at `i`: of one byte, or of a typographer's three. */
static size_t dash_length(struct text t, size_t i)
{
    struct text rest = text_slice(t, i, t.length);
    if (text_starts(rest, "-"))
        return 1;
    return text_starts(rest, "\xE2\x80\x93") || text_starts(rest, "\xE2\x80\x94")
                   || text_starts(rest, "\xE2\x80\x90")
               ? 3
               : 0;
}

/* "- We're on." or "-We're on."; a long dash without a space, and "-5", are speech. */
static size_t opening_dash(struct text t, size_t i)
{
    size_t length = dash_length(t, i);
    if (!length || i + length >= t.length)
        return 0;
    char next = t.at[i + length];
    bool joined = length == 1 && (is_letter(next) || next == '"');
    return next == ' ' || joined ? length : 0;
}

static bool ends_sentence(struct text t, size_t i)
{
    while (i && strchr(" \"')", t.at[i - 1]))
        i--;
    return i && (strchr(".?!", t.at[i - 1]) || text_ends(text_slice(t, 0, i), "\xE2\x80\xA6"));
}

/* The length of the mark at `i` that begins another speaker's turn, 0 when there is none.
 * `dialogue`: a line of the caption begins with a dash, so that one behind a full stop is another
 * turn. */
static size_t turn_mark(struct text t, size_t i, bool *dialogue)
{
    bool spaced = at_line_start(t, i) || t.at[i - 1] == ' ';
    size_t length = spaced ? opening_dash(t, i) : 0;
    if (length && at_line_start(t, i)) {
        *dialogue = true;
        return length;
    }
    if (length && *dialogue && t.at[i + length] == ' ' && ends_sentence(t, i))
        return length;
    if (spaced && text_starts(text_slice(t, i, t.length), ">>")) {
        for (length = 2; i + length < t.length && t.at[i + length] == '>';)
            length++;
        return length;
    }
    return 0;
}

static bool is_upper(char c)
{
    return c >= 'A' && c <= 'Z';
}

/* "INES:", "Ines:", "Dr. O'Hara:" at the start of a text, with the letters and a space after the
 * colon: the colon's offset, else 0. */
static size_t label_end(struct text t, bool *shouted)
{
    size_t i = 0, letters = 0, words = 1;
    bool begins = true;
    *shouted = true;
    for (; i < t.length && i < NAME_BYTES_MAX && t.at[i] != ':'; i++) {
        char c = t.at[i];
        bool letter = is_letter(c) || is_digit(c);
        if (begins && letter && !is_upper(c) && !is_digit(c) && (unsigned char) c < 0x80)
            return 0;
        if (!letter && !strchr(" .'-", c))
            return 0;
        words += c == ' ';
        letters += is_letter(c);
        *shouted = *shouted && !(c >= 'a' && c <= 'z');
        begins = c == ' ';
    }
    bool colon = i + 1 < t.length && t.at[i] == ':' && (t.at[i + 1] == ' ' || t.at[i + 1] == '\n');
    return colon && letters > 1 && words <= 3 ? i : 0;
}

static bool has_small_letter(struct text t)
{
    for (size_t i = 0; i < t.length; i++)
        if (t.at[i] >= 'a' && t.at[i] <= 'z')
            return true;
    return false;
}

/* Captions in which at least half of the cues, and two, begin with one of a few labels. */
static bool find_labels(const struct recording *r)
{
    struct text seen[LABELS_MAX];
    size_t kinds = 0, labelled = 0;
    for (size_t i = 0; i < r->cues.count; i++) {
        struct text t = r->cues.at[i].text;
        bool shouted;
        struct text label = text_slice(t, 0, label_end(t, &shouted));
        size_t k = 0;
        if (!label.length)
            continue;
        labelled++;
        while (k < kinds && !text_equal(seen[k], label))
            k++;
        if (k == LABELS_MAX)
            return false;
        if (k == kinds)
            seen[kinds++] = label;
    }
    return labelled > kinds && labelled * 2 >= r->cues.count;
}

/* Takes a name off the front of the turn. Capitals name a speaker in any file; where all is in
 * capitals they say nothing. */
static struct cue take_label(struct turns *turns, struct cue c)
{
    bool shouted;
    size_t colon = label_end(c.text, &shouted);
    if (!colon || (!turns->labels && !(shouted && has_small_letter(c.text))))
        return c;
    struct text name = text_slice(c.text, 0, colon);
    c = cue_after(turns->rd, &c, colon + 1);
    c.speaker = name;
    return c;
}

/* A dash or a full stop alone is no turn. */
static bool has_word(struct text t)
{
    for (size_t i = 0; i < t.length; i++)
        if (is_letter(t.at[i]) || is_digit(t.at[i]))
            return true;
    return false;
}

static void add_turn(struct turns *turns, const struct cue *whole, size_t begin, size_t end,
                     bool marked)
{
    if (!has_word(text_slice(whole->text, begin, end)))
        return;
    struct cue part = cue_before(whole, end);
    part = cue_after(turns->rd, &part, begin);
    if (marked) {
        turns->second = !turns->second;
        part.speaker = text_from(UNNAMED[turns->second]);
    }
    part = take_label(turns, part);
    if (has_word(part.text))
        *LIST_ADD(turns->rd->r->arena, &turns->cues) = part;
}

/* What a mark begins with: ">>", "-", or a typographer's dash. */
static bool may_be_mark(char c)
{
    return c == '>' || c == '-' || c == '\xE2';
}

static void split_cue(struct turns *turns, const struct cue *c)
{
    struct text t = c->text;
    size_t begin = 0, parts = 1;
    bool marked = false, dialogue = false;
    for (size_t i = 0; i < t.length && parts < CAPTION_PARTS_MAX; i++) {
        size_t mark = may_be_mark(t.at[i]) ? turn_mark(t, i, &dialogue) : 0;
        if (!mark)
            continue;
        add_turn(turns, c, begin, i, marked);
        begin = i + mark;
        i = begin - 1;
        marked = true;
        parts++;
    }
    add_turn(turns, c, begin, t.length, marked);
}

static bool same_caption(const struct cue *a, const struct cue *b)
{
    return a->raw == b->raw && a->raw_end == b->raw_end && a->start == b->start && a->end == b->end;
}

/* Cues first to last - 1 are one caption's turns; they divide its time. */
static void share_time(struct cue *cues, size_t first, size_t last, double end)
{
    double start = cues[first].start, length = end - start, letters = 0, before = 0;
    for (size_t i = first; i < last; i++)
        letters += (double) text_letters(cues[i].text);
    for (size_t i = first; i < last; i++) {
        struct cue *c = &cues[i];
        bool timed = c->times_count && i > first;
        c->start = timed ? fmin(c->times[0].start, end) : start + length * before / letters;
        if (i > first && c->start < cues[i - 1].start)
            c->start = cues[i - 1].start;
        before += (double) text_letters(c->text);
        if (i > first)
            cues[i - 1].end = c->start;
    }
}

static void share_times(struct turns *turns)
{
    struct cue *cues = turns->cues.at;
    size_t count = turns->cues.count, last;
    for (size_t first = 0; first < count; first = last) {
        double end = 0;
        for (last = first; last < count && same_caption(&cues[last], &cues[first]); last++)
            end = end > cue_end(&cues[last]) ? end : cue_end(&cues[last]);
        if (last - first < 2)
            continue;
        if (cues[first].end < 0 && last < count && cues[last].start < end)
            end = cues[last].start;
        share_time(cues, first, last, end);
    }
}

void split_speakers(struct reader *rd)
{
    struct turns turns = {.rd = rd, .labels = find_labels(rd->r), .second = true};
    struct cue *captions = rd->r->cues.at;
    turns.cues.at = captions;
    for (size_t i = 0; i < rd->r->cues.count; i++) {
        const struct cue whole = captions[i];
        /* The turns stand in place of the captions that were read, as long as there are no more of
         * them than of these; then they move. */
        if (turns.cues.at == captions) {
            turns.cues.room = i + 1;
            captions[i] = (struct cue){0};
        }
        split_cue(&turns, &whole);
    }
    share_times(&turns);
    rd->r->cues.at = turns.cues.at;
    rd->r->cues.count = turns.cues.count;
    rd->r->cues.room = turns.cues.room;
}
