package org.ohmloom.analysis.revision;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Place;
import org.ohmloom.model.UnknownKeys;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.FieldUnits;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/**
 * All that a record of the model says, one line for each value, by the words of its field. Members of lists are named by
 * what identifies them, so that one inserted in the middle leaves the others where they were.
 */
final class Fields {
    /** Components that tell one member of a list from another, the strongest first. */
    private static final List<String> NAMING =
            List.of("id", "name", "index", "cavity", "terminal", "output", "pin", "load", "state");

    /**
     * A value.
     *
     * @param field the way to it
     * @param exact for comparing
     * @param text  as people read it
     */
    record Leaf(FieldPath field, Object exact, Text text) {}

    private final Map<String, Leaf> leaves = new LinkedHashMap<>();

    private Fields() {}

    /** Every value of a record by the words of its field, its identity left out. */
    static Map<String, Leaf> of(Record shown) {
        Fields fields = new Fields();
        fields.addRecord(FieldPath.START, shown);
        return fields.leaves;
    }

    /** The fields whose values differ between two records of one kind, in the order of the first. */
    static List<FieldChange> changes(Map<String, Leaf> before, Map<String, Leaf> after) {
        Set<String> names = new LinkedHashSet<>(before.keySet());
        names.addAll(after.keySet());
        List<FieldChange> changes = new ArrayList<>();
        for (String name : names) {
            Leaf old = before.get(name);
            Leaf now = after.get(name);
            if (old == null || now == null || !Objects.equals(old.exact, now.exact)) {
                changes.add(told(old, now));
            }
        }
        return changes;
    }

    private static FieldChange told(@Nullable Leaf old, @Nullable Leaf now) {
        FieldPath field = old == null ? now.field : old.field;
        Text before = old == null ? Text.NONE : old.text;
        Text after = now == null ? Text.NONE : now.text;
        boolean hidden = old != null && now != null && before.equals(after);
        return hidden
                ? new FieldChange(
                        field.above(), field.text(), withExact(before, old.exact), withExact(after, now.exact))
                : new FieldChange(field.above(), field.text(), before, after);
    }

    private static Text withExact(Text text, Object exact) {
        return Text.joined(" ", List.of(text, Text.of("(" + exact + ")")));
    }

    private void addRecord(FieldPath path, Record shown) {
        for (RecordComponent component : shown.getClass().getRecordComponents()) {
            String name = component.getName();
            if (!(path.equals(FieldPath.START) && name.equals("id"))) {
                add(path.field(words(FieldUnits.label(name))), name, value(shown, component));
            }
        }
    }

    private void add(FieldPath path, String name, Object given) {
        Object value = given instanceof Optional<?> optional ? optional.orElse(null) : given;
        if (value == null || value instanceof UnknownKeys) {
            return;
        }
        Optional<Text> word = word(value);
        if (word.isPresent()) {
            put(path, value, word.get());
        } else if (value instanceof OptionalDouble number) {
            number.ifPresent(each -> put(path, each, number(name, each)));
        } else if (value instanceof OptionalInt number) {
            number.ifPresent(each -> put(path, each, Text.of(each)));
        } else if (value instanceof Double number) {
            put(path, number, number(name, number));
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((key, each) -> add(path.one(String.valueOf(key)), name, each));
        } else if (value instanceof Collection<?> members) {
            addMembers(path, name, List.copyOf(members));
        } else if (value instanceof Record nested) {
            addNested(path, nested);
        } else {
            put(path, value, Text.of(value));
        }
    }

    private void put(FieldPath path, Object exact, Text text) {
        leaves.put(path.english(), new Leaf(path, exact, text));
    }

    private void addNested(FieldPath path, Record nested) {
        boolean oneOfSeveral = nested.getClass().getInterfaces().length > 0;
        if (oneOfSeveral) {
            String kind = words(nested.getClass().getSimpleName());
            put(path.field("kind"), nested.getClass(), RevisionWords.text(kind));
        }
        addRecord(path, nested);
    }

    private void addMembers(FieldPath path, String name, List<?> members) {
        List<String> names = names(members);
        FieldPath one = path.singular(name);
        for (int i = 0; i < members.size(); i++) {
            Object member = members.get(i);
            Optional<Text> word = word(member);
            if (word.isPresent()) {
                put(one.one(names.get(i)), member, word.get());
            } else if (member instanceof Record nested) {
                addNested(one.one(names.get(i)), nested);
            } else {
                add(one.one(names.get(i)), name, member);
            }
        }
    }

    /** What tells the members apart, or their numbers from 1. */
    private static List<String> names(List<?> members) {
        for (String naming : NAMING) {
            List<String> names = new ArrayList<>();
            for (Object member : members) {
                named(member, naming).ifPresent(names::add);
            }
            if (names.size() == members.size() && new HashSet<>(names).size() == names.size()) {
                return names;
            }
        }
        boolean allWords = members.stream().allMatch(each -> word(each).isPresent());
        List<String> names = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            names.add(allWords ? word(members.get(i)).orElseThrow().english() : String.valueOf(i + 1));
        }
        return new HashSet<>(names).size() == names.size() ? names : numbers(members.size());
    }

    private static List<String> numbers(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(String::valueOf).toList();
    }

    private static Optional<String> named(Object member, String naming) {
        if (!(member instanceof Record given)) {
            return Optional.empty();
        }
        for (RecordComponent component : given.getClass().getRecordComponents()) {
            if (component.getName().equals(naming)) {
                Object value = value(given, component);
                return value instanceof Optional<?> optional
                        ? optional.map(String::valueOf)
                        : word(value).map(Text::english);
            }
        }
        return Optional.empty();
    }

    private static Text number(String name, double value) {
        return Text.of(FieldUnits.text(name, value).orElseGet(() -> Formats.number(value)));
    }

    /** What is one word for people. */
    private static Optional<Text> word(Object value) {
        if (value instanceof ElementId id) {
            return Optional.of(Text.of(id.value()));
        }
        if (value instanceof Gauge gauge) {
            return Optional.of(Text.of(gauge.text().replace("mm2", "mm²")));
        }
        if (value instanceof WireEnd end) {
            return Optional.of(Text.of(end.text()));
        }
        if (value instanceof WireColour colour) {
            return Optional.of(Text.of(colour.text()));
        }
        if (value instanceof Place.OnSegment on) {
            return Optional.of(RevisionWords.WORDS.text("along", on.segment(), Formats.metres(on.distanceMetres())));
        }
        if (value instanceof Place.AtBreakout at) {
            return Optional.of(Text.of(at.breakout().value()));
        }
        if (value instanceof Boolean flag) {
            return Optional.of(RevisionWords.text(flag ? "yes" : "no"));
        }
        if (value instanceof Enum<?> constant) {
            return Optional.of(
                    RevisionWords.text(constant.name().toLowerCase(Locale.ROOT).replace('_', ' ')));
        }
        return value instanceof String || value instanceof Integer ? Optional.of(Text.of(value)) : Optional.empty();
    }

    static String words(String name) {
        if (name.equals("gauge")) {
            return "size";
        }
        return name.replaceAll("(\\p{Lower})(\\p{Upper})", "$1 $2").toLowerCase(Locale.ROOT);
    }

    private static Object value(Record shown, RecordComponent field) {
        try {
            return field.getAccessor().invoke(shown);
        } catch (IllegalAccessException | InvocationTargetException hidden) {
            throw new IllegalStateException("field " + field.getName() + " cannot be read", hidden);
        }
    }
}
