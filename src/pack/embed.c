/* pack/embed.c: a tool of the build: writes the files that it is given as one C file with a
 * function that lists them. `embed asset_files review/assets.h src/review/assets/page.js ...`: the
 * function, the header that declares it, the files; a file's name in the list begins after its
 * first folder.
 * SPDX-License-Identifier: MIT */
#include <errno.h>
#include <stdio.h>
#include <string.h>

#include "pack/build_files.h"

/* Writes the bytes of one file as an array; false when it cannot be read. */
static int write_bytes(const char *path, int number)
{
    FILE *in = fopen(path, "rb");
    size_t count = 0;
    if (!in)
        return 0;
    printf("static const unsigned char file%d[] = {", number);
    for (int c; (c = getc(in)) != EOF; count++)
        printf("%s%d,", count % 24 ? "" : "\n", c);
    printf("%s};\n", count ? "\n" : "0"); /* C has no empty arrays */
    printf("enum { SIZE%d = %zu };\n", number, count);
    int fine = !ferror(in);
    fclose(in);
    return fine;
}

/* As a C string: names may hold quotes and backslashes. */
static void write_name(const char *name)
{
    putchar('"');
    for (; *name; name++)
        printf(strchr("\"\\?", *name) ? "\\%c" : "%c", *name);
    putchar('"');
}

static void write_list(char **paths, int count)
{
    printf("static const struct pack_file files[] = {\n");
    for (int i = 0; i < count; i++) {
        printf("    {");
        write_name(listed_name(paths[i]));
        printf(", {(const char *) file%d, SIZE%d}},\n", i, i);
    }
    printf("};\n");
}

int main(int argc, char **argv)
{
    int count = argc - 3;
    char **paths = argv + 3;
    if (count < 1) {
        fprintf(stderr, "usage: embed FUNCTION HEADER FILE... >files.c\n");
        return 2;
    }
    sort_names(paths, (size_t) count);
    printf("/* Written by src/pack/embed.c. */\n#include \"%s\"\n\n", argv[2]);
    for (int i = 0; i < count; i++) {
        if (!write_bytes(paths[i], i)) {
            fprintf(stderr, "embed: %s: %s\n", paths[i], strerror(errno));
            return 3;
        }
    }
    write_list(paths, count);
    printf("\nconst struct pack_file *%s(size_t *count)\n{\n"
           "    *count = sizeof files / sizeof *files;\n    return files;\n}\n",
           argv[1]);
    if (fflush(stdout) == EOF || ferror(stdout)) {
        fprintf(stderr, "embed: the output could not be written\n");
        return 4;
    }
    return 0;
}
