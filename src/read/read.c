/* read/read.c: the stage's one entry.
 * SPDX-License-Identifier: MIT */
#include "read/read.h"

#include "read/reader.h"

static const struct {
    enum transcript_kind kind;
    bool (*run)(struct reader *rd);
} formats[] = {
    {KIND_SUBRIP, read_subrip},           {KIND_WEBVTT, read_webvtt}, {KIND_TTML, read_ttml},
    {KIND_TIMED_LINES, read_timed_lines}, {KIND_JSON, read_json},     {KIND_TSV, read_tsv},
};

static bool read_format(struct reader *rd)
{
    for (size_t i = 0; i < sizeof formats / sizeof *formats; i++)
        if (formats[i].kind == rd->r->kind)
            return formats[i].run(rd);
    return problem(rd->p, read_place(rd, 0),
                   rd->r->source.length ? "is no transcript: " EXPECTED : "is empty: " EXPECTED);
}

static void report_repairs(struct reader *rd)
{
    static const char *const abouts[] = {
#define REPAIR(name, about) about,
#include "read/repairs.def"
#undef REPAIR
    };
    for (size_t i = 0; i < REPAIRS; i++) {
        struct place at = read_place(rd, rd->repairs[i].line);
        if (rd->repairs[i].count == 1)
            problem_note(rd->p, at, "%s", abouts[i]);
        else if (rd->repairs[i].count)
            problem_note(rd->p, at, "%s (here first, %zu times in all)", abouts[i],
                         rd->repairs[i].count);
    }
}

static double last_end(const struct recording *r)
{
    double last = 0;
    for (size_t i = 0; i < r->cues.count; i++)
        if (cue_end(&r->cues.at[i]) > last)
            last = cue_end(&r->cues.at[i]);
    return last;
}

/* Most captions take more bytes than this with their times. Room that is not used costs nothing,
 * since large rooms come from the system as they are written to. */
#define BYTES_A_CUE 40
#define RESERVED_MOST ((size_t) 1 << 18)

static void reserve_cues(struct recording *r)
{
    size_t cues = r->source.length / BYTES_A_CUE + 1;
    LIST_RESERVE(r->arena, &r->cues, cues < RESERVED_MOST ? cues : RESERVED_MOST);
}

bool read_cues(struct recording *r, struct text bytes, struct problems *p)
{
    struct reader rd = {.r = r, .p = p};
    if (!decode_source(&rd, bytes))
        return false;
    r->language = TEXT_EMPTY;
    r->kind = detect_kind(r->source);
    reserve_cues(r);
    bool good = read_format(&rd);
    report_repairs(&rd);
    if (!good)
        return false;
    order_cues(&rd);
    unroll_cues(&rd);
    split_speakers(&rd);
    sort_cues(r); /* turns of captions that overlap */
    if (!r->cues.count)
        return problem(p, read_place(&rd, 0), "has no spoken words: " EXPECTED);
    r->length = last_end(r);
    return true;
}
