/* edits/findings.c: what the cook answered to a finding. It is known again by its kind, what it is
 * about, and its words.
 * SPDX-License-Identifier: MIT */
#include "edits/run.h"

static bool is_at(const struct recording *r, const struct finding *f, struct span words)
{
    if (f->words.first <= f->words.last)
        return f->words.first <= words.last && words.first <= f->words.last;
    return f->dish >= r->dishes.count || &r->dishes.at[f->dish] == dish_with_word(r, words.first);
}

static struct finding *find(const struct change *c)
{
    struct text kind = json_text(json_object_get(c->json, "field")),
                about = json_text(json_object_get(c->json, "about"));
    for (size_t i = 0; i < c->r->findings.count; i++) {
        struct finding *f = &c->r->findings.at[i];
        if (text_equal(f->kind, kind) && text_equal(f->about, about)
            && is_at(c->r, f, c->out->on.words))
            return f;
    }
    return NULL;
}

bool apply_finding(struct change *c)
{
    struct finding *f = find(c);
    enum answer answer = ANSWER_OPEN;
    if (!f)
        return no_place(c, "the finding is no longer there");
    value_answer(json_object_get(c->json, "value"), &answer);
    f->dismissed = answer != ANSWER_OPEN;
    f->accepted = answer == ANSWER_ACCEPTED;
    f->reason = arena_text(c->r->arena, text_trim(json_text(json_object_get(c->json, "reason"))));
    if (f->dish < c->r->dishes.count)
        c->out->dish = c->r->dishes.at[f->dish].id;
    return true;
}
