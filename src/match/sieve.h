/* match/sieve.h: whether a rule can match a sentence at all, found without PCRE2: its codes
 * (pack/sieve.h) are walked once for all units at which a match may begin, a bit each. A rule's
 * classes are most often all there and still do not stand in its order, so that nine in ten runs of
 * PCRE2 found nothing; a walk takes some fifty instructions, such a run seven hundred, and a rule
 * that is never run is never compiled.
 * SPDX-License-Identifier: MIT */
#ifndef DISHTAKE_MATCH_SIEVE_H
#define DISHTAKE_MATCH_SIEVE_H

#include "match/subject.h"

/* Whether PCRE2 will find a match of the rule that begins at unit `from` or later. True, too, for a
 * rule whose repeats take too long to walk, or that has no sieve. */
bool sieve_passes(const struct rule *rule, const struct subject *s, size_t from);
/* The places of the sentence, a bit each, at which a code holds that looks about and takes no
 * units.
 */
uint64_t sieve_looks(const struct subject *s, const unsigned char *code);
/* The places at which an entry of one of the units begins. */
uint64_t sieve_begins(const struct subject *s, const unsigned char *units, size_t count);

#endif
