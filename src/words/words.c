/* words/words.c: cues -> numbered words with times, in sentences.
 * SPDX-License-Identifier: MIT */
#include "words/words.h"

#include "words/clock.h"
#include "words/entry.h"
#include "words/limits.h"
#include "words/repeat.h"
#include "words/sentence.h"
#include "words/token.h"

/* The longest word that is folded for look-up; a longer one is no word of a kitchen. */
#define KEY_BYTES 64

static struct text key_of(struct arena *a, struct text word)
{
    char folded[KEY_BYTES * 3];
    bool plain = true;
    for (size_t i = 0; i < word.length && plain; i++)
        plain = (word.at[i] >= 'a' && word.at[i] <= 'z') || word.at[i] == '\'';
    if (plain || word.length > KEY_BYTES)
        return word;
    size_t n = fold_word(word, folded, sizeof folded);
    return arena_text(a, (struct text){folded, n});
}

static bool is_capital(char c)
{
    return c >= 'A' && c <= 'Z';
}

static void number_cue(struct recording *r, const struct pack *k, unsigned cue)
{
    struct text t = r->cues.at[cue].text;
    struct token token;
    for (size_t at = 0; token_next(t, &at, &token);) {
        struct word *w = LIST_ADD(r->arena, &r->words);
        w->text = text_slice(t, token.begin, token.end);
        w->key = key_of(r->arena, w->text);
        word_look_up(w, k);
        w->cue = cue;
        w->after = token.after;
        w->capital = is_capital(w->text.at[0]);
        w->rare = &WORD_USUAL;
        if (ratio_known(token.number))
            word_set_number(r->arena, w, token.number);
        w->tag = token.clock ? TAG_CLOCK : ratio_known(token.number) ? TAG_NUMBER : TAG_OTHER;
    }
}

/* Ordinary talk has a word for five bytes. Room that is not used costs nothing, since large rooms
 * come from the system as they are written to; a second room for more would cost twice the first.
 */
#define BYTES_A_WORD 4
#define RESERVED_MOST ((size_t) 2 << 20) /* a quarter of what a recording may take in all */

static void reserve_words(struct recording *r)
{
    size_t bytes = 0;
    for (size_t cue = 0; cue < r->cues.count; cue++)
        bytes += r->cues.at[cue].text.length + 1;
    size_t words = bytes / BYTES_A_WORD + 1;
    LIST_RESERVE(r->arena, &r->words, words < RESERVED_MOST ? words : RESERVED_MOST);
}

/* A new speaker begins where the name changes, or one of UNNAMED the other. */
static bool speaker_changes(const struct cue *before, const struct cue *now)
{
    if (!now->speaker.length)
        return false;
    return !before || !text_equal(before->speaker, now->speaker);
}

bool number_words(struct recording *r, const struct pack *k, struct problems *p)
{
    (void) p;
    const struct cue *before = NULL;
    double pace = letter_seconds(r);
    reserve_words(r);
    for (unsigned cue = 0; cue < r->cues.count; cue++) {
        size_t first = r->words.count;
        number_cue(r, k, cue);
        if (r->words.count == first)
            continue;
        r->words.at[first].new_speaker = speaker_changes(before, &r->cues.at[cue]);
        before = &r->cues.at[cue];
        time_words(r, pace, cue, first);
    }
    mark_repeats(r, k);
    cut_sentences(r, k);
    return true;
}
