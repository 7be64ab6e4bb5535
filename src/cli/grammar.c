/* cli/grammar.c
 * SPDX-License-Identifier: MIT */
#include "cli/grammar.h"

#include <stdio.h>
#include <stdlib.h>

#include "cli/talk.h"

static bool read_folder(struct grammar_source *s, const char *folder)
{
    struct problems p = {0};
    bool done = disk_pack_read(folder, &s->disk, &p);
    talk_print(&p);
    problems_release(&p);
    if (!done)
        return false;
    s->files = calloc(s->disk.count, sizeof *s->files);
    for (size_t i = 0; s->files && i < s->disk.count; i++) {
        const struct pack_file *f = &s->disk.files[i];
        s->files[i] = (struct dishtake_file){f->name, f->bytes.at, f->bytes.length};
    }
    return s->files != NULL;
}

static void print_messages(const struct dishtake *d)
{
    struct buffer b = {0};
    talk_messages(&b, d, true);
    fwrite(b.at ? b.at : "", 1, b.length, stderr);
    buffer_release(&b);
}

struct dishtake *grammar_open(struct grammar_source *s, const char *folder)
{
    *s = (struct grammar_source){0};
    if (folder && !read_folder(s, folder))
        return NULL;
    struct dishtake *d = dishtake_new(s->files, s->disk.count);
    if (!d)
        fputs("dishtake: no memory is left\n", stderr);
    if (!d)
        return NULL;
    print_messages(d);
    if (dishtake_ready(d))
        return d;
    fprintf(stderr, "dishtake: the grammar %s cannot be used until these are mended\n",
            folder ? folder : "that is built in");
    dishtake_free(d);
    return NULL;
}

void grammar_close(struct grammar_source *s, struct dishtake *d)
{
    dishtake_free(d);
    free(s->files);
    disk_pack_release(&s->disk);
}
