/* base/problem.c
 * SPDX-License-Identifier: MIT */
#include "base/problem.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>

void problems_release(struct problems *list)
{
    for (size_t i = 0; i < list->count; i++)
        free(list->at[i].message);
    free(list->at);
    *list = (struct problems){0};
}

void problems_rewind(struct problems *list, const struct problems *then)
{
    while (list->count > then->count)
        free(list->at[--list->count].message);
    list->errors = then->errors;
    list->notes = then->notes;
    list->dropped = then->dropped;
}

__attribute__((format(printf, 4, 0))) static void add(struct problems *list, struct place at,
                                                      enum problem_level level, const char *format,
                                                      va_list args)
{
    size_t *kept = level == PROBLEM_ERROR ? &list->errors : &list->notes;
    char message[512];
    (*kept)++;
    if (*kept > PROBLEMS_KEPT) {
        list->dropped++;
        return;
    }
    if (list->count == list->room) {
        size_t room = list->room ? list->room * 2 : 8;
        struct problem *grown = realloc(list->at, room * sizeof *grown);
        if (!grown) {
            list->dropped++;
            return;
        }
        list->at = grown;
        list->room = room;
    }
    int length = vsnprintf(message, sizeof message, format, args);
    char *copy = length < 0 ? NULL : malloc(sizeof message);
    if (!copy) {
        list->dropped++;
        return;
    }
    snprintf(copy, sizeof message, "%s", message);
    list->at[list->count++] = (struct problem){at, level, copy};
}

bool problem(struct problems *list, struct place at, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    add(list, at, PROBLEM_ERROR, format, args);
    va_end(args);
    return false;
}

void problem_note(struct problems *list, struct place at, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    add(list, at, PROBLEM_NOTE, format, args);
    va_end(args);
}
