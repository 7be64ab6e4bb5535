/* build/instruction.c
 * SPDX-License-Identifier: MIT */
#include "build/instruction.h"

#include <string.h>

#include "build/doer.h"
#include "build/noorder.h"
#include "build/ordered.h"
#include "build/told.h"
#include "build/wording.h"

bool is_verb_word(const struct chunk *c)
{
    return c->entry && (c->tag == TAG_ACTION || c->tag == TAG_DOING || c->tag == TAG_DONE);
}

bool is_let(const struct builder *b, const struct chunk *c)
{
    return c->entry && (c->tag == TAG_ACTION || c->tag == TAG_DOING)
           && text_equal(entry_value(c->entry), step_word(b->k, "let"));
}

const struct entry *action_entry(const struct pack *k, struct text action)
{
    return entry_as(pack_find(k, action, NULL), TAG_ACTION);
}

bool ends_in_subject(const struct builder *b, const struct chunk *c)
{
    const struct entry *e = pack_find(b->k, b->r->words.at[c->last].key, NULL);
    return c->first < c->last && e
           && (e->tag == TAG_IT || e->tag == TAG_THE || e->tag == TAG_THERE);
}

/* "Get that dough rolled out", "you get it wrapped up tight": the participle of chunk `i` with its
 * thing before it. */
static bool is_got_done(const struct builder *b, size_t i)
{
    size_t k = i;
    while (k > 0 && i - k < 4
           && (is_thing_before(b, k) || b->chunks.at[k - 1].tag == TAG_THE
               || b->chunks.at[k - 1].tag == TAG_WHOLE))
        k--;
    const struct chunk *get = k < i && k ? &b->chunks.at[k - 1] : NULL;
    bool verb = get && get->entry && (get->tag == TAG_ACTION || get->tag == TAG_SERVE)
                && !is_third_person(get->entry);
    bool wants = get && get->tag == TAG_HAVE
                 && b->chunks.at[i - 1].tag != TAG_LINE /* "you need two apples, cored" */
                 && step_words_list(b->k, "wants", b->r->words.at[get->last].key);
    return wants || (verb && text_equal(b->r->words.at[get->last].key, step_word(b->k, "passive")));
}

/* "It gets rolled in sugar", "the vegetables get divided": what stands before the participle. */
static bool is_passive(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    return c->tag == TAG_ACTION && c->entry && (is_third_person(c->entry) || is_thing_before(b, i))
           && text_equal(entry_value(c->entry), step_word(b->k, "passive"));
}

/* "Rubbed it all over, covered it up": told as done, without who did it. */
static bool is_told_short(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    if (c->tag != TAG_DONE || c->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL)
        || is_weak(b, chunk_marks(c)))
        return false;
    bool begins = !i || b->r->words.at[b->chunks.at[i - 1].last].after >= AFTER_COMMA;
    return begins && i + 1 < b->chunks.count && b->chunks.at[i + 1].tag == TAG_IT;
}

/* "A loaf tin, greased and lined": what has to be done to a vessel, said behind it. */
static bool is_readied(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    if (c->tag != TAG_DONE || !i || c->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL)
        || !step_words_list(b->k, "readies", entry_value(c->entry)))
        return false;
    size_t n = i - 1;
    while (n && (b->chunks.at[n].tag == TAG_AND || b->chunks.at[n].tag == TAG_DONE))
        n--;
    return b->chunks.at[n].tag == TAG_VESSEL;
}

/* "Ten minutes, turning them now and then", "whisking all the time": beside what goes on. */
static bool is_done_meanwhile(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    if (c->tag != TAG_DOING || c->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL)
        || !(chunk_marks(c) & (MARK_OF(mixes) | MARK_OF(turns))))
        return false;
    const struct chunk *before = i ? c - 1 : NULL;
    bool begins =
        !before || before->tag == TAG_DURATION || b->r->words.at[before->last].after >= AFTER_COMMA;
    bool ends = i + 1 == b->chunks.count || b->r->words.at[c->last].after >= AFTER_COMMA;
    unsigned char next = chunk_tag(&b->chunks, i + 1);
    return begins && (ends || has_object(b, i) || next == TAG_UNTIL || next == TAG_WITH);
}

/* "All I'm doing is folding it in", "you should be stirring that", but not "it'll be bubbling":
 * what stands before the "be" of a verb that is going on. */
static bool is_told_to_be(const struct builder *b, const struct chunk *c)
{
    return c->tag == TAG_OPENER || (c->tag == TAG_DOING && chunk_marks(c) & MARK_OF(light))
           || (c->tag == TAG_WILL && !is_step_word(b, c, "foretells"));
}

/* "you're whisking the whole while", "keep stirring", "I've whisked that". */
static bool is_going_on(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    struct phrasal split;
    if (is_told_short(b, i) || is_readied(b, i) || is_done_meanwhile(b, i))
        return true;
    if ((c->tag != TAG_DOING && c->tag != TAG_DONE) || !i
        || c->scope & (SCOPE_NOT_DONE | SCOPE_UNTIL))
        return false;
    if (is_weak(b, chunk_marks(c)) && !find_phrasal(b, i, &split))
        return false;
    const struct chunk *before = &b->chunks.at[i - 1];
    if (before->tag == TAG_HAVE && c->tag == TAG_DONE)
        return !(chunk_marks(c) & MARK_OF(serves)); /* "I've eaten it in a tent" */
    if (c->tag == TAG_DONE && (is_passive(b, i - 1) || is_got_done(b, i)))
        return true;
    if (i > 2 && (b->chunks.at[i - 2].tag == TAG_YOU || b->chunks.at[i - 2].tag == TAG_ME)
        && is_step_word(b, &b->chunks.at[i - 3], "after"))
        return false; /* "before you go cutting it" */
    if (c->tag == TAG_DOING && before->tag == TAG_BE && i > 1 && is_told_to_be(b, &before[-1]))
        return true;
    if (c->tag == TAG_DOING && (before->tag == TAG_THERE || before->tag == TAG_BE))
        return chunk_marks(c)
               & (MARK_OF(puts) | MARK_OF(takes) | MARK_OF(ovens)); /* "that's coming out" */
    bool went = (before->tag == TAG_IT || before->tag == TAG_THE) && c->first < c->last;
    if (c->tag == TAG_DONE) /* "it went in the fridge overnight" */
        return went && chunk_marks(c) & (MARK_OF(waits) | MARK_OF(ovens));
    return before->tag == TAG_YOU || before->tag == TAG_ME
           || (before->tag == TAG_ACTION && chunk_marks(before) & MARK_OF(light));
}

/* What was found out of this sentence's chunks already: the same is asked again and again. */
static struct verb_memo *memo_of(const struct builder *b)
{
    struct verb_memo *m = b->memo;
    if (m->sentence != b->chunks.sentence) {
        memset(m->is, 0, sizeof m->is);
        memset(m->step, 0, sizeof m->step);
        memset(m->told, 0, sizeof m->told);
        m->sentence = b->chunks.sentence;
    }
    return m;
}

static enum verdict judge(const struct builder *b, size_t i)
{
    enum verdict order = order_of(b, i);
    if (order == NEVER)
        return NEVER;
    return yes_or_no((order == YES || is_going_on(b, i)) && !gives_reason(b, i));
}

/* What the rules say of the verb in chunk `i`. */
static enum verdict verdict_of(const struct builder *b, size_t i)
{
    struct verb_memo *m = memo_of(b);
    if (!m->is[i])
        m->is[i] = (char) judge(b, i);
    return (enum verdict) m->is[i];
}

bool is_verb(const struct builder *b, size_t i)
{
    return verdict_of(b, i) == YES;
}

struct said_verb verb_of(const struct builder *b, size_t i)
{
    struct said_verb v = {.action = TEXT_EMPTY};
    v.split = find_phrasal(b, i, &v.phrasal);
    if (v.split)
        v.action = v.phrasal.action;
    else if (is_verb_word(&b->chunks.at[i]))
        v.action =
            is_get_into(b, i) ? step_word(b->k, "get-into") : entry_value(b->chunks.at[i].entry);
    return v;
}

/* What chunk `i` tells to do, if it `is` a verb that does so. */
static struct said_verb read_verb(const struct builder *b, size_t i, bool is)
{
    const struct said_verb nothing = {.action = TEXT_EMPTY};
    unsigned char tag = b->chunks.at[i].tag;
    if (b->sentence->flags & SENTENCE_QUESTION || (!is && (tag == TAG_ACTION || tag == TAG_DOING)))
        return nothing;
    struct said_verb v = verb_of(b, i);
    return v.split || is ? v : nothing;
}

struct said_verb said_verb(const struct builder *b, size_t i)
{
    struct verb_memo *m = memo_of(b);
    if (!m->told[i]) {
        m->verbs[i] = read_verb(b, i, is_verb(b, i));
        m->told[i] = true;
    }
    return m->verbs[i];
}

/* Whether chunk `i` could be a step. What only helps another verb ("go") is none unless the rules
 * say so. */
static bool may_be_step(const struct builder *b, size_t i)
{
    const struct chunk *c = &b->chunks.at[i];
    const uint64_t weak = MARK_OF(light) | MARK_OF(hidden);
    return !(b->sentence->flags & SENTENCE_QUESTION) && is_verb_word(c)
           && (!(chunk_marks(c) & weak) || is_verb(b, i)) && verdict_of(b, i) != NEVER;
}

static bool find_step(const struct builder *b, size_t i)
{
    if (!may_be_step(b, i))
        return false;
    const bool is = is_verb(b, i);
    const struct said_verb verb = is ? said_verb(b, i) : verb_of(b, i);
    if (verb.split && !verb.action.length)
        return false; /* "put the leftovers away": its row in phrasal.tsv says that it is none */
    return is_told(b, i, verb.action, is);
}

bool is_step_verb(const struct builder *b, size_t i)
{
    struct verb_memo *m = memo_of(b);
    if (!m->step[i])
        m->step[i] = (char) yes_or_no(find_step(b, i));
    return m->step[i] == YES;
}

struct said_verb step_verb(const struct builder *b, size_t i)
{
    bool is = is_verb_word(&b->chunks.at[i]) && is_step_verb(b, i);
    return is == is_verb(b, i) ? said_verb(b, i) : read_verb(b, i, is);
}
