package org.ohmloom.analysis.revision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Position;
import org.ohmloom.model.Strap;
import org.ohmloom.words.Text;

/** What became of every element from one harness to another, in file order and by identity. */
public final class ElementChanges {
    private static final String NAME = "name";
    private static final String NO = "no";

    private final List<ElementChange> changes = new ArrayList<>();

    private ElementChanges() {}

    /** What became of every element, and of title block and design rules; what stayed as it was is left out. */
    public static List<ElementChange> between(Harness before, Harness after) {
        ElementChanges all = new ElementChanges();
        all.whole("title block", before.titleBlock(), after.titleBlock());
        all.whole("design rules", before.rules(), after.rules());
        for (int i = 0; i < before.registers().size(); i++) {
            all.register(
                    byId(before.registers().get(i).all()),
                    byId(after.registers().get(i).all()));
        }
        all.positions(before.layout(), after.layout());
        return all.changes;
    }

    private static SortedMap<String, Element> byId(Iterable<? extends Element> elements) {
        SortedMap<String, Element> byId = new TreeMap<>(NaturalOrder.INSTANCE);
        elements.forEach(element -> byId.put(element.id().value(), element));
        return byId;
    }

    /** What has no identity: the title block, the design rules. */
    private void whole(String kind, Record before, Record after) {
        if (!before.equals(after)) {
            add(kind, "", "", Change.CHANGED, Fields.changes(Fields.of(before), Fields.of(after)));
        }
    }

    private void register(SortedMap<String, Element> before, SortedMap<String, Element> after) {
        Map<String, String> renumbered = renumbered(before, after);
        for (Map.Entry<String, Element> entry : after.entrySet()) {
            String id = entry.getKey();
            Element now = entry.getValue();
            Element old = before.get(id);
            if (renumbered.containsKey(id)) {
                Map<String, Fields.Leaf> fields = fields(now);
                changes.add(new ElementChange(
                        kind(now), id, renumbered.get(id), name(fields), Change.RENUMBERED, List.of()));
            } else if (old == null) {
                addAlone(now, Change.ADDED);
            } else if (!old.equals(now)) {
                Map<String, Fields.Leaf> fields = fields(now);
                add(kind(now), id, name(fields), Change.CHANGED, Fields.changes(fields(old), fields));
            }
        }
        before.forEach((id, element) -> {
            if (!after.containsKey(id) && !renumbered.containsValue(id)) {
                addAlone(element, Change.REMOVED);
            }
        });
    }

    /** New identity to old one, where exactly one element that went says what exactly one that came says. */
    private static Map<String, String> renumbered(SortedMap<String, Element> before, SortedMap<String, Element> after) {
        Map<Object, List<String>> gone = contents(before, after);
        Map<Object, List<String>> come = contents(after, before);
        Map<String, String> pairs = new LinkedHashMap<>();
        come.forEach((contents, ids) -> {
            List<String> old = gone.getOrDefault(contents, List.of());
            if (ids.size() == 1 && old.size() == 1) {
                pairs.put(ids.get(0), old.get(0));
            }
        });
        return pairs;
    }

    /** Identities of the elements that only the first has, by what they say. */
    private static Map<Object, List<String>> contents(
            SortedMap<String, Element> first, SortedMap<String, Element> second) {
        Map<Object, List<String>> byContents = new LinkedHashMap<>();
        first.forEach((id, element) -> {
            if (!second.containsKey(id)) {
                byContents
                        .computeIfAbsent(fields(element), key -> new ArrayList<>())
                        .add(id);
            }
        });
        return byContents;
    }

    private void addAlone(Element element, Change change) {
        Map<String, Fields.Leaf> fields = fields(element);
        List<FieldChange> told =
                change == Change.ADDED ? Fields.changes(Map.of(), fields) : Fields.changes(fields, Map.of());
        told = told.stream()
                .filter(field -> !field.before().equals(NO) && !field.after().equals(NO))
                .toList();
        add(kind(element), element.id().value(), name(fields), change, told);
    }

    private void positions(SortedMap<String, Position> before, SortedMap<String, Position> after) {
        SortedMap<String, Position> all = new TreeMap<>(NaturalOrder.INSTANCE);
        all.putAll(before);
        all.putAll(after);
        for (String id : all.keySet()) {
            Optional<Position> old = Optional.ofNullable(before.get(id));
            Optional<Position> now = Optional.ofNullable(after.get(id));
            if (!old.equals(now)) {
                Map<String, Fields.Leaf> was = old.map(Fields::of).orElse(Map.of());
                Map<String, Fields.Leaf> is = now.map(Fields::of).orElse(Map.of());
                Change change = old.isEmpty() ? Change.ADDED : now.isEmpty() ? Change.REMOVED : Change.CHANGED;
                add("position on the board", id, "", change, Fields.changes(was, is));
            }
        }
    }

    private void add(String kind, String id, String name, Change change, List<FieldChange> fields) {
        changes.add(new ElementChange(kind, id, "", name, change, fields));
    }

    private static Map<String, Fields.Leaf> fields(Element element) {
        return Fields.of((Record) element);
    }

    private static String name(Map<String, Fields.Leaf> fields) {
        return Optional.ofNullable(fields.get(NAME))
                .map(Fields.Leaf::text)
                .map(Text::english)
                .orElse("");
    }

    /** What people call an element's kind. */
    private static String kind(Element element) {
        return kind(element.getClass());
    }

    static String kind(Class<? extends Element> kind) {
        return kind == Strap.class
                ? "bonding strap"
                : kind.getSimpleName()
                        .replace("ContactPart", "Contact")
                        .replace("StateSequence", "SequenceOfStates")
                        .replaceAll("(\\p{Lower})(\\p{Upper})", "$1 $2")
                        .toLowerCase(Locale.ROOT);
    }
}
