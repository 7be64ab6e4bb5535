/* edits/anchor.c: an anchor is looked for where it was; then, in a transcript that has changed,
 * everywhere: the same words between the same words win. Where several places fit alike, the one
 * that moved as far in time as its neighbours did.
 * SPDX-License-Identifier: MIT */
#include "edits/anchor.h"

#include <math.h>
#include <stdint.h>

#include "edits/parse.h"

/* More words than this are compared by their first ones only. */
#define SAID_WORDS 24
/* How many words of one side may have come between two that stood side by side. */
#define SLACK 3
/* A place must keep this share of the words around it. */
#define SHARE_SAME 0.4  /* where the words themselves are the same */
#define SHARE_OTHER 0.7 /* where they were captioned otherwise */
/* The same second, as far as captions tell. */
#define SECONDS_NEAR 0.75

struct keys {
    uint32_t at[SAID_WORDS];
    size_t count;
};

/* An anchor as it stands in the file. */
struct anchor {
    struct keys said, before, after;
    size_t first, length;
    double at;  /* seconds; below 0 where none was given */
    bool exact; /* the words themselves must be the same */
};

struct place_found {
    size_t first;
    double score;
    bool only; /* no other place is as good */
};

static uint32_t hash(struct text t)
{
    return (uint32_t) text_hash(t);
}

static struct text captioned(const struct recording *r, size_t word)
{
    return r->edited && r->edited->captioned ? r->edited->captioned[word] : r->words.at[word].key;
}

static json_t *words_joined(const struct recording *r, size_t begin, size_t end)
{
    struct buffer b = {0};
    for (size_t i = begin; i < end; i++) {
        if (i > begin)
            buffer_put_char(&b, ' ');
        buffer_put(&b, captioned(r, i));
    }
    json_t *joined = json_stringn(b.at ? b.at : "", b.length);
    buffer_release(&b);
    return joined;
}

json_t *anchor_make(const struct recording *r, struct span words, size_t reach)
{
    size_t count = r->words.count;
    size_t begin = words.first > ANCHOR_CONTEXT ? words.first - ANCHOR_CONTEXT : 0;
    size_t end = words.last + 1 + ANCHOR_CONTEXT < count ? words.last + 1 + ANCHOR_CONTEXT : count;
    size_t said_end =
        words.last + 1 < words.first + SAID_WORDS ? words.last + 1 : words.first + SAID_WORDS;
    double at = round(r->words.at[words.first].start * 1000) / 1000;
    json_t *anchor =
        json_pack("{s:[I,I], s:o*, s:o*, s:o*, s:f}", "words", (json_int_t) words.first,
                  (json_int_t) words.last, "said", words_joined(r, words.first, said_end), "before",
                  words_joined(r, begin, words.first), "after",
                  words_joined(r, words.last + 1, end), "at", at);
    if (anchor && reach)
        json_object_set_new(anchor, "reach", json_integer((json_int_t) reach));
    return anchor;
}

static void read_keys(const json_t *value, struct keys *keys)
{
    struct text rest = json_text(value), word;
    keys->count = 0;
    while (keys->count < SAID_WORDS && text_part(&rest, ' ', &word))
        if (word.length)
            keys->at[keys->count++] = hash(word);
}

static void read_anchor(const json_t *json, struct anchor *a)
{
    const json_t *words = json_object_get(json, "words"), *at = json_object_get(json, "at");
    size_t last = 0;
    json_count(json_array_get(words, 0), &a->first);
    json_count(json_array_get(words, 1), &last);
    a->length = last - a->first + 1;
    a->at = json_is_number(at) ? json_number_value(at) : -1;
    read_keys(json_object_get(json, "said"), &a->said);
    read_keys(json_object_get(json, "before"), &a->before);
    read_keys(json_object_get(json, "after"), &a->after);
}

/* All words of the recording, so that comparing is cheap. */
struct index {
    uint32_t *keys;
    size_t count;
};

static bool said_here(const struct index *x, const struct anchor *a, size_t first)
{
    if (first >= x->count || a->length > x->count - first || !a->said.count)
        return false;
    for (size_t i = 0; i < a->said.count; i++)
        if (i >= x->count - first || x->keys[first + i] != a->said.at[i])
            return false;
    return true;
}

/* How many of the words are found in order from `from` on, going up or down; a few others may stand
 * between. */
static size_t in_order(const struct index *x, const struct keys *k, size_t from, int step)
{
    size_t found = 0, at = from;
    for (size_t n = 0; n < k->count; n++) {
        uint32_t wanted = step > 0 ? k->at[n] : k->at[k->count - 1 - n];
        size_t look = at;
        for (int slack = 0; slack <= SLACK && look < x->count; slack++, look += (size_t) step)
            if (x->keys[look] == wanted) {
                found++;
                at = look + (size_t) step;
                break;
            }
    }
    return found;
}

/* The share of the words around the anchor that stand around this place too; 1 where it remembers
 * none. */
static double share_kept(const struct index *x, const struct anchor *a, size_t first, size_t end)
{
    size_t all = a->before.count + a->after.count;
    size_t kept =
        in_order(x, &a->after, end, 1) + (first ? in_order(x, &a->before, first - 1, -1) : 0);
    return all ? (double) kept / (double) all : 1;
}

static double time_off(const struct recording *r, const struct anchor *a, size_t first,
                       double shift)
{
    return a->at < 0 ? 0 : fabs(r->words.at[first].start - a->at - shift);
}

static bool is_unchanged(const struct recording *r, const struct index *x, const struct anchor *a)
{
    if (!said_here(x, a, a->first))
        return false;
    double share = share_kept(x, a, a->first, a->first + a->length);
    return share >= 1 || (share >= SHARE_SAME && time_off(r, a, a->first, 0) <= SECONDS_NEAR);
}

static void offer(struct place_found *best, size_t first, double score, double off,
                  double *best_off)
{
    if (score > best->score || (score == best->score && off < *best_off)) {
        best->only = score > best->score;
        best->first = first;
        best->score = score;
        *best_off = off;
    } else if (score == best->score) {
        best->only = false;
    }
}

static struct place_found find_same(const struct recording *r, const struct index *x,
                                    const struct anchor *a, double shift)
{
    struct place_found best = {0, 0, false};
    double off = INFINITY;
    for (size_t i = 0; i < x->count; i++) {
        if (!said_here(x, a, i))
            continue;
        double share = share_kept(x, a, i, i + a->length);
        if (share >= SHARE_SAME)
            offer(&best, i, share, time_off(r, a, i, shift), &off);
    }
    return best;
}

/* The words themselves were captioned otherwise, the words around them were not. */
static struct place_found find_between(const struct recording *r, const struct index *x,
                                       const struct anchor *a, double shift)
{
    struct place_found best = {0, 0, false};
    double off = INFINITY;
    for (size_t i = 1; a->before.count && i + a->length < x->count; i++) {
        if (x->keys[i - 1] != a->before.at[a->before.count - 1])
            continue;
        double share = share_kept(x, a, i, i + a->length);
        if (share >= SHARE_OTHER && a->after.count && x->keys[i + a->length] == a->after.at[0])
            offer(&best, i, share, time_off(r, a, i, shift), &off);
    }
    return best;
}

static bool find(const struct recording *r, const struct index *x, const struct anchor *a,
                 double shift, struct place_found *found)
{
    *found = (struct place_found){a->first, 1, true};
    if (is_unchanged(r, x, a))
        return true;
    *found = find_same(r, x, a, shift);
    if (found->score > 0)
        return true;
    if (a->exact)
        return false;
    *found = find_between(r, x, a, shift);
    return found->score > 0;
}

static void place_one(const struct recording *r, const struct index *x, const json_t *json,
                      bool exact, double *shift, struct edit_spot *spot)
{
    struct anchor a = {.exact = exact};
    struct place_found found;
    if (json_count(json_object_get(json, "added"), &spot->added)) {
        spot->placed = spot->added > 0;
        return;
    }
    if (!json_object_get(json, "words"))
        return;
    read_anchor(json, &a);
    json_count(json_object_get(json, "reach"), &spot->reach);
    spot->placed = find(r, x, &a, *shift, &found);
    if (!spot->placed)
        return;
    spot->words = (struct span){found.first, found.first + a.length - 1};
    if (found.only && a.at >= 0)
        *shift = r->words.at[found.first].start - a.at;
}

void anchors_place(const struct recording *r, struct edit_run *run)
{
    struct index x = {arena_alloc(r->arena, (r->words.count + 1) * sizeof *x.keys), r->words.count};
    double shift = 0;
    for (size_t i = 0; i < x.count; i++)
        x.keys[i] = hash(captioned(r, i));
    for (size_t i = 0; x.count && i < run->edits->count; i++) {
        const struct edit *e = &run->edits->at[i];
        if (e->kind >= EDIT_KINDS)
            continue;
        place_one(r, &x, json_object_get(e->json, "on"), e->kind == EDIT_word, &shift,
                  &run->at[i].on);
        place_one(r, &x, json_object_get(e->json, "to"), false, &shift, &run->at[i].to);
    }
}
