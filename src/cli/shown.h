/* cli/shown.h: the options that say how a recipe is shown.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_CLI_SHOWN_H
#define DISHTAKE_CLI_SHOWN_H

#include "base/buffer.h"
#include "cli/cli.h"
#include "dishtake.h"

/* STATUS_DONE, or, after a message, why not. `style` gets the style sheet's bytes and must live as
 * long as `w`; the caller releases it in any case. */
enum status cli_shown(const struct cli *c, struct dishtake_write_options *w, struct buffer *style);

#endif
