/* tests/fuzz/fuzz_request.c: any bytes as a request: let in only with the right Host, the secret
 * where one is needed, and a range only inside the file. First line "METHOD TARGET", then "Name:
 * value" lines.
 * SPDX-License-Identifier: MIT */
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include "review/guard.c"
#include "review/range.c"

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);

#define KEY "0123456789abcdef0123456789abcdef"
#define MEDIA "fedcba9876543210fedcba9876543210"
#define HEADERS 64
#define FILE_BYTES 1000

static void check_range(struct text range)
{
    uint64_t first, last;
    if (range_read(range, FILE_BYTES, &first, &last) == RANGE_PART
        && (first > last || last >= FILE_BYTES))
        abort();
}

static void check_let_in(const struct request *q, const struct verdict *v)
{
    size_t count;
    struct text host = request_header(q, "Host", &count);
    if (count != 1 || !text_ends(host, ":4000"))
        abort();
    if (v->route->needs != NEEDS_NOTHING && !text_is(request_header(q, SECRET_HEADER, &count), KEY))
        abort();
    if (v->route->needs == NEEDS_BODY && !request_header(q, "Origin", &count).length)
        abort();
    if (v->route->answer == ANSWER_media && !text_is(q->target, "/media/" MEDIA))
        abort();
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    struct guard g = {.port = 4000, .key = KEY, .media = MEDIA, .has_media = true};
    struct header headers[HEADERS];
    struct request q = {.headers = headers};
    struct text rest = {(const char *) bytes, length}, line;
    if (!text_part(&rest, '\n', &line))
        return 0;
    size_t space = text_find(line, ' ', 0);
    q.method = text_slice(line, 0, space);
    q.target = text_slice(line, space + 1, line.length);
    while (q.count < HEADERS && text_part(&rest, '\n', &line)) {
        size_t colon = text_find(line, ':', 0);
        headers[q.count++] = (struct header){text_slice(line, 0, colon),
                                             text_trim(text_slice(line, colon + 1, line.length))};
        check_range(headers[q.count - 1].value);
    }
    struct verdict v = guard_judge(&g, &q);
    if (v.status == 200)
        check_let_in(&q, &v);
    else if (v.route)
        abort();
    return 0;
}
