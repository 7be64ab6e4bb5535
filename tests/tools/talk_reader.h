/* tools/talk_reader.h: transcripts understood up to their sentences, for the tools that print what
 * tables and weights are made from.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_TOOLS_TALK_READER_H
#define DISHTAKE_TOOLS_TALK_READER_H

#include "match/matcher.h"
#include "read/read.h"
#include "tag/misheard.h"
#include "tag/tag.h"
#include "words/words.h"
#include "read_file.h"

#define TALK_ARENA_BYTES ((size_t) 1 << 30)

struct talk_reader {
    struct pack *pack;
    struct matcher *matcher;
    struct ear *ear;
    char *room;         /* of a file's bytes */
    struct arena arena; /* of one recording: opened for each, and reset behind it */
};

/* False: no memory. Close it all the same. */
static inline bool talk_reader_open(struct talk_reader *t)
{
    t->pack = pack_builtin();
    t->matcher = matcher_new(t->pack);
    t->ear = ear_new(t->pack);
    t->room = malloc(FILE_BYTES);
    arena_init(&t->arena, TALK_ARENA_BYTES);
    return t->pack && t->matcher && t->ear && t->room;
}

static inline void talk_reader_close(struct talk_reader *t)
{
    arena_release(&t->arena);
    ear_free(t->ear);
    matcher_free(t->matcher);
    pack_free(t->pack);
    free(t->room);
}

/* The recording in file r->file; false: nothing usable is in it. */
static inline bool talk_read(struct talk_reader *t, struct recording *r)
{
    struct problems p = {0};
    r->arena = &t->arena;
    return read_cues(r, read_file(r->file, t->room), &p) && number_words(r, t->pack, &p)
           && tag_words(r, t->pack, &p) && hear_words(r, t->ear, &p)
           && match_rules(r, t->pack, t->matcher, &p);
}

/* What a tool makes of a recording that talk_read() has read. */
typedef void talk_teller(void *to, struct recording *r, const struct pack *k);

/* Tells the recording in that file, if anything usable is in it. */
static inline void tell_talk(struct talk_reader *t, const char *name, talk_teller *tell, void *to)
{
    struct recording r = {.file = name};
    if (!arena_open(&t->arena))
        return;
    if (talk_read(t, &r))
        tell(to, &r, t->pack);
    arena_reset(&t->arena);
}

/* Prints each file's name, behind "# ", and tells what is in it. */
static inline void tell_talks(int count, char **names, talk_teller *tell, void *to)
{
    struct talk_reader reader;
    bool ready = talk_reader_open(&reader);
    for (int n = 0; ready && n < count; n++) {
        printf("# %s\n", names[n]);
        tell_talk(&reader, names[n], tell, to);
    }
    talk_reader_close(&reader);
}

#endif
