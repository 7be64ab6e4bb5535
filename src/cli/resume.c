/* cli/resume.c
 * SPDX-License-Identifier: MIT */
#include "cli/resume.h"

#include <stdio.h>

#include "base/digest.h"
#include "cli/talk.h"
#include "disk/disk.h"

#define PROGRAM_BYTES_MAX ((size_t) 256 << 20)

/* The program's own bytes, the built-in grammar among them: two builds of one version may differ.
 * Where the system does not show them, its version. */
static uint64_t digest_program(uint64_t digest)
{
    struct buffer bytes = {0};
    struct problems p = {0};
    digest = digest_add_part(digest, text_from(dishtake_version()));
    if (disk_read("/proc/self/exe", PROGRAM_BYTES_MAX, &bytes, &p))
        digest = digest_add_part(digest, buffer_text(&bytes));
    problems_release(&p);
    buffer_release(&bytes);
    return digest;
}

static uint64_t digest_grammar(uint64_t digest, const struct grammar_source *grammar)
{
    for (size_t i = 0; i < grammar->disk.count; i++) {
        const struct pack_file *f = &grammar->disk.files[i];
        digest = digest_add_part(digest, text_from(f->name));
        digest = digest_add_part(digest, f->bytes);
    }
    return digest;
}

/* Those that change what is written. */
static uint64_t digest_options(uint64_t digest, const struct cli *c)
{
    static const enum option_id IDS[] = {OPTION_KITCHEN, OPTION_ONE_DISH, OPTION_DISHES,
                                         OPTION_NO_EDITS};
    for (size_t i = 0; i < sizeof IDS / sizeof *IDS; i++) {
        const char *value = c->values[IDS[i]];
        digest = digest_add_part(digest, value ? TEXT_OF("given") : TEXT_EMPTY);
        digest = digest_add_part(digest, text_from(value));
    }
    return digest_add_part(digest, c->count > 1 ? TEXT_OF("lines") : TEXT_EMPTY);
}

bool resume_begin(struct resume *r, const struct cli *c, const struct grammar_source *grammar)
{
    struct problems p = {0};
    uint64_t made_by = digest_program(DIGEST_BEGIN);
    made_by = digest_options(digest_grammar(made_by, grammar), c);
    bool done = resume_open(r, c->values[OPTION_OUTPUT], made_by, &p);
    if (r->anew)
        problem_note(&p, (struct place){.file = r->name},
                     "was made by another program or grammar, or with other options: everything is "
                     "done again");
    talk_print(&p);
    problems_release(&p);
    return done;
}

uint64_t resume_key(const char *name, struct text transcript, struct text edits, struct text list)
{
    uint64_t key = digest_add_part(DIGEST_BEGIN, text_from(name));
    key = digest_add_part(digest_add_part(key, transcript), edits);
    return digest_add_part(key, list);
}
