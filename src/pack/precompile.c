/* pack/precompile.c: a tool of the build: reads the pack files that it is given, and writes the
 * pack that they are as one C file, for pack_builtin. `precompile grammars/en/pack.list ...`; a
 * file's name in the pack begins after its first folder. Mistakes in them end the build.
 * SPDX-License-Identifier: MIT */
#include <errno.h>
#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>

#include "base/buffer.h"
#include "pack/build_files.h"
#include "pack/pack.h"

static bool read_file(const char *path, struct buffer *to)
{
    FILE *in = fopen(path, "rb");
    if (!in)
        return false;
    for (int c; (c = getc(in)) != EOF;)
        buffer_put_char(to, (char) c);
    bool fine = !ferror(in) && !to->failed;
    fclose(in);
    return fine;
}

static bool read_files(char **paths, size_t count, struct pack_file *files, struct buffer *bytes)
{
    for (size_t i = 0; i < count; i++) {
        if (!read_file(paths[i], &bytes[i])) {
            fprintf(stderr, "precompile: %s: %s\n", paths[i], strerror(errno));
            return false;
        }
        files[i] = (struct pack_file){listed_name(paths[i]), buffer_text(&bytes[i])};
    }
    return true;
}

/* As numbers of 64 bits, so that the block begins where any of its parts may. */
static void write_block(struct text t)
{
    printf("static const uint64_t image[] = {");
    for (size_t i = 0; i < t.length; i += 8) {
        uint64_t word = 0;
        memcpy(&word, t.at + i, t.length - i < 8 ? t.length - i : 8);
        printf("%s0x%" PRIx64 ",", i / 8 % 12 ? "" : "\n", word);
    }
    printf("\n};\n");
}

static bool write_pack(const struct pack *k)
{
    printf("/* Written by src/pack/precompile.c from the files in grammars/. */\n"
           "#include \"pack/image.h\"\n\n");
    write_block(pack_bytes(k));
    printf("\nstruct pack *pack_builtin(void)\n{\n    return pack_open(image, NULL);\n}\n");
    return fflush(stdout) != EOF && !ferror(stdout);
}

static void print_problems(const struct problems *p)
{
    for (size_t i = 0; i < p->count; i++)
        fprintf(stderr, "%s:%u:%u: %s\n", p->at[i].at.file ? p->at[i].at.file : "",
                p->at[i].at.line, p->at[i].at.column, p->at[i].message);
}

/* The program's exit status. */
static int precompile(char **names, size_t count, struct pack_file *files, struct buffer *bytes)
{
    struct problems p = {0};
    sort_names(names, count);
    if (!read_files(names, count, files, bytes))
        return 3;
    struct pack *k = pack_load(files, count, &p);
    print_problems(&p);
    if (!k || p.errors)
        return 1;
    if (!write_pack(k)) {
        fprintf(stderr, "precompile: the output could not be written\n");
        return 4;
    }
    return 0; /* the system takes the memory back */
}

int main(int argc, char **argv)
{
    size_t count = argc > 1 ? (size_t) argc - 1 : 0;
    struct pack_file *files = calloc(count + 1, sizeof *files);
    struct buffer *bytes = calloc(count + 1, sizeof *bytes);
    int status = 2;
    if (count && files && bytes)
        status = precompile(argv + 1, count, files, bytes);
    else
        fprintf(stderr, "usage: precompile FILE... >pack_builtin.c\n");
    free(files);
    free(bytes);
    return status;
}
