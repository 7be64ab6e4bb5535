/* read/rolling.c: rolling captions show each line twice, first as the new line and then above the
 * next one:
 *
 *     hi everyone welcome            hold of 10 ms: hi everyone welcome
 *     hi everyone welcome            hold of 10 ms: to the kitchen
 *     to the kitchen
 *
 * A cue keeps what the screen did not show before: its words without the longest beginning that the
 * cue before ends with, where the two touch in time. Only files that roll are treated so, since
 * people say things twice. SPDX-License-Identifier: MIT */
#include "read/limits.h"
#include "read/reader.h"

typedef LIST(struct text) words;

/* The two cues that are compared, in words; kept from cue to cue so that their room is used again.
 */
struct roll {
    struct reader *rd;
    words above, here;
    size_t *border; /* of the beginning of `here`: how much of its own beginning it ends with */
    size_t border_room;
    bool timed; /* the file times its words */
};

static void find_words(struct arena *a, struct text t, words *w)
{
    LIST_CUT(w, 0);
    for (size_t i = 0; i < t.length;) {
        size_t begin = i;
        while (i < t.length && t.at[i] != ' ' && t.at[i] != '\n')
            i++;
        if (i > begin)
            *LIST_ADD(a, w) = text_slice(t, begin, i);
        else
            i++;
    }
}

static void make_border_room(struct roll *roll)
{
    if (roll->here.count <= roll->border_room)
        return;
    roll->border_room = 2 * roll->here.count;
    roll->border = arena_alloc(roll->rd->r->arena, roll->border_room * sizeof *roll->border);
}

/* The longest beginning of `here`, in words, that `above` ends with. Source: Knuth, Morris, Pratt,
 * Fast pattern matching in strings, 1977; in linear time, however often a word is said. */
static size_t overlap(struct roll *roll)
{
    const struct text *here = roll->here.at, *above = roll->above.at;
    size_t n = roll->here.count, matched = 0;
    if (!n)
        return 0;
    make_border_room(roll);
    roll->border[0] = 0;
    for (size_t i = 1; i < n; i++) {
        while (matched && !text_equal(here[i], here[matched]))
            matched = roll->border[matched - 1];
        matched += text_equal(here[i], here[matched]);
        roll->border[i] = matched;
    }
    matched = 0;
    for (size_t i = 0; i < roll->above.count; i++) {
        while (matched && (matched == n || !text_equal(above[i], here[matched])))
            matched = roll->border[matched - 1];
        matched += text_equal(above[i], here[matched]);
    }
    return matched;
}

static bool touches(const struct cue *above, const struct cue *here)
{
    return here->start <= cue_end(above) + TOUCH_SECONDS && here->raw != above->raw;
}

static size_t last_line_words(struct text t)
{
    size_t count = 0;
    for (size_t i = t.length; i > 0 && t.at[i - 1] != '\n'; i--)
        count += t.at[i - 1] != ' ' && (i == 1 || t.at[i - 2] == ' ' || t.at[i - 2] == '\n');
    return count;
}

static bool is_hold(const struct cue *c)
{
    return c->end >= 0 && c->end - c->start <= HOLD_SECONDS;
}

/* The offset behind the first `count` words of `t`, which are those of roll->here. */
static size_t behind_words(const struct roll *roll, struct text t, size_t count)
{
    if (!count)
        return 0;
    struct text last = roll->here.at[count - 1];
    return (size_t) (last.at + last.length - t.at);
}

/* The caption's last line as the file has it: "[Music]" is no part of its text. */
static struct text last_line(const struct recording *r, const struct cue *c)
{
    struct text raw = text_trim(text_slice(r->source, c->raw, c->raw_end));
    size_t begin = raw.length;
    while (begin > 0 && raw.at[begin - 1] != '\n')
        begin--;
    return text_slice(raw, begin, raw.length);
}

/* Whether a line ends there, and another, or a sound, stands below it. */
static bool ends_line(const struct recording *r, const struct cue *c, size_t at)
{
    if (at < c->text.length)
        return c->text.at[at] == '\n';
    const struct text last = last_line(r, c);
    return last.length && last.at[0] == '[';
}

/* In a file that times its words, a line of several words without a time is one that was said
 * before, and still stands there after a pause, over "[Music]"; so is one word that is a line of
 * its own with another below it. */
static bool is_old_line(const struct roll *roll, const struct cue *above, const struct cue *here,
                        size_t same)
{
    size_t end = behind_words(roll, here->text, same);
    return roll->timed && (same > 1 || ends_line(roll->rd->r, here, end)) && same
           && same >= last_line_words(above->text)
           && (!here->times_count || here->times[0].offset >= end);
}

/* How many words of `here` the screen showed with `above`. */
static size_t compare(struct roll *roll, const struct cue *above, const struct cue *here)
{
    find_words(roll->rd->r->arena, above->text, &roll->above);
    find_words(roll->rd->r->arena, here->text, &roll->here);
    size_t same = overlap(roll);
    return touches(above, here) || is_old_line(roll, above, here, same) ? same : 0;
}

/* A file rolls when in most pairs that touch, the later cue begins with the whole last line of the
 * one before, and goes on. One hold, or word times, make it sure; without them it takes two such
 * pairs. */
static bool file_rolls(struct roll *roll)
{
    const struct recording *r = roll->rd->r;
    size_t pairs = 0, rolled = 0;
    bool sure = false;
    for (size_t i = 1; i < r->cues.count; i++) {
        const struct cue *above = &r->cues.at[i - 1], *here = &r->cues.at[i];
        if (!touches(above, here))
            continue;
        size_t same = compare(roll, above, here);
        bool whole_line = same && same >= last_line_words(above->text);
        bool goes_on = same < roll->here.count;
        roll->timed = roll->timed || here->times_count;
        pairs++;
        rolled += whole_line && (goes_on || is_hold(here));
        sure = sure || (whole_line && (is_hold(here) || here->times_count));
    }
    return rolled * 2 >= pairs && rolled > (sure ? 0 : 1);
}

void unroll_cues(struct reader *rd)
{
    struct recording *r = rd->r;
    struct roll roll = {.rd = rd};
    if (!file_rolls(&roll)) {
        report_overlaps(rd);
        return;
    }
    struct cue above = r->cues.at[0]; /* as the screen showed it */
    size_t kept = 1;
    for (size_t i = 1; i < r->cues.count; i++) {
        struct cue here = r->cues.at[i];
        size_t shown = behind_words(&roll, here.text, compare(&roll, &above, &here));
        above = here;
        if (shown < here.text.length)
            r->cues.at[kept++] = cue_after(rd, &here, shown);
    }
    LIST_CUT(&r->cues, kept);
}
