/* write/explain_text.c: how words were tagged and which rules matched, for who edits a grammar.
 * SPDX-License-Identifier: MIT */
#include "write/write.h"

#include "match/matches.h"

static void put_words(struct buffer *b, const struct recording *r, struct span words)
{
    for (size_t i = words.first; i <= words.last && i < r->words.count; i++)
        buffer_format(b, "%s%.*s", i > words.first ? " " : "", TEXT(r->words.at[i].text));
}

/* "   17  3:15  tablespoons   UNIT   tablespoon  (en/units.lex:7)" */
static void put_word(struct buffer *b, const struct recording *r, const struct writing *w,
                     size_t number)
{
    const struct word *word = &r->words.at[number];
    const char *tag = word->tag == TAG_INSIDE ? "..." : tag_name(word->tag);
    buffer_format(b, "%7zu %7.*s  %-20.*s %-9s", number, TEXT(clock_text(w->scratch, word->start)),
                  TEXT(word->text), tag ? tag : "");
    if (word->filler)
        buffer_put_string(b, " filler, seen by no rule");
    else if (word->entry)
        buffer_format(b, " %.*s (%s:%u)", TEXT(entry_value(word->entry)), entry_file(word->entry),
                      word->entry->line);
    if (word->rare->heard_as)
        buffer_format(b, " heard as \"%.*s\"", TEXT(entry_shown(word->rare->heard_as)));
    buffer_put_char(b, '\n');
}

static void put_number(struct buffer *b, const struct match *m)
{
    if (!ratio_known(m->low))
        return;
    buffer_format(b, " = %g", ratio_double(m->low));
    if (!ratio_equal(m->low, m->high))
        buffer_format(b, "..%g", ratio_double(m->high));
}

static void put_match(struct buffer *b, const struct recording *r, const struct match *m)
{
    const struct rule *rule = m->rule;
    buffer_format(b, "    %s (%s:%u): \"", rule->name, rule->file, rule->line);
    put_words(b, r, m->words);
    buffer_put_char(b, '"');
    put_number(b, m);
    for (size_t i = 0; i < rule->slots_count; i++)
        if (m->slots[i].first <= m->slots[i].last) {
            buffer_format(b, "  %s=\"", slot_name(rule->slots[i]));
            put_words(b, r, (struct span){m->slots[i].first, m->slots[i].last});
            buffer_put_char(b, '"');
        }
    buffer_put_char(b, '\n');
}

static void put_sentence(struct buffer *b, const struct recording *r, const struct writing *w,
                         const struct sentence *s)
{
    static const struct {
        enum sentence_flag flag;
        const char *about;
    } FLAGS[] = {{SENTENCE_QUESTION, "a question"},
                 {SENTENCE_STORY, "told of another time"},
                 {SENTENCE_LEAVING, "the dish that it names is made"}};
    buffer_format(b, "sentence, words %zu to %zu", s->first, s->last);
    for (size_t i = 0; i < sizeof FLAGS / sizeof *FLAGS; i++)
        if (s->flags & FLAGS[i].flag)
            buffer_format(b, ", %s", FLAGS[i].about);
    buffer_put_char(b, '\n');
    for (size_t i = s->first; i <= s->last && i < r->words.count; i++)
        put_word(b, r, w, i);
    struct matches all = matches_of(r, s, KINDS_ALL);
    for (const struct match *m; (m = matches_next(&all));)
        put_match(b, r, m);
}

/* The sentence that is being said then, or the last one before. */
static size_t sentence_at(const struct recording *r, double at)
{
    size_t found = 0;
    for (size_t i = 0; i < r->sentences.count; i++)
        if (r->words.at[r->sentences.at[i].first].start <= at)
            found = i;
    return found;
}

bool write_explain_text(const struct recording *r, const struct writing *w, struct buffer *out,
                        struct problems *p)
{
    if (w->at > r->length)
        return problem(p, (struct place){.file = r->file}, "it ends at %.*s",
                       TEXT(clock_text(w->scratch, r->length)));
    size_t only = sentence_at(r, w->at);
    for (size_t i = 0; i < r->sentences.count; i++)
        if (w->at < 0 || i == only)
            put_sentence(out, r, w, &r->sentences.at[i]);
    return true;
}
