package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Register;

/**
 * Rewrites a harness, or a part of it, with something else for what names elements. It walks the components of the model's records, so a
 * field added to the model needs nothing here. What does not change is kept as the object it is.
 */
abstract class Rewriting {

    /** What stands for an identity; empty when nothing does, and what cannot be without goes with it. */
    abstract Optional<Object> identity(ElementId id);

    /** What stands for an element of a register; empty when it goes. */
    Optional<Object> element(Element element) {
        return rewritten(element);
    }

    /** What stands for a record; empty when it cannot be without what is gone. */
    Optional<Object> record(Record before) {
        return walked(before);
    }

    /** What stands for a component of a record; empty when nothing does. */
    Optional<Object> component(Record holder, Object value) {
        return rewritten(value);
    }

    /** What stands for a record that refuses what its components become. */
    Optional<Object> refused(Record before, IllegalArgumentException why) {
        throw why;
    }

    /** What stands in a component whose value is gone; empty when the record cannot be without it. */
    Optional<Object> instead(Class<?> type) {
        return Optional.empty();
    }

    /** A value as it becomes; empty when it cannot be. */
    final Optional<Object> rewritten(Object value) {
        if (value instanceof ElementId id) {
            return identity(id);
        }
        if (value instanceof Optional<?> optional) {
            Optional<?> after = optional.flatMap(this::rewritten);
            return Optional.of(isSame(optional, after) ? optional : after);
        }
        if (value instanceof List<?> list) {
            return Optional.of(rewrittenList(list));
        }
        if (value instanceof SortedMap<?, ?> map) {
            return Optional.of(rewrittenMap(map));
        }
        if (value instanceof Register<?, ?> register) {
            return Optional.of(rewrittenRegister(register));
        }
        return value instanceof Record held ? record(held) : Optional.of(value);
    }

    private static boolean isSame(Optional<?> before, Optional<?> after) {
        return before.isPresent() == after.isPresent() && (before.isEmpty() || before.get() == after.get());
    }

    private List<?> rewrittenList(List<?> before) {
        List<Object> after = new ArrayList<>();
        boolean same = true;
        for (Object each : before) {
            Optional<Object> left = rewritten(each);
            left.ifPresent(after::add);
            same &= left.isPresent() && left.get() == each;
        }
        return same ? before : after;
    }

    private SortedMap<?, ?> rewrittenMap(SortedMap<?, ?> before) {
        SortedMap<Object, Object> after = new TreeMap<>();
        boolean same = true;
        for (Map.Entry<?, ?> entry : before.entrySet()) {
            Optional<Object> key = rewritten(entry.getKey());
            Optional<Object> value = rewritten(entry.getValue());
            if (key.isPresent() && value.isPresent()) {
                after.put(key.get(), value.get());
            }
            same &= key.filter(now -> now == entry.getKey()).isPresent()
                    && value.filter(now -> now == entry.getValue()).isPresent();
        }
        return same ? before : after;
    }

    /** The elements of a register that are left, as they become. */
    final Register<?, ?> rewrittenRegister(Register<?, ?> before) {
        List<Element> after = new ArrayList<>();
        boolean same = true;
        for (Element element : before.all()) {
            Optional<Object> left = element(element);
            left.ifPresent(now -> after.add((Element) now));
            same &= left.isPresent() && left.get() == element;
        }
        return same ? before : Register.of(after);
    }

    /** A record with its components as they become; empty when it cannot be without one of them. */
    final Optional<Object> walked(Record before) {
        RecordShape shape = RecordShape.of(before);
        Object[] values = new Object[shape.size()];
        boolean same = true;
        for (int k = 0; k < values.length; k++) {
            Object value = shape.read(before, k);
            Class<?> type = shape.type(k);
            Optional<Object> left = component(before, value).or(() -> instead(type));
            if (left.isEmpty()) {
                return Optional.empty();
            }
            values[k] = left.get();
            same &= left.get() == value;
        }
        return same ? Optional.of(before) : anew(before, shape, values);
    }

    private Optional<Object> anew(Record before, RecordShape shape, Object... values) {
        try {
            return Optional.of(shape.made(values));
        } catch (IllegalArgumentException refused) {
            return refused(before, refused);
        }
    }
}
