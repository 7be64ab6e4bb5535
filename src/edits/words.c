/* edits/words.c: a misheard word is written anew in its caption; word numbers stay. Fewer words
 * than before leave empty ones, which no rule sees; of more words than before the last ones share a
 * number.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "edits/run.h"
#include "words/entry.h"
#include "words/token.h"

#define WORDS_MOST 16
#define KEY_BYTES_MAX 512

/* What stands at each of the words from now on. */
struct reading {
    struct text text[WORDS_MOST]; /* empty: nothing */
    struct token token[WORDS_MOST];
    size_t count; /* words of the span */
};

/* Cuts the cook's words to the span's numbers. False when there are none, or the span is too long.
 */
static bool read_value(struct text value, size_t count, struct reading *to)
{
    struct token token;
    size_t n = 0;
    to->count = count;
    if (count == 0 || count > WORDS_MOST)
        return false;
    for (size_t i = 0; i < count; i++)
        to->text[i] = TEXT_EMPTY;
    for (size_t at = 0; token_next(value, &at, &token); n++) {
        size_t i = n < count ? n : count - 1;
        size_t begin = n < count ? token.begin : (size_t) (to->text[i].at - value.at);
        to->text[i] = text_slice(value, begin, token.end);
        to->token[i] = token;
        if (n >= count)
            to->token[i].number = RATIO_NONE;
    }
    return n > 0;
}

static struct text folded(struct arena *a, struct text t)
{
    char key[KEY_BYTES_MAX] = "";
    if (t.length > sizeof key / 3)
        return t;
    return arena_text(a, (struct text){key, fold_word(t, key, sizeof key)});
}

static void set_word(struct recording *r, struct word *w, const struct reading *to, size_t i)
{
    const struct token *token = &to->token[i];
    w->key = folded(r->arena, w->text);
    w->capital = w->text.length && w->text.at[0] >= 'A' && w->text.at[0] <= 'Z';
    word_set_number(r->arena, w, w->text.length ? token->number : RATIO_NONE);
    w->tag = TAG_OTHER;
    if (w->text.length && token->clock)
        w->tag = TAG_CLOCK;
    else if (ratio_known(w->rare->number))
        w->tag = TAG_NUMBER;
}

/* A caption being written anew. */
struct rewriting {
    char *at;
    size_t length;
};

static void put(struct rewriting *to, struct text t)
{
    if (t.length)
        memcpy(to->at + to->length, t.at, t.length);
    to->length += t.length;
}

/* Writes one cue anew, words [first, last] of which are its own, those of `span` changed. */
static void rewrite_cue(struct recording *r, struct span own, struct span span,
                        const struct reading *to)
{
    struct cue *cue = &r->cues.at[r->words.at[own.first].cue];
    struct text old = cue->text;
    size_t room = old.length + 1, done = 0;
    for (size_t i = 0; i < to->count; i++)
        room += to->text[i].length;
    struct rewriting out = {arena_alloc(r->arena, room), 0};
    for (size_t i = own.first; i <= own.last; i++) {
        struct word *w = &r->words.at[i];
        size_t at = (size_t) (w->text.at - old.at), length = w->text.length;
        bool changed = i >= span.first && i <= span.last;
        struct text now = changed ? to->text[i - span.first] : w->text;
        if (now.length || !changed)
            put(&out, text_slice(old, done, at));
        w->text = (struct text){out.at + out.length, now.length};
        put(&out, now);
        done = at + length;
        if (changed)
            set_word(r, w, to, i - span.first);
    }
    put(&out, text_slice(old, done, old.length));
    cue->text = (struct text){out.at, out.length};
}

/* The words of one cue around a word. */
static struct span cue_words(const struct recording *r, size_t word)
{
    struct span own = {word, word};
    unsigned cue = r->words.at[word].cue;
    while (own.first && r->words.at[own.first - 1].cue == cue)
        own.first--;
    while (own.last + 1 < r->words.count && r->words.at[own.last + 1].cue == cue)
        own.last++;
    return own;
}

static void correct(struct recording *r, const struct pack *k, struct span span,
                    const struct reading *to)
{
    for (size_t i = span.first; i <= span.last;) {
        struct span own = cue_words(r, i);
        rewrite_cue(r, own, span, to);
        i = own.last + 1;
    }
    for (size_t i = span.first; i <= span.last; i++)
        word_look_up(&r->words.at[i], k);
}

static void keep_words(struct recording *r)
{
    struct captioned_word *kept = arena_alloc(r->arena, (r->words.count + 1) * sizeof *kept);
    for (size_t i = 0; i < r->words.count; i++) {
        const struct word *w = &r->words.at[i];
        kept[i] =
            (struct captioned_word){w->text, (size_t) (w->text.at - r->cues.at[w->cue].text.at)};
    }
    r->edited->words = kept;
}

/* The captions as they were, for anchors and to mend them in their file; kept from the first
 * correction on. */
static void keep_captioned(struct recording *r)
{
    if (r->edited->captioned)
        return;
    r->edited->captioned = arena_alloc(r->arena, (r->words.count + 1) * sizeof(struct text));
    for (size_t i = 0; i < r->words.count; i++)
        r->edited->captioned[i] = r->words.at[i].key;
    keep_words(r);
}

static bool said_again(const struct recording *r, struct span span, size_t i)
{
    size_t count = span.last - span.first + 1;
    if (count > r->words.count - i)
        return false;
    for (size_t n = 0; n < count; n++)
        if (!text_equal(r->edited->captioned[i + n], r->edited->captioned[span.first + n]))
            return false;
    return true;
}

bool apply_word(struct change *c)
{
    struct reading to;
    struct span span = c->out->on.words;
    size_t count = span.last - span.first + 1;
    if (!read_value(json_text(json_object_get(c->json, "value")), count, &to))
        return no_place(c, "it has no words");
    keep_captioned(c->r);
    correct(c->r, c->k, span, &to);
    if (!json_is_true(json_object_get(c->json, "everywhere")))
        return true;
    for (size_t i = 0; i < c->r->words.count; i++)
        if (i != span.first && said_again(c->r, span, i)) {
            correct(c->r, c->k, (struct span){i, i + count - 1}, &to);
            i += count - 1;
        }
    return true;
}
