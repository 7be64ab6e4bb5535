/* kitchen/food.c
 * SPDX-License-Identifier: MIT */
#include "kitchen/food.h"

#include <string.h>

struct text name_fold(struct text name, char room[FOLD_BYTES])
{
    if (name.length > FOLD_BYTES / 3)
        return TEXT_EMPTY;
    size_t length = fold_word(name, room, FOLD_BYTES);
    for (size_t i = 0; i < length; i++)
        if (room[i] == '-')
            room[i] = ' ';
    return (struct text){room, length};
}

static bool is_folded(struct text name)
{
    size_t i = 0;
    while (i < name.length
           && ((name.at[i] >= 'a' && name.at[i] <= 'z') || name.at[i] == ' ' || name.at[i] == '\''))
        i++;
    return i == name.length && name.length <= FOLD_BYTES / 3;
}

struct text name_kept(struct arena *a, struct text name)
{
    char room[FOLD_BYTES];
    if (is_folded(name)) /* as nearly all of them are */
        return name;
    return arena_text(a, name_fold(name, room));
}

struct text food_part_key(struct text name, struct text done, char room[2 * FOLD_BYTES])
{
    char folded[FOLD_BYTES];
    name = name_fold(name, folded);
    if (done.length >= FOLD_BYTES)
        return TEXT_EMPTY;
    if (name.length)
        memcpy(room, name.at, name.length);
    room[name.length] = '\t';
    if (done.length)
        memcpy(room + name.length + 1, done.at, done.length);
    return (struct text){room, name.length + 1 + done.length};
}

/* `name` without the first modifier at or after byte `from`, in `out`; false when there is none. */
static bool drop_modifier(const struct foods *f, struct text name, size_t from, struct text *out,
                          char *room, size_t *cut)
{
    for (size_t begin = from; begin < name.length;) {
        size_t end = text_find(name, ' ', begin), n;
        if (names_find(&f->modifiers, text_slice(name, begin, end), &n)) {
            size_t rest = end < name.length ? end + 1 : end;
            memmove(room, name.at, begin);
            memmove(room + begin, name.at + rest, name.length - rest);
            *out = text_trim((struct text){room, begin + name.length - rest});
            *cut = begin;
            return true;
        }
        begin = end + 1;
    }
    return false;
}

bool food_name_in(const struct foods *f, const struct names *list, struct text name, size_t *value)
{
    char room[FOLD_BYTES];
    name = name_fold(name, room);
    bool hit = name.length && names_find(list, name, value);
    /* Each round the first modifier that is left goes, so the name keeps as much as it can. */
    for (size_t from = 0; !hit && drop_modifier(f, name, from, &name, room, &from);)
        hit = name.length && names_find(list, name, value);
    return hit;
}

const struct food_name *food_find(const struct foods *f, struct text name)
{
    size_t n;
    return food_name_in(f, &f->names, name, &n) ? &f->named.at[n] : NULL;
}

struct text food_part(const struct foods *f, struct text name, struct text done)
{
    char room[2 * FOLD_BYTES];
    size_t n;
    return names_find(&f->parts, food_part_key(name, done, room), &n) ? f->part_list.at[n]
                                                                      : TEXT_EMPTY;
}

struct text food_forms(const struct foods *f, struct text word)
{
    char room[FOLD_BYTES];
    size_t n;
    return names_find(&f->forms, name_fold(word, room), &n) ? f->form_list.at[n] : word;
}
