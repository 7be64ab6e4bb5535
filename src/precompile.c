/* precompile.c: a tool of the build: makes what the program needs of the built-in pack's tables
 * (the kitchen, what misheard words are heard with, what is listened for in checks), and writes it
 * as one C file, so that no start makes it. It makes each of them twice, at two places, of the pack
 * at two places: a word that differs between the two is a pointer, and by how much it differs tells
 * what it points into. So no list of the pointers must be kept beside the structs; but all else
 * must be the same, padding too, which a copied struct may bring from the stack: so tables set the
 * members of an element that LIST_ADD zeroed. Where a word is neither, the program makes that one
 * itself.
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>

#include "check/saying.h"
#include "kitchen/kitchen.h"
#include "pack/image.h"
#include "pack/ready.h"
#include "tag/ear.h"

static void *make_kitchen(const struct pack *k, struct problems *p)
{
    return kitchen_new(k, p);
}

static void *make_ear(const struct pack *k, struct problems *p)
{
    return ear_made(k, p);
}

static void *make_sayings(const struct pack *k, struct problems *p)
{
    return saying_list_new(k, p);
}

/* Each is a block that begins with its arena. */
static const struct thing {
    const char *type, *name; /* of its struct and its functions */
    const char *maker;       /* what makes it of a pack, and tells problems */
    void *(*make)(const struct pack *k, struct problems *p);
    size_t tables; /* where they begin; what stands before them the program sets itself */
} THINGS[] = {
    {"kitchen", "kitchen", "kitchen_new", make_kitchen, offsetof(struct kitchen, units)},
    {"ear", "ear", "ear_made", make_ear, EAR_TABLES},
    {"saying_list", "saying_list", "saying_list_new", make_sayings, SAYING_TABLES},
};

/* One of them, and the pack that it was made of. */
struct twin {
    const struct pack *pack;
    const struct arena *made; /* the block */
    size_t tables;
};

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
    memcpy(&word, (const char *) t->made + i * sizeof word, sizeof word);
    return word;
}

#define WORD_STRANGE (READY_TO_PACK + 1)

/* Whether both words point equally far into what begins at `first` and at `second`. */
static bool points_into(uintptr_t a, uintptr_t b, const void *first, const void *second,
                        size_t bytes)
{
    return a - (uintptr_t) first == b - (uintptr_t) second && a - (uintptr_t) first <= bytes;
}

/* `*value`: what is to stand there; nothing where the opened one gets its own. */
static int judge_word(const struct twin *a, const struct twin *b, size_t i, uintptr_t *value)
{
    uintptr_t one = word_of(a, i), other = word_of(b, i);
    struct text pack = pack_bytes(a->pack);
    bool left_out = i * sizeof one < a->tables;
    *value = left_out ? 0 : one;
    if (left_out || one == other)
        return READY_PLAIN;
    if (points_into(one, other, a->made, b->made, a->made->used)) {
        *value -= (uintptr_t) a->made;
        return READY_WITHIN;
    }
    *value -= (uintptr_t) pack.at;
    return points_into(one, other, pack.at, pack_bytes(b->pack).at, pack.length) ? READY_TO_PACK
                                                                                 : WORD_STRANGE;
}

static size_t words_of(const struct twin *t)
{
    return t->made->used / sizeof(uintptr_t);
}

/* With ARENA_MALLOC none is one block. */
#ifdef ARENA_MALLOC
#define ONE_BLOCK false
#else
#define ONE_BLOCK true
#endif

static bool can_stand_anywhere(const struct thing *t, const struct twin *a, const struct twin *b)
{
    uintptr_t value;
    if (!ONE_BLOCK || words_of(a) != words_of(b))
        return false;
    for (size_t i = 0; i < words_of(a); i++)
        if (judge_word(a, b, i, &value) == WORD_STRANGE) {
            fprintf(stderr,
                    "precompile: byte %zu of %s is unset or points into nothing of its own: each "
                    "start will make it\n",
                    i * sizeof value, t->name);
            return false;
        }
    return true;
}

/* The code being written. */
struct code {
    size_t length;                    /* numbers so far */
    size_t zeros;                     /* words since the last one that is not 0 */
    uintptr_t last[READY_KINDS + 1u]; /* of each kind of pointer: where it pointed */
};

static void put_number(struct code *c, unsigned number)
{
    printf("%s%u,", c->length++ % 16 ? "" : "\n", number);
}

static void put_kind(struct code *c, uintptr_t value, enum ready_kind kind)
{
    put_number(c, (unsigned) value << READY_KIND_BITS | (unsigned) kind);
}

static void put_zeros(struct code *c)
{
    for (; c->zeros > READY_MOST; c->zeros -= READY_MOST)
        put_kind(c, READY_MOST, READY_ZEROS);
    if (c->zeros)
        put_kind(c, c->zeros, READY_ZEROS);
    c->zeros = 0;
}

static void put_pointer(struct code *c, uintptr_t value, enum ready_kind kind)
{
    const uintptr_t last = c->last[kind],
                    far = value >= last ? 2 * (value - last) : 2 * (last - value) - 1;
    c->last[kind] = value;
    if (far < READY_MOST) {
        put_kind(c, far, kind);
        return;
    }
    put_kind(c, READY_MOST, kind);
    put_number(c, (unsigned) (far & UINT16_MAX));
    put_number(c, (unsigned) (far >> 16));
}

static void put_word(struct code *c, uintptr_t value, enum ready_kind kind)
{
    uint16_t parts[sizeof value / sizeof(uint16_t)];
    if (!value && kind == READY_PLAIN) {
        c->zeros++;
        return;
    }
    put_zeros(c);
    if (kind != READY_PLAIN) {
        put_pointer(c, value, kind);
    } else if (value <= READY_MOST) {
        put_kind(c, value, kind);
    } else {
        memcpy(parts, &value, sizeof value);
        put_kind(c, 0, READY_ZEROS);
        for (size_t i = 0; i < sizeof parts / sizeof *parts; i++)
            put_number(c, parts[i]);
    }
}

static void write_code(const struct thing *t, const struct twin *a, const struct twin *b)
{
    struct code c = {.length = 0};
    printf("static const uint16_t %s_code[] = {", t->name);
    for (size_t i = 0; i < words_of(a); i++) {
        uintptr_t value;
        int kind = judge_word(a, b, i, &value);
        put_word(&c, value, (enum ready_kind) kind);
    }
    put_zeros(&c);
    printf("\n};\n");
}

/* Slower, and right whatever the words are. */
static void write_maker(const struct thing *t)
{
    printf("struct %s *%s_builtin(const struct pack *pack)\n{\n"
           "    struct problems p = {0};\n"
           "    struct %s *made = %s(pack, &p);\n"
           "    problems_release(&p);\n"
           "    return made;\n}\n",
           t->type, t->name, t->type, t->maker);
}

static void write_image(const struct thing *t, const struct twin *a, const struct twin *b)
{
    write_code(t, a, b);
    printf(
        "\nstruct %s *%s_builtin(const struct pack *pack)\n{\n"
        "    static const struct ready image = {%s_code, sizeof %s_code / sizeof *%s_code, %zu};\n"
        "    return %s_open(&image, pack);\n}\n\n",
        t->type, t->name, t->name, t->name, t->name, words_of(a), t->name);
}

static void tell(const struct problems *p)
{
    for (size_t i = 0; i < p->count; i++)
        fprintf(stderr, "%s:%u: %s\n", p->at[i].at.file ? p->at[i].at.file : "", p->at[i].at.line,
                p->at[i].message);
}

static void release(const struct twin *t)
{
    if (!t->made)
        return;
    struct arena memory = *t->made; /* which it stands in itself */
    arena_release(&memory);
}

static bool write_thing(const struct thing *t, const struct pack *first, const struct pack *second)
{
    struct problems p = {0};
    struct twin a = {first, t->make(first, &p), t->tables},
                b = {second, t->make(second, &p), t->tables};
    bool good = a.made && b.made;
    tell(&p);
    problems_release(&p);
    if (good && can_stand_anywhere(t, &a, &b))
        write_image(t, &a, &b);
    else if (good)
        write_maker(t);
    release(&a);
    release(&b);
    return good;
}

static bool write_all(const struct pack *first, const struct pack *second)
{
    printf("/* Written by src/precompile.c from the files in grammars/. */\n"
           "#include \"check/saying.h\"\n#include \"kitchen/kitchen.h\"\n"
           "#include \"tag/ear.h\"\n\n");
    bool good = true;
    for (size_t i = 0; i < sizeof THINGS / sizeof *THINGS; i++)
        good = write_thing(&THINGS[i], first, second) && good;
    return good && fflush(stdout) != EOF && !ferror(stdout);
}

int main(void)
{
    struct pack *first = pack_builtin(), *second = first ? pack_copy(first) : NULL;
    bool good = second && write_all(first, second);
    pack_free(first);
    pack_free(second);
    return good ? 0 : 1;
}
