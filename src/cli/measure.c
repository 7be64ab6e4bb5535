/* cli/measure.c: the words after the command are one amount, quoted or not.
 * SPDX-License-Identifier: MIT */
#include <stdio.h>

#include "base/buffer.h"
#include "cli/grammar.h"
#include "cli/talk.h"
#include "dishtake.h"

static enum status measure(struct dishtake *d, const struct cli *c, const char *amount)
{
    size_t length;
    const char *out =
        dishtake_measure(d, amount, c->values[OPTION_IN], c->values[OPTION_KITCHEN], &length);
    struct buffer talk = {0};
    talk_messages(&talk, d, true);
    fwrite(talk.at ? talk.at : "", 1, talk.length, stderr);
    buffer_release(&talk);
    if (out)
        fwrite(out, 1, length, stdout);
    return out ? STATUS_DONE : STATUS_USAGE;
}

enum status command_measure(const struct cli *c)
{
    struct grammar_source source;
    struct buffer amount = {0};
    enum status status = STATUS_UNREADABLE;
    for (size_t i = 0; i < c->count; i++)
        buffer_format(&amount, "%s%s", i ? " " : "", c->operands[i]);
    struct dishtake *d = grammar_open(&source, c->values[OPTION_GRAMMAR]);
    if (d)
        status = measure(d, c, amount.at ? amount.at : "");
    grammar_close(&source, d);
    buffer_release(&amount);
    return status;
}
