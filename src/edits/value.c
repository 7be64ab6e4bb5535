/* edits/value.c: the fields that a cook can set, and what each kind of edit takes.
 * SPDX-License-Identifier: MIT */
#include "edits/value.h"

#include <string.h>

#include "edits/parse.h"
#include "edits/reader.h"

struct field {
    enum edit_target of;
    const char *name;
    reader *read;
    size_t offset;
};

#define STRUCT_LINE struct ingredient
#define STRUCT_STEP struct step
#define STRUCT_DISH struct dish
static const struct field FIELDS[] = {
#define FIELD(of, name, kind, member) \
    {TARGET_##of, #name, value_##kind, offsetof(STRUCT_##of, member)},
#include "edits/fields.def"
#undef FIELD
};

static const struct field *field_find(enum edit_target of, const char *name)
{
    for (size_t i = 0; name && i < sizeof FIELDS / sizeof *FIELDS; i++)
        if (FIELDS[i].of == of && strcmp(FIELDS[i].name, name) == 0)
            return &FIELDS[i];
    return NULL;
}

static bool field_fits(enum edit_target of, const json_t *edit)
{
    const struct field *f = field_find(of, json_string_value(json_object_get(edit, "field")));
    return f && json_object_get(edit, "value")
           && f->read(json_object_get(edit, "value"), NULL, NULL);
}

/* A new line or step: an object of its fields, of which one must be there. */
static bool object_fits(enum edit_target of, json_t *object, const char *needed)
{
    const char *key;
    json_t *value;
    if (!json_object_get(object, needed))
        return false;
    json_object_foreach(object, key, value)
    {
        const struct field *f = field_find(of, key);
        if (!f || !f->read(value, NULL, NULL))
            return false;
    }
    return true;
}

bool value_answer(const json_t *value, enum answer *answer)
{
    static const char *const WORDS[ANSWERS] = {"open", "accepted", "dismissed"};
    for (int i = 0; i < ANSWERS; i++)
        if (text_is(json_text(value), WORDS[i])) {
            *answer = (enum answer) i;
            return true;
        }
    return false;
}

static bool finding_fits(const json_t *edit)
{
    enum answer answer;
    const json_t *reason = json_object_get(edit, "reason"), *about = json_object_get(edit, "about");
    return json_is_text(json_object_get(edit, "field")) && json_is_string(about)
           && value_answer(json_object_get(edit, "value"), &answer) && json_is_name(reason);
}

static bool word_fits(const json_t *edit)
{
    return json_is_text(json_object_get(edit, "value"))
           && json_is_flag(json_object_get(edit, "everywhere"));
}

static bool edge_fits(const json_t *edit)
{
    struct text edge = json_text(json_object_get(edit, "field"));
    return text_is(edge, "start") || text_is(edge, "end");
}

bool value_fits(enum edit_kind kind, const json_t *edit)
{
    json_t *value = json_object_get(edit, "value");
    switch ((int) kind) {
    case EDIT_word:
        return word_fits(edit);
    case EDIT_dish_add:
    case EDIT_dish_cut:
        return json_is_name(value);
    case EDIT_dish_border:
        return edge_fits(edit);
    case EDIT_dish_set:
    case EDIT_line_set:
    case EDIT_step_set:
        return field_fits(edit_kind_on(kind), edit);
    case EDIT_line_add:
        return object_fits(TARGET_LINE, value, "food");
    case EDIT_step_add:
        return object_fits(TARGET_STEP, value, "text");
    case EDIT_finding:
        return finding_fits(edit);
    default:
        return true;
    }
}

static bool set(enum edit_target of, void *owner, const char *name, const json_t *value,
                struct arena *a)
{
    const struct field *f = field_find(of, name);
    return f && f->read(value, a, (char *) owner + f->offset);
}

bool value_set_line(struct ingredient *in, const char *field, const json_t *value, struct arena *a)
{
    return set(TARGET_LINE, in, field, value, a);
}

bool value_set_step(struct step *s, const char *field, const json_t *value, struct arena *a)
{
    return set(TARGET_STEP, s, field, value, a);
}

bool value_set_dish(struct dish *d, const char *field, const json_t *value, struct arena *a)
{
    return set(TARGET_DISH, d, field, value, a);
}
