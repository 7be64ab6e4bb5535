/* fuzz/fuzz_pack.c: the pack loader on any bytes, cut into files at lines "== NAME".
 * SPDX-License-Identifier: MIT */
#include <stdint.h>

#include "../pack/packs.h"

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

/* Bytes that name no files become each kind of file in turn. */
static void add_plain(struct test_pack *t, struct text bytes)
{
    static const char *const names[] = {"p/a.lex", "p/b.rules", "p/c.tsv", "p/forms.tsv"};
    test_pack_add(t, text_from("p/pack.list"), text_from("a.lex\nb.rules\nc.tsv\nforms.tsv\n"));
    for (size_t i = 0; i < sizeof names / sizeof *names; i++)
        test_pack_add(t, text_from(names[i]), bytes);
    t->pack = pack_load(t->files, t->count, &t->problems);
}

/* Every entry must be found by its words. */
static void look_up_all(const struct pack *k)
{
    size_t count;
    const struct entry *entries = pack_entries(k, &count);
    for (size_t i = 0; i < count; i++)
        if (!entry_as(pack_find(k, entry_words(&entries[i]), NULL), entries[i].tag))
            abort();
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    struct text bytes = {(const char *) data, size};
    struct test_pack t = {0};
    if (text_starts(bytes, "== "))
        test_pack_open(&t, bytes);
    else
        add_plain(&t, bytes);
    if (t.pack)
        look_up_all(t.pack);
    test_pack_close(&t);
    return 0;
}
