/* build/stepdoubt.c: whether a step's words read as a cookbook's; where they do not, it is told
 * plainly.
 * SPDX-License-Identifier: MIT */
#include "build/writer.h"

/* Behind words of these tags a noun may stand: an unknown word there is one. */
static const bool NOUN_BEHIND[TAG_CODES] = {
    [TAG_THE] = true,      [TAG_ARTICLE] = true, [TAG_SIZE] = true,  [TAG_STATE] = true,
    [TAG_OTHER] = true,    [TAG_NUMBER] = true,  [TAG_INTO] = true,  [TAG_WITH] = true,
    [TAG_OF] = true,       [TAG_EACH] = true,    [TAG_WHOLE] = true, [TAG_FROM] = true,
    [TAG_AT] = true,       [TAG_OR] = true,      [TAG_LIKE] = true,  [TAG_DONE] = true,
    [TAG_FULLNESS] = true, [TAG_MORE] = true,    [TAG_VAGUE] = true, [TAG_AMOUNT] = true,
    [TAG_REST] = true,     [TAG_PART] = true,    [TAG_HEAT] = true,  [TAG_TOOL] = true,
    [TAG_VESSEL] = true};

/* Before words of these tags a phrase that an article opened is still without its noun. */
static const bool NO_NOUN[TAG_CODES] = {
    [TAG_INTO] = true, [TAG_AND] = true,   [TAG_IT] = true, [TAG_UNTIL] = true, [TAG_FOR] = true,
    [TAG_WITH] = true, [TAG_THERE] = true, [TAG_ME] = true, [TAG_YOU] = true};

/* "Put the": an article, or a word like "big", that ends its phrase. */
static bool is_cut_off(const struct writer *w, size_t i, size_t end)
{
    const struct chunk *c = &w->b->chunks.at[i];
    bool alone = is_pronoun(w, i, end) || is_step_word(w->b, c, "many");
    if (c->tag != TAG_ARTICLE && (c->tag != TAG_THE || alone))
        return false;
    size_t n = i + 1;
    while (n < end
           && (w->b->chunks.at[n].tag == TAG_SIZE || w->b->chunks.at[n].tag == TAG_STATE
               || w->b->chunks.at[n].tag == TAG_FULLNESS || w->b->chunks.at[n].tag == TAG_MANNER))
        n++;
    return n == end || NO_NOUN[w->b->chunks.at[n].tag];
}

/* "Or it'll stick", "before you cut it": a clause of its own, up to a comma. */
bool is_aside(const struct writer *w, size_t i, size_t begin)
{
    for (size_t n = i + 1; n-- > begin;) {
        const struct chunk *c = &w->b->chunks.at[n];
        if (n < i && w->b->r->words.at[c->last].after >= AFTER_COMMA)
            return false;
        if (c->tag == TAG_OR || is_step_word(w->b, c, "after"))
            return true;
    }
    return false;
}

/* "Cover it tight with foil": an unknown word that tells how, between a thing and what follows. */
static bool tells_how(const struct writer *w, size_t i, size_t end, unsigned char before)
{
    const struct chunk *at = w->b->chunks.at;
    unsigned char next = i + 1 < end ? at[i + 1].tag : 0;
    bool thing = before == TAG_IT || before == TAG_LINE || before == TAG_PART;
    return thing
           && (!next || next == TAG_WITH || next == TAG_INTO || next == TAG_AND || next == TAG_FOR
               || next == TAG_UNTIL || next == TAG_DURATION
               || w->b->r->words.at[at[i].last].after >= AFTER_COMMA);
}

static bool looks_odd(const struct writer *w, size_t i, size_t begin, size_t end)
{
    const struct chunk *c = &w->b->chunks.at[i];
    unsigned char before = i > begin ? c[-1].tag : 0, next = i + 1 < end ? c[1].tag : 0;
    switch (c->tag) {
    case TAG_OTHER:
        return !c->entry && !NOUN_BEHIND[before] && !is_step_word(w->b, c, "particle")
               && !tells_how(w, i, end, before);
    case TAG_ME:
    case TAG_YOU:
    case TAG_BE:
    case TAG_HAVE:
    case TAG_WILL:
    case TAG_NOT:
    case TAG_SERVE:
        return true;
    case TAG_ACTION:
        return !said_verb(w->b, i).action.length && !NOUN_BEHIND[before] && before != TAG_TO
               && next != TAG_SIDE && !entry_as(w->b->r->words.at[c->last].readings, TAG_STATE);
    default:
        return is_cut_off(w, i, end);
    }
}

bool is_odd(const struct writer *w, size_t i, size_t begin, size_t end)
{
    return !(w->b->chunks.at[i].scope & SCOPE_UNTIL) && looks_odd(w, i, begin, end)
           && !in_reason(w, i) && !is_aside(w, i, begin);
}

/* Words of a sentence, foods apart, from which on it has talk in it. */
#define SENTENCE_MOST 22

void note_doubt(struct writer *w, size_t i, size_t begin, size_t end)
{
    if (prose_begins(&w->p))
        w->run = 0;
    w->run += w->b->chunks.at[i].tag != TAG_LINE;
    w->doubts += w->run == SENTENCE_MOST;
    if (is_odd(w, i, begin, end))
        w->doubts++;
}

/* "Till it's like gravel | and you scatter that over". */
static bool goes_on_talking(const struct writer *w, size_t i)
{
    const struct chunk *at = w->b->chunks.at;
    return at[i].tag == TAG_AND && i + 1 < w->b->chunks.count
           && (at[i + 1].tag == TAG_ME || at[i + 1].tag == TAG_YOU || at[i + 1].tag == TAG_SO);
}

/* "Until the edges": a thing of which nothing is said. */
static bool is_bare_thing(const struct writer *w, size_t begin, size_t end)
{
    for (size_t i = begin; i < end; i++) {
        unsigned char tag = w->b->chunks.at[i].tag;
        if (tag != TAG_THE && tag != TAG_ARTICLE && tag != TAG_OTHER && tag != TAG_LINE
            && tag != TAG_PART && tag != TAG_SIZE)
            return false;
    }
    return end - begin == 2 && w->b->chunks.at[begin].tag == TAG_THE;
}

bool is_open_until(const struct writer *w, size_t i, size_t end, size_t *last)
{
    const struct chunk *at = w->b->chunks.at;
    size_t n = i + 1;
    while (n < end && at[n].scope & SCOPE_UNTIL && at[n].tag != TAG_UNTIL
           && !is_step_word(w->b, &at[n], "talk") && !goes_on_talking(w, n))
        n++;
    *last = n;
    unsigned char tag = at[n - 1].tag;
    bool it = (tag == TAG_IT || tag == TAG_THERE) && n == i + 2;
    return it || is_bare_thing(w, i + 1, n) || n == i + 1 || tag == TAG_BE || tag == TAG_THE
           || tag == TAG_ARTICLE || tag == TAG_NOT || tag == TAG_AND || tag == TAG_WILL
           || tag == TAG_YOU || tag == TAG_ME || tag == TAG_HAVE || tag == TAG_OF;
}

/* The first `length` bytes of `word` without capitals. */
static void lower(struct text word, size_t length, char *out)
{
    for (size_t i = 0; i < length; i++) {
        char c = word.at[i];
        out[i] = (char) (c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
    }
}

bool begins_well(const struct writer *w, struct text said)
{
    struct text word = text_slice(said, 0, text_find(said, ' ', 0));
    while (word.length && (word.at[word.length - 1] == ',' || word.at[word.length - 1] == '.'))
        word.length--;
    char small[32];
    if (!word.length || word.length > sizeof small)
        return false;
    lower(word, word.length, small);
    const struct entry *e = pack_find(w->b->k, (struct text){small, word.length}, NULL);
    return entry_as(e, TAG_ACTION) || entry_as(e, TAG_WHEN) || entry_as(e, TAG_INTO)
           || entry_as(e, TAG_UNTIL) || entry_as(e, TAG_MANNER);
}

/* "Brown, brown", "the rice and rice": a word that stands twice side by side. */
static bool says_twice(const struct writer *w, struct text said)
{
    struct text word, before = TEXT_EMPTY, first = TEXT_EMPTY, and = step_word(w->b->k, "and");
    while (text_part(&said, ' ', &word)) {
        bool stop = word.length && word.at[word.length - 1] == '.';
        struct text bare = word;
        while (bare.length && (bare.at[bare.length - 1] == ',' || bare.at[bare.length - 1] == '.'))
            bare.length--;
        if (bare.length
            && (text_equal(bare, before) || (text_equal(before, and) && text_equal(bare, first))))
            return true;
        first = stop ? TEXT_EMPTY : before;
        before = stop ? TEXT_EMPTY : bare;
    }
    return false;
}

/* Words of one step at most: a longer text has talk in it. */
#define STEP_BYTES 320

/* "Add.": one word that wants what it is done to. */
static bool is_too_short(const struct writer *w, struct text said)
{
    size_t stop = text_find(said, '.', 0);
    char small[32];
    if (!stop || stop > sizeof small || text_find(said, ' ', 0) < stop)
        return false;
    lower(said, stop, small);
    return !is_enough(w, (struct text){small, stop});
}

bool is_doubtful(const struct writer *w)
{
    struct text said = {w->p.at, w->p.length};
    if (w->doubts || said.length > STEP_BYTES || says_twice(w, said))
        return true;
    for (size_t i = 0; i < said.length; i++) {
        bool begins = !i || (i > 1 && said.at[i - 2] == '.' && said.at[i - 1] == ' ');
        struct text rest = text_slice(said, i, said.length);
        if (begins && (!begins_well(w, rest) || is_too_short(w, rest)))
            return true;
    }
    return false;
}
