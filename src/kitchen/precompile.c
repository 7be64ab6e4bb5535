/* kitchen/precompile.c: a tool of the build: makes the kitchen of the built-in pack, and writes it
 * as one C file, for kitchen_builtin. It makes two of them, at two places, of the pack at two
 * places: a word that differs between them is a pointer, and by how much it differs tells what it
 * points into. So no list of the pointers must be kept beside the structs; but all else must be the
 * same, padding too, which a copied struct may bring from the stack: so tables set the members of
 * an element that LIST_ADD zeroed. Where a word is neither, the program makes its kitchen itself.
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>

#include "kitchen/image.h"
#include "pack/image.h"

/* A kitchen, and the pack that it was made of. */
struct twin {
    struct pack *pack;
    struct kitchen *kitchen;
};

static bool make_kitchen(struct twin *t)
{
    struct problems p = {0};
    t->kitchen = t->pack ? kitchen_new(t->pack, &p) : NULL;
    for (size_t i = 0; i < p.count; i++)
        fprintf(stderr, "%s:%u: %s\n", p.at[i].at.file ? p.at[i].at.file : "", p.at[i].at.line,
                p.at[i].message);
    problems_release(&p);
    return t->kitchen;
}

/* The same pack somewhere else. */
static struct pack *pack_copy(const struct pack *k)
{
    struct text bytes = pack_bytes(k);
    char *copy = malloc(bytes.length);
    return copy ? pack_open(memcpy(copy, bytes.at, bytes.length), copy) : NULL;
}

static uintptr_t word_of(const struct twin *t, size_t i)
{
    uintptr_t word;
    memcpy(&word, (const char *) t->kitchen + i * sizeof word, sizeof word);
    return word;
}

enum word_kind { WORD_PLAIN, WORD_WITHIN, WORD_TO_PACK, WORD_STRANGE };

/* Whether both words point equally far into what begins at `first` and at `second`. */
static bool points_into(uintptr_t a, uintptr_t b, const void *first, const void *second,
                        size_t bytes)
{
    return a - (uintptr_t) first == b - (uintptr_t) second && a - (uintptr_t) first <= bytes;
}

/* `*value`: what is to stand there; nothing where the opened kitchen gets its own. */
static enum word_kind judge_word(const struct twin *a, const struct twin *b, size_t i,
                                 uintptr_t *value)
{
    uintptr_t one = word_of(a, i), other = word_of(b, i);
    struct text pack = pack_bytes(a->pack);
    bool left_out = i * sizeof one < offsetof(struct kitchen, units);
    *value = left_out ? 0 : one;
    if (left_out || one == other)
        return WORD_PLAIN;
    if (points_into(one, other, a->kitchen, b->kitchen, a->kitchen->memory.used)) {
        *value -= (uintptr_t) a->kitchen;
        return WORD_WITHIN;
    }
    *value -= (uintptr_t) pack.at;
    return points_into(one, other, pack.at, pack_bytes(b->pack).at, pack.length) ? WORD_TO_PACK
                                                                                 : WORD_STRANGE;
}

static size_t words_of(const struct twin *t)
{
    return t->kitchen->memory.used / sizeof(uintptr_t);
}

/* With ARENA_MALLOC a kitchen is no one block. */
#ifdef ARENA_MALLOC
#define ONE_BLOCK false
#else
#define ONE_BLOCK true
#endif

static bool can_stand_anywhere(const struct twin *a, const struct twin *b)
{
    uintptr_t value;
    if (!ONE_BLOCK || words_of(a) != words_of(b))
        return false;
    for (size_t i = 0; i < words_of(a); i++)
        if (judge_word(a, b, i, &value) == WORD_STRANGE) {
            fprintf(stderr,
                    "precompile: byte %zu of the kitchen is unset or points into nothing of its "
                    "own: each start will make it\n",
                    i * sizeof value);
            return false;
        }
    return true;
}

static void write_words(const struct twin *a, const struct twin *b)
{
    printf("static const uintptr_t words[] = {");
    for (size_t i = 0; i < words_of(a); i++) {
        uintptr_t value;
        judge_word(a, b, i, &value);
        printf("%s0x%" PRIxPTR ",", i % 12 ? "" : "\n", value);
    }
    printf("\n};\n");
}

static void write_pointers(const struct twin *a, const struct twin *b, enum word_kind kind,
                           const char *name)
{
    printf("static const uint32_t %s[] = {", name);
    for (size_t i = 0, count = 0; i < words_of(a); i++) {
        uintptr_t value;
        if (judge_word(a, b, i, &value) == kind)
            printf("%s%zu,", count++ % 16 ? "" : "\n", i);
    }
    printf("\n};\n");
}

/* Slower, and right whatever the words are. */
static void write_maker(void)
{
    printf("struct kitchen *kitchen_builtin(const struct pack *pack)\n{\n"
           "    struct problems p = {0};\n"
           "    struct kitchen *k = kitchen_new(pack, &p);\n"
           "    problems_release(&p);\n"
           "    return k;\n}\n");
}

static void write_image(const struct twin *a, const struct twin *b)
{
    write_words(a, b);
    write_pointers(a, b, WORD_WITHIN, "within");
    write_pointers(a, b, WORD_TO_PACK, "to_pack");
    printf("\nstruct kitchen *kitchen_builtin(const struct pack *pack)\n{\n"
           "    static const struct kitchen_image image = {\n"
           "        words, sizeof words / sizeof *words,\n"
           "        {within, sizeof within / sizeof *within},\n"
           "        {to_pack, sizeof to_pack / sizeof *to_pack}};\n"
           "    return kitchen_open(&image, pack);\n}\n");
}

static bool write_kitchen(const struct twin *a, const struct twin *b)
{
    printf("/* Written by src/kitchen/precompile.c from the files in grammars/. */\n"
           "#include \"kitchen/image.h\"\n\n");
    if (can_stand_anywhere(a, b))
        write_image(a, b);
    else
        write_maker();
    return fflush(stdout) != EOF && !ferror(stdout);
}

int main(void)
{
    struct twin a = {.pack = pack_builtin()}, b = {0};
    b.pack = a.pack ? pack_copy(a.pack) : NULL;
    bool good = make_kitchen(&a) && make_kitchen(&b) && write_kitchen(&a, &b);
    kitchen_free(a.kitchen);
    kitchen_free(b.kitchen);
    pack_free(a.pack);
    pack_free(b.pack);
    return good ? 0 : 1;
}
