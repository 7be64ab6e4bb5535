/* build/untitled.c
 * SPDX-License-Identifier: MIT */
#include "build/untitled.h"

#include "build/yield.h"
#include "kitchen/title.h"
#include "split/title.h"

/* So near its end a cook says of what a dish is ("and that's your soup"), once is enough. */
#define CLOSING_WORDS 60
/* So that time does not grow with the square. */
#define WORDS_MOST 2000
#define LINES_MOST 200
/* A longer word is in no lexicon. */
#define WORD_BYTES 96

#define NO_WORD ((struct dish_word){TEXT_EMPTY, TEXT_EMPTY})

static struct dish_word word_of(const struct entry *e)
{
    return (struct dish_word){entry_value(e), entry_words(e)};
}

/* "With the dal": what it is eaten with. */
static bool stands_beside(const struct recording *r, size_t i)
{
    size_t first = r->words.at[i].entry_first;
    return r->words.at[i].scope & SCOPE_BESIDE
           || (first > 0 && r->words.at[first - 1].tag == TAG_WITH)
           || (first > 1 && r->words.at[first - 2].tag == TAG_WITH);
}

/* "There's toast with that. Sourdough." */
static bool stands_alone(const struct recording *r, size_t i)
{
    size_t first = r->words.at[i].entry_first;
    return r->words.at[i].after >= AFTER_STOP
           && (!first || r->words.at[first - 1].after >= AFTER_STOP);
}

/* Foods too, where the same word is a dish ("flatbread"), but none that is a kind only ("bread").
 * The words with which a dish is spoken of here and now, of those that say what kind it is. */
static const struct entry *dish_word_at(const struct recording *r, size_t i)
{
    const struct word *w = &r->words.at[i];
    if ((w->tag != TAG_DISH && w->tag != TAG_FOOD) || w->scope & SCOPE_NOT_DONE || !w->entry
        || w->entry->marks & MARK_OF(generic) || stands_beside(r, i)
        || (w->tag == TAG_FOOD && stands_alone(r, i)))
        return NULL;
    return w->tag == TAG_DISH ? w->entry : entry_as(w->readings, TAG_DISH);
}

static size_t times_said(const struct recording *r, struct span words, struct text kind)
{
    size_t times = 0;
    for (size_t i = words.first; i <= words.last; i++) {
        const struct entry *e = dish_word_at(r, i);
        times += e && text_equal(entry_value(e), kind);
    }
    return times;
}

/* The dish's last stretch, as far back as is looked. */
static struct span last_words(const struct dish *d)
{
    struct span last = d->spans.count ? d->spans.at[d->spans.count - 1] : d->words;
    if (last.last - last.first >= WORDS_MOST)
        last.first = last.last - WORDS_MOST + 1;
    return last;
}

/* Whether it is one of the dish's own ingredients: bread, for a sandwich; never what it makes. */
static bool goes_in(const struct dish *d, const struct entry *e)
{
    if (d->yield.known && text_equal(d->yield.of, entry_value(e)))
        return false;
    for (size_t i = 0; i < d->ingredients.count && i < LINES_MOST; i++)
        if (text_equal(d->ingredients.at[i].kind, entry_value(e))
            || text_equal(d->ingredients.at[i].food, entry_words(e)))
            return true;
    return false;
}

/* The dish's word that is said most often; of several the last. */
static struct dish_word said_word(const struct recording *r, const struct dish *d,
                                  struct span words)
{
    struct dish_word best = NO_WORD;
    size_t most = 1;
    for (size_t i = words.first; i <= words.last; i++) {
        const struct entry *e = dish_word_at(r, i);
        size_t times = e && !goes_in(d, e) ? times_said(r, words, entry_value(e)) : 0;
        if (times < most || (times == 1 && i + CLOSING_WORDS <= words.last))
            continue;
        most = times;
        best = word_of(e);
    }
    return best;
}

/* A title that is nothing but a dish's word: "Stew". */
static struct dish_word bare_title(const struct pack *k, struct arena *a, struct text title)
{
    char *key = arena_alloc(a, 3 * title.length + 1);
    const struct entry *e =
        text_find(title, ' ', 0) == title.length ? entry_as(
            pack_find(k, (struct text){key, fold_word(title, key, 3 * title.length)}, NULL),
            TAG_DISH)
                                                 : NULL;
    return e && !(e->marks & (MARK_OF(generic) | MARK_OF(names))) ? word_of(e) : NO_WORD;
}

/* Foods that go into a dish raw, and name none by themselves. */
#define RAW_MARKS                                                                            \
    (MARK_OF(poultry) | MARK_OF(ground) | MARK_OF(meat) | MARK_OF(fish) | MARK_OF(shellfish) \
     | MARK_OF(produce))

/* "Pork sausages", "red onions": a title that is nothing but one of the foods that go in. */
static bool is_ingredient(const struct pack *k, struct arena *a, const struct dish *d)
{
    char *key = arena_alloc(a, 3 * d->title.length + 1);
    const struct entry *e =
        pack_find(k, (struct text){key, fold_word(d->title, key, 3 * d->title.length)}, NULL);
    const struct entry *food = entry_as(e, TAG_FOOD);
    return food && !entry_as(e, TAG_DISH) && food->marks & RAW_MARKS && goes_in(d, food);
}

static bool has_word(struct text title, struct text word)
{
    struct text rest = title, part;
    while (rest.length && text_part(&rest, ' ', &part))
        if (text_equal(text_slice(part, 1, part.length), text_slice(word, 1, word.length)))
            return true; /* the first letter may be a capital */
    return false;
}

/* How many words of a title name something: "whole" and "dried" do not. */
static size_t telling_words(const struct pack *k, struct text title)
{
    struct text rest = title, word;
    size_t words = 0;
    while (rest.length && text_part(&rest, ' ', &word)) {
        char key[WORD_BYTES];
        const struct entry *e =
            word.length < sizeof key / 3
                ? pack_find(k, (struct text){key, fold_word(word, key, sizeof key)}, NULL)
                : NULL;
        words += !e || (e->tag != TAG_STATE && e->tag != TAG_SIZE && e->tag != TAG_WHOLE);
    }
    return words;
}

/* Whether a title says what the other is about and more: "pickled red onions", "sausages and butter
 * beans" for "pork sausages". */
static bool tells_more(const struct pack *k, struct text made, struct text said)
{
    return has_word(made, text_last_word(said)) && text_parts(made, ' ') > telling_words(k, said);
}

struct text made_title(const struct recording *r, const struct kitchen *k,
                       const struct profile *profile, const struct dish *d)
{
    return make_title(k, r->arena, profile, d, said_word(r, d, last_words(d)), false);
}

/* A title for a dish that was only called after one of its foods; empty where none is better. */
static struct text better_title(const struct recording *r, const struct kitchen *k,
                                const struct profile *profile, const struct dish *d)
{
    if (!is_ingredient(k->pack, r->arena, d))
        return TEXT_EMPTY;
    struct text made = made_title(r, k, profile, d);
    return tells_more(k->pack, made, d->title) ? made : TEXT_EMPTY;
}

static void title_recipe(struct recording *r, const struct kitchen *k,
                         const struct profile *profile, struct dish *d)
{
    struct dish_word word =
        d->title_said ? bare_title(k->pack, r->arena, d->title) : said_word(r, d, last_words(d));
    struct text title = d->title_said && !word.kind.length
                            ? TEXT_EMPTY
                            : make_title(k, r->arena, profile, d, word, d->title_said);
    if (!title.length && d->title_said)
        title = better_title(r, k, profile, d);
    if (title.length)
        d->title = capitalised(r, title);
}

struct text said_title(struct recording *r, const struct kitchen *k, const struct profile *profile,
                       const struct dish *d, struct text said)
{
    struct dish called = *d;
    called.title = said;
    called.title_said = true;
    title_recipe(r, k, profile, &called);
    return called.title;
}

bool title_recipes(struct recording *r, const struct kitchen *k, const struct profile *profile)
{
    for (size_t i = 0; i < r->dishes.count; i++) {
        if (!r->dishes.at[i].title_given)
            title_recipe(r, k, profile, &r->dishes.at[i]);
        settle_yield(k->pack, &r->dishes.at[i]);
    }
    return true;
}
