/* cli/list.h: the ingredient list that --list names.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CLI_LIST_H
#define DISHTAKE_CLI_LIST_H

#include "base/buffer.h"
#include "cli/cli.h"
#include "dishtake.h"

/* Reads the list, where one was named, into `bytes` (the caller releases), which must live as long
 * as what is read with it. After saying on standard error what is wrong: STATUS_USAGE or
 * STATUS_UNREADABLE. */
enum status list_take(const struct cli *c, struct buffer *bytes);
/* Tells the library of it; nothing where none was named. */
void list_hand(const struct cli *c, const struct buffer *bytes, struct dishtake_read_options *o);

#endif
