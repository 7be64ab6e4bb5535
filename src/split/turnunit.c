/* split/turnunit.c
 * SPDX-License-Identifier: MIT */
#include "split/feature.h"
#include "split/plainword.h"
#include "split/turnword.h"

/* A common dish with that food is made of it this often, or at least now and then. */
#define LEAD_OFTEN 0.40F
#define LEAD_SOMETIMES 0.15F

static const char *food_class(const struct entry *e, const struct table *goes_with)
{
    if (e->marks & PLAIN_MARKS)
        return "PLAIN";
    float lead = affinity_lead(goes_with, entry_value(e));
    return lead >= LEAD_OFTEN ? "LEAD" : lead >= LEAD_SOMETIMES ? "MIDDLE" : "FOOD";
}

/* A weak verb, "get", "make", stands for itself: it tells more than that something is done. */
static const char *action_class(const struct word *w)
{
    uint64_t marks = w->entry ? w->entry->marks : 0;
    if (marks & (MARK_OF(light) | MARK_OF(hidden)))
        return NULL;
    if (w->tag == TAG_ACTION && marks & MARK_OF(early))
        return "EARLY";
    if (w->tag == TAG_ACTION && marks & (MARK_OF(finishes) | MARK_OF(garnishes) | MARK_OF(serves)))
        return "LATE";
    return tag_name(w->tag);
}

/* NULL for a word that stands for itself. */
static const char *class_of(const struct word *w, const struct table *goes_with)
{
    switch (w->tag) {
    case TAG_FOOD:
        return w->entry ? food_class(w->entry, goes_with) : "FOOD";
    case TAG_NUMBER:
    case TAG_ONES:
    case TAG_TEENS:
    case TAG_TENS:
    case TAG_HUNDRED:
    case TAG_FRACTION:
        return "NUMBER";
    case TAG_UNIT:
    case TAG_COUNTER:
    case TAG_CONTAINER:
    case TAG_DISH:
    case TAG_PART:
    case TAG_VESSEL:
    case TAG_TIME:
    case TAG_SIZE:
    case TAG_STATE:
    case TAG_EATER:
        return tag_name(w->tag);
    case TAG_ACTION:
    case TAG_DOING:
    case TAG_DONE:
        return action_class(w);
    default:
        return NULL;
    }
}

/* Neither the lexicon nor the list of common words has it: a foreign dish's name, a person's. */
static bool is_strange(const struct plain_words *plain, const struct word *w)
{
    return !w->entry && !w->filler && !is_common_word(plain, w->key);
}

void turn_units_tell(const struct recording *r, const struct pack *k, const struct sentence *s,
                     void (*each)(void *to, struct text unit), void *to)
{
    const struct table *goes_with = pack_table(k, "goes-with");
    const struct plain_words plain = plain_words_of(k);
    const char *before = NULL;
    size_t first = s->first;
    for (size_t i = s->first; i <= s->last; i++) {
        const struct word *w = &r->words.at[i];
        if (w->tag == TAG_INSIDE)
            continue;
        const char *class = class_of(w, goes_with);
        if (!class && first == i && is_strange(&plain, w))
            class = "STRANGE";
        if (class && class != before)
            each(to, text_from(class));
        for (size_t n = first; !class && n <= i; n++)
            if (!r->words.at[n].filler)
                each(to, r->words.at[n].key);
        before = class;
        first = i + 1;
    }
}
