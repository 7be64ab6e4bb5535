/* write/publish.c
 * SPDX-License-Identifier: MIT */
#include "write/publish.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "pack/pack.h"

static const struct {
    const char *name, *output, *as;
    bool each;
} FILES[] = {
#define PUBLISHED(name, output, as, each) {name, output, as, each},
#include "write/publish.def"
#undef PUBLISHED
};

/* Letters of a title that a name keeps. */
#define SLUG_BYTES 48

static bool is_plain(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
}

/* What is not a letter or digit of ASCII becomes one hyphen; "" where nothing is left. */
static void make_slug(struct text title, char slug[SLUG_BYTES])
{
    char folded[4 * SLUG_BYTES];
    struct text short_title = text_slice(title, 0, SLUG_BYTES);
    size_t length = fold_word(short_title, folded, sizeof folded), n = 0;
    for (size_t i = 0; i < length && n < SLUG_BYTES - 1; i++)
        if (is_plain(folded[i]))
            slug[n++] = folded[i];
        else if (n && slug[n - 1] != '-')
            slug[n++] = '-';
    while (n && slug[n - 1] == '-')
        n--;
    slug[n] = '\0';
}

/* Numbers are as wide as the last one, so that names sort as the dishes come. */
static void make_dish_name(const struct recording *r, size_t dish, char name[FILE_NAME_BYTES])
{
    char slug[SLUG_BYTES];
    int digits = 2;
    for (size_t n = r->dishes.count; n >= 100; n /= 10)
        digits++;
    make_slug(r->dishes.at[dish].title, slug);
    snprintf(name, FILE_NAME_BYTES, "%0*zu%s%s", digits, dish + 1, *slug ? "-" : "", slug);
}

struct text dish_file(const struct writing *w, const struct recording *r, size_t dish)
{
    char name[FILE_NAME_BYTES];
    make_dish_name(r, dish, name);
    return arena_text(w->scratch, text_from(name));
}

bool published_at(const struct recording *r, size_t i, struct published *file)
{
    for (size_t row = 0; row < sizeof FILES / sizeof *FILES; row++) {
        size_t count = FILES[row].each ? r->dishes.count : 1;
        if (i >= count) {
            i -= count;
            continue;
        }
        char dish[FILE_NAME_BYTES] = "";
        if (FILES[row].each)
            make_dish_name(r, i, dish);
        *file =
            (struct published){"", FILES[row].output, FILES[row].as, FILES[row].each ? i + 1 : 0};
        snprintf(file->name, sizeof file->name, "%.80s%s", dish, FILES[row].name);
        return true;
    }
    return false;
}

static void make_still_name(const struct recording *r, size_t dish, const size_t *step,
                            char name[FILE_NAME_BYTES])
{
    char of[FILE_NAME_BYTES];
    make_dish_name(r, dish, of);
    if (step)
        snprintf(name, FILE_NAME_BYTES, "%.60s-%c%zu.jpg", of, ID_STEP, *step);
    else
        snprintf(name, FILE_NAME_BYTES, "%.60s.jpg", of);
}

/* In the middle of a step something is being done; at the end of the last one the dish is done. */
bool still_at(const struct recording *r, size_t i, struct still *still)
{
    for (size_t dish = 0; dish < r->dishes.count; dish++) {
        const struct dish *d = &r->dishes.at[dish];
        if (i > d->steps.count) {
            i -= d->steps.count + 1;
            continue;
        }
        const struct step *s = i < d->steps.count ? &d->steps.at[i] : NULL;
        const struct step *last = d->steps.count ? &d->steps.at[d->steps.count - 1] : NULL;
        still->at = s ? (s->start + s->end) / 2 : last ? last->end : d->end;
        make_still_name(r, dish, s ? &s->id : NULL, still->name);
        return true;
    }
    return false;
}

struct text still_name(const struct writing *w, const struct recording *r, size_t dish,
                       const size_t *step)
{
    char name[FILE_NAME_BYTES];
    make_still_name(r, dish, step, name);
    for (size_t i = 0; i < w->stills_count; i++)
        if (strcmp(w->stills[i], name) == 0)
            return arena_text(w->scratch, text_from(name));
    return TEXT_EMPTY;
}

struct text moment_url(const struct writing *w, double seconds)
{
    static const char blank[] = "{seconds}";
    struct text url = w->video_url;
    unsigned long whole = seconds > 0 ? (unsigned long) seconds : 0;
    if (!url.length)
        return url;
    for (size_t i = 0; i < url.length; i++)
        if (text_starts(text_slice(url, i, url.length), blank))
            return arena_format(w->scratch, "%.*s%lu%.*s", (int) i, url.at, whole,
                                TEXT(text_slice(url, i + sizeof blank - 1, url.length)));
    return arena_format(w->scratch, "%.*s#t=%lu", TEXT(url), whole);
}
