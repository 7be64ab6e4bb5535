/* pack/sound.c: how words sound, by the tables pronunciations.tsv (a word, a letter a sound; two
 * rows for a word of two pronunciations) and spelling.tsv (letters of a word that the other one
 * lacks, longer ones first).
 * SPDX-License-Identifier: MIT */
#include "pack/load.h"

enum { WORD, SOUNDS };

static size_t put(struct text sounds, char out[SOUNDS_MOST], size_t length)
{
    for (size_t i = 0; i < sounds.length && length < SOUNDS_MOST; i++)
        out[length++] = sounds.at[i];
    return length;
}

/* The first row whose letters begin `rest`; one past the table when none does. */
static size_t spelling_at(const struct table *t, struct text rest)
{
    size_t row = 0;
    for (; row < t->rows; row++) {
        struct text letters = table_cell(t, row, WORD);
        if (letters.length <= rest.length && memcmp(letters.at, rest.at, letters.length) == 0)
            break;
    }
    return row;
}

static size_t spell(const struct table *t, struct text word, char out[SOUNDS_MOST], size_t length)
{
    for (size_t i = 0; i < word.length;) {
        size_t row = spelling_at(t, text_slice(word, i, word.length));
        struct text letters = table_cell(t, row, WORD);
        length = put(table_cell(t, row, SOUNDS), out, length);
        i += letters.length ? letters.length : 1;
    }
    return length;
}

size_t pack_sounds(const struct pack *k, struct text words, char out[SOUNDS_MOST])
{
    const struct table *listed = pack_table(k, "pronunciations"),
                       *spelling = pack_table(k, "spelling");
    size_t length = 0;
    struct text word;
    while (listed && spelling && text_part(&words, ' ', &word)) {
        struct text sounds = table_cell(listed, table_find(listed, word), SOUNDS);
        length = sounds.length ? put(sounds, out, length) : spell(spelling, word, out, length);
    }
    return length;
}

static void add(struct arena *a, heard_list *to, const struct entry *e, size_t number,
                struct text sounds)
{
    if (sounds.length)
        *LIST_ADD(a, to) = (struct heard){arena_text(a, sounds), (uint32_t) number, e->tag};
}

static void add_entry(struct arena *a, heard_list *to, const struct pack *k,
                      const struct table *listed, const struct entry *e, size_t number)
{
    char out[SOUNDS_MOST];
    size_t row = table_find(listed, entry_words(e));
    struct text first = table_cell(listed, row, SOUNDS);
    bool single = e->words_count == 1 && first.length;
    add(a, to, e, number, single ? first : (struct text){out, pack_sounds(k, entry_words(e), out)});
    if (single && text_equal(table_cell(listed, row + 1, WORD), entry_words(e)))
        add(a, to, e, number, table_cell(listed, row + 1, SOUNDS));
}

heard_list pronounce_entries(struct arena *a, const struct pack *k)
{
    heard_list made = {0};
    const struct table *listed = pack_table(k, "pronunciations");
    size_t count;
    const struct entry *entries = pack_entries(k, &count);
    for (size_t i = 0; listed && pack_table(k, "spelling") && i < count; i++)
        add_entry(a, &made, k, listed, &entries[i], i);
    return made;
}
