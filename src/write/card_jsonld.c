/* write/card_jsonld.c: schema.org vocabulary (Recipe, HowToSection, HowToStep, Clip, VideoObject,
 * NutritionInformation) as JSON-LD 1.1; lengths of time as ISO 8601, of a range its upper end.
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "kitchen/print.h"
#include "kitchen/time.h"
#include "write/publish.h"
#include "write/recipe_ld.h"

/* What one node is written with. */
struct ld {
    struct json *j;
    const struct recording *r;
    const struct writing *w;
    const struct card *c;
};

static void open_node(struct json *j, const char *type)
{
    json_open(j, '{');
    json_key_string(j, "@type", type);
}

/* What is empty is left out: a value that is not known is no value. */
static void put_text(struct json *j, const char *key, struct text t)
{
    if (t.length)
        json_key_text(j, key, t);
}

static void put_time(struct ld *l, const char *key, const struct time_sum *t)
{
    if (t->known)
        put_text(l->j, key, iso8601_duration(l->w->scratch, isfinite(t->max) ? t->max : t->min));
}

static void put_seconds(struct json *j, const char *key, double seconds)
{
    json_key_whole(j, key, seconds > 0 ? (size_t) seconds : 0);
}

static void put_clip(struct ld *l, const struct card_step *s)
{
    open_node(l->j, "Clip");
    put_text(l->j, "name", s->text);
    put_seconds(l->j, "startOffset", s->start);
    put_seconds(l->j, "endOffset", ceil(s->end > s->start ? s->end : s->start + 1));
    put_text(l->j, "url", moment_url(l->w, s->start));
    json_close(l->j, '}');
}

static void put_step(struct ld *l, const struct card_step *s)
{
    open_node(l->j, "HowToStep");
    put_text(l->j, "text",
             shows_heat(l->w, s)
                 ? arena_format(l->w->scratch, "%.*s %.*s.", TEXT(s->text), TEXT(s->heat))
                 : s->text);
    put_text(l->j, "url", moment_url(l->w, s->start));
    put_text(l->j, "image", still_name(l->w, l->r, l->c->number - 1, &s->id));
    json_key(l->j, "video");
    put_clip(l, s);
    json_close(l->j, '}');
}

/* Steps before the first heading, or behind one that ends, stand on their own. */
static void put_steps(struct ld *l)
{
    bool open = false;
    json_key(l->j, "recipeInstructions");
    json_open(l->j, '[');
    for (size_t i = 0; i < l->c->steps.count; i++) {
        const struct card_step *s = &l->c->steps.at[i];
        bool begins = s->heading.length > 0;
        if (open && (begins || s->own)) {
            json_close(l->j, ']');
            json_close(l->j, '}');
            open = false;
        }
        if (begins) {
            open_node(l->j, "HowToSection");
            put_text(l->j, "name", s->heading);
            json_key(l->j, "itemListElement");
            json_open(l->j, '[');
            open = true;
        }
        put_step(l, s);
    }
    if (open) {
        json_close(l->j, ']');
        json_close(l->j, '}');
    }
    json_close(l->j, ']');
}

static void put_ingredients(struct ld *l)
{
    json_key(l->j, "recipeIngredient");
    json_open(l->j, '[');
    for (size_t i = 0; i < l->c->parts.count; i++)
        for (size_t n = 0; n < l->c->parts.at[i].lines.count; n++)
            json_put_text(l->j, l->c->parts.at[i].lines.at[n]);
    json_close(l->j, ']');
}

static void put_video(struct ld *l)
{
    json_key(l->j, "video");
    open_node(l->j, "VideoObject");
    put_text(l->j, "name", l->c->title);
    put_text(l->j, "url", moment_url(l->w, l->c->shown.dish.start));
    json_key(l->j, "hasPart");
    json_open(l->j, '[');
    for (size_t i = 0; i < l->c->steps.count; i++)
        put_clip(l, &l->c->steps.at[i]);
    json_close(l->j, ']');
    json_close(l->j, '}');
}

/* Property, unit: schema.org's Energy and Mass are a number and a unit. In the order of enum
 * nutrient. */
static const char *const NUTRIENT_KEYS[NUTRIENTS][2] = {
    [NUTRIENT_ENERGY] = {"calories", "kcal"},
    [NUTRIENT_PROTEIN] = {"proteinContent", "g"},
    [NUTRIENT_FAT] = {"fatContent", "g"},
    [NUTRIENT_CARBOHYDRATE] = {"carbohydrateContent", "g"},
    [NUTRIENT_FIBER] = {"fiberContent", "g"},
    [NUTRIENT_SUGAR] = {"sugarContent", "g"},
    [NUTRIENT_SODIUM] = {"sodiumContent", "mg"},
    [NUTRIENT_SATURATED] = {"saturatedFatContent", "g"},
};

static void put_nutrition(struct ld *l)
{
    const struct nutrition *n = &l->c->nutrition;
    if (!n->known)
        return;
    json_key(l->j, "nutrition");
    open_node(l->j, "NutritionInformation");
    put_text(l->j, "description", n->about);
    for (size_t i = 0; i < NUTRIENTS; i++)
        if (isfinite(n->of_serving[i]))
            put_text(l->j, NUTRIENT_KEYS[i][0],
                     arena_format(l->w->scratch, "%.0f %s", n->of_serving[i], NUTRIENT_KEYS[i][1]));
    json_close(l->j, '}');
}

void put_recipe_ld(struct json *j, const struct recording *r, const struct writing *w,
                   const struct card *c)
{
    struct ld l = {j, r, w, c};
    json_open(j, '{');
    json_key_string(j, "@context", "https://schema.org");
    json_key_string(j, "@type", "Recipe");
    put_text(j, "name", c->title);
    put_text(j, "inLanguage", PHRASE_0(w, language));
    if (c->draft)
        put_text(j, "creativeWorkStatus", TEXT_OF("Draft")); /* schema.org's own example word */
    put_text(j, "image", still_name(w, r, c->number - 1, NULL));
    put_text(j, "recipeYield", c->yield);
    put_time(&l, "prepTime", &c->shown.dish.active);
    put_time(&l, "cookTime", &c->shown.dish.cook);
    put_time(&l, "totalTime", &c->shown.dish.total);
    put_ingredients(&l);
    put_steps(&l);
    put_nutrition(&l);
    put_video(&l);
    json_close(j, '}');
}

static void put_card(struct buffer *b, const struct recording *r, const struct writing *w,
                     const struct card *c, bool first)
{
    struct json j = {.out = b, .spread = w->one_line ? 0 : 8};
    buffer_put_string(b, first ? "" : "\n");
    put_recipe_ld(&j, r, w, c);
}

bool write_card_jsonld(const struct recording *r, const struct writing *w, struct buffer *out,
                       struct problems *p)
{
    bool several = r->dishes.count > 1 && !w->dish;
    buffer_put_string(out, several ? "[" : "");
    if (!cards_write(r, w, out, p, put_card))
        return false;
    buffer_put_string(out, several ? "]\n" : "\n");
    return true;
}
