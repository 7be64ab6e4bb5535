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

/* Bytes of a message, with its NUL; a longer one is cut between letters. */
#define MESSAGE_BYTES 512

/* malloc; NULL: no memory. */
__attribute__((format(printf, 1, 0))) static char *write_message(const char *format, va_list args)
{
    char *message = malloc(MESSAGE_BYTES + 1);
    int length = message ? vsnprintf(message, MESSAGE_BYTES + 1, format, args) : -1;
    if (length >= 0) {
        struct text all = {message,
                           (size_t) length < MESSAGE_BYTES ? (size_t) length : MESSAGE_BYTES};
        message[text_cut(all, MESSAGE_BYTES - 1).length] = '\0';
        return message;
    }
    free(message);
    return NULL;
}

__attribute__((format(printf, 4, 0))) static void add(struct problems *list, struct place at,
                                                      enum problem_level level, const char *format,
                                                      va_list args)
{
    size_t *kept = level == PROBLEM_ERROR ? &list->errors : &list->notes;
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
    char *message = write_message(format, args);
    if (!message) {
        list->dropped++;
        return;
    }
    list->at[list->count++] = (struct problem){at, level, message};
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
