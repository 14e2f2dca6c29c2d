package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.FieldUnits;
import org.ohmloom.units.Gauge;

/**
 * What differs between a harness before and after an edit, field by field, so that a person sees it before it is done. Places on
 * the layout board are left out.
 */
public final class HarnessChanges {

    /**
     * One field that differs.
     *
     * @param subject identity of the element, or what else of the harness it is
     * @param field   the field in words; empty for a whole element
     * @param before  what stood there; empty for nothing
     * @param after   what stands there
     */
    public record Change(String subject, String field, String before, String after) {}

    private final List<Change> changes = new ArrayList<>();

    private HarnessChanges() {}

    /** The changes from one harness to another, elements in file order. */
    public static List<Change> between(Harness before, Harness after) {
        HarnessChanges found = new HarnessChanges();
        found.compare("title block", "", before.titleBlock(), after.titleBlock());
        found.compare("rules", "", before.rules(), after.rules());
        Map<String, Element> left = byId(before);
        Map<String, Element> right = byId(after);
        left.forEach((id, element) -> {
            if (right.containsKey(id)) {
                found.compare(id, "", element, right.get(id));
            } else {
                found.changes.add(new Change(id, "", kind(element), ""));
            }
        });
        right.forEach((id, element) -> {
            if (!left.containsKey(id)) {
                found.changes.add(new Change(id, "", "", kind(element)));
            }
        });
        return List.copyOf(found.changes);
    }

    private static Map<String, Element> byId(Harness harness) {
        Map<String, Element> all = new LinkedHashMap<>();
        harness.elements().forEach(element -> all.put(element.id().value(), element));
        return all;
    }

    private static String kind(Element element) {
        return words(element.getClass().getSimpleName());
    }

    private static String words(String name) {
        return name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT);
    }

    private void compare(String subject, String field, Object before, Object after) {
        if (before.equals(after)) {
            return;
        }
        if (before instanceof Optional<?> one && after instanceof Optional<?> other) {
            if (one.isPresent() && other.isPresent()) {
                compare(subject, field, one.get(), other.get());
            } else {
                add(subject, field, one.isPresent() ? one.get() : "", other.isPresent() ? other.get() : "");
            }
        } else if (before instanceof SortedMap<?, ?> one && after instanceof SortedMap<?, ?> other) {
            compareMaps(subject, field, one, other);
        } else if (isHeld(before) && before.getClass() == after.getClass()) {
            compareFields(subject, field, (Record) before, (Record) after);
        } else if (before instanceof List<?> one && after instanceof List<?> other && one.size() == other.size()) {
            for (int k = 0; k < one.size(); k++) {
                compare(subject, field + " " + named(one.get(k), k), one.get(k), other.get(k));
            }
        } else {
            add(subject, field, before, after);
        }
    }

    /** A thing of a list by its name, as a cavity, otherwise by its place. */
    private static String named(Object value, int place) {
        if (isHeld(value)) {
            RecordShape shape = RecordShape.of((Record) value);
            int name = shape.place("name");
            if (name >= 0) {
                return String.valueOf(shape.read((Record) value, name));
            }
        }
        return String.valueOf(place + 1);
    }

    private static boolean isHeld(Object value) {
        return value instanceof Record
                && !(value instanceof ElementId)
                && !(value instanceof WireEnd)
                && !(value instanceof WireColour)
                && !(value instanceof Gauge)
                && !(value instanceof Place);
    }

    private void compareFields(String subject, String field, Record before, Record after) {
        RecordShape shape = RecordShape.of(before);
        for (int k = 0; k < shape.size(); k++) {
            String name = shape.name(k);
            String path = field.isEmpty() ? name : field + "." + name;
            compare(subject, path, shape.read(before, k), shape.read(after, k));
        }
    }

    private void compareMaps(String subject, String field, SortedMap<?, ?> before, SortedMap<?, ?> after) {
        Set<Object> keys = new TreeSet<>(before.keySet());
        keys.addAll(after.keySet());
        for (Object key : keys) {
            Object one = before.get(key);
            Object other = after.get(key);
            String path = field + "." + key;
            if (one != null && other != null) {
                compare(subject, path, one, other);
            } else {
                add(subject, path, one == null ? "" : one, other == null ? "" : other);
            }
        }
    }

    private void add(String subject, String field, Object before, Object after) {
        String name = field.substring(field.lastIndexOf('.') + 1);
        changes.add(new Change(subject, inWords(field), text(name, before), text(name, after)));
    }

    private static String inWords(String field) {
        String[] steps = field.split("\\.");
        if (steps.length > 0) {
            steps[steps.length - 1] = FieldUnits.label(steps[steps.length - 1]);
        }
        for (int k = 0; k < steps.length; k++) {
            // an identity keeps its capitals, as U1 among the settings of a state
            steps[k] =
                    Character.isLowerCase(steps[k].isEmpty() ? 'x' : steps[k].charAt(0)) ? words(steps[k]) : steps[k];
        }
        return String.join(", ", steps);
    }

    private static String text(String name, Object value) {
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? text(name, number.getAsDouble()) : "";
        }
        if (value instanceof Double number) {
            return FieldUnits.text(name, number)
                    .orElseGet(() -> FieldText.of(Optional.empty(), name).written(number));
        }
        if (value instanceof org.ohmloom.model.Setting setting) {
            return SettingText.of(setting);
        }
        if (value instanceof org.ohmloom.model.SourceSetting setting) {
            return SourceText.of(setting);
        }
        return FieldText.of(Optional.empty(), name).written(value);
    }
}
