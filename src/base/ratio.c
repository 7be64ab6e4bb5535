/* base/ratio.c
 * SPDX-License-Identifier: MIT */
#include "base/ratio.h"

#include <math.h>

static int64_t gcd(int64_t a, int64_t b)
{
    while (b) {
        int64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a < 0 ? -a : a;
}

struct ratio ratio_make(int64_t over, int64_t under)
{
    if (under == 0 || over == INT64_MIN || under == INT64_MIN)
        return RATIO_NONE;
    if (under < 0) {
        over = -over;
        under = -under;
    }
    int64_t shared = gcd(over, under);
    return (struct ratio){over / shared, under / shared};
}

bool ratio_known(struct ratio a)
{
    return a.over != 0 || a.under != 0;
}

bool ratio_finite(struct ratio a)
{
    return a.under != 0;
}

__extension__ typedef __int128 wide;

/* Lowers in 128 bits, so that only a result that is itself too large is none. */
static struct ratio make_wide(wide over, wide under)
{
    if (over <= INT64_MAX && over >= -INT64_MAX && under <= INT64_MAX) /* as nearly always */
        return ratio_make((int64_t) over, (int64_t) under);
    wide a = over < 0 ? -over : over, b = under;
    while (b) {
        wide rest = a % b;
        a = b;
        b = rest;
    }
    over /= a;
    under /= a;
    if (over > INT64_MAX || over < -INT64_MAX || under > INT64_MAX)
        return RATIO_NONE;
    return (struct ratio){(int64_t) over, (int64_t) under};
}

struct ratio ratio_add(struct ratio a, struct ratio b)
{
    if (!ratio_known(a) || !ratio_known(b))
        return RATIO_NONE;
    if (!ratio_finite(a) || !ratio_finite(b))
        return RATIO_UPWARDS;
    wide left, right, over;
    if (__builtin_mul_overflow((wide) a.over, (wide) b.under, &left)
        || __builtin_mul_overflow((wide) b.over, (wide) a.under, &right)
        || __builtin_add_overflow(left, right, &over))
        return RATIO_NONE;
    return make_wide(over, (wide) a.under * b.under);
}

struct ratio ratio_subtract(struct ratio a, struct ratio b)
{
    if (ratio_known(b) && !ratio_finite(b))
        return RATIO_NONE;
    return ratio_add(a, (struct ratio){-b.over, b.under});
}

struct ratio ratio_multiply(struct ratio a, struct ratio b)
{
    if (!ratio_known(a) || !ratio_known(b))
        return RATIO_NONE;
    if (!ratio_finite(a) || !ratio_finite(b))
        return a.over > 0 && b.over > 0 ? RATIO_UPWARDS : RATIO_NONE;
    a = ratio_make(a.over, a.under);
    b = ratio_make(b.over, b.under);
    int64_t first = gcd(a.over, b.under), second = gcd(b.over, a.under);
    int64_t over, under;
    if (!first || !second || __builtin_mul_overflow(a.over / first, b.over / second, &over)
        || __builtin_mul_overflow(a.under / second, b.under / first, &under))
        return RATIO_NONE;
    return ratio_make(over, under);
}

struct ratio ratio_divide(struct ratio a, struct ratio b)
{
    if (!ratio_finite(b) || b.over == 0)
        return RATIO_NONE;
    return ratio_multiply(a, ratio_make(b.under, b.over));
}

int ratio_compare(struct ratio a, struct ratio b)
{
    int rank_a = !ratio_known(a) ? 0 : ratio_finite(a) ? 1 : 2;
    int rank_b = !ratio_known(b) ? 0 : ratio_finite(b) ? 1 : 2;
    if (rank_a != rank_b || rank_a != 1)
        return (rank_a > rank_b) - (rank_a < rank_b);
    wide left = (wide) a.over * b.under, right = (wide) b.over * a.under;
    return (left > right) - (left < right);
}

bool ratio_equal(struct ratio a, struct ratio b)
{
    return ratio_compare(a, b) == 0;
}

double ratio_double(struct ratio a)
{
    if (ratio_finite(a))
        return (double) a.over / (double) a.under;
    return ratio_known(a) ? INFINITY : NAN;
}

struct ratio ratio_floor(struct ratio a, struct ratio step)
{
    struct ratio n = ratio_divide(a, step);
    if (!ratio_finite(n))
        return n;
    int64_t whole = n.over / n.under - (n.over % n.under < 0);
    return ratio_multiply(RATIO(whole), step);
}

struct ratio ratio_round(struct ratio a, struct ratio step)
{
    return ratio_floor(ratio_add(a, ratio_multiply(step, ratio_make(1, 2))), step);
}

/* Digits at the front of at[*i..length); false when there is none or they are too many. */
static bool read_whole(const char *at, unsigned long length, unsigned long *i, int64_t *value)
{
    unsigned long begin = *i;
    for (*value = 0; *i < length && at[*i] >= '0' && at[*i] <= '9'; (*i)++)
        if (*i - begin >= 18)
            return false;
        else
            *value = *value * 10 + (at[*i] - '0');
    return *i > begin;
}

static struct ratio read_decimals(const char *at, unsigned long length, unsigned long i,
                                  int64_t whole)
{
    int64_t part, under = 1, over;
    unsigned long begin = i;
    if (!read_whole(at, length, &i, &part) || i < length || i - begin > 18)
        return RATIO_NONE;
    for (unsigned long n = begin; n < i; n++)
        under *= 10;
    if (!__builtin_mul_overflow(whole, under, &over) && !__builtin_add_overflow(over, part, &over))
        return ratio_make(over, under);
    return ratio_add(RATIO(whole), ratio_make(part, under));
}

struct ratio ratio_read(const char *at, unsigned long length)
{
    unsigned long i = 0;
    int64_t whole, over, under;
    if (!read_whole(at, length, &i, &whole))
        return RATIO_NONE;
    if (i == length)
        return RATIO(whole);
    if (at[i] == '.')
        return read_decimals(at, length, i + 1, whole);
    over = whole;
    whole = 0;
    if (at[i] == ' ') {
        whole = over;
        i++;
        if (!read_whole(at, length, &i, &over))
            return RATIO_NONE;
    }
    if (i >= length || at[i++] != '/' || !read_whole(at, length, &i, &under) || i < length)
        return RATIO_NONE;
    return ratio_add(RATIO(whole), ratio_make(over, under));
}
