/* pack/image_maker.h: what the files share that make an image; nobody outside src/pack includes it.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_PACK_IMAGE_MAKER_H
#define DISHTAKE_PACK_IMAGE_MAKER_H

#include "pack/image.h"
#include "pack/load.h"

/* An image on its way. It is made in two rounds, of which the first only counts bytes. */
struct maker {
    struct loader *l;
    char *block; /* the sections */
    size_t used;
    size_t sections;      /* bytes of all of them; 0 while they are only counted */
    struct index texts;   /* to their place in `pool`, + 1 */
    struct index numbers; /* their bytes, to 1 + their place among all */
    char *pool;
    size_t pool_length, pool_room;
    heard_list heard;
};

/* Room for `count` things; NULL in the first round. Jumps out where the pack becomes too large. */
void *image_section(struct maker *m, struct section *s, size_t count, size_t size);
/* Puts the text into the pool, once; returns its place there. */
size_t image_pool_text(struct maker *m, struct text t);
/* The same, and its distance to `to`, which is in the block. */
void image_put_text(struct maker *m, struct ref *to, struct text t);
/* `to` NULL: the first round. All but the rows' lines. */
void image_put_table(struct maker *m, struct image_table *to, const struct listed_table *t);
/* The texts of tables that are asked about word after word, so that they stand together. */
void image_pool_asked(struct maker *m);
void image_put_lines(struct maker *m, struct image_table *to, const struct listed_table *t);
void image_put_rules(struct maker *m, struct image *out);

#endif
