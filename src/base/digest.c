/* base/digest.c
 * SPDX-License-Identifier: MIT */
#include "base/digest.h"

#define PRIME UINT64_C(0x100000001b3)

uint64_t digest_add(uint64_t digest, struct text bytes)
{
    for (size_t i = 0; i < bytes.length; i++)
        digest = (digest ^ (unsigned char) bytes.at[i]) * PRIME;
    return digest;
}

uint64_t digest_add_part(uint64_t digest, struct text bytes)
{
    for (uint64_t length = bytes.length, i = 0; i < sizeof length; i++, length >>= 8)
        digest = (digest ^ (length & 0xff)) * PRIME;
    return digest_add(digest, bytes);
}
