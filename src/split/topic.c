/* split/topic.c
 * SPDX-License-Identifier: MIT */
#include "split/topic.h"

#include "base/arena.h"
#include "split/title.h"

/* Enough of a stretch to tell what it is about, so that time does not grow with the square. */
#define TELLING_SENTENCES 100

struct stretch telling_part(struct stretch s)
{
    if (s.last - s.first >= TELLING_SENTENCES)
        s.last = s.first + TELLING_SENTENCES - 1;
    return s;
}

size_t times_named(const struct feature *f, struct stretch s, struct text kind)
{
    size_t times = 0;
    for (size_t i = s.first; i <= s.last; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++)
            times += text_equal(f[i].mentions[n].kind, kind);
    return times;
}

double telling(uint64_t marks)
{
    const uint64_t everywhere = MARK_OF(salt) | MARK_OF(water) | MARK_OF(fat) | MARK_OF(flour)
                                | MARK_OF(dairy) | MARK_OF(leavening) | MARK_OF(egg)
                                | MARK_OF(generic);
    const uint64_t main =
        MARK_OF(poultry) | MARK_OF(ground) | MARK_OF(meat) | MARK_OF(fish) | MARK_OF(shellfish);
    if (marks & everywhere)
        return 0.1;
    if (marks & (MARK_OF(spice) | MARK_OF(herb)))
        return 0.3;
    return marks & main ? 2 : marks & (MARK_OF(produce) | MARK_OF(aside)) ? 1 : 0.5;
}

/* A food and how much the stretch is about it. */
struct topic {
    struct text food; /* empty: none */
    double about;
};

bool is_same_food(struct text a, struct text b)
{
    return text_has_part(a, ' ', b) || text_has_part(b, ' ', a);
}

/* The food that the stretch is most about, but for `but`. */
static struct topic main_food(const struct feature *f, struct stretch s, struct text but)
{
    struct topic best = {TEXT_EMPTY, 0};
    for (size_t i = s.first; i <= s.last; i++) {
        for (size_t n = 0; n < f[i].mentions_count; n++) {
            const struct mention *m = &f[i].mentions[n];
            double about = m->part || is_same_food(m->kind, but)
                               ? 0
                               : telling(m->marks) * (double) times_named(f, s, m->kind);
            if (about > best.about)
                best = (struct topic){m->kind, about};
        }
    }
    return best;
}

double share_about(const struct feature *f, struct stretch s, struct text kind)
{
    struct topic most = main_food(f, s, TEXT_EMPTY);
    double about = 0;
    for (size_t i = s.first; i <= s.last; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++) {
            const struct mention *m = &f[i].mentions[n];
            if (!m->part && (text_equal(m->kind, kind) || is_same_food(m->kind, kind)))
                about += telling(m->marks);
        }
    return most.about > 0 ? about / most.about : 0;
}

/* The dish's word that is said most often in the stretch ("pancakes"); NULL when none is said
 * twice. */
static const struct entry *main_dish_word(const struct recording *r, struct stretch s)
{
    size_t begin = r->sentences.at[s.first].first, end = r->sentences.at[s.last].last + 1, most = 1;
    const struct entry *best = NULL;
    for (size_t i = begin; i < end; i++) {
        const struct word *w = &r->words.at[i];
        size_t times = 0;
        if (w->tag != TAG_DISH || w->scope & (SCOPE_UNREAL | SCOPE_BESIDE))
            continue;
        for (size_t n = begin; n < end; n++)
            times += r->words.at[n].tag == TAG_DISH
                     && text_equal(entry_value(r->words.at[n].entry), entry_value(w->entry));
        if (times > most) {
            most = times;
            best = w->entry;
        }
    }
    return best;
}

/* A second food is in the title when the dish is about it nearly as much. */
#define SECOND_SHARE 0.5
/* How clearly a dish is about a food that its one-word name lacks: "stew". */
#define CLEARLY_ABOUT 4.0

struct text made_name(struct recording *r, const struct feature *f, struct stretch s)
{
    s = telling_part(s);
    struct topic one = main_food(f, s, TEXT_EMPTY), other = main_food(f, s, one.food);
    const struct entry *dish = main_dish_word(r, s);
    if (!one.food.length)
        return dish ? capitalised(r, entry_words(dish)) : TEXT_EMPTY;
    if (dish)
        return capitalised(
            r, arena_format(r->arena, "%.*s %.*s", TEXT(one.food), TEXT(entry_words(dish))));
    if (other.about >= SECOND_SHARE * one.about)
        return capitalised(
            r, arena_format(r->arena, "%.*s and %.*s", TEXT(one.food), TEXT(other.food)));
    return capitalised(r, one.food);
}

struct text fuller_name(struct recording *r, const struct feature *f, struct stretch s,
                        struct span name)
{
    struct topic main = main_food(f, telling_part(s), TEXT_EMPTY);
    struct text said = title_text(r, name);
    const struct word *word = &r->words.at[name.first];
    bool whole = name.first < name.last || is_own_name(word)
                 || text_equal(text_slice(word->key, 0, main.food.length),
                               main.food); /* "meatballs" are of meat */
    if (whole || main.about < CLEARLY_ABOUT || title_weight(r, name) < 3)
        return said;
    return capitalised(r, arena_format(r->arena, "%.*s %.*s", TEXT(main.food), TEXT(word->key)));
}
