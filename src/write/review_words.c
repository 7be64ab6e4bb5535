/* write/review_words.c: the captions word by word, as the review page shows them: a list a cue, so
 * that three hours stay small: [start, end, first word, speaker, words ...]. A word that the cook
 * corrected is a list: [as it is read, as it was captioned].
 * SPDX-License-Identifier: MIT */
#include "edits/edits.h"
#include "write/json_print.h"
#include "write/write.h"

/* What stands between two words comes with the first. */
static struct text with_gap(const struct recording *r, size_t i)
{
    const struct word *w = &r->words.at[i];
    const struct text cue = r->cues.at[w->cue].text;
    bool last = i + 1 >= r->words.count || r->words.at[i + 1].cue != w->cue;
    const char *end = last ? cue.at + cue.length : r->words.at[i + 1].text.at;
    return (struct text){w->text.at, (size_t) (end - w->text.at)};
}

static bool is_corrected(const struct recording *r, size_t i)
{
    return r->edited && r->edited->captioned
           && !text_equal(r->edited->captioned[i], r->words.at[i].key);
}

static void put_word(struct json *j, const struct recording *r, size_t i)
{
    if (!is_corrected(r, i)) {
        json_put_text(j, with_gap(r, i));
        return;
    }
    json_open(j, '[');
    json_put_text(j, with_gap(r, i));
    json_put_text(j, r->edited->captioned[i]);
    json_close(j, ']');
}

/* The cue that word `first` is of; the word behind it. */
static size_t put_cue(struct json *j, const struct recording *r, size_t first)
{
    const struct cue *cue = &r->cues.at[r->words.at[first].cue];
    size_t i = first;
    json_open(j, '[');
    json_put_seconds(j, cue->start);
    json_put_seconds(j, r->words.at[first].start);
    json_put_whole(j, first);
    json_put_text(j, cue->speaker);
    for (; i < r->words.count && r->words.at[i].cue == r->words.at[first].cue; i++)
        put_word(j, r, i);
    json_close(j, ']');
    return i;
}

static void put_first_word(struct json *j, const struct sentence *s)
{
    json_put_whole(j, s->first);
}

static void put_start(struct json *j, const struct word *w)
{
    json_put_seconds(j, w->start);
}

bool write_review_words(const struct recording *r, const struct writing *w, struct buffer *out,
                        struct problems *p)
{
    (void) w;
    (void) p;
    struct json j = {.out = out};
    json_open(&j, '{');
    json_key(&j, "cues");
    json_open(&j, '[');
    for (size_t word = 0; word < r->words.count;)
        word = put_cue(&j, r, word);
    json_close(&j, ']');
    JSON_LIST(&j, "sentences", &r->sentences, put_first_word, &j);
    JSON_LIST(&j, "times", &r->words, put_start, &j);
    json_close(&j, '}');
    return true;
}
