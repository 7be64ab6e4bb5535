/* check/list.c: each line of the list becomes a caption of its own, and goes through words, tags
 * and rules as talk does.
 * SPDX-License-Identifier: MIT */
#include "check/list.h"

#include "check/listdish.h"
#include "check/said.h"
#include "match/capture.h"
#include "match/matches.h"
#include "read/read.h"
#include "tag/tag.h"
#include "words/words.h"

/* Far enough apart that no sentence runs on from one line to the next. */
#define LINE_SECONDS 100.0
/* A longer line is no ingredient but talk: a step, or an invitation to subscribe. */
#define LINE_WORDS 24

struct list_reader {
    struct ingredient_list *list;
    struct recording lines; /* each line a cue */
    const struct recording *talk;
    const struct pack *k;
    LIST(unsigned) numbers; /* of the cues' lines in the file */
    bool heading;           /* the file marks the line as one: "# Sauce", "For the sauce:" */
};

/* ---- lines -> cues */

static bool begins_fraction(struct text t)
{
    return text_starts(t, "\xE2\x85"); /* U+2140 to U+217F: one third, two fifths */
}

/* The bytes of the bullet, box, dash or picture that the text begins with; 0 where it begins with a
 * letter, a digit or a fraction. */
static size_t sign_width(struct text t)
{
    unsigned char c = (unsigned char) t.at[0];
    if (c < 0x80)
        return !((c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'));
    if (c == 0xE2 && t.length >= 3)
        return begins_fraction(t) ? 0 : 3; /* U+2000 to U+2FFF hold no letters of food names */
    return c == 0xF0 && t.length >= 4 ? 4 : text_starts(t, "\xC2\xB7") ? 2 : 0;
}

static struct text without_bullet(struct text t)
{
    size_t width;
    while (t.length && (width = sign_width(t)) > 0)
        t = text_slice(t, width, t.length);
    return text_trim(t);
}

/* "0:00 Intro": a chapter, no ingredient. */
static bool begins_with_clock(struct text t)
{
    size_t i = 0;
    while (i < t.length && t.at[i] >= '0' && t.at[i] <= '9')
        i++;
    return i && i + 2 < t.length && t.at[i] == ':' && t.at[i + 1] >= '0' && t.at[i + 1] <= '5';
}

static void add_line(struct list_reader *l, struct text t, unsigned number)
{
    struct cue *c = LIST_ADD(l->lines.arena, &l->lines.cues);
    c->start = LINE_SECONDS * (double) l->lines.cues.count;
    c->end = c->start + 1;
    c->text = arena_format(l->lines.arena, "%.*s.", TEXT(t));
    c->line = number;
    *LIST_ADD(l->lines.arena, &l->numbers) = number;
}

static bool add_lines(struct list_reader *l, struct problems *p)
{
    struct text rest = l->lines.source, t;
    for (unsigned number = 1; rest.length && text_part(&rest, '\n', &t); number++) {
        bool marked = text_starts(text_trim(t), "#");
        t = without_bullet(t);
        if (!t.length || begins_with_clock(t))
            continue;
        if (l->lines.cues.count == LIST_LINES_MAX)
            return problem(p, (struct place){l->list->file, number, 0},
                           "a list has at most %d lines", LIST_LINES_MAX);
        add_line(l, marked ? arena_format(l->lines.arena, "%.*s:", TEXT(t)) : t, number);
    }
    return true;
}

/* ---- cues -> foods */

static struct span cue_words(const struct recording *r, size_t cue, size_t *next)
{
    struct span s = {*next, *next};
    while (*next < r->words.count && r->words.at[*next].cue == cue)
        ++*next;
    s.last = *next - 1;
    return *next > s.first ? s : NO_WORDS;
}

static struct listed *add_food(struct list_reader *l, const struct cue *c, struct said_amount said)
{
    struct listed *f = LIST_ADD(l->lines.arena, &l->list->foods);
    f->said = text_slice(c->text, 0, c->text.length - 1);
    f->line = c->line;
    f->section = l->list->sections.count - 1;
    f->amount = said;
    return f;
}

/* The words as they are looked up, with single spaces. */
static struct text said_keys(const struct recording *r, struct span words)
{
    struct text out = r->words.at[words.first].key;
    for (size_t i = words.first + 1; i <= words.last; i++)
        out = arena_format(r->arena, "%.*s %.*s", TEXT(out), TEXT(r->words.at[i].key));
    return out;
}

/* The food as a line of the talk would name it. */
static void name_food(struct list_reader *l, struct listed *f, struct span food)
{
    const struct word *w = &l->lines.words.at[food.last];
    f->entry = w->entry && w->tag == TAG_FOOD && w->entry_first == food.first ? w->entry : NULL;
    f->food = f->entry ? entry_shown(f->entry) : said_keys(&l->lines, food);
    f->kind = f->entry                         ? entry_value(f->entry)
              : w->entry && w->tag == TAG_FOOD ? entry_value(w->entry)
                                               : f->food;
}

static void add_match(struct list_reader *l, const struct cue *c, const struct sentence *s,
                      const struct match *m, bool optional)
{
    struct said_amount said;
    struct span food = match_slot(m, SLOT_food);
    if (span_is_empty(food))
        return;
    line_amount(&l->lines, s, m, &said);
    size_t before = m->words.first;
    struct listed *f = add_food(l, c, said);
    name_food(l, f, food);
    f->optional = optional;
    f->either = before > s->first && l->lines.words.at[before - 1].tag == TAG_OR;
}

/* Foods that the rules put an amount to, or that stand alone. */
static bool add_matches(struct list_reader *l, const struct cue *c, struct span words)
{
    size_t before = l->list->foods.count;
    bool optional = span_has_tag(&l->lines, words, TAG_OPTIONAL);
    for (const struct sentence *s = NULL; (s = sentence_next(&l->lines, words, s));) {
        struct matches foods = matches_of(&l->lines, s, KIND_OF(line) | KIND_OF(mention));
        for (const struct match *m; (m = matches_next(&foods));)
            add_match(l, c, s, m, optional);
    }
    return l->list->foods.count > before;
}

/* "2 tbsp zorblax": an amount, and behind it words that no lexicon knows. */
static bool add_unknown(struct list_reader *l, const struct cue *c, struct span words)
{
    const struct sentence *s = sentence_of(&l->lines, words.first);
    struct matches amounts = matches_of(&l->lines, s, KIND_OF(amount));
    for (const struct match *m; (m = matches_next(&amounts));) {
        if (m->words.last >= words.last)
            continue;
        struct said_amount said = {0};
        read_amount(&l->lines, s, m, &said);
        struct listed *f = add_food(l, c, said);
        name_food(l, f, (struct span){m->words.last + 1, words.last});
        return true;
    }
    return false;
}

/* ---- headings */

/* A line without an amount that ends in a colon, names a dish or a part of one ("the sauce"), or is
 * the title of `dish`. */
static bool is_heading(const struct list_reader *l, const struct cue *c, struct span words,
                       size_t dish)
{
    const struct word *last = &l->lines.words.at[words.last];
    for (size_t i = words.first; i <= words.last; i++)
        if (ratio_known(l->lines.words.at[i].rare->number)
            || l->lines.words.at[i].tag == TAG_NUMBER)
            return false;
    return text_ends(c->text, ":.") || last->tag == TAG_DISH || last->tag == TAG_PART
           || dish != FINDING_NO_DISH;
}

static void add_section(struct list_reader *l, struct text heading, size_t dish)
{
    struct list_section *s = LIST_ADD(l->lines.arena, &l->list->sections);
    s->heading = heading;
    s->dish = dish;
}

/* "Stir in the flour." */
static bool is_instruction(const struct recording *r, struct span words)
{
    size_t i = words.first;
    while (i < words.last && r->words.at[i].tag == TAG_INSIDE)
        i++;
    return words.last - words.first >= LINE_WORDS || r->words.at[i].tag == TAG_ACTION;
}

static void read_line(struct list_reader *l, size_t cue, struct span words)
{
    const struct cue *c = &l->lines.cues.at[cue];
    size_t dish = dish_titled(&l->lines, words, l->talk);
    if (is_heading(l, c, words, dish))
        add_section(l, text_slice(c->text, 0, c->text.length - 1), dish);
    else if (!is_instruction(&l->lines, words) && !add_matches(l, c, words))
        add_unknown(l, c, words);
}

bool list_read(struct ingredient_list *list, struct text bytes, const struct recording *r,
               const struct pack *k, struct matcher *m, struct problems *p)
{
    struct list_reader l = {.list = list, .talk = r, .k = k};
    struct place at = {.file = list->file};
    *list = (struct ingredient_list){.file = list->file};
    l.lines = (struct recording){.arena = r->arena, .file = list->file};
    if (bytes.length > LIST_BYTES_MAX)
        return problem(p, at, "has %zu bytes; a list has at most %zu", bytes.length,
                       LIST_BYTES_MAX);
    if (!read_text(&l.lines, bytes, p))
        return problem(p, at, "is no text: expected an ingredient list, a food a line");
    if (!add_lines(&l, p) || !number_words(&l.lines, k, p) || !tag_words(&l.lines, k, p)
        || !match_rules(&l.lines, k, m, p))
        return false;
    add_section(&l, TEXT_EMPTY, FINDING_NO_DISH);
    for (size_t cue = 0, next = 0; cue < l.lines.cues.count; cue++) {
        struct span words = cue_words(&l.lines, cue, &next);
        if (!span_is_empty(words))
            read_line(&l, cue, words);
    }
    place_sections(list, r);
    return list->foods.count
           || problem(p, at, "has no ingredient: expected a food a line, as \"2 cups flour\"");
}
