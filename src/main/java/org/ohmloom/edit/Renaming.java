package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;

/**
 * Gives elements other identities and names, and whatever refers to them the same. It walks the components of the model's
 * records, so a field added to the model needs nothing here.
 */
public final class Renaming {

    private final Map<String, String> ids;
    private final Map<String, String> names;

    /**
     * A renaming.
     *
     * @param ids   new identity by the old one; those not named stay
     * @param names new name by the old identity
     */
    public Renaming(Map<String, String> ids, Map<String, String> names) {
        this.ids = Map.copyOf(ids);
        this.names = Map.copyOf(names);
    }

    /** The element under its new identity and name. */
    public Element of(Element element) {
        Element renamed = (Element) rewritten(element);
        String name = names.get(element.id().value());
        return name == null ? renamed : named(renamed, name);
    }

    /** The name of an element; empty for those that have none. */
    public static Optional<String> name(Element element) {
        int place = RecordShape.of((Record) element).place("name");
        return place < 0 || !(RecordShape.of((Record) element).read((Record) element, place) instanceof String text)
                ? Optional.empty()
                : Optional.of(text);
    }

    /** Identities an element mentions, its own among them. */
    public static Set<ElementId> mentioned(Element element) {
        Set<ElementId> found = new LinkedHashSet<>();
        collect(element, found);
        return found;
    }

    private static Element named(Element element, String name) {
        RecordShape shape = RecordShape.of((Record) element);
        Object[] values = new Object[shape.size()];
        for (int k = 0; k < values.length; k++) {
            values[k] = shape.read((Record) element, k);
        }
        int place = shape.place("name");
        if (place >= 0) {
            values[place] = name;
        }
        return (Element) shape.made(values);
    }

    private static void collect(Object value, Set<ElementId> found) {
        if (value instanceof ElementId id) {
            found.add(id);
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(each -> collect(each, found));
        } else if (value instanceof List<?> list) {
            list.forEach(each -> collect(each, found));
        } else if (value instanceof SortedMap<?, ?> map) {
            map.forEach((key, each) -> {
                collect(key, found);
                collect(each, found);
            });
        } else if (value instanceof Record held) {
            RecordShape shape = RecordShape.of(held);
            for (int k = 0; k < shape.size(); k++) {
                collect(shape.read(held, k), found);
            }
        }
    }

    private Object rewritten(Object value) {
        if (value instanceof ElementId id) {
            String other = ids.get(id.value());
            return other == null ? id : RecordShape.of((Record) id).made(other);
        }
        if (value instanceof Optional<?> optional) {
            return optional.map(this::rewritten);
        }
        if (value instanceof List<?> list) {
            List<Object> after = new ArrayList<>();
            list.forEach(each -> after.add(rewritten(each)));
            return List.copyOf(after);
        }
        if (value instanceof SortedMap<?, ?> map) {
            SortedMap<Object, Object> after = new TreeMap<>();
            map.forEach((key, each) -> after.put(rewritten(key), rewritten(each)));
            return after;
        }
        return value instanceof Record held ? rewrittenRecord(held) : value;
    }

    private Object rewrittenRecord(Record before) {
        RecordShape shape = RecordShape.of(before);
        Object[] values = new Object[shape.size()];
        boolean same = true;
        for (int k = 0; k < values.length; k++) {
            Object value = shape.read(before, k);
            values[k] = rewritten(value);
            same &= values[k].equals(value);
        }
        return same ? before : shape.made(values);
    }
}
