/* split/nameend.c
 * SPDX-License-Identifier: MIT */
#include "split/nameend.h"

#include "pack/pack.h"

/* "Spring roll sheets", "the soup bowl": a thing is called after it, and no dish ("beef tagine").
 */
static bool is_of_thing(const struct recording *r, size_t last)
{
    static const bool thing[256] = {[TAG_COUNTER] = true,
                                    [TAG_CONTAINER] = true,
                                    [TAG_VESSEL] = true,
                                    [TAG_UNIT] = true,
                                    [TAG_TOOL] = true};
    size_t next = last + 1;
    while (next < r->words.count && r->words.at[next].tag == TAG_INSIDE)
        next++;
    return r->words.at[last].after < AFTER_COMMA && next < r->words.count
           && thing[r->words.at[next].tag] && !entry_as(r->words.at[next].readings, TAG_DISH);
}

/* "Ice cream with it.", "white bread with that.": what is served beside. */
static bool is_with_it(const struct recording *r, size_t last)
{
    if (last + 2 >= r->words.count || r->words.at[last + 1].tag != TAG_WITH
        || r->words.at[last].after >= AFTER_COMMA)
        return false;
    const struct word *w = &r->words.at[last + 2];
    return w->tag == TAG_IT || (w->tag == TAG_THE && w->after >= AFTER_COMMA);
}

bool no_name_ends(const struct recording *r, size_t last)
{
    return is_of_thing(r, last) || is_with_it(r, last);
}
