/* build/steptidy.c: a written step is read once more: what it says twice is said once.
 * SPDX-License-Identifier: MIT */
#include "build/writer.h"

#include <string.h>

/* Words of a sentence that may be joined to a list of foods; of that list. */
#define JOINED_WORDS 6
#define LIST_WORDS 24

/* The sentences so far, without the stop behind the last one. */
struct tidied {
    const struct builder *b;
    char at[PROSE_BYTES + 16];
    size_t length;
    size_t begun; /* where the last sentence begins */
};

static struct text first_word(struct text sentence)
{
    return text_slice(sentence, 0, text_find(sentence, ' ', 0));
}

/* What stands behind the first word. */
static struct text rest_of(struct text sentence)
{
    return text_slice(sentence, text_find(sentence, ' ', 0) + 1, sentence.length);
}

static struct text last_sentence(const struct tidied *t)
{
    return (struct text){t->at + t->begun, t->length - t->begun};
}

static void put(struct tidied *t, struct text words)
{
    if (t->length + words.length > sizeof t->at)
        return;
    memcpy(t->at + t->length, words.at, words.length);
    t->length += words.length;
}

static bool has_tag(const struct builder *b, struct text word, unsigned char tag)
{
    while (word.length && word.at[word.length - 1] == ',')
        word.length--;
    const struct entry *e = pack_find(b->k, word, NULL);
    return e && e->tag == tag;
}

/* "It", "them", "those". */
static bool is_pronoun_word(const struct builder *b, struct text word)
{
    return has_tag(b, word, TAG_IT) || step_words_list(b->k, "many", word);
}

/* Whether the sentence is a verb with foods and no more: no place, no time. */
static bool lists_foods(const struct builder *b, struct text sentence, size_t most)
{
    static const unsigned char OTHERS[] = {TAG_INTO, TAG_TO,   TAG_FOR, TAG_UNTIL, TAG_WITH,
                                           TAG_IT,   TAG_FROM, TAG_AT,  TAG_WHEN,  TAG_OTHER};
    struct text word, rest = rest_of(sentence);
    size_t words = 1;
    while (text_part(&rest, ' ', &word)) {
        words++;
        if (is_pronoun_word(b, word))
            return false;
        for (size_t i = 0; i < sizeof OTHERS; i++)
            if (has_tag(b, word, OTHERS[i]))
                return false;
    }
    return words > 1 && words <= most;
}

/* Where the last "and" of the sentence stands; 0 when there is none. */
static size_t last_and(struct text sentence, struct text and)
{
    size_t found = 0;
    for (size_t i = 1; i + and.length < sentence.length; i++)
        if (sentence.at[i - 1] == ' ' && sentence.at[i + and.length] == ' '
            && text_equal(text_slice(sentence, i, i + and.length), and))
            found = i;
    return found;
}

/* "Add the garlic. Add the onions." -> "Add the garlic and the onions." */
static bool join_foods(struct tidied *t, struct text sentence)
{
    struct text last = last_sentence(t), and = step_word(t->b->k, "and"), said = rest_of(sentence);
    if (!lists_foods(t->b, last, LIST_WORDS) || !lists_foods(t->b, sentence, JOINED_WORDS))
        return false;
    size_t found = last_and(last, and);
    if (found) { /* "the flour and salt": a comma takes the place of its "and" */
        char kept[PROSE_BYTES];
        struct text tail = text_slice(last, found + and.length + 1, last.length);
        memcpy(kept, tail.at, tail.length);
        t->length = t->begun + found - 1;
        put(t, TEXT_OF(", "));
        put(t, (struct text){kept, tail.length});
    }
    if (last_and(said, and)) {
        put(t, TEXT_OF(", "));
    } else {
        put(t, TEXT_OF(" "));
        put(t, and);
        put(t, TEXT_OF(" "));
    }
    put(t, said);
    return true;
}

/* Whether the sentence was joined to the last one, or says nothing new beside it. */
static bool joins_last(struct tidied *t, struct text sentence)
{
    struct text last = last_sentence(t), verb = first_word(sentence);
    if (!t->length || !text_equal(first_word(last), verb))
        return false;
    if (text_equal(last, sentence) || text_equal(verb, sentence))
        return true;
    if (text_equal(last, verb)) { /* "Stir. Stir the bottom." */
        t->length = t->begun;
        put(t, sentence);
        return true;
    }
    struct text said = rest_of(sentence), rest = rest_of(said);
    if (!is_pronoun_word(t->b, first_word(said)))
        return join_foods(t, sentence);
    if (text_find(rest, ' ', 0) < rest.length) { /* "Wash the rice. Wash it until it's clear." */
        put(t, TEXT_OF(" "));
        put(t, rest);
    }
    return true;
}

struct text tidy_text(const struct builder *b, struct text said)
{
    struct tidied t = {.b = b};
    if (text_find(said, '.', 0) + 1 >= said.length) /* one sentence */
        return arena_text(b->r->arena, said);
    for (size_t begin = 0; begin < said.length;) {
        size_t end = begin;
        while (end < said.length
               && !(said.at[end] == '.' && (end + 1 == said.length || said.at[end + 1] == ' ')))
            end++;
        struct text sentence = text_slice(said, begin, end);
        if (!joins_last(&t, sentence)) {
            if (t.length)
                put(&t, TEXT_OF(". "));
            t.begun = t.length;
            put(&t, sentence);
        }
        begin = end + 2;
    }
    if (t.length)
        put(&t, TEXT_OF("."));
    return arena_text(b->r->arena, (struct text){t.at, t.length});
}
