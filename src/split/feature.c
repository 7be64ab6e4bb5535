/* split/feature.c
 * SPDX-License-Identifier: MIT */
#include "split/feature.h"

#include "base/arena.h"
#include "match/capture.h"
#include "split/order.h"
#include "split/phrase.h"
#include "split/settle.h"
#include "split/told.h"
#include "split/turn.h"

#define COOKING_MOST 4.0
/* What a dish is made of, and not what it is seasoned with. */
#define MAIN_MARKS                                                                           \
    (MARK_OF(poultry) | MARK_OF(ground) | MARK_OF(meat) | MARK_OF(fish) | MARK_OF(shellfish) \
     | MARK_OF(produce) | MARK_OF(flour))
/* A sentence of so many words or more counts whole. */
#define WHOLE_WORDS 10.0
#define ACTION_COOKING 0.6
#define BARE_ACTION_COOKING 0.1
/* A yield, or what it is served with, is said when a dish is nearly done. */
#define FINISH_CLOSES 0.7

static void add_mention(struct feature *f, const struct entry *e, bool fresh)
{
    if (f->mentions_count == MENTIONS_MOST)
        return;
    f->mentions[f->mentions_count++] = (struct mention){.kind = entry_value(e),
                                                        .marks = e->marks,
                                                        .fresh = fresh,
                                                        .dish = e->tag == TAG_DISH,
                                                        .part = e->tag != TAG_FOOD};
    f->sweet += e->marks & MARK_OF(sweet) ? 1 : 0;
    f->savory += e->marks & MARK_OF(savory) ? 1 : 0;
}

static bool is_measured(const struct recording *r, const struct match *m)
{
    struct span amount = match_slot(m, SLOT_amount);
    for (size_t i = amount.first; i <= amount.last; i++)
        if (r->words.at[i].tag == TAG_UNIT)
            return true;
    return false;
}

static void add_food(const struct recording *r, struct feature *f, const struct match *m)
{
    struct span food = match_slot(m, SLOT_food);
    const struct entry *e = food.first <= food.last ? r->words.at[food.last].entry : NULL;
    if (!e || (e->tag != TAG_FOOD && e->tag != TAG_PART)
        || r->words.at[food.last].scope & SCOPE_INSTEAD)
        return;
    bool counted =
        r->words.at[food.last].scope & (SCOPE_YIELD | SCOPE_TITLE | SCOPE_NEGATED | SCOPE_SUPPOSED);
    bool fresh = m->rule->kind == RULE_line && !counted;
    add_mention(f, e, fresh);
    f->lines += fresh;
    f->measured += fresh && is_measured(r, m);
}

/* Parts of a dish outside of any line, "stir the sauce", and dishes: "back to my stew". */
static void add_parts(const struct recording *r, const struct sentence *s, struct feature *f)
{
    for (size_t i = s->first; i <= s->last; i++) {
        const struct word *w = &r->words.at[i];
        bool part = w->tag == TAG_PART && !(w->scope & (SCOPE_UNREAL | SCOPE_INSTEAD));
        bool dish = w->tag == TAG_DISH && w->entry && !(w->entry->marks & MARK_OF(generic))
                    && !(w->scope & (SCOPE_UNREAL | SCOPE_INSTEAD | SCOPE_BESIDE));
        if (w->entry && (part || dish))
            add_mention(f, w->entry, false);
    }
}

/* An amount without a food beside it: "Four cloves." */
static bool stands_alone(const struct recording *r, const struct sentence *s,
                         const struct match *amount)
{
    for (size_t i = 0; i < s->match_count; i++) {
        const struct match *m = &r->matches.at[s->match_first + i];
        if (m->rule->kind == RULE_line && m->words.first <= amount->words.first
            && m->words.last >= amount->words.last)
            return false;
    }
    return true;
}

static double match_cooking(const struct recording *r, const struct sentence *s,
                            const struct match *m)
{
    if (is_unreal(r, m->words) || r->words.at[m->words.first].scope & SCOPE_NEGATED)
        return 0;
    switch (m->rule->kind) {
    case RULE_line:
        return 1.2;
    case RULE_amount:
        return stands_alone(r, s, m) ? 0.8 : 0;
    case RULE_temperature:
        return 0.6;
    case RULE_duration:
        return 0.6;
    default:
        return 0;
    }
}

/* A thing of the kitchen in the sentence: then its verbs are cooking, and not "come in and mind the
 * step". */
static bool has_thing(const struct recording *r, const struct sentence *s)
{
    for (size_t i = s->first; i <= s->last; i++) {
        switch (r->words.at[i].tag) {
        case TAG_FOOD:
        case TAG_PART:
        case TAG_VESSEL:
        case TAG_OVEN:
        case TAG_TOOL:
        case TAG_HEAT:
        case TAG_IT:
        case TAG_UNIT:
        case TAG_TIME:
            return true;
        default:
            break;
        }
    }
    return false;
}

static void count_actions(const struct recording *r, const struct sentence *s, struct feature *f)
{
    double each = has_thing(r, s) ? ACTION_COOKING : BARE_ACTION_COOKING;
    if (s->flags & SENTENCE_QUESTION)
        return;
    for (size_t i = s->first; i <= s->last; i++) {
        const struct word *w = &r->words.at[i];
        uint64_t marks = w->entry ? w->entry->marks : 0;
        if (w->tag != TAG_ACTION || w->scope & SCOPE_NOT_DONE
            || marks & (MARK_OF(hidden) | MARK_OF(light)))
            continue;
        f->cooking += each;
        f->actions++;
        f->early += (marks & MARK_OF(early)) != 0;
        f->late += (marks & (MARK_OF(finishes) | MARK_OF(garnishes) | MARK_OF(serves))) != 0;
    }
}

/* Measures, and whether the first food is a main one. */
static void read_foods(const struct recording *r, const struct sentence *s, struct feature *f)
{
    size_t foods = 0;
    for (size_t i = s->first; i <= s->last; i++) {
        const struct word *w = &r->words.at[i];
        f->units += w->tag == TAG_UNIT || w->tag == TAG_COUNTER;
        if (w->tag == TAG_FOOD && w->entry && foods++ == 0)
            f->main_first = (w->entry->marks & MAIN_MARKS) != 0;
    }
}

/* What it is about: what it names, and what is done. */
static void find_about(const struct recording *r, const struct sentence *s, const struct table *t,
                       struct feature *f)
{
    for (size_t i = s->first; i <= s->last; i++) {
        const struct word *w = &r->words.at[i];
        if (!w->entry)
            continue;
        if (w->tag == TAG_ACTION && !(w->scope & SCOPE_NOT_DONE))
            affinity_add(&f->about, t, "to ", entry_value(w->entry));
        else if (w->tag == TAG_VESSEL)
            affinity_add(&f->about, t, "in ", entry_value(w->entry));
    }
    for (size_t n = 0; n < f->mentions_count; n++) {
        affinity_add(&f->about, t, "", f->mentions[n].kind);
        f->mentions[n].lead = affinity_lead(t, f->mentions[n].kind);
    }
}

static void read_sentence(const struct recording *r, const struct sentence *s, struct feature *f)
{
    struct mention room[MENTIONS_MOST];
    f->mentions = room;
    f->opening_title = f->closing_title = f->bare_title = f->told_title = NO_WORDS;
    f->weight = (double) (s->last - s->first + 1) / WHOLE_WORDS;
    if (f->weight > 1)
        f->weight = 1;
    for (size_t i = 0; i < s->match_count; i++) {
        const struct match *m = &r->matches.at[s->match_first + i];
        enum rule_kind kind = m->rule->kind;
        if (kind == RULE_opening || kind == RULE_naming || kind == RULE_closing)
            read_phrase(r, s, m, f);
        if ((kind == RULE_yield || kind == RULE_beside) && !is_unreal(r, m->words)
            && f->closes < FINISH_CLOSES)
            f->closes = FINISH_CLOSES;
        f->finished |= kind == RULE_yield || kind == RULE_beside;
        f->timed |= kind == RULE_duration && !is_unreal(r, m->words);
        f->cooking += match_cooking(r, s, m);
        if ((kind == RULE_line || kind == RULE_mention) && !is_unreal(r, m->words))
            add_food(r, f, m);
    }
    add_parts(r, s, f);
    read_turn(r, s, f);
    read_foods(r, s, f);
    count_actions(r, s, f);
    if (f->cooking > COOKING_MOST)
        f->cooking = COOKING_MOST;
    f->mentions = arena_own(r->arena, room, f->mentions_count * sizeof *room);
}

static void find_foreign(const struct recording *r, const struct pack *k, const struct sentence *s,
                         struct feature *f)
{
    f->foreign_title = NO_WORDS;
    for (size_t i = 0; i < s->match_count; i++) {
        const struct match *m = &r->matches.at[s->match_first + i];
        if (m->rule->kind != RULE_opening && m->rule->kind != RULE_naming)
            continue;
        struct span name = foreign_name(r, k, s, m);
        if (name.first <= name.last)
            f->foreign_title = name;
    }
}

const struct mention *mention_of(const struct feature *f, struct text kind)
{
    for (size_t n = 0; n < f->mentions_count; n++)
        if (text_equal(f->mentions[n].kind, kind))
            return &f->mentions[n];
    return NULL;
}

/* A thing spoken of again after more sentences than this is another one. */
#define CHAIN_SENTENCES 80

static void find_before(const struct feature *f, size_t i, struct mention *m)
{
    m->before = i;
    for (size_t s = i; s-- > 0 && i - s <= CHAIN_SENTENCES;) {
        const struct mention *before = mention_of(&f[s], m->kind);
        if (!before)
            continue;
        m->before = s;
        m->before_mention = (size_t) (before - f[s].mentions);
        return;
    }
}

struct feature *features_make(const struct recording *r, const struct pack *k)
{
    const struct table *goes_with = pack_table(k, "goes-with");
    const struct turn_units units = turn_units_make(r, k);
    struct feature *f = arena_alloc(r->arena, (r->sentences.count + 1) * sizeof *f);
    for (size_t i = 0; i < r->sentences.count; i++) {
        read_sentence(r, &r->sentences.at[i], &f[i]);
        find_about(r, &r->sentences.at[i], goes_with, &f[i]);
        find_foreign(r, k, &r->sentences.at[i], &f[i]);
        f[i].turn = turn_points_at(&units, i);
        f[i].talked = talk_points_of(&units, i);
    }
    for (size_t i = 0; i < r->sentences.count; i++)
        settle_name(r, f, i);
    for (size_t i = 0; i < r->sentences.count; i++)
        settle_bare(r, f, i);
    find_order(r, f);
    for (size_t i = 0; i < r->sentences.count; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++)
            find_before(f, i, &f[i].mentions[n]);
    return f;
}
