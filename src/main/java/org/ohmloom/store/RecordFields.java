package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.ohmloom.units.Texts;

/** The components of a record as keys of an object, in the order of the record. */
final class RecordFields {
    private final Constructor<?> constructor;
    private final List<Field> fields;

    private RecordFields(Constructor<?> constructor, List<Field> fields) {
        this.constructor = constructor;
        this.fields = List.copyOf(fields);
    }

    /** One component: how it is got from the record, its key, its form, and what an absent key means. */
    private record Field(String component, Method accessor, String key, Optional<Form> form, Optional<Object> absent) {}

    /** The components of a record type, each under its own name. */
    static RecordFields of(Class<?> type, Function<RecordComponent, Optional<Form>> forms) {
        List<Field> fields = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            Optional<Form> form = forms.apply(component);
            fields.add(new Field(
                    component.getName(),
                    component.getAccessor(),
                    component.getName(),
                    form,
                    form.flatMap(Form::whenAbsent)));
        }
        Class<?>[] types = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            return new RecordFields(type.getDeclaredConstructor(types), fields);
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException("a record without its constructor: " + type, impossible);
        }
    }

    /** These with one component under another key. */
    RecordFields renamed(String component, String key) {
        return changed(component, f -> new Field(f.component, f.accessor, key, f.form, f.absent));
    }

    /** These with one component that has a value when its key is absent. */
    RecordFields defaulting(String component, Object value) {
        return changed(
                component,
                f -> new Field(
                        f.component,
                        f.accessor,
                        f.key,
                        f.form.map(form -> new DefaultForm(form, value)),
                        Optional.of(value)));
    }

    /** These with one component that always has one value and no key. */
    RecordFields fixed(String component, Object value) {
        return changed(component, f -> new Field(f.component, f.accessor, f.key, Optional.empty(), Optional.of(value)));
    }

    private RecordFields changed(String component, Function<Field, Field> change) {
        return new RecordFields(
                constructor,
                fields.stream()
                        .map(f -> f.component.equals(component) ? change.apply(f) : f)
                        .toList());
    }

    /** The keys in order. */
    List<String> keys() {
        return fields.stream().filter(f -> f.form.isPresent()).map(Field::key).toList();
    }

    /** The first key. */
    String firstKey() {
        return keys().get(0);
    }

    /** The components by name as the object has them; those without a form are left to the caller. */
    Map<String, Object> read(ObjectNode object, Spot spot) {
        Map<String, Object> values = new HashMap<>();
        for (Field field : fields) {
            JsonNode child = field.form.isPresent() ? object.get(field.key) : null;
            if (child != null) {
                values.put(field.component, field.form.get().read(child, spot.key(field.key)));
            } else if (field.absent.isPresent()) {
                values.put(field.component, field.absent.get());
            } else if (field.form.isPresent()) {
                throw new RefusedException(spot, MissingKey.problem(field.key, keys(), object));
            }
        }
        return values;
    }

    /** Puts each component that has a form and is not what an absent key means. */
    void write(Object value, ObjectNode object, Spot spot) {
        for (Field field : fields) {
            Object part = get(value, field);
            Optional<Form> form = field.form.filter(f -> !f.leavesOut(part));
            form.ifPresent(f -> object.set(field.key, f.write(part, spot.key(field.key))));
        }
    }

    /** Whether the components that have a fixed value have it. */
    boolean fits(Object value) {
        return constructor.getDeclaringClass().isInstance(value)
                && fields.stream()
                        .filter(f -> f.form.isEmpty() && f.absent.isPresent())
                        .allMatch(f -> f.absent.equals(Optional.of(get(value, f))));
    }

    /** The value of the component under a key. */
    Object get(Object value, String key) {
        return get(
                value,
                fields.stream().filter(f -> f.key.equals(key)).findFirst().orElseThrow());
    }

    /**
     * The record of these values.
     *
     * @throws IllegalArgumentException when the record refuses them
     */
    Object create(Map<String, Object> values) {
        Object[] arguments = fields.stream().map(f -> values.get(f.component)).toArray();
        try {
            return constructor.newInstance(arguments);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof IllegalArgumentException reason) {
                throw reason;
            }
            throw new IllegalStateException("cannot make " + constructor, refused);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("cannot make " + constructor, impossible);
        }
    }

    /** The one key whose value a refusal quotes at its end, as "must be greater than 0, was -1.0". */
    Optional<String> quotedBy(String refusal, Map<String, Object> values) {
        List<String> keys = fields.stream()
                .filter(f -> f.form.isPresent() && refusal.endsWith(", was " + quoted(values.get(f.component))))
                .map(Field::key)
                .toList();
        return keys.size() == 1 ? Optional.of(keys.get(0)) : Optional.empty();
    }

    private static String quoted(@Nullable Object value) {
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? String.valueOf(number.getAsDouble()) : "";
        }
        if (value instanceof Optional<?> optional) {
            return quoted(optional.orElse(null));
        }
        return value instanceof String text ? Texts.quoted(text) : String.valueOf(value);
    }

    private static Object get(Object value, Field field) {
        try {
            return field.accessor.invoke(value);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("cannot read " + field.accessor, impossible);
        }
    }
}
