/* pack/load.c: all files of a pack, in the order of pack.list.
 * SPDX-License-Identifier: MIT */
#include "pack/load.h"

#include <stdlib.h>
#include <string.h>

#include "base/path.h"
#include "pack/image.h"

struct file_kind {
    const char *ending;
    void (*read)(struct loader *, const struct pack_file *);
};

/* In the order of reading: lexicons need the table of endings. */
static const struct file_kind file_kinds[] = {
    {".tsv", table_file_read},
    {".lex", lexicon_file_read},
    {".rules", rule_file_read},
};
#define FILE_KINDS (sizeof file_kinds / sizeof *file_kinds)

typedef LIST(const struct pack_file *) file_list;

static const char *const list_name = "pack.list";

static const struct pack_file *find_list(const struct pack_file *files, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (strcmp(path_file(files[i].name), list_name) == 0)
            return &files[i];
    return NULL;
}

static bool name_is(const char *name, struct text folder, struct text file)
{
    size_t n = strlen(name);
    return n == folder.length + file.length && memcmp(name, folder.at, folder.length) == 0
           && memcmp(name + folder.length, file.at, file.length) == 0;
}

/* "../common/units.tsv" of "en/" is "common/units.tsv", or stands there as it is written. */
static const struct pack_file *find_file(const struct pack_file *files, size_t count,
                                         struct text folder, struct text file)
{
    struct text above = text_slice(folder, 0, folder.length ? folder.length - 1 : 0);
    while (above.length && above.at[above.length - 1] != '/')
        above.length--;
    struct text below = text_starts(file, "../") ? text_slice(file, 3, file.length) : file;
    for (size_t i = 0; i < count; i++) {
        if (name_is(files[i].name, folder, file))
            return &files[i];
        if (below.length != file.length && name_is(files[i].name, above, below))
            return &files[i];
    }
    return NULL;
}

static bool is_listed(const file_list *list, const struct pack_file *file)
{
    for (size_t i = 0; i < list->count; i++)
        if (list->at[i] == file)
            return true;
    return false;
}

static bool has_known_ending(struct text name)
{
    for (size_t i = 0; i < FILE_KINDS; i++)
        if (text_ends(name, file_kinds[i].ending))
            return true;
    return false;
}

/* Whether a name stays where packs are. */
static bool is_allowed(struct text name)
{
    struct text below = text_starts(name, "../common/") ? text_slice(name, 3, name.length) : name,
                part;
    while (text_part(&below, '/', &part))
        if (!part.length || text_is(part, "..") || text_is(part, "."))
            return false;
    return true;
}

static void read_list(struct loader *l, const struct pack_file *files, size_t count,
                      const struct pack_file *list, file_list *out)
{
    struct lines lines = lines_open(list, l->problems);
    while (lines_next(&lines)) {
        struct text name = text_trim(lines.line.text);
        struct place at = line_place(&lines.line, name.at);
        const struct pack_file *file = find_file(files, count, path_folder(list->name), name);
        if (!is_allowed(name))
            problem(l->problems, at, "\"%.*s\" is outside of the pack; only ../common/ is allowed",
                    QUOTE(name));
        else if (!has_known_ending(name))
            problem(l->problems, at, "\"%.*s\" ends in none of .lex, .rules, .tsv", QUOTE(name));
        else if (!file)
            problem(l->problems, at, "there is no file \"%.*s\"", QUOTE(name));
        else if (is_listed(out, file))
            problem(l->problems, at, "\"%.*s\" is listed twice", QUOTE(name));
        else if (out->count == PACK_FILES)
            problem(l->problems, at, "more than %d files", PACK_FILES);
        else
            *LIST_ADD(&l->arena, out) = file;
    }
}

/* Room for about as many words as the lexicons will give, so that the table seldom grows. */
static void reserve_words(struct loader *l, const file_list *list)
{
    size_t bytes = 0;
    for (size_t i = 0; i < list->count; i++)
        if (text_ends(text_from(list->at[i]->name), ".lex"))
            bytes += list->at[i]->bytes.length;
    index_reserve(&l->arena, &l->words, bytes / 16);
}

static void read_endings(struct loader *l)
{
    for (size_t i = 0; i < l->tables.count; i++)
        if (text_is(l->tables.at[i].name, "forms"))
            endings_read(l, &l->tables.at[i]);
}

static void read_files(struct loader *l, const file_list *list)
{
    for (size_t kind = 0; kind < FILE_KINDS; kind++) {
        for (size_t i = 0; i < list->count; i++)
            if (text_ends(text_from(list->at[i]->name), file_kinds[kind].ending))
                file_kinds[kind].read(l, list->at[i]);
        if (kind == 0)
            read_endings(l);
    }
}

/* Says so where nothing else was wrong, as with an empty list. */
static bool is_usable(const struct loader *l, const char *list, size_t errors_before)
{
    size_t usable = l->entries.count + l->tables.count;
    for (const struct rule_node *n = l->first_rule; n; n = n->next)
        usable += !n->refused;
    if (!usable && l->problems->errors == errors_before)
        problem(l->problems, (struct place){.file = list}, "there is nothing in the pack");
    return usable > 0;
}

static bool load_files(struct loader *l, const struct pack_file *files, size_t count)
{
    file_list list = {0};
    size_t errors = l->problems->errors;
    const struct pack_file *names = find_list(files, count);
    if (!names)
        return problem(l->problems, (struct place){.file = list_name},
                       "there is no file pack.list; it names the files of the pack");
    read_list(l, files, count, names, &list);
    reserve_words(l, &list);
    read_files(l, &list);
    entries_finish(l);
    return is_usable(l, names->name, errors);
}

static bool no_memory(struct problems *p)
{
    return problem(p, (struct place){.file = list_name},
                   "the pack needs more than %zu MB, or memory is short", PACK_BYTES >> 20);
}

/* Apart, so that nothing of its caller's is in a register that the jump would lose. */
static bool read_within_arena(struct loader *l, const struct pack_file *files, size_t count)
{
    if (arena_open(&l->arena))
        return load_files(l, files, count);
    return no_memory(l->problems);
}

/* NULL, with a problem, when there is no memory. */
static void *make_within_arena(struct loader *l, heard_list heard)
{
    if (arena_open(&l->arena))
        return image_make(l, heard);
    no_memory(l->problems);
    return NULL;
}

static bool pronounce_within_arena(struct loader *l, const struct pack *k, heard_list *heard)
{
    if (!arena_open(&l->arena))
        return no_memory(l->problems);
    *heard = pronounce_entries(&l->arena, k);
    return true;
}

static struct pack *open_image(struct loader *l, void *image)
{
    struct pack *k = image ? pack_open(image, image) : NULL;
    if (image && !k) {
        free(image);
        no_memory(l->problems);
    }
    return k;
}

/* How entries sound is told by the pack's own tables, so that a first image has none of it. */
static struct pack *make_pack(struct loader *l)
{
    heard_list heard = {0};
    struct pack *mute = open_image(l, make_within_arena(l, heard));
    if (!mute)
        return NULL;
    bool fine = pronounce_within_arena(l, mute, &heard);
    if (fine && !heard.count)
        return mute;
    pack_free(mute);
    return fine ? open_image(l, make_within_arena(l, heard)) : NULL;
}

struct pack *pack_load(const struct pack_file *files, size_t count, struct problems *p)
{
    struct loader *l = calloc(1, sizeof *l);
    struct pack *k = NULL;
    if (!l) {
        no_memory(p);
        return NULL;
    }
    arena_init(&l->arena, LOAD_BYTES);
    l->problems = p;
    l->rules_end = &l->first_rule;
    if (read_within_arena(l, files, count))
        k = make_pack(l);
    arena_release(&l->arena);
    free(l);
    return k;
}
