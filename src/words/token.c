/* words/token.c
 * SPDX-License-Identifier: MIT */
#include "words/token.h"

#include <string.h>

#include "model/recording.h"

/* Signs outside ASCII that matter to a cook's captions, as UTF-8. */
struct sign {
    const char *bytes;
    enum {
        SIGN_FRACTION,
        SIGN_DASH,
        SIGN_QUOTE,
        SIGN_ELLIPSIS,
        SIGN_DEGREE,
        SIGN_SLASH,
        SIGN_SPACE
    } kind;
    int over, under;
};

static const struct sign signs[] = {
    {"\u00bd", SIGN_FRACTION, 1, 2}, {"\u00bc", SIGN_FRACTION, 1, 4},
    {"\u00be", SIGN_FRACTION, 3, 4}, {"\u2153", SIGN_FRACTION, 1, 3},
    {"\u2154", SIGN_FRACTION, 2, 3}, {"\u215b", SIGN_FRACTION, 1, 8},
    {"\u215c", SIGN_FRACTION, 3, 8}, {"\u215d", SIGN_FRACTION, 5, 8},
    {"\u215e", SIGN_FRACTION, 7, 8}, {"\u2155", SIGN_FRACTION, 1, 5},
    {"\u2159", SIGN_FRACTION, 1, 6}, {"\u2013", SIGN_DASH, 0, 0},
    {"\u2014", SIGN_DASH, 0, 0},     {"\u2018", SIGN_QUOTE, 0, 0},
    {"\u2019", SIGN_QUOTE, 0, 0},    {"\u201c", SIGN_QUOTE, 0, 0},
    {"\u201d", SIGN_QUOTE, 0, 0},    {"\u2026", SIGN_ELLIPSIS, 0, 0},
    {"\u00b0", SIGN_DEGREE, 0, 0},   {"\u00ba", SIGN_DEGREE, 0, 0},
    {"\u2044", SIGN_SLASH, 0, 0},    {"\u00a0", SIGN_SPACE, 0, 0},
};

static const struct sign *sign_at(struct text t, size_t at)
{
    if ((unsigned char) t.at[at] < 0xc2)
        return NULL;
    for (size_t i = 0; i < sizeof signs / sizeof *signs; i++)
        if (text_starts(text_slice(t, at, t.length), signs[i].bytes))
            return &signs[i];
    return NULL;
}

/* A letter: ASCII, or any other sign outside ASCII that is not in the table. */
static bool is_letter(struct text t, size_t at)
{
    if (at >= t.length)
        return false;
    unsigned char c = (unsigned char) t.at[at];
    if (c < 0x80)
        return (c | 32) >= 'a' && (c | 32) <= 'z';
    return c < 0xc2 || !sign_at(t, at);
}

static bool is_ascii_letter(struct text t, size_t at)
{
    return at < t.length && ((unsigned char) t.at[at] | 32) >= 'a'
           && ((unsigned char) t.at[at] | 32) <= 'z';
}

/* The length of an apostrophe with a letter behind it, straight or curly; 0 when there is none. */
static size_t apostrophe_at(struct text t, size_t at)
{
    static const char curly[] = "\u2019";
    size_t n = 0;
    if (at < t.length && t.at[at] == '\'')
        n = 1;
    else if (at < t.length && t.at[at] == curly[0]
             && text_starts(text_slice(t, at, t.length), curly))
        n = sizeof curly - 1;
    return n && is_letter(t, at + n) ? n : 0;
}

static size_t letters_end(struct text t, size_t at)
{
    for (;;) {
        while (is_ascii_letter(t, at))
            at++;
        size_t n = apostrophe_at(t, at);
        if (n)
            at += n;
        else if (is_letter(t, at))
            at++;
        else
            return at;
    }
}

static size_t digits_end(struct text t, size_t at)
{
    while (is_digit_at(t, at))
        at++;
    return at;
}

/* A decimal point or comma ("1,5"), a thousands comma, a slash or a colon with digits on both sides
 * goes on the number. */
static size_t number_end(struct text t, size_t begin, bool *clock)
{
    size_t at = digits_end(t, begin);
    const struct sign *sign = at < t.length ? sign_at(t, at) : NULL;
    if (sign && sign->kind == SIGN_SLASH && is_digit_at(t, at + strlen(sign->bytes)))
        return digits_end(t, at + strlen(sign->bytes));
    while (at < t.length && strchr(".,/:", t.at[at]) && is_digit_at(t, at + 1)) {
        size_t end = digits_end(t, at + 1);
        bool decimal = at - begin == 1 && end - at <= 3;
        if (t.at[at] == ',' && end - at != 4 && !decimal)
            break;
        if (t.at[at] == ':')
            *clock = true;
        at = end;
    }
    return at;
}

/* The value of a number's letters: thousands commas go, a decimal comma becomes a point, a fraction
 * slash a plain one. */
static struct ratio number_value(struct text t)
{
    char plain[32];
    size_t n = 0;
    for (size_t i = 0; i < t.length; i++) {
        if (n + 1 >= sizeof plain)
            return RATIO_NONE;
        const struct sign *sign = sign_at(t, i);
        if (sign) {
            plain[n++] = '/';
            i += strlen(sign->bytes) - 1;
        } else if (t.at[i] == ',' && digits_end(t, i + 1) - i != 4) {
            plain[n++] = '.';
        } else if (t.at[i] != ',') {
            plain[n++] = t.at[i];
        }
    }
    return ratio_read(plain, n);
}

/* Whether digits are divided by a slash, plain or of fractions (U+2044). */
static bool has_slash(struct text digits)
{
    size_t at = digits_end(digits, 0);
    const struct sign *sign = at < digits.length ? sign_at(digits, at) : NULL;
    return at < digits.length && (digits.at[at] == '/' || (sign && sign->kind == SIGN_SLASH));
}

/* The length of what joins a whole number with its fraction: a space, one that does not break, a
 * hyphen; 0 for none. */
static size_t joint_length(struct text t, size_t at)
{
    if (at + 1 >= t.length)
        return 0;
    const struct sign *sign = sign_at(t, at);
    if (sign && sign->kind == SIGN_SPACE)
        return at + strlen(sign->bytes) < t.length ? strlen(sign->bytes) : 0;
    return t.at[at] == ' ' || t.at[at] == '-';
}

/* "1 1/2", "1-1/2" and "2 \u00be" are one number: where the part that follows ends; 0 when none
 * does. */
static size_t mixed_end(struct text t, size_t at, struct ratio *part)
{
    bool clock = false;
    size_t begin = at + joint_length(t, at);
    if (begin == at)
        return 0;
    const struct sign *sign = sign_at(t, begin);
    if (sign && sign->kind == SIGN_FRACTION) {
        *part = ratio_make(sign->over, sign->under);
        return begin + strlen(sign->bytes);
    }
    size_t end = is_digit_at(t, begin) ? number_end(t, begin, &clock) : 0;
    const struct text digits = text_slice(t, begin, end > begin ? end : begin);
    *part = end ? number_value(digits) : RATIO_NONE;
    bool small = ratio_finite(*part) && part->under > 1 && part->over < part->under;
    return small && has_slash(digits) ? end : 0;
}

/* "11/2" is what captions make of one and a half: no kitchen says eleven halves. */
static struct ratio unglue(struct text t, struct ratio value)
{
    size_t slash = text_find(t, '/', 0);
    if (slash != 2 || t.length != 4)
        return value;
    int whole = t.at[0] - '0', over = t.at[1] - '0', under = t.at[3] - '0';
    bool kitchen = under == 2 || under == 3 || under == 4 || under == 8;
    return kitchen && over > 0 && over < under ? ratio_add(RATIO(whole), ratio_make(over, under))
                                               : value;
}

static void read_number(struct text t, struct token *token)
{
    token->number = RATIO_NONE;
    if (is_digit_at(t, token->begin)) {
        token->end = number_end(t, token->begin, &token->clock);
        struct text digits = text_slice(t, token->begin, token->end);
        struct ratio part;
        size_t mixed = token->clock ? 0 : mixed_end(t, token->end, &part);
        if (!token->clock)
            token->number = unglue(digits, number_value(digits));
        if (mixed && ratio_finite(token->number) && token->number.under == 1) {
            token->number = ratio_add(token->number, part);
            token->end = mixed;
            return;
        }
    }
    const struct sign *sign = token->end < t.length ? sign_at(t, token->end) : NULL;
    if (sign && sign->kind == SIGN_FRACTION && !token->clock) {
        struct ratio part = ratio_make(sign->over, sign->under);
        token->number = token->end > token->begin ? ratio_add(token->number, part) : part;
        token->end += strlen(sign->bytes);
    }
    /* "20th" and "1st" are no amounts. */
    struct text tail = text_slice(t, token->end, letters_end(t, token->end));
    if (text_is(tail, "th") || text_is(tail, "st") || text_is(tail, "nd") || text_is(tail, "rd")) {
        token->end += tail.length;
        token->number = RATIO_NONE;
    }
}

/* Whether a word begins there: a point does with a digit behind it, ".25". */
static bool begins_word(struct text t, size_t at, size_t begin, const struct sign *sign)
{
    char c = t.at[at];
    bool point = c == '.' && is_digit_at(t, at + 1) && (at == begin || t.at[at - 1] == ' ');
    return is_letter(t, at) || is_digit_at(t, at) || c == '%' || point || c == '$'
           || (sign && (sign->kind == SIGN_FRACTION || sign->kind == SIGN_DEGREE));
}

/* What one sign between two words tells; `first`: it stands right behind the word. A second hyphen
 * is a dash. */
static unsigned char after_sign(struct text t, size_t at, bool first, const struct sign *sign)
{
    char c = t.at[at];
    if (c == ',' || c == ';' || c == ':' || c == '(' || c == ')')
        return AFTER_COMMA;
    if (c == '.' || c == '!' || (sign && sign->kind == SIGN_ELLIPSIS))
        return AFTER_STOP;
    if (c == '?')
        return AFTER_QUESTION;
    if (c == '-')
        return first ? AFTER_HYPHEN : AFTER_COMMA;
    if (!sign || sign->kind != SIGN_DASH)
        return AFTER_SPACE;
    return first && is_digit_at(t, at + strlen(sign->bytes)) ? AFTER_HYPHEN : AFTER_COMMA;
}

/* "2 - 2 1/2", "8 \u2013 10": a dash with a space on both sides between digits; where they go on, 0
 * for none. */
static size_t spaced_range_end(struct text t, size_t at)
{
    if (at == 0 || at + 3 >= t.length || !is_digit_at(t, at - 1) || t.at[at] != ' ')
        return 0;
    const struct sign *sign = sign_at(t, at + 1);
    bool dash = t.at[at + 1] == '-' || (sign && sign->kind == SIGN_DASH);
    size_t space = at + 1 + (sign ? strlen(sign->bytes) : 1);
    return dash && space + 1 < t.length && t.at[space] == ' ' && is_digit_at(t, space + 1)
               ? space + 1
               : 0;
}

/* The punctuation between this word and the next; the strongest counts. */
static unsigned char read_after(struct text t, size_t *at)
{
    unsigned char after = AFTER_SPACE;
    size_t next = *at + (*at < t.length && t.at[*at] == ' ');
    if (is_ascii_letter(t, next)) { /* as nearly always */
        *at = next;
        return AFTER_SPACE;
    }
    size_t range = spaced_range_end(t, *at);
    if (range > 0) {
        *at = range;
        return AFTER_HYPHEN;
    }
    for (size_t begin = *at; *at < t.length; (*at)++) {
        char c = t.at[*at];
        const struct sign *sign = sign_at(t, *at);
        if (begins_word(t, *at, begin, sign))
            break;
        unsigned char now = after_sign(t, *at, *at == begin, sign);
        if (after == AFTER_HYPHEN && *at > begin && c != '\n' && c != '\r')
            after =
                AFTER_COMMA; /* a hyphen with a space behind it is a dash; at a line's end not */
        if (now > after)
            after = now;
        if (sign)
            *at += strlen(sign->bytes) - 1;
    }
    return after;
}

/* ".25": the zero before the point was left out. */
static void read_decimals(struct text t, struct token *token)
{
    char plain[16] = "0";
    token->end = digits_end(t, token->begin + 1);
    struct text digits = text_slice(t, token->begin, token->end);
    if (digits.length + 1 > sizeof plain)
        return;
    memcpy(plain + 1, digits.at, digits.length);
    token->number = ratio_read(plain, digits.length + 1);
}

bool token_next(struct text t, size_t *at, struct token *token)
{
    read_after(t, at);
    if (*at >= t.length)
        return false;
    *token = (struct token){.begin = *at, .end = *at, .number = RATIO_NONE};
    char c = t.at[*at];
    const struct sign *sign = sign_at(t, *at);
    if (c == '$')
        token->end = number_end(t, *at + 1, &(bool){false});
    else if (c == '%')
        token->end = *at + 1;
    else if (sign && sign->kind == SIGN_DEGREE)
        token->end = *at + strlen(sign->bytes);
    else if (c == '.')
        read_decimals(t, token);
    else if (is_digit_at(t, *at) || sign)
        read_number(t, token);
    else
        token->end = letters_end(t, *at);
    *at = token->end;
    token->after = read_after(t, at);
    return true;
}
