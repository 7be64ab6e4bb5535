/* build/prose.c
 * SPDX-License-Identifier: MIT */
#include "build/prose.h"

#include <string.h>

bool prose_begins(const struct prose *p)
{
    return p->length == p->begun;
}

bool prose_add(struct prose *p, struct text t)
{
    if (p->length + t.length + 2 > sizeof p->at)
        return false;
    memcpy(p->at + p->length, t.at, t.length);
    p->length += t.length;
    return true;
}

static void capitalize(struct prose *p, size_t at)
{
    if (at < p->length && p->at[at] >= 'a' && p->at[at] <= 'z')
        p->at[at] = (char) (p->at[at] - 'a' + 'A');
}

/* "the the egg" */
static bool is_double(const struct prose *p, struct text word)
{
    struct text sofar = {p->at, p->length};
    return p->length > word.length && p->at[p->length - word.length - 1] == ' '
           && text_equal(text_slice(sofar, p->length - word.length, p->length), word);
}

void prose_word(struct prose *p, struct text word, bool joins)
{
    bool begins = prose_begins(p);
    bool letter = word.length && word.at[0] >= 'a' && word.at[0] <= 'z';
    if (!word.length || (letter && is_double(p, word)))
        return;
    if (p->length && !p->glued && !prose_add(p, (struct text){" ", 1}))
        return;
    p->glued = false;
    size_t at = p->length;
    if (!prose_add(p, word))
        return;
    if (begins)
        capitalize(p, at);
    if (!joins)
        p->kept = p->length;
}

void prose_hyphen(struct prose *p)
{
    if (!prose_begins(p) && prose_add(p, (struct text){"-", 1}))
        p->glued = true;
}

void prose_comma(struct prose *p)
{
    if (!prose_begins(p) && p->at[p->length - 1] != ',')
        (void) prose_add(p, (struct text){",", 1});
}

void prose_put(struct prose *p, struct text written)
{
    if (!written.length || (p->length && !prose_add(p, (struct text){" ", 1}))
        || !prose_add(p, written))
        return;
    p->before = p->begun;
    p->begun = p->kept = p->length;
}

void prose_uncomma(struct prose *p)
{
    if (p->length && p->at[p->length - 1] == ',')
        p->length--;
}

void prose_stop(struct prose *p)
{
    p->glued = false;
    p->length = p->kept > p->begun ? p->kept : p->begun;
    if (prose_begins(p) || !prose_add(p, (struct text){".", 1}))
        return;
    p->before = p->begun;
    p->begun = p->kept = p->length;
}

void prose_reopen(struct prose *p)
{
    if (!prose_begins(p) || !p->length)
        return;
    p->kept = --p->length;
    p->begun = p->before;
}

struct text prose_text(const struct prose *p, struct arena *a)
{
    return arena_text(a, (struct text){p->at, p->length});
}
