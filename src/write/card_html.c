/* write/card_html.c: cards to cook from, on a screen and on paper; laid out by src/write/pages/.
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "kitchen/print.h"
#include "write/card.h"
#include "write/ingredient_line.h"
#include "write/pages.h"
#include "write/publish.h"
#include "write/recipe_ld.h"

/* What one card is put with. */
struct sheet {
    struct html *h;
    const struct recording *r;
    const struct writing *w;
    const struct card *c;
};

static void begin_part(struct html *h, const char *class, struct text heading)
{
    html_begin(h, "section");
    html_attribute_string(h, "class", class);
    html_line(h);
    html_element(h, "h2", NULL, heading);
}

static void put_list(struct html *h, const char *class, const text_list *lines)
{
    html_begin(h, "ul");
    if (class)
        html_attribute_string(h, "class", class);
    html_line(h);
    for (size_t i = 0; i < lines->count; i++)
        html_element(h, "li", NULL, lines->at[i]);
    html_end_line(h);
}

static void put_picture(struct sheet *s, struct text name, struct text shows)
{
    if (!name.length)
        return;
    html_empty(s->h, "img");
    html_url(s->h, "src", name);
    html_attribute(s->h, "alt", shows);
    html_attribute_string(s->h, "loading", "lazy");
    html_line(s->h);
}

static void put_head(struct sheet *s)
{
    html_begin(s->h, "header");
    html_line(s->h);
    html_element(s->h, "h1", NULL, s->c->title);
    if (s->c->facts.count)
        put_list(s->h, "facts", &s->c->facts);
    if (s->c->draft)
        html_element(s->h, "p", "draft", PHRASE_0(s->w, card_draft));
    if (s->c->open)
        html_element(s->h, "p", "draft",
                     PHRASE_1(s->w, card_open, arena_format(s->w->scratch, "%zu", s->c->open)));
    put_picture(s, still_name(s->w, s->r, s->c->number - 1, NULL),
                PHRASE_1(s->w, card_picture, s->c->title));
    html_end_line(s->h);
}

static void put_ingredients(struct sheet *s)
{
    if (!s->c->parts.count)
        return;
    begin_part(s->h, "ingredients", PHRASE_0(s->w, card_ingredients));
    for (size_t i = 0; i < s->c->parts.count; i++) {
        const struct card_part *part = &s->c->parts.at[i];
        if (part->heading.length)
            html_element(s->h, "h3", NULL, part->heading);
        put_list(s->h, NULL, &part->lines);
    }
    html_end_line(s->h);
}

/* A link into the video where there is one, else the clock time alone. */
static void put_moment(struct sheet *s, double seconds)
{
    struct text url = moment_url(s->w, seconds), clock = clock_text(s->w->scratch, seconds);
    html_begin(s->h, url.length ? "a" : "span");
    html_attribute_string(s->h, "class", "at");
    if (url.length) {
        html_url(s->h, "href", url);
        html_attribute(s->h, "aria-label", PHRASE_1(s->w, card_watch, clock));
    }
    html_put(s->h, clock);
    html_end(s->h);
}

static void put_step(struct sheet *s, const struct card_step *step, size_t number)
{
    struct text count = arena_format(s->w->scratch, "%zu", number);
    html_begin(s->h, "li");
    html_attribute(s->h, "id", arena_format(s->w->scratch, "%c%zu", ID_STEP, step->id));
    html_begin(s->h, "p");
    html_put(s->h, step->text);
    html_put(s->h, TEXT_OF(" "));
    if (step->heat.length) {
        html_begin(s->h, "span");
        html_attribute_string(s->h, "class", "heat");
        html_put(s->h, step->heat);
        html_end(s->h);
        html_put(s->h, TEXT_OF(" "));
    }
    put_moment(s, step->start);
    html_end(s->h);
    put_picture(s, still_name(s->w, s->r, s->c->number - 1, &step->id),
                PHRASE_1(s->w, card_step_picture, count));
    html_end_line(s->h);
}

/* The numbers go on from list to list. */
static void put_steps(struct sheet *s)
{
    bool open = false;
    if (!s->c->steps.count)
        return;
    begin_part(s->h, "method", PHRASE_0(s->w, card_method));
    for (size_t i = 0; i < s->c->steps.count; i++) {
        const struct card_step *step = &s->c->steps.at[i];
        if (open && (step->heading.length || step->own)) {
            html_end_line(s->h);
            open = false;
        }
        const struct text heading = step_heading(s->w, step);
        if (heading.length)
            html_element(s->h, "h3", NULL, heading);
        if (!open) {
            html_begin(s->h, "ol");
            html_attribute(s->h, "start", arena_format(s->w->scratch, "%zu", i + 1));
            html_line(s->h);
            open = true;
        }
        put_step(s, step, i + 1);
    }
    html_end_line(s->h);
    html_end_line(s->h);
}

static void put_notes(struct sheet *s)
{
    if (!s->c->notes.count)
        return;
    begin_part(s->h, "notes", PHRASE_0(s->w, card_scaled));
    put_list(s->h, NULL, &s->c->notes);
    html_end_line(s->h);
}

static void put_allergens(struct sheet *s)
{
    if (!s->c->allergens.count)
        return;
    begin_part(s->h, "allergens", PHRASE_0(s->w, card_allergens));
    for (size_t i = 0; i < s->c->allergens.count; i++)
        html_element(s->h, "p", NULL, s->c->allergens.at[i]);
    html_end_line(s->h);
}

static void put_cautions(struct sheet *s)
{
    const struct dish *d = &s->c->shown.dish;
    if (!d->cautions.count)
        return;
    begin_part(s->h, "cautions", PHRASE_0(s->w, card_cautions));
    html_begin(s->h, "ul");
    html_line(s->h);
    for (size_t i = 0; i < d->cautions.count; i++) {
        html_begin(s->h, "li");
        html_put(s->h, d->cautions.at[i].text);
        html_put(s->h, TEXT_OF(" "));
        html_element(s->h, "cite", NULL, d->cautions.at[i].source);
        html_end_line(s->h);
    }
    html_end_line(s->h);
    html_end_line(s->h);
}

static struct text nutrient_text(const struct writing *w, size_t i, double amount)
{
    static const enum phrase_key WORDS[NUTRIENTS] = {
#define NUTRIENT(name, column) PHRASE_nutrient_##name,
#include "kitchen/nutrients.def"
#undef NUTRIENT
    };
    struct text number = arena_format(w->scratch, "%.0f", amount);
    return phrase(w->kitchen, w->scratch, WORDS[i], &number, 1);
}

static void put_nutrition(struct sheet *s)
{
    const struct nutrition *n = &s->c->nutrition;
    if (!n->known)
        return;
    begin_part(s->h, "nutrition", PHRASE_0(s->w, card_nutrition));
    html_begin(s->h, "ul");
    html_line(s->h);
    for (size_t i = 0; i < NUTRIENTS; i++)
        if (isfinite(n->of_serving[i]))
            html_element(s->h, "li", NULL, nutrient_text(s->w, i, n->of_serving[i]));
    html_end_line(s->h);
    html_element(s->h, "p", NULL, n->about);
    html_end_line(s->h);
}

/* For machines that read pages; a data block is not run. */
static void put_data(struct sheet *s)
{
    struct json j = {.out = s->h->out, .spread = 2, .in_script = true};
    html_begin(s->h, "script");
    html_attribute_string(s->h, "type", "application/ld+json");
    html_line(s->h);
    put_recipe_ld(&j, s->r, s->w, s->c);
    html_line(s->h);
    html_end_line(s->h);
}

static void put_article(struct sheet *s)
{
    html_begin(s->h, "article");
    html_attribute_string(s->h, "class", "card");
    html_attribute(s->h, "id", arena_format(s->w->scratch, "%c%zu", ID_DISH, s->c->shown.dish.id));
    html_line(s->h);
    put_head(s);
    html_begin(s->h, "div");
    html_attribute_string(s->h, "class", "sides");
    html_line(s->h);
    put_ingredients(s);
    put_steps(s);
    html_end_line(s->h);
    html_begin(s->h, "footer");
    html_line(s->h);
    put_notes(s);
    put_allergens(s);
    put_cautions(s);
    put_nutrition(s);
    html_element(s->h, "p", "silence", PHRASE_0(s->w, card_silence));
    html_end_line(s->h);
    put_data(s);
    html_end_line(s->h);
}

static void put_card(struct buffer *b, const struct recording *r, const struct writing *w,
                     const struct card *c, bool first)
{
    struct html h = {.out = b};
    (void) first;
    put_article(&(struct sheet){&h, r, w, c});
}

static struct text page_title(const struct recording *r, const struct writing *w)
{
    size_t dish = w->dish ? w->dish - 1 : 0;
    bool one = w->dish || r->dishes.count == 1;
    return one ? capital(w, r->dishes.at[dish].title) : PHRASE_0(w, index_dishes);
}

bool write_card_html(const struct recording *r, const struct writing *w, struct buffer *out,
                     struct problems *p)
{
    struct html h = {.out = out};
    page_begin(&h, w, page_title(r, w), "base card");
    if (!cards_write(r, w, out, p, put_card))
        return false;
    page_end(&h);
    return true;
}
