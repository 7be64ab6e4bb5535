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

#define FAINT "uihy"

enum sounds_column { SOUND_NAME, SOUND_LETTER, SOUND_KIND, SOUND_NEAR };

static unsigned char at(struct text t, size_t i)
{
    return (unsigned char) t.at[i] % SOUND_LETTERS;
}

static unsigned char letter(struct text t)
{
    return t.length == 1 && (unsigned char) t.at[0] < SOUND_LETTERS ? (unsigned char) t.at[0] : 0;
}

static unsigned bit_of(unsigned char sound)
{
    return sound & 63;
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
    while (text_part(&rest, ' ', &other)) {
        unsigned char b = letter(other);
        s->apart[a][b] = s->apart[b][a] = SLIP_NEAR;
        s->near[bit_of(a)] |= (uint64_t) 1 << bit_of(b);
        s->near[bit_of(b)] |= (uint64_t) 1 << bit_of(a);
    }
}

/* Of a row's sound, what tells how near others may be. */
static void set_kind(struct sounds *s, struct text kind, unsigned char sound)
{
    const uint64_t bit = (uint64_t) 1 << bit_of(sound);
    const bool vowel = text_is(kind, "vowel"), faint = s->lost[sound] == LOST_FAINT;
    s->kind[sound] = kind.length > 1 && !vowel && !faint ? kind.at[1] : '\0';
    s->vowels |= vowel ? bit : 0;
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
    for (const char *faint = FAINT; *faint; faint++) {
        s->lost[(unsigned char) *faint] = LOST_FAINT;
        s->faint |= (uint64_t) 1 << bit_of((unsigned char) *faint);
    }
    for (size_t a = 0; a < t->rows; a++)
        set_kind(s, table_cell(t, a, SOUND_KIND), letter(table_cell(t, a, SOUND_LETTER)));
    return true;
}

size_t sound_frame(const struct sounds *s, struct text sounds)
{
    size_t frame = 0;
    for (size_t i = 0; i < sounds.length; i++) {
        unsigned char kind = (unsigned char) s->kind[at(sounds, i)];
        frame = kind ? frame * 31 + kind : frame;
    }
    return frame;
}

static unsigned least(unsigned a, unsigned b, unsigned c)
{
    unsigned low = a < b ? a : b;
    return low < c ? low : c;
}

/* Row by row of the usual table of edits, with a row's least value to give up early. Only where the
 * places in both words differ by no more than `most` has slips for: elsewhere it is more. */
static unsigned slips(const struct sounds *s, struct text a, struct text b, unsigned most)
{
    const size_t apart = most / LOST_FAINT;
    unsigned row[SOUNDS_MOST + 1] = {0}, lost[SOUNDS_MOST + 1] = {0};
    unsigned char sounds[SOUNDS_MOST + 1] = {0};
    for (size_t j = 1; j <= b.length; j++) {
        sounds[j] = at(b, j - 1);
        lost[j] = s->lost[sounds[j]];
        row[j] = row[j - 1] + lost[j];
    }
    for (size_t i = 1; i <= a.length; i++) {
        const unsigned char sound = at(a, i - 1), *to = s->apart[sound];
        const unsigned lost_here = s->lost[sound];
        const size_t first = i > apart ? i - apart : 1,
                     last = i + apart < b.length ? i + apart : b.length;
        unsigned corner = row[first - 1];
        unsigned before = row[first - 1] = i > apart ? most + 1 : corner + lost_here;
        unsigned lowest = before;
        for (size_t j = first; j <= last; j++) {
            before = least(row[j] + lost_here, before + lost[j], corner + to[sounds[j]]);
            corner = row[j];
            row[j] = before;
            lowest = before < lowest ? before : lowest;
        }
        if (lowest > most)
            return lowest;
    }
    return row[b.length];
}

/* Each sound more is a slip, and each letter that the other one lacks. */
static unsigned lacks_most(size_t a, size_t b, unsigned most)
{
    size_t longer = a > b ? a : b, shorter = a > b ? b : a;
    if (!shorter || longer > SOUNDS_MOST || (longer - shorter) * LOST_FAINT > most * longer)
        return 0;
    unsigned lacks = most * (unsigned) longer / SLIP_NEAR;
    return 1 + (lacks < SOUNDS_MOST ? lacks : SOUNDS_MOST);
}

struct sound_reach sound_reach_of(const struct sounding *to, int most)
{
    struct sound_reach n = {.letters = to->letters, .count = count_bits(to->letters)};
    for (size_t length = 1; most >= 0 && length <= SOUNDS_MOST; length++)
        n.lacks[length] = (unsigned char) lacks_most(to->sounds.length, length, (unsigned) most);
    return n;
}

static bool may_be_near(const struct sounding *a, const struct sounding *b, unsigned most)
{
    unsigned lacks_b = count_bits(a->letters & ~b->letters),
             lacks_a = count_bits(b->letters & ~a->letters);
    return (lacks_b > lacks_a ? lacks_b : lacks_a)
           < lacks_most(a->sounds.length, b->sounds.length, most);
}

/* At least so much must happen to `a` that it becomes `b`: what `b` lacks is lost or another sound,
 * and what is longer has sounds that the other one has not. Reckoned from a few bits, it tells most
 * words apart. */
static unsigned least_slips(const struct sounds *s, const struct sounding *a,
                            const struct sounding *b)
{
    const size_t more = b->sounds.length - a->sounds.length;
    unsigned slips = b->sounds.length > a->sounds.length ? (unsigned) more * LOST_FAINT : 0;
    for (uint64_t lacks = a->letters & ~b->letters; lacks; lacks &= lacks - 1) {
        const uint64_t sound = lacks & -lacks;
        slips += s->near[__builtin_ctzll(lacks)] & b->letters  ? SLIP_NEAR
                 : s->faint & sound                            ? LOST_FAINT
                 : s->vowels & sound && s->vowels & b->letters ? SLIP_VOWEL
                                                               : LOST_ANY;
    }
    return slips;
}

unsigned sound_distance(const struct sounds *s, const struct sounding *a, const struct sounding *b,
                        unsigned most)
{
    size_t longer = a->sounds.length > b->sounds.length ? a->sounds.length : b->sounds.length;
    unsigned all = most * (unsigned) longer;
    if (!may_be_near(a, b, most) || least_slips(s, a, b) > all || least_slips(s, b, a) > all)
        return most + 1;
    unsigned n = slips(s, a->sounds, b->sounds, all);
    return n > all ? most + 1 : n / (unsigned) longer;
}
