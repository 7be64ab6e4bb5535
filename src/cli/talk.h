/* cli/talk.h: messages as FILE:LINE:COLUMN: text, which editors can follow.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CLI_TALK_H
#define DISHTAKE_CLI_TALK_H

#include "base/buffer.h"
#include "base/problem.h"
#include "dishtake.h"

/* A handle's messages; those of something repaired only if `notes`. */
void talk_messages(struct buffer *b, const struct dishtake *d, bool notes);
void talk_problems(struct buffer *b, const struct problems *list, bool notes);
/* To standard error at once. */
void talk_print(const struct problems *list);

#endif
