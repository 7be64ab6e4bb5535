/* pack/tags.c: the names in tags.def, marks.def, slots.def and kinds.def.
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "pack/load.h"

/* Names are compared by length first: a pack has some thousands of them to look up. */
struct name {
    const char *at;
    size_t length;
};
#define NAME(word)               \
    {                            \
#word, sizeof(#word) - 1 \
    }
#define COUNT_OF(array) (sizeof(array) / sizeof *(array))

static const struct name tag_names[] = {
#define TAG(name, code, about) NAME(name),
#include "model/tags.def"
#undef TAG
};

static const unsigned char tag_codes[] = {
#define TAG(name, code, about) (code),
#include "model/tags.def"
#undef TAG
};

static const struct name mark_names[] = {
#define MARK(name, about) NAME(name),
#include "model/marks.def"
#undef MARK
};

static const struct name slot_names[] = {
#define SLOT(name) NAME(name),
#include "pack/slots.def"
#undef SLOT
};

static const struct name kind_names[] = {
#define RULE_KIND(name, tag, about) NAME(name),
#include "pack/kinds.def"
#undef RULE_KIND
};

static const unsigned char kind_tags[] = {
#define RULE_KIND(name, tag, about) (tag),
#include "pack/kinds.def"
#undef RULE_KIND
};

static const struct name stage_names[STAGE_COUNT] = {
    [STAGE_REPAIR] = NAME(repair), [STAGE_NUMBER] = NAME(number), [STAGE_AMOUNT] = NAME(amount),
    [STAGE_LINE] = NAME(line),     [STAGE_PHRASE] = NAME(phrase),
};

_Static_assert(MARK_COUNT <= 64, "marks are bits of 64");

/* `count` when there is no such name. */
static size_t find(const struct name *names, size_t count, struct text t)
{
    if (!t.length)
        return count;
    for (size_t i = 0; i < count; i++)
        if (names[i].length == t.length && names[i].at[0] == t.at[0]
            && memcmp(names[i].at, t.at, t.length) == 0)
            return i;
    return count;
}

const char *tag_name(unsigned char tag)
{
    switch (tag) {
#define TAG(name, code, about) \
    case TAG_##name:           \
        return #name;
#include "model/tags.def"
#undef TAG
    default:
        return NULL;
    }
}

const char *tag_about(unsigned char tag)
{
    switch (tag) {
#define TAG(name, code, about) \
    case TAG_##name:           \
        return about;
#include "model/tags.def"
#undef TAG
    default:
        return NULL;
    }
}

bool tag_find(struct text name, unsigned char *tag)
{
    size_t i = find(tag_names, COUNT_OF(tag_names), name);
    if (i == COUNT_OF(tag_names))
        return false;
    *tag = tag_codes[i];
    return true;
}

const char *mark_name(enum mark_bit mark)
{
    return mark < MARK_COUNT ? mark_names[mark].at : NULL;
}

bool mark_find(struct text name, uint64_t *mark)
{
    size_t i = find(mark_names, COUNT_OF(mark_names), name);
    if (i == COUNT_OF(mark_names))
        return false;
    *mark = (uint64_t) 1 << i;
    return true;
}

bool mark_named(uint64_t marks, struct text name)
{
    uint64_t mark;
    return marks && mark_find(name, &mark) && marks & mark;
}

bool slot_find(struct text name, enum slot *slot)
{
    size_t i = find(slot_names, COUNT_OF(slot_names), name);
    if (i == COUNT_OF(slot_names))
        return false;
    *slot = (enum slot) i;
    return true;
}

const char *slot_name(enum slot slot)
{
    return (size_t) slot < COUNT_OF(slot_names) ? slot_names[slot].at : NULL;
}

bool stage_find(struct text name, enum rule_stage *stage)
{
    size_t i = find(stage_names, STAGE_COUNT, name);
    if (i == STAGE_COUNT)
        return false;
    *stage = (enum rule_stage) i;
    return true;
}

bool kind_find(struct text name, enum rule_kind *kind)
{
    size_t i = find(kind_names, COUNT_OF(kind_names), name);
    if (i == COUNT_OF(kind_names))
        return false;
    *kind = (enum rule_kind) i;
    return true;
}

unsigned char kind_tag(enum rule_kind kind)
{
    return (size_t) kind < COUNT_OF(kind_tags) ? kind_tags[kind] : 0;
}
