/* build/steptemplate.c: sentences without a verb -> the pack's templates, filled with what was
 * heard.
 * SPDX-License-Identifier: MIT */
#include "build/floured.h"
#include "build/writer.h"

static bool say_time(struct writer *w)
{
    for (size_t i = w->begin; i < w->end; i++)
        if (w->b->chunks.at[i].tag == TAG_DURATION
            && !(w->b->chunks.at[i].scope & SCOPE_NOT_DONE)) {
            say_words(w->b, &w->p, w->b->chunks.at[i].first, w->b->chunks.at[i].last);
            if (i + 2 < w->end && w->b->chunks.at[i + 2].tag == TAG_SIDE)
                say_range(w, i + 1, i + 3);
            return true;
        }
    return false;
}

static bool say_temperature(struct writer *w)
{
    for (size_t i = w->begin; i < w->end; i++)
        if (w->b->chunks.at[i].tag == TAG_HEATED) {
            say_chunk(w->b, w->s, &w->p, &w->b->chunks.at[i]);
            return true;
        }
    return false;
}

bool say_place(struct writer *w, size_t begin, size_t end)
{
    const struct chunk *at = w->b->chunks.at;
    for (size_t i = begin + 1; i < end; i++) {
        size_t in = i - 1 - (i - 1 > begin && at[i - 1].tag == TAG_THE);
        if (at[i].tag != TAG_PLACE || at[in].tag != TAG_INTO)
            continue;
        struct text said = w->b->r->words.at[at[in].last].key,
                    other = step_text(w->b->k, "place", said);
        prose_word(&w->p, other.length ? other : said, true);
        say_range(w, in + 1, i + 1);
        return true;
    }
    return false;
}

/* "Kitchen paper", "a towel". */
static bool say_tool(struct writer *w)
{
    for (size_t i = w->begin; i < w->end; i++)
        if (w->b->chunks.at[i].tag == TAG_TOOL) {
            bool led = i > w->begin && w->b->chunks.at[i - 1].tag == TAG_ARTICLE;
            say_range(w, i - led, i + 1);
            return true;
        }
    return false;
}

static bool say_part(struct prose *p, struct text part)
{
    prose_word(p, part, false);
    return part.length > 0;
}

static bool is_long_time(const struct writer *w)
{
    size_t time = find_time(w, w->begin, w->end);
    const struct entry *e =
        time < w->end ? w->b->r->words.at[w->b->chunks.at[time].first].entry : NULL;
    return e && e->marks & MARK_OF(large);
}

/* Whether a food that waits goes in to taste. */
static bool says_taste(const struct writer *w)
{
    for (size_t i = 0; i < w->pending_count; i++)
        if (w->pending[i].chunk.scope & SCOPE_TASTE)
            return true;
    return false;
}

/* One place of a template; false when nothing was heard for it. */
static bool fill(struct writer *w, struct text place, struct text action)
{
    if (text_is(place, "{action}"))
        return say_part(&w->p, action);
    if (text_is(place, "{foods}")) {
        bool any = w->pending_count > 0;
        say_pending(w);
        return any;
    }
    if (text_is(place, "{taste}"))
        return says_taste(w) && say_part(&w->p, step_word(w->b->k, "taste"));
    if (text_is(place, "{time}"))
        return !w->timed && (w->timed = say_time(w));
    if (text_is(place, "{temperature}"))
        return say_temperature(w);
    if (text_is(place, "{place}"))
        return say_place(w, w->begin, w->end);
    if (text_is(place, "{tool}"))
        return say_tool(w);
    if (text_is(place, "{heat}"))
        return say_part(&w->p, w->s->heat);
    if (text_is(place, "{vessel}"))
        return say_part(&w->p, w->s->vessel);
    if (!(text_equal(place, step_word(w->b->k, "for")) && is_long_time(w)))
        prose_word(&w->p, place, false); /* "for 5 minutes", but "overnight" */
    return true;
}

static bool try_template(struct writer *w, struct text template, struct text action)
{
    struct prose before = w->p;
    size_t pending = w->pending_count;
    bool timed = w->timed;
    struct text word;
    while (text_part(&template, ' ', &word))
        if (!fill(w, word, action)) {
            w->p = before;
            w->pending_count = pending; /* the next template may name them */
            w->timed = timed;
            return false;
        }
    return true;
}

bool say_action(struct writer *w, struct text action, bool own)
{
    const struct table *t = pack_table(w->b->k, "step-words");
    if (!t)
        return false;
    for (size_t row = table_find(t, TEXT_OF("template")); row < t->rows; row = table_next(t, row)) {
        struct text name = table_cell(t, row, STEP_KEY);
        if (((!own && text_is(name, "*")) || text_equal(name, action))
            && try_template(w, table_cell(t, row, STEP_TEXT), action))
            return true;
    }
    return false;
}

/* The sign of doneness in this sentence, if any. */
static void say_until(struct writer *w)
{
    for (size_t i = w->begin; i < w->end; i++) {
        if (w->b->chunks.at[i].tag != TAG_UNTIL)
            continue;
        size_t end = clause_end(w, i), time = find_time(w, i, end);
        prose_comma(&w->p);
        say_range(w, i, w->timed ? time : end); /* not the time once more */
        return;
    }
}

/* "One minute a side" after a sentence that was written: its time. */
static void go_on(struct writer *w)
{
    struct prose before = w->p;
    prose_reopen(&w->p);
    size_t time = find_time(w, w->begin, w->end);
    if (time < w->end && !is_its_time(w, time)) {
        w->p = before; /* "both keep for a week" */
        return;
    }
    if (time < w->end && say_unsaid_time(w, w->begin, time, w->end)) {
        prose_stop(&w->p);
        return;
    }
    prose_comma(&w->p);
    if (say_time(w)) {
        say_until(w);
        prose_stop(&w->p);
    } else {
        w->p = before;
    }
}

static bool has_marks(const struct writer *w, size_t action, uint64_t marks)
{
    const struct entry *e = action_entry(w->b->k, w->s->actions.at[action]);
    return e && e->marks & marks;
}

/* Whether the sentence is a list of foods that go in, which the verb of the next one may take up.
 */
static bool waits_for_verb(const struct writer *w)
{
    bool puts = false, heats = false;
    for (size_t i = 0; i < w->s->actions.count; i++) {
        puts |= has_marks(w, i, MARK_OF(puts)) && !has_marks(w, i, MARK_OF(finishes));
        heats |= has_marks(w, i, MARK_OF(heats));
    }
    for (size_t i = w->begin; i < w->end && puts; i++)
        puts = !is_on_board(w->b, i); /* "flour on the board, tip it out": not the flour */
    return puts && w->pending_count && !(heats && says_tag(w, w->begin, w->end, TAG_VESSEL))
           && !says_tag(w, w->begin, w->end, TAG_DURATION)
           && !says_tag(w, w->begin, w->end, TAG_UNTIL);
}

/* The step's action, unless it is done or said; what puts in foods needs one that is left. */
static void say_next(struct writer *w, size_t action, unsigned done)
{
    bool puts = has_marks(w, action, MARK_OF(puts));
    bool first = prose_begins(&w->p) && w->s->actions.count == 1;
    if (done & 1U << action || (puts && !w->pending_count && !first))
        return;
    struct prose before = w->p;
    if (!prose_begins(&w->p))
        prose_word(&w->p, step_word(w->b->k, "and"), true);
    if (!say_action(w, w->s->actions.at[action], false))
        w->p = before;
}

void write_verbless(struct writer *w)
{
    w->timed = false;
    gather(w);
    if (!w->pending_count && w->p.length) {
        go_on(w);
        return;
    }
    if (waits_for_verb(w))
        return;
    unsigned done = w->said;
    for (size_t i = 0; i < w->s->actions.count; i++)
        if (has_marks(w, i, MARK_OF(heats)) && !(done & 1U << i)
            && say_action(w, w->s->actions.at[i], true))
            done |= 1U << i; /* "heat the oil in the pan" puts it in, too */
    for (size_t i = 0; i < w->s->actions.count; i++)
        say_next(w, i, done);
    if (!prose_begins(&w->p))
        say_until(w);
    prose_stop(&w->p);
}
