/* tag/sound.c
 * SPDX-License-Identifier: MIT */
#include "tag/sound.h"

#include <string.h>

/* Slips in hundredths (common practice of phonetic comparison, no source): two sounds of the listed
 * near ones, two vowels, two consonants of one kind, any two; a sound lost, a faint one lost (an
 * unstressed vowel, h, y). */
enum {
    SLIP_NEAR = 35,
    SLIP_VOWEL = 60,
    SLIP_KIND = 75,
    SLIP_ANY = 100,
    LOST_ANY = 70,
    LOST_FAINT = 40
};

enum sounds_column { SOUND_NAME, SOUND_LETTER, SOUND_KIND, SOUND_NEAR };

static unsigned char letter(struct text t)
{
    return t.length == 1 && (unsigned char) t.at[0] < SOUND_LETTERS ? (unsigned char) t.at[0] : 0;
}

static void set_apart(struct sounds *s, const struct table *t, size_t a, size_t b)
{
    struct text kind = table_cell(t, a, SOUND_KIND);
    unsigned char slip = SLIP_ANY;
    if (text_equal(kind, table_cell(t, b, SOUND_KIND)))
        slip = text_is(kind, "vowel") ? SLIP_VOWEL : SLIP_KIND;
    s->apart[letter(table_cell(t, a, SOUND_LETTER))][letter(table_cell(t, b, SOUND_LETTER))] = slip;
}

static void set_near(struct sounds *s, const struct table *t, size_t row)
{
    unsigned char a = letter(table_cell(t, row, SOUND_LETTER));
    struct text rest = table_cell(t, row, SOUND_NEAR), other;
    while (text_part(&rest, ' ', &other))
        s->apart[a][letter(other)] = s->apart[letter(other)][a] = SLIP_NEAR;
}

bool sounds_load(struct sounds *s, const struct pack *k)
{
    const struct table *t = pack_table(k, "sounds");
    if (!t || t->columns <= SOUND_NEAR || !pack_table(k, "pronunciations")
        || !pack_table(k, "spelling"))
        return false;
    memset(s->apart, SLIP_ANY, sizeof s->apart);
    memset(s->lost, LOST_ANY, sizeof s->lost);
    for (size_t a = 0; a < t->rows; a++)
        for (size_t b = 0; b < t->rows; b++)
            set_apart(s, t, a, b);
    for (size_t a = 0; a < t->rows; a++)
        set_near(s, t, a);
    for (size_t a = 0; a < SOUND_LETTERS; a++)
        s->apart[a][a] = 0;
    s->lost['u'] = s->lost['i'] = s->lost['h'] = s->lost['y'] = LOST_FAINT;
    return true;
}

static unsigned least(unsigned a, unsigned b, unsigned c)
{
    unsigned low = a < b ? a : b;
    return low < c ? low : c;
}

static unsigned char at(struct text t, size_t i)
{
    return (unsigned char) t.at[i] % SOUND_LETTERS;
}

/* Row by row of the usual table of edits, with a row's least value to give up early. */
static unsigned slips(const struct sounds *s, struct text a, struct text b, unsigned most)
{
    unsigned row[SOUNDS_MOST + 1] = {0};
    for (size_t j = 0; j < b.length; j++)
        row[j + 1] = row[j] + s->lost[at(b, j)];
    for (size_t i = 0; i < a.length; i++) {
        unsigned corner = row[0], lowest = row[0] += s->lost[at(a, i)];
        for (size_t j = 0; j < b.length; j++) {
            unsigned above = row[j + 1];
            row[j + 1] = least(above + s->lost[at(a, i)], row[j] + s->lost[at(b, j)],
                               corner + s->apart[at(a, i)][at(b, j)]);
            corner = above;
            lowest = row[j + 1] < lowest ? row[j + 1] : lowest;
        }
        if (lowest > most)
            return lowest;
    }
    return row[b.length];
}

static unsigned count_bits(uint64_t bits)
{
    unsigned count = 0;
    for (; bits; bits &= bits - 1)
        count++;
    return count;
}

/* What the slips come to at least: each sound that the other one lacks is one. */
static unsigned slips_least(uint64_t a, uint64_t b)
{
    unsigned lacks_b = count_bits(a & ~b), lacks_a = count_bits(b & ~a);
    return (lacks_a > lacks_b ? lacks_a : lacks_b) * SLIP_NEAR;
}

bool sounds_may_be_near(const struct sounding *a, const struct sounding *b, unsigned most)
{
    size_t longer = a->sounds.length, shorter = b->sounds.length;
    if (longer < shorter) {
        longer = b->sounds.length;
        shorter = a->sounds.length;
    }
    return shorter && longer <= SOUNDS_MOST && (longer - shorter) * LOST_FAINT <= most * longer
           && slips_least(a->letters, b->letters) <= most * longer;
}

unsigned sound_distance(const struct sounds *s, struct text a, struct text b, unsigned most)
{
    const struct sounding x = {a, sound_letters(a)}, y = {b, sound_letters(b)};
    unsigned longer = (unsigned) (a.length > b.length ? a.length : b.length);
    if (!sounds_may_be_near(&x, &y, most))
        return most + 1;
    unsigned n = slips(s, a, b, most * longer);
    return n > most * longer ? most + 1 : n / longer;
}
