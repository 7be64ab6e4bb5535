/* split/feature.c
 * SPDX-License-Identifier: MIT */
#include "split/feature.h"

#include "base/arena.h"
#include "match/capture.h"
#include "split/title.h"

#define COOKING_MOST 4.0
/* A sentence of so many words or more counts whole. */
#define WHOLE_WORDS 10.0
#define ACTION_COOKING 0.6
#define BARE_ACTION_COOKING 0.1
/* A yield, or what it is served with, is said when a dish is nearly done. */
#define FINISH_CLOSES 0.7
/* "So while that's going": the word stands so near the beginning. */
#define MEANWHILE_WORDS 5
#define HEADING_WORDS 4

static bool is_unreal(const struct recording *r, struct span words)
{
    return r->words.at[words.first].scope & (SCOPE_UNREAL | SCOPE_INSTEAD);
}

static void add_mention(struct feature *f, const struct entry *e, bool fresh)
{
    if (f->mentions_count == MENTIONS_MOST)
        return;
    f->mentions[f->mentions_count++] =
        (struct mention){entry_value(e), e->marks, fresh, e->tag != TAG_FOOD, 0};
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

/* Names whatever the phrase has in its slot `title`; a phrase that names nothing weighs less. */
static struct span named(const struct recording *r, const struct sentence *s, const struct match *m)
{
    struct span slot = match_slot(m, SLOT_title);
    return slot.first <= slot.last ? title_span(r, s, slot.first) : (struct span){1, 0};
}

static void mark_title(const struct recording *r, struct span title)
{
    for (size_t i = title.first; i <= title.last; i++)
        r->words.at[i].scope |= SCOPE_TITLE;
}

static bool is_strong(const struct recording *r, const struct match *m)
{
    const struct entry *e = r->words.at[m->words.first].entry;
    bool waited =
        text_is(m->rule->option, "return") && e && m->words.first + e->words_count <= m->words.last;
    return (e && e->marks & MARK_OF(strong)) || waited;
}

/* "It's a curry" names what was made; "it's fried bread that went to school" only tells of it, and
 * names at best what comes. */
static bool tells_only(const struct recording *r, const struct match *m)
{
    const struct word *w = &r->words.at[m->words.first];
    if (!w->entry || w->entry->tag != TAG_THERE || !(w->entry->marks & MARK_OF(tells)))
        return false;
    size_t next = m->words.first + w->entry->words_count;
    return next > m->words.last
           || (r->words.at[next].tag != TAG_ARTICLE && r->words.at[next].tag != TAG_THE);
}

/* "That's a plum cake" names; "there's garlic" only shows. And "don't look at that" closes nothing.
 */
static bool may_name(const struct recording *r, const struct match *m)
{
    const struct word *w = &r->words.at[m->words.first];
    if (r->words.at[m->words.last].scope & SCOPE_NEGATED)
        return false;
    return m->rule->kind != RULE_naming || !w->entry || w->entry->tag != TAG_THERE
           || w->entry->marks & (MARK_OF(names) | MARK_OF(tells));
}

/* "That's meatloaf", "this is breakfast": a word without "a" or "your" before it is talk, no name.
 */
static bool is_one_word(const struct recording *r, struct span title)
{
    unsigned char before =
        title.first ? r->words.at[title.first - 1].tag : (unsigned char) TAG_OTHER;
    return title.first == title.last && before != TAG_ARTICLE && before != TAG_THE;
}

/* "That's tomato and peach, and it's enough for four": a yield beside it makes a weak name a sure
 * one. */
static bool has_yield(const struct recording *r, const struct sentence *s)
{
    for (size_t i = 0; i < s->match_count; i++)
        if (r->matches.at[s->match_first + i].rule->kind == RULE_yield)
            return true;
    return false;
}

/* "So that's eight fish cakes." */
static bool is_counted(const struct recording *r, const struct match *m, struct span title)
{
    struct span said = match_slot(m, SLOT_title);
    unsigned char tag =
        said.first < title.first ? r->words.at[said.first].tag : (unsigned char) TAG_OTHER;
    return tag == TAG_NUMBER || tag == TAG_ONES || tag == TAG_TEENS || tag == TAG_TENS
           || tag == TAG_DOZEN;
}

/* "Okay so then the corn.": a dish, if amounts follow. */
static bool turns_to(const struct recording *r, const struct sentence *s, struct span title)
{
    size_t head = s->first;
    while (head < s->last && r->words.at[head].tag == TAG_INSIDE)
        head++;
    return r->words.at[head].tag == TAG_SO && title.last == s->last && title.first > s->first
           && r->words.at[title.first - 1].tag == TAG_THE
           && r->words.at[title.last].entry_first <= title.first
           && r->words.at[title.last].tag == TAG_FOOD;
}

/* "That's curd rice", "it's your carrot and lentil": a name where nobody says a surer one. Neither
 * "that's the water" nor an amount. */
static bool may_be_told(const struct recording *r, const struct match *m, struct span title)
{
    for (size_t i = match_slot(m, SLOT_title).first; i < title.first; i++)
        if (!r->words.at[i].entry || !(r->words.at[i].entry->marks & MARK_OF(names)))
            return false;
    size_t before = title.first ? title.first - 1 : title.first;
    bool the = r->words.at[before].tag == TAG_THE || r->words.at[before].tag == TAG_ARTICLE;
    return title.last > title.first && r->words.at[title.first].tag != TAG_UNIT
           && (!the || r->words.at[before].entry->marks & MARK_OF(names));
}

/* Whether a story, a supposition or an alternative has begun before the phrase ends: "my aunt made
 * a stew". What comes after an announcement does not take it back. */
static bool is_told(const struct recording *r, const struct sentence *s, const struct match *m)
{
    if (!is_unreal(r, m->words))
        return false;
    for (size_t i = 0; i < s->match_count; i++) {
        const struct match *told = &r->matches.at[s->match_first + i];
        bool unreal = told->rule->kind == RULE_unreal || told->rule->kind == RULE_instead
                      || told->rule->kind == RULE_supposed;
        if (unreal && told->words.first <= m->words.last)
            return true;
    }
    return (s->flags & SENTENCE_STORY) != 0;
}

static void read_phrase(const struct recording *r, const struct sentence *s, const struct match *m,
                        struct feature *f)
{
    bool opens = m->rule->kind == RULE_opening;
    struct span title = named(r, s, m);
    int sure = title_weight(r, title);
    double weight = m->rule->weight;
    bool counted = is_counted(r, m, title) && sure > 1;
    if (!opens && sure > 1 && is_one_word(r, title))
        sure = 1;
    if (is_told(r, s, m) || !may_name(r, m))
        return;
    if (match_slot(m, SLOT_title).first <= match_slot(m, SLOT_title).last && sure == 0)
        return;
    if (m->rule->kind == RULE_naming && sure > 0 && may_be_told(r, m, title))
        f->told_title = title;
    if (m->rule->kind == RULE_naming
        && sure < (has_yield(r, s) || counted || text_is(m->rule->option, "bare") ? 1 : 2))
        return;
    bool bare = text_is(m->rule->option, "bare"), turn = bare && turns_to(r, s, title);
    if (bare && !turn && !title_alone(r, s, title))
        return;
    if (opens && sure < (text_is(m->rule->option, "meanwhile") ? 1 : 2) && !is_strong(r, m))
        return; /* "now for the onions" */
    if (m->rule->kind == RULE_naming && sure < 2 && tells_only(r, m))
        return;
    f->weak |= m->rule->kind == RULE_naming && tells_only(r, m);
    f->returns |= text_is(m->rule->option, "return");
    if (bare) {
        f->bare = weight + sure;
        f->bare_title = title;
    }
    if (turn)
        return;
    double *sum = opens ? &f->opens : &f->closes;
    struct span *name = opens ? &f->opening_title : &f->closing_title;
    if (weight + sure > *sum)
        *sum = weight + sure;
    if (sure && (name->first > name->last || title.last - title.first > name->last - name->first)) {
        *name = title;
        if (sure > 1)
            mark_title(r, title);
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
    }
}

/* What no heading has: it is about something done, or an amount, or says it of something else. */
static bool spoils_heading(unsigned char tag)
{
    switch (tag) {
    case TAG_ACTION:
    case TAG_DONE:
    case TAG_IT:
    case TAG_UNIT:
    case TAG_NUMBER:
    case TAG_ONES:
    case TAG_TEENS:
    case TAG_TENS:
    case TAG_NOT:
    case TAG_AND:
    case TAG_TASTE:
        return true;
    default:
        return false;
    }
}

/* "Egg muffins.", "Little pot.": a few words with a food, a dish or a vessel in them. */
static bool is_heading(const struct recording *r, const struct sentence *s)
{
    bool thing = false;
    if (!r->punctuated || s->flags & SENTENCE_QUESTION || s->last - s->first >= HEADING_WORDS)
        return false;
    for (size_t i = s->first; i <= s->last; i++) {
        unsigned char tag = r->words.at[i].tag;
        if (spoils_heading(tag))
            return false;
        thing |= tag == TAG_FOOD || tag == TAG_DISH || tag == TAG_VESSEL || tag == TAG_PART;
    }
    return thing;
}

/* Words by which a sentence turns to something, or goes on with it. */
static void read_words(const struct recording *r, const struct sentence *s, struct feature *f)
{
    const struct word *first = &r->words.at[s->first];
    size_t head = first->entry ? s->first + first->entry->words_count - 1 : s->first;
    bool food = false;
    f->turns = r->words.at[head].tag == TAG_SO;
    f->heading = is_heading(r, s);
    f->goes_on = r->words.at[head].tag == TAG_AND;
    for (size_t i = s->first; i <= s->last; i++) {
        const struct word *w = &r->words.at[i];
        f->meanwhile |= w->tag == TAG_MEANWHILE && i < s->first + MEANWHILE_WORDS;
        f->vessel |= w->tag == TAG_VESSEL && i > s->first;
        food |= w->tag == TAG_FOOD || w->tag == TAG_DISH;
        f->pronoun |= w->tag == TAG_IT && !food;
    }
}

static void read_sentence(const struct recording *r, const struct sentence *s, struct feature *f)
{
    f->opening_title = f->closing_title = f->bare_title = f->told_title = (struct span){1, 0};
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
        f->component |= kind == RULE_group;
        f->finished |= kind == RULE_yield || kind == RULE_beside;
        f->cooking += match_cooking(r, s, m);
        if ((kind == RULE_line || kind == RULE_mention) && !is_unreal(r, m->words))
            add_food(r, f, m);
    }
    add_parts(r, s, f);
    read_words(r, s, f);
    count_actions(r, s, f);
    if (f->cooking > COOKING_MOST)
        f->cooking = COOKING_MOST;
}

/* Amounts in so many whole sentences after a name that stands alone make it the beginning of that
 * dish. */
#define BARE_SENTENCES 5.0
#define BARE_LINES 3

/* "White bean soup. One onion, two carrots ...": the name opens; with no amounts behind it, it ends
 * a dish. */
static void settle_bare(const struct recording *r, struct feature *f, size_t i)
{
    size_t count = r->sentences.count;
    size_t lines = 0;
    double seen = 0;
    for (size_t n = i + 1; n < count && seen < BARE_SENTENCES; n++) {
        lines += f[n].lines;
        seen += f[n].weight;
    }
    if (f[i].bare == 0 || lines < BARE_LINES || f[i].finished || f[i].past
        || f[i].bare_title.last < r->sentences.at[i].last)
        return;
    f[i].opens = f[i].opens > f[i].bare ? f[i].opens : f[i].bare;
    f[i].closes = 0;
    f[i].opening_title = f[i].bare_title;
    f[i].closing_title = (struct span){1, 0};
}

/* How many sentences before and after a name are searched for what it names. */
#define NAME_BEFORE 20
#define NAME_AFTER 12

/* How often the entry's food or dish is said where something is cooked, in sentences [first, last].
 */
static size_t times_said(const struct recording *r, const struct feature *f, size_t first,
                         size_t last, const struct entry *e)
{
    size_t times = 0;
    for (size_t s = first; s <= last; s++) {
        for (size_t i = r->sentences.at[s].first; f[s].cooking > 0 && i <= r->sentences.at[s].last;
             i++) {
            const struct word *w = &r->words.at[i];
            times +=
                w->tag == e->tag && w->entry && text_equal(entry_value(w->entry), entry_value(e));
        }
    }
    return times;
}

/* "It's lemon couscous": a name of what comes is an opening, a name of what was is a closing. */
static void settle_name(const struct recording *r, struct feature *f, size_t i)
{
    size_t before = 0, after = 0, last = i + NAME_AFTER;
    struct span title = f[i].closing_title;
    unsigned char tag = span_has_tag(r, title, TAG_FOOD)
                            ? TAG_FOOD
                            : TAG_DISH; /* the food tells more than "traybake" */
    if (last >= r->sentences.count)
        last = r->sentences.count - 1;
    for (size_t w = title.first; w <= title.last; w++) {
        const struct entry *e = r->words.at[w].entry;
        if (!e || e->tag != tag || r->words.at[w].tag != tag)
            continue;
        if (i > 0)
            before += times_said(r, f, i > NAME_BEFORE ? i - NAME_BEFORE : 0, i - 1, e);
        if (i < last)
            after += times_said(r, f, i + 1, last, e);
    }
    f[i].past = before > 0 && after <= before;
    if (after <= before) {
        if (f[i].weak) {
            f[i].closes = 0;
            f[i].closing_title = (struct span){1, 0};
        }
        return;
    }
    if (f[i].opens < f[i].closes)
        f[i].opens = f[i].closes;
    f[i].closes = 0;
    f[i].opening_title = title;
    f[i].closing_title = (struct span){1, 0};
}

/* A thing spoken of again after more sentences than this is another one. */
#define CHAIN_SENTENCES 80

static size_t named_before(const struct feature *f, size_t i, struct text kind)
{
    for (size_t s = i; s-- > 0 && i - s <= CHAIN_SENTENCES;)
        for (size_t n = 0; n < f[s].mentions_count; n++)
            if (text_equal(f[s].mentions[n].kind, kind))
                return s;
    return i;
}

struct feature *features_make(const struct recording *r)
{
    struct feature *f = arena_alloc(r->arena, (r->sentences.count + 1) * sizeof *f);
    for (size_t i = 0; i < r->sentences.count; i++)
        read_sentence(r, &r->sentences.at[i], &f[i]);
    for (size_t i = 0; i < r->sentences.count; i++)
        settle_name(r, f, i);
    for (size_t i = 0; i < r->sentences.count; i++)
        settle_bare(r, f, i);
    for (size_t i = 0; i < r->sentences.count; i++)
        for (size_t n = 0; n < f[i].mentions_count; n++)
            f[i].mentions[n].before = named_before(f, i, f[i].mentions[n].kind);
    return f;
}
