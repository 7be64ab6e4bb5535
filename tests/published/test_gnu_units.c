/* tests/published/test_gnu_units.c: the kitchen and GNU Units (Debian package `units`) side by
 * side: every unit that has a size, in the base unit of its dimension, and a thousand random
 * amounts from any unit to any other. GNU's name of each unit is in gnu-units.tsv; where GNU has
 * none (label spoons), its size in mL or g as the law in units.tsv gives it.
 * SPDX-License-Identifier: MIT */
#include "published/published.h"

#include <math.h>
#include <sys/wait.h>
#include <unistd.h>

#include "kitchen/convert.h"

#define RANDOM_AMOUNTS 1000
#define WITHIN 1e-12 /* GNU Units counts in double, and prints fifteen figures here */

struct pair {
    struct ratio number;
    const struct unit *from, *to;
    struct text have, want;
};
struct pairs {
    LIST(struct pair) all;
};

static struct text gnu_name(const struct published *names, const struct unit *unit)
{
    for (size_t i = 0; i < names->rows.count; i++)
        if (text_equal(names->rows.at[i].cells[0], unit->name))
            return names->rows.at[i].cells[1];
    return TEXT_EMPTY;
}

static void add_pair(struct open_kitchen *o, const struct published *names, struct pairs *pairs,
                     struct ratio n, const struct unit *from, const struct unit *to)
{
    struct text name = gnu_name(names, from);
    if (!name.length)
        fail_msg("%.*s has no name in gnu-units.tsv", TEXT(from->name));
    struct text have = arena_format(&o->arena, "(%lld|%lld) (%.*s)", (long long) n.over,
                                    (long long) n.under, TEXT(name));
    struct text want = arena_format(&o->arena, "(%.*s)", TEXT(gnu_name(names, to)));
    *LIST_ADD(&o->arena, &pairs->all) = (struct pair){n, from, to, have, want};
}

/* Runs `units` on pairs of lines; each answer is a line. */
static void ask_units(const char *questions, const char *answers)
{
    pid_t child = fork();
    assert_true(child >= 0);
    if (child == 0) {
        char *const command[] = {(char[]){"units"}, (char[]){"-q"},    (char[]){"-t"},
                                 (char[]){"-o"},    (char[]){"%.15g"}, NULL};
        if (freopen(questions, "r", stdin) && freopen(answers, "w", stdout))
            execvp(command[0], command);
        _exit(127);
    }
    int status;
    assert_int_equal(waitpid(child, &status, 0), child);
    if (!WIFEXITED(status) || WEXITSTATUS(status) != 0)
        fail_msg("GNU Units did not run: install the Debian package units");
}

static size_t compare_all(struct open_kitchen *o, const struct pairs *pairs)
{
    char folder[] = "/tmp/kitchen-units-XXXXXX";
    assert_non_null(mkdtemp(folder));
    const char *questions = open_string(o, arena_format(&o->arena, "%s/in", folder));
    const char *answers = open_string(o, arena_format(&o->arena, "%s/out", folder));
    FILE *file = fopen(questions, "w");
    assert_non_null(file);
    for (size_t i = 0; i < pairs->all.count; i++)
        fprintf(file, "%.*s\n%.*s\n", TEXT(pairs->all.at[i].have), TEXT(pairs->all.at[i].want));
    fclose(file);
    ask_units(questions, answers);
    file = fopen(answers, "r");
    assert_non_null(file);
    size_t agreed = 0;
    for (size_t i = 0; i < pairs->all.count; i++) {
        const struct pair *p = &pairs->all.at[i];
        char line[200] = "";
        char *read = fgets(line, sizeof line, file), *end = line;
        double theirs = read ? strtod(line, &end) : NAN;
        double ours = ratio_double(convert_number(p->number, p->from, p->to));
        if (end != line && fabs(ours - theirs) <= WITHIN * fabs(theirs))
            agreed++;
        else
            print_error("%.*s in %.*s: GNU Units %s kitchen %.15g\n", TEXT(p->have), TEXT(p->want),
                        line, ours);
    }
    fclose(file);
    unlink(questions);
    unlink(answers);
    rmdir(folder);
    return agreed;
}

static const struct unit *base_of(const struct units *u, const struct unit *unit)
{
    static const char *const bases[] = {"each", "milliliter", "gram", "centimeter",
                                        "second"}; /* as in dimensions.def */
    return unit_find(u, text_from(bases[unit->dimension]));
}

static uint32_t seed = 20260103;
static uint32_t draw(uint32_t below)
{
    seed = seed * 1664525u + 1013904223u;
    return (seed >> 8) % below;
}

static void test_side_by_side(void **state)
{
    struct open_kitchen *o = *state;
    const struct units *u = &o->kitchen->units;
    struct published names = published_read(&o->arena, "tests/published/gnu-units.tsv");
    struct pairs pairs = {.all = {NULL, 0, 0}};
    for (size_t i = 0; i < u->all.count; i++)
        if (ratio_finite(u->all.at[i].factor))
            add_pair(o, &names, &pairs, RATIO(1), &u->all.at[i], base_of(u, &u->all.at[i]));
    size_t units = pairs.all.count;
    assert_true(units >= 80);
    while (pairs.all.count < units + RANDOM_AMOUNTS) {
        const struct unit *from = &u->all.at[draw((uint32_t) u->all.count)],
                          *to = &u->all.at[draw((uint32_t) u->all.count)];
        struct ratio n = ratio_make((int64_t) draw(10000) + 1, (int64_t) draw(64) + 1);
        if (ratio_finite(from->factor) && ratio_finite(to->factor)
            && from->dimension == to->dimension)
            add_pair(o, &names, &pairs, n, from, to);
    }
    size_t agreed = compare_all(o, &pairs);
    print_message(
        "figure: %zu of %zu conversions agree with GNU Units (%zu units, %d random amounts)\n",
        agreed, pairs.all.count, units, RANDOM_AMOUNTS);
    assert_int_equal(agreed, pairs.all.count);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test_teardown(test_side_by_side, open_reset)};
    return cmocka_run_group_tests(tests, open_setup, open_teardown);
}
