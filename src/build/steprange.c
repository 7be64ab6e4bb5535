/* build/steprange.c: chunks -> the words that a step keeps of them.
 * SPDX-License-Identifier: MIT */
#include "build/instruction.h"
#include "build/writer.h"

bool is_reason(const struct writer *w, size_t i)
{
    const struct chunk *c = &w->b->chunks.at[i];
    unsigned char next = i + 1 < w->end ? w->b->chunks.at[i + 1].tag : 0;
    return c->tag == TAG_SO && i > w->begin && c->entry
           && text_equal(entry_value(c->entry), entry_words(c->entry))
           && (next == TAG_IT || next == TAG_THE || next == TAG_PART || next == TAG_LINE
               || next == TAG_THERE);
}

bool in_reason(const struct writer *w, size_t i)
{
    for (size_t n = i + 1; n-- > w->begin;) {
        if (is_reason(w, n))
            return true;
        if (n == w->begin || w->b->r->words.at[w->b->chunks.at[n - 1].last].after >= AFTER_COMMA)
            return false;
    }
    return false;
}

/* "Drain it like pasta", not "like ten minutes": whether a thing without an amount follows. */
static bool compares(const struct writer *w, size_t i)
{
    const struct chunk *next = &w->b->chunks.at[i + 1];
    return next->tag == TAG_LINE && next->match && next->match->rule->kind != RULE_line;
}

/* "Check | it's | 165 inside". */
static bool tells_heat(const struct writer *w, size_t i)
{
    return i && w->b->chunks.at[i - 1].tag != TAG_SO && i + 1 < w->end
           && w->b->chunks.at[i + 1].tag == TAG_HEATED;
}

/* Whether chunk `i` is left out where it stands in no reason. */
static bool is_talk(const struct writer *w, size_t i)
{
    const struct chunk *c = &w->b->chunks.at[i];
    if (i + 1 < w->end && is_step_word(w->b, c, "compares"))
        return !compares(w, i);
    if (c->first == c->last && is_step_word(w->b, c, "chatter"))
        return true;
    if (c->scope & (SCOPE_UNREAL | SCOPE_INSTEAD | SCOPE_SUPPOSED | SCOPE_NEGATED))
        return true;
    bool needed = i
                  && (w->b->chunks.at[i - 1].tag == TAG_YOU || w->b->chunks.at[i - 1].tag == TAG_ME
                      || w->b->chunks.at[i - 1].tag == TAG_OR); /* "or it'll stick" */
    return (c->tag == TAG_WILL && !needed) || c->tag == TAG_SORRY || c->tag == TAG_SO
           || (c->tag == TAG_THERE && !tells_heat(w, i)) || c->tag == TAG_HAVE
           || c->tag == TAG_OPENER || c->tag == TAG_CLOSER;
}

/* The reason is looked for last, as few chunks are talk. */
static bool is_dropped(const struct writer *w, size_t i)
{
    return !(w->b->chunks.at[i].scope & SCOPE_UNTIL) && is_talk(w, i) && !in_reason(w, i);
}

/* A "you" in the middle of an instruction begins talk, unless a word before it needs it: "before
 * you serve". */
static bool begins_talk(const struct writer *w, size_t i)
{
    const struct chunk *c = &w->b->chunks.at[i];
    if (is_step_word(w->b, c, "talk"))
        return true;
    return (c->tag == TAG_ME || c->tag == TAG_YOU)
           && !(i && is_step_word(w->b, &w->b->chunks.at[i - 1], "after"));
}

/* "Serve it together, | this feeds four": it stands where the yield does. */
static bool tells_yield(const struct writer *w, size_t i)
{
    const struct match *m = w->b->chunks.at[i].match;
    return m && m->rule->kind == RULE_yield && span_has_tag(w->b->r, m->words, TAG_SERVE);
}

static bool ends_writing(const struct writer *w, size_t i)
{
    if (tells_yield(w, i))
        return true;
    return !(w->b->chunks.at[i].scope & SCOPE_UNTIL) && begins_talk(w, i) && !in_reason(w, i);
}

/* "Stir it while it | simmers", "while the sauce | cooks": what goes on meanwhile is left out where
 * its verb does not stand in the range. */
static bool loses_meanwhile(const struct writer *w, size_t i, size_t begin, size_t end)
{
    const struct chunk *at = w->b->chunks.at;
    size_t next = i + 1;
    if (i == begin || at[i].tag != TAG_MEANWHILE || !ends_in_subject(w->b, &at[i]))
        return false;
    if (next < end && (at[next].tag == TAG_LINE || at[next].tag == TAG_PART))
        next++;
    return next >= end || at[next].tag == TAG_ACTION || at[next].tag == TAG_DURATION
           || at[next].tag == TAG_HEDGE;
}

/* "they" is "them" where it is what the verb is done to. */
static struct text object_form(const struct writer *w, size_t i, size_t end)
{
    const struct chunk *c = &w->b->chunks.at[i];
    const struct word *said = &w->b->r->words.at[c->last];
    struct text form = step_word(w->b->k, "object");
    unsigned char next = i + 1 < end ? w->b->chunks.at[i + 1].tag : 0;
    bool does = next == TAG_ACTION || next == TAG_BE || next == TAG_WILL || next == TAG_HAVE;
    bool warns = i + 1 < end && i && w->b->chunks.at[i - 1].tag == TAG_OR; /* "or they burn" */
    bool subject =
        c->scope & SCOPE_UNTIL || c->first != c->last || in_reason(w, i) || does || warns;
    bool object = i && w->b->chunks.at[i - 1].tag == TAG_ACTION && !does
                  && said_verb(w->b, i - 1).action.length;
    if ((!subject || object) && text_equal(said->key, step_word(w->b->k, "subject")))
        return form;
    bool joined =
        !c->entry || (c->first == c->last && !text_equal(said->key, entry_words(c->entry)));
    return joined ? said->key : entry_shown(c->entry); /* "everything's" */
}

static const bool BEFORE_FOR[TAG_CODES] = {
    [TAG_IT] = true,    [TAG_LINE] = true, [TAG_PART] = true, [TAG_VESSEL] = true,
    [TAG_PLACE] = true, [TAG_OVEN] = true, [TAG_THE] = true,  [TAG_MANNER] = true};

/* Whether "for" belongs before the time in chunk `i`: "blend it, 2 minutes", but not "in 5
 * minutes", "an hour before". */
static bool wants_for(const struct writer *w, size_t i, size_t begin)
{
    const struct chunk *c = &w->b->chunks.at[i];
    if (c->tag == TAG_HEDGE && i + 1 < w->end)
        c++;
    if (c->tag != TAG_DURATION || c->scope & (SCOPE_UNTIL | SCOPE_NOT_DONE) || i == begin
        || prose_begins(&w->p) || w->b->r->words.at[c->first].entry == NULL)
        return false;
    if (w->b->r->words.at[c->first].entry->marks & MARK_OF(large)) /* "overnight" */
        return false;
    const struct chunk *next = c + 1 < w->b->chunks.at + w->end ? c + 1 : NULL;
    if (next && (is_step_word(w->b, next, "after") || is_step_word(w->b, next, "passed")))
        return false;
    if (i > 1 && chunk_marks(&w->b->chunks.at[i - 2]) & MARK_OF(light))
        return false; /* "give it five minutes" */
    const struct chunk *before = &w->b->chunks.at[i - 1];
    return BEFORE_FOR[before->tag]
           || (w->b->r->words.at[before->last].after == AFTER_COMMA && before->tag != TAG_DURATION);
}

/* "Melt it and, or it'll burn": an "and" whose verb was left out. */
static bool joins_nothing(const struct writer *w, size_t i, size_t end)
{
    size_t n = i + 1;
    if (w->b->chunks.at[i].tag != TAG_AND)
        return false;
    while (n < end && is_dropped(w, n))
        n++;
    unsigned char next = n < end ? w->b->chunks.at[n].tag : 0;
    return next == TAG_OR || next == TAG_UNTIL || next == TAG_AND;
}

void write_within(struct writer *w, size_t begin, size_t end, void say(struct writer *))
{
    size_t first = w->begin, last = w->end;
    w->begin = begin;
    w->end = end;
    say(w);
    w->begin = first;
    w->end = last;
}

/* Chunk `i`, and the comma or hyphen behind it. */
static void say_in_range(struct writer *w, size_t i, size_t end)
{
    const struct chunk *c = &w->b->chunks.at[i];
    const struct word *last = &w->b->r->words.at[c->last];
    if (c->tag == TAG_INTO && (i + 1 == end || last->after >= AFTER_COMMA))
        prose_word(&w->p, last->key, false); /* "whisk it in" */
    else if (c->tag == TAG_IT)
        prose_word(&w->p, object_form(w, i, end), false);
    else
        say_chunk(w->b, w->s, &w->p, c);
    if (last->after == AFTER_COMMA)
        prose_comma(&w->p);
    else if (last->after == AFTER_HYPHEN)
        prose_hyphen(&w->p);
}

void say_range(struct writer *w, size_t begin, size_t end)
{
    size_t until = w->b->chunks.count; /* where a sign of doneness becomes talk */
    for (size_t i = begin; i < end; i++) {
        const struct chunk *c = &w->b->chunks.at[i];
        if (ends_writing(w, i) || loses_meanwhile(w, i, begin, end))
            return;
        if (is_dropped(w, i) || joins_nothing(w, i, end))
            continue;
        if (c->tag == TAG_UNTIL) {
            bool open = is_open_until(w, i, end, &until);
            until = open ? i : until; /* "till it's" */
        }
        if (c->scope & SCOPE_UNTIL && i >= until)
            continue;
        note_doubt(w, i, begin, end);
        if (wants_for(w, i, begin)) {
            prose_uncomma(&w->p);
            prose_word(&w->p, step_word(w->b->k, "for"), true);
        }
        say_in_range(w, i, end);
    }
}
