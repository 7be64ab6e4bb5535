/* review/http.c
 * SPDX-License-Identifier: MIT */
#include "review/http.h"

#include <dlfcn.h>
#include <string.h>

/* The ABI that microhttpd.h of 0.9.70 and later describes. */
static const char library_name[] = "libmicrohttpd.so.12";

struct http http;

/* A pointer to a function is copied as bytes, since C converts none from void *. */
static bool find(void *library, const char *name, void *function)
{
    void *at = dlsym(library, name);
    if (at)
        memcpy(function, &at, sizeof at);
    return at;
}

bool http_load(struct problems *p)
{
    void *library = dlopen(library_name, RTLD_NOW | RTLD_LOCAL);
    bool found = library;
#define HTTP_FUNCTION(name) found = found && find(library, "MHD_" #name, &http.name);
#include "review/http.def"
#undef HTTP_FUNCTION
    return found
           || problem(p, (struct place){0},
                      "the page needs the library libmicrohttpd, which cannot be loaded: %s",
                      dlerror());
}
