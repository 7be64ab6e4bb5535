/* bench/gen.c: invented kitchen talk of any length, the same bytes for the same arguments
 * everywhere.
 *
 *     gen [--as srt|webvtt|json|lines] [--seed N] BYTES           talk
 *     gen [--as ...] --repeat TEXT BYTES                          TEXT again and again
 *
 * Of the sentences 45 in 100 are instructions; three stretches in ten have no punctuation, as
 * automatic captions have none (the mix of the measurements in docs/speed.md). Writes at least
 * BYTES bytes of text.
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define COUNT_OF(array) (sizeof(array) / sizeof *(array))
#define SENTENCE_BYTES 400
#define CUE_WORDS 9
#define WORDS_A_SECOND 2.4

static uint64_t state = 1;

/* xorshift64* (Marsaglia 2003, Vigna 2014; from memory): short, and the same on every machine. */
static size_t below(size_t n)
{
    state ^= state >> 12;
    state ^= state << 25;
    state ^= state >> 27;
    return (size_t) ((state * 0x2545F4914F6CDD1Du >> 33) % n);
}

static const char *const foods[] = {
    "flour",       "butter",   "sugar",         "garlic",       "onion",       "chicken stock",
    "olive oil",   "tomatoes", "carrots",       "celery",       "brown sugar", "heavy cream",
    "milk",        "eggs",     "parsley",       "black pepper", "salt",        "rice",
    "lemon juice", "ginger",   "soy sauce",     "honey",        "potatoes",    "mushrooms",
    "thyme",       "cinnamon", "baking powder", "vanilla",      "yogurt",      "spinach",
    "chickpeas",   "cumin",    "paprika",       "vinegar"};
static const char *const units[] = {"cups of",   "tablespoons of", "teaspoons of", "pounds of",
                                    "ounces of", "grams of",       "cloves of",    "cup of",
                                    "sticks of", "cans of"};
static const char *const numbers[] = {
    "two", "three",          "one", "half a",        "a quarter", "four", "1/2",
    "2",   "one and a half", "six", "ten to twelve", "about two", "500",  "a"};
static const char *const actions[] = {"add",     "stir in",     "pour in", "whisk", "chop",
                                      "mix",     "fold in",     "melt",    "fry",   "simmer",
                                      "drop in", "season with", "toss in"};
static const char *const vessels[] = {"pan",  "pot",        "bowl", "skillet",
                                      "oven", "dutch oven", "tray"};
static const char *const times[] = {"ten minutes",  "five to six minutes", "an hour",  "20 minutes",
                                    "half an hour", "thirty seconds",      "two hours"};
static const char *const chat[] = {"so my neighbour was telling me about her garden the other day",
                                   "you know I never used to like this when I was little",
                                   "thanks so much for all of your comments last week",
                                   "it smells amazing in here already",
                                   "that is what my grandmother always did",
                                   "I have been doing this for about twenty years now",
                                   "and the dog is asleep under the table again",
                                   "do not worry if it looks a little strange at first",
                                   "we had the whole family over on Sunday",
                                   "somebody asked me whether you can freeze it and yes you can",
                                   "I think we should get a new camera for this kitchen",
                                   "let me just wash my hands for a second",
                                   "this is honestly my favourite part",
                                   "if you have never been to the coast you should go"};
static const char *const dishes[] = {"carrot soup",  "tomato pasta",  "chicken stew",
                                     "lemon cake",   "mushroom rice", "spinach curry",
                                     "potato salad", "ginger cookies"};

#define PICK(list) ((list)[below(COUNT_OF(list))])

static void instruction(char *out)
{
    switch (below(7)) {
    case 0:
        snprintf(out, SENTENCE_BYTES, "%s %s %s %s", PICK(actions), PICK(numbers), PICK(units),
                 PICK(foods));
        break;
    case 1:
        snprintf(out, SENTENCE_BYTES, "you want %s %s %s and %s %s", PICK(numbers), PICK(units),
                 PICK(foods), PICK(numbers), PICK(foods));
        break;
    case 2:
        snprintf(out, SENTENCE_BYTES, "let that cook in the %s for %s", PICK(vessels), PICK(times));
        break;
    case 3:
        snprintf(out, SENTENCE_BYTES, "%s the %s until it is golden brown", PICK(actions),
                 PICK(foods));
        break;
    case 4:
        snprintf(out, SENTENCE_BYTES, "it goes in the oven at %zu degrees for %s",
                 300 + 25 * below(6), PICK(times));
        break;
    case 5:
        snprintf(out, SENTENCE_BYTES, "now %s another %s %s %s, finely chopped", PICK(actions),
                 PICK(numbers), PICK(units), PICK(foods));
        break;
    default:
        snprintf(out, SENTENCE_BYTES, "put it in the %s with the %s and %s it well", PICK(vessels),
                 PICK(foods), PICK(actions));
    }
}

/* About every 120 sentences, some nine minutes, another dish. */
static void sentence(char *out)
{
    if (below(120) == 0)
        snprintf(out, SENTENCE_BYTES, "today we are making %s", PICK(dishes));
    else if (below(100) < 45)
        instruction(out);
    else
        snprintf(out, SENTENCE_BYTES, "%s", PICK(chat));
}

struct output {
    const char *as, *repeat;
    size_t bytes, cues;
    double at; /* seconds */
    char text[4096];
    size_t length, words;
};

static void stamp(double seconds, const char *point)
{
    unsigned long millis = (unsigned long) (seconds * 1000);
    printf("%02lu:%02lu:%02lu%s%03lu", millis / 3600000, millis / 60000 % 60, millis / 1000 % 60,
           point, millis % 1000);
}

static void put_json_string(const char *s)
{
    putchar('"');
    for (; *s; s++)
        printf(strchr("\"\\", *s) ? "\\%c" : "%c", *s);
    putchar('"');
}

static void put_cue(struct output *o, double end)
{
    if (strcmp(o->as, "json") == 0) {
        printf("%s\n{\"start\": %.3f, \"end\": %.3f, \"text\": ", o->cues ? "," : "", o->at, end);
        put_json_string(o->text);
        putchar('}');
    } else if (strcmp(o->as, "lines") == 0) {
        unsigned long s = (unsigned long) o->at;
        printf("[%lu:%02lu:%02lu] %s\n", s / 3600, s / 60 % 60, s % 60, o->text);
    } else {
        bool srt = strcmp(o->as, "srt") == 0;
        if (srt)
            printf("%zu\n", o->cues + 1);
        stamp(o->at, srt ? "," : ".");
        printf(" --> ");
        stamp(end, srt ? "," : ".");
        printf("\n%s\n\n", o->text);
    }
}

static void flush_cue(struct output *o)
{
    if (!o->length)
        return;
    double end = o->at + (double) o->words / WORDS_A_SECOND;
    put_cue(o, end);
    o->cues++;
    o->at = end + (below(6) == 0 ? 1.5 : 0);
    o->bytes += o->length + 1;
    o->length = o->words = 0;
}

static void put_word(struct output *o, const char *word, size_t length)
{
    if (o->length + length + 2 > sizeof o->text)
        flush_cue(o);
    if (o->length)
        o->text[o->length++] = ' ';
    memcpy(o->text + o->length, word, length);
    o->length += length;
    o->text[o->length] = '\0';
    if (++o->words == CUE_WORDS)
        flush_cue(o);
}

static void put_words(struct output *o, const char *words)
{
    while (*words) {
        size_t n = strcspn(words, " ");
        if (n)
            put_word(o, words, n);
        words += n + (words[n] == ' ');
    }
}

static void talk(struct output *o, size_t bytes)
{
    char s[SENTENCE_BYTES];
    bool plain = false;
    for (size_t n = 0; o->bytes < bytes; n++) {
        if (n % 40 == 0)
            plain = below(10) < 3;
        sentence(s);
        size_t length = strlen(s);
        if (!plain && length + 1 < sizeof s) {
            s[0] = (char) (s[0] >= 'a' && s[0] <= 'z' ? s[0] - 'a' + 'A' : s[0]);
            memcpy(s + length, ".", 2);
        }
        put_words(o, s);
    }
}

static void repeat(struct output *o, size_t bytes)
{
    while (o->bytes < bytes)
        put_words(o, o->repeat);
}

static int usage(void)
{
    fputs("usage: gen [--as srt|webvtt|json|lines] [--seed N] [--repeat TEXT] BYTES\n", stderr);
    return 2;
}

int main(int argc, char **argv)
{
    struct output o = {.as = "srt"};
    int i = 1;
    for (; i + 1 < argc; i += 2) {
        if (strcmp(argv[i], "--as") == 0)
            o.as = argv[i + 1];
        else if (strcmp(argv[i], "--seed") == 0)
            state = strtoull(argv[i + 1], NULL, 10) * 0x9E3779B97F4A7C15u | 1;
        else if (strcmp(argv[i], "--repeat") == 0)
            o.repeat = argv[i + 1];
        else
            return usage();
    }
    if (i >= argc || (o.repeat && strspn(o.repeat, " ") == strlen(o.repeat)))
        return usage();
    size_t bytes = strtoull(argv[i], NULL, 10);
    fputs(strcmp(o.as, "webvtt") == 0 ? "WEBVTT\n\n"
          : strcmp(o.as, "json") == 0 ? "{\"segments\": ["
                                      : "",
          stdout);
    if (o.repeat)
        repeat(&o, bytes);
    else
        talk(&o, bytes);
    flush_cue(&o);
    if (strcmp(o.as, "json") == 0)
        puts("\n]}");
    return fflush(stdout) != 0 || ferror(stdout) ? 4 : 0;
}
