/* read/json.c: segments with start, end and text, by Jansson: an array of them, or an object that
 * has such an array in it somewhere. Source of the names: common practice, no source.
 * SPDX-License-Identifier: MIT */
#include <jansson.h>
#include <math.h>
#include <string.h>

#include "base/json_text.h"
#include "read/clock.h"
#include "read/drafts.h"
#include "read/json_place.h"
#include "read/limits.h"
#include "read/normalise.h"

/* The names that a value may have, likeliest first. */
static const char *const start_names[] = {"start", "start_time", "startTime", "begin",
                                          "from",  "time",       "timestamp", NULL};
static const char *const end_names[] = {"end", "end_time", "endTime", "to", "stop", NULL};
static const char *const duration_names[] = {"duration", "dur", NULL};
static const char *const word_names[] = {"word", "text", NULL};
static const char *const speaker_names[] = {"speaker", "speaker_name", NULL};
static const char *const language_names[] = {"language", "lang", NULL};

struct json_reader {
    struct reader *rd;
    struct drafts drafts;
    struct text language; /* in the drafts' room */
    bool whole;           /* all times are whole numbers */
    size_t without_text;
};

static json_t *get(const json_t *object, const char *const *names)
{
    for (; *names; names++) {
        json_t *value = json_object_get(object, *names);
        if (value && !json_is_null(value))
            return value;
    }
    return NULL;
}

/* A number of seconds, or a clock in a string; -1 when it is neither. */
static double time_of(struct json_reader *j, const json_t *value)
{
    double seconds = -1;
    bool whole = json_is_integer(value);
    if (json_is_number(value))
        seconds = json_number_value(value);
    else if (!json_is_string(value) || !time_read(json_text(value), &seconds, &whole))
        return -1;
    j->whole = j->whole && whole;
    return isfinite(seconds) && seconds <= TIME_SECONDS_MAX * 1000 ? fmax(seconds, 0) : -1;
}

/* Two times in an array, "timestamp": [0.0, 4.2], are start and end. */
static void read_times(struct json_reader *j, const json_t *object, double *start, double *end)
{
    const json_t *first = get(object, start_names), *last = get(object, end_names);
    if (json_is_array(first) && json_array_size(first) == 2) {
        last = json_array_get(first, 1);
        first = json_array_get(first, 0);
    }
    *start = first ? time_of(j, first) : -1;
    *end = last ? time_of(j, last) : -1;
    const json_t *duration = last ? NULL : get(object, duration_names);
    double length = duration ? time_of(j, duration) : -1;
    if (*start >= 0 && length >= 0)
        *end = *start + length;
}

static bool is_segment(const json_t *value)
{
    return json_is_object(value) && get(value, start_names)
           && (json_is_string(get(value, JSON_TEXT_NAMES))
               || json_is_array(json_object_get(value, "words")));
}

static bool is_segments(const json_t *value)
{
    for (size_t i = 0; json_is_array(value) && i < json_array_size(value); i++)
        if (is_segment(json_array_get(value, i)))
            return true;
    return false;
}

static json_t *find_segments(json_t *value, size_t depth)
{
    json_t *found = json_object_get(value, "segments"), *child;
    const char *name;
    if (is_segments(value))
        return value;
    if (is_segments(found))
        return found;
    found = NULL;
    if (depth == JSON_DEPTH_MAX)
        return NULL;
    for (size_t i = 0; !found && json_is_array(value) && i < json_array_size(value); i++)
        found = find_segments(json_array_get(value, i), depth + 1);
    if (!found)
        json_object_foreach(value, name,
                            child) if ((found = find_segments(child, depth + 1))) break;
    return found;
}

static struct text keep_speaker(struct json_reader *j, const json_t *segment)
{
    const json_t *speaker = get(segment, speaker_names);
    char number[32];
    if (json_is_integer(speaker)) {
        snprintf(number, sizeof number, "%" JSON_INTEGER_FORMAT, json_integer_value(speaker));
        return drafts_keep(&j->drafts, text_from(number));
    }
    return drafts_keep(&j->drafts, text_trim(json_text(speaker)));
}

static void keep_words(struct json_reader *j, const json_t *words)
{
    struct drafts *d = &j->drafts;
    for (size_t i = 0; i < json_array_size(words) && d->words_count < d->words_room; i++) {
        const json_t *word = json_array_get(words, i);
        struct text text = text_trim(json_text(get(word, word_names)));
        double start, end;
        read_times(j, word, &start, &end);
        if (text.length && start >= 0)
            d->words[d->words_count++] = (struct draft_word){drafts_keep(d, text), start, end};
    }
}

/* The text of a segment that has only words. */
static struct text join_words(struct json_reader *j, const json_t *words)
{
    size_t begin = j->drafts.length;
    for (size_t i = 0; i < json_array_size(words); i++) {
        drafts_keep(&j->drafts, json_text(get(json_array_get(words, i), word_names)));
        drafts_keep(&j->drafts, TEXT_OF(" "));
    }
    return (struct text){j->drafts.text + begin, j->drafts.length - begin};
}

static bool keep_segment(struct json_reader *j, const json_t *segment)
{
    const json_t *text = get(segment, JSON_TEXT_NAMES), *words = json_object_get(segment, "words");
    struct drafts *d = &j->drafts;
    if (!json_is_string(text) && !json_is_array(words)) {
        j->without_text++;
        return true;
    }
    struct draft *draft = drafts_add(d);
    if (!draft)
        return false;
    read_times(j, segment, &draft->start, &draft->end);
    draft->made = !json_is_string(text);
    draft->text = json_is_string(text) ? drafts_keep(d, json_text(text)) : join_words(j, words);
    draft->speaker = keep_speaker(j, segment);
    keep_words(j, words);
    d->words_end[d->count - 1] = d->words_count;
    return true;
}

static void keep_all(struct json_reader *j, json_t *root)
{
    const json_t *segments = find_segments(root, 0);
    j->language = drafts_keep(&j->drafts, json_text(get(root, language_names)));
    for (size_t i = 0; segments && i < json_array_size(segments); i++)
        if (!keep_segment(j, json_array_get(segments, i)))
            break;
}

static bool stands_at(struct text text, size_t at, struct text word)
{
    return text_equal(text_slice(text, at, at + word.length), word)
           && (!at || !is_letter(text.at[at - 1]) || !is_letter(word.at[0]));
}

/* Where the word comes next in the text, from `at` on; text.length when it does not come soon. */
static size_t seek_word(struct text text, size_t at, struct text word)
{
    size_t end = at + WORD_SEEK_BYTES;
    for (; at < text.length && at < end; at++)
        if (stands_at(text, at, word))
            return at;
    return text.length;
}

/* Gives the cue's words their times, in place of those that tags in its text gave; these stay where
 * no word has one. */
static void time_words(struct json_reader *j, struct cue *c, size_t first, size_t last)
{
    struct arena *a = j->rd->r->arena;
    struct word_time *times = first < last ? arena_alloc(a, (last - first) * sizeof *times) : NULL;
    size_t count = 0, at = 0;
    double before = 0;
    for (size_t i = first; i < last; i++) {
        const struct draft_word *w = &j->drafts.words[i];
        struct text word = normalise(j->rd, w->text);
        size_t found = seek_word(c->text, at, word);
        if (found == c->text.length || w->start < before)
            continue;
        times[count++] = (struct word_time){found, w->start, w->end};
        at = found + word.length;
        before = w->start;
    }
    if (!count)
        return;
    c->times = times;
    c->times_count = count;
}

static void scale_all(struct drafts *d)
{
    struct time_span span = {0};
    for (size_t i = 0; i < d->count; i++)
        time_span_add(&span, d->at[i].start, d->at[i].end, d->at[i].text);
    double unit = time_span_unit(&span);
    for (size_t i = 0; i < d->count; i++) {
        d->at[i].start *= unit;
        d->at[i].end *= unit;
    }
    for (size_t i = 0; i < d->words_count; i++) {
        d->words[i].start *= unit;
        d->words[i].end *= unit;
    }
}

static bool add_drafts(struct json_reader *j)
{
    struct recording *r = j->rd->r;
    for (size_t i = 0; i < j->drafts.count; i++) {
        size_t before = r->cues.count;
        if (!add_cue(j->rd, &j->drafts.at[i]))
            return false;
        if (r->cues.count == before + 1)
            time_words(j, &r->cues.at[before], i ? j->drafts.words_end[i - 1] : 0,
                       j->drafts.words_end[i]);
    }
    return true;
}

bool read_json(struct reader *rd)
{
    struct json_reader *j = arena_alloc(rd->r->arena, sizeof *j);
    struct text source = rd->r->source;
    json_error_t error;
    size_t objects = 1;
    for (size_t i = text_find(source, '{', 0); i < source.length; i = text_find(source, '{', i + 1))
        objects++;
    *j = (struct json_reader){.rd = rd, .whole = true};
    /* Words that are joined take a space more than the file has; its quotes and commas make up for
     * it. */
    drafts_make(&j->drafts, rd->r->arena, objects, 2 * source.length, true);
    json_t *root = json_loadb(source.at, source.length, JSON_REJECT_DUPLICATES, &error);
    if (!root)
        return problem(rd->p,
                       (struct place){rd->r->file, (unsigned) error.line, (unsigned) error.column},
                       "is no well-formed JSON: %s", error.text);
    keep_all(j, root);
    json_decref(root);
    if (j->drafts.full)
        return problem(rd->p, read_place(rd, 0), "has more than %u captions", READ_CUES_MAX);
    if (j->without_text)
        problem_note(rd->p, read_place(rd, 0), "segments without text: %zu; left out",
                     j->without_text);
    if (j->whole)
        scale_all(&j->drafts);
    json_place(&j->drafts, rd->r->source);
    rd->r->language = j->language;
    return add_drafts(j);
}
