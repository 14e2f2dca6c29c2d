package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Note;
import org.ohmloom.model.Position;
import org.ohmloom.model.Register;
import org.ohmloom.model.UnknownKeys;
import org.ohmloom.model.Waiver;

/**
 * Rewrites a harness with other identities for some of its elements. Whatever names one of them names it by its new identity:
 * the ends of wires, rules, states, notes, waivers, the as-built record, places on the layout and keys kept from the file.
 * Free text that mentions an identity stays as a person wrote it.
 * <p>It walks the components of the model's records, so a field added to the model needs nothing here.
 */
final class IdentityChange {

    /** An identity as a word of a text; what follows a dot is a cavity or a terminal and not an identity. */
    private static final Pattern WORD = Pattern.compile("(?<![.\\p{L}\\p{N}_-])[\\p{L}\\p{N}][\\p{L}\\p{N}_-]*");

    private final Map<ElementId, ElementId> renamed;
    private final Map<String, String> names = new TreeMap<>();

    private IdentityChange(Map<ElementId, ElementId> renamed) {
        this.renamed = renamed;
        renamed.forEach((old, now) -> names.put(old.value(), now.value()));
    }

    /**
     * The harness with those identities.
     *
     * @param renamed new identities by old ones, each of the same kind
     * @throws IllegalArgumentException when two elements would have one identity
     */
    static Harness of(Harness before, Map<ElementId, ElementId> renamed) {
        IdentityChange change = new IdentityChange(renamed);
        Harness after = (Harness) change.rewritten(before);
        SortedMap<String, Position> layout = new TreeMap<>();
        before.layout().forEach((id, position) -> layout.put(change.name(id), position));
        return after.withLayout(layout).withUnknownKeys(change.kept(before.unknownKeys()));
    }

    private String name(String id) {
        return names.getOrDefault(id, id);
    }

    /** A text in which identities are words, as {@code X1.3} or {@code G2, terminal of W7}. */
    private String words(String text) {
        return WORD.matcher(text).replaceAll(found -> Matcher.quoteReplacement(name(found.group())));
    }

    private UnknownKeys kept(UnknownKeys before) {
        SortedMap<String, Map<String, String>> after = new TreeMap<>();
        before.byPlace().forEach((place, keys) -> {
            String[] steps = place.split("/", -1);
            if (steps.length > 1) {
                steps[1] = name(steps[1]);
            }
            after.put(String.join("/", steps), keys);
        });
        return new UnknownKeys(after);
    }

    private Object rewritten(Object value) {
        if (value instanceof ElementId id) {
            return renamed.getOrDefault(id, id);
        }
        if (value instanceof Optional<?> optional) {
            Optional<?> after = optional.map(this::rewritten);
            return optional.isPresent() && after.get() == optional.get() ? optional : after;
        }
        if (value instanceof List<?> list) {
            return rewrittenList(list, this::rewritten);
        }
        if (value instanceof SortedMap<?, ?> map) {
            return rewrittenMap(map);
        }
        if (value instanceof Register<?, ?> register) {
            return rewrittenRegister(register);
        }
        if (value instanceof Note note) {
            return new Note(
                    (org.ohmloom.model.NoteId) rewritten(note.id()),
                    note.about().map(this::words),
                    note.text());
        }
        if (value instanceof Waiver waiver) {
            return rewrittenWaiver(waiver);
        }
        return value instanceof Record held ? rewrittenRecord(held) : value;
    }

    private Waiver rewrittenWaiver(Waiver waiver) {
        List<String> subjects = waiver.subjects().stream().map(this::words).toList();
        return new Waiver(
                (org.ohmloom.model.WaiverId) rewritten(waiver.id()),
                waiver.rule(),
                subjects,
                waiver.reason(),
                waiver.by(),
                waiver.date());
    }

    private static List<?> rewrittenList(List<?> before, UnaryOperator<Object> change) {
        List<Object> after = new ArrayList<>();
        boolean same = true;
        for (Object each : before) {
            Object now = change.apply(each);
            after.add(now);
            same &= now == each;
        }
        return same ? before : after;
    }

    private SortedMap<?, ?> rewrittenMap(SortedMap<?, ?> before) {
        SortedMap<Object, Object> after = new TreeMap<>();
        boolean same = true;
        for (Map.Entry<?, ?> entry : before.entrySet()) {
            Object key = rewritten(entry.getKey());
            Object value = rewritten(entry.getValue());
            after.put(key, value);
            same &= key == entry.getKey() && value == entry.getValue();
        }
        return same ? before : after;
    }

    private Register<?, ?> rewrittenRegister(Register<?, ?> before) {
        List<Element> after = new ArrayList<>();
        boolean same = true;
        for (Element element : before.all()) {
            Element now = (Element) rewritten(element);
            after.add(now);
            same &= now == element;
        }
        return same ? before : Register.of(after);
    }

    private Object rewrittenRecord(Record before) {
        boolean named = before instanceof Measured;
        RecordShape shape = RecordShape.of(before);
        Object[] values = new Object[shape.size()];
        boolean same = true;
        for (int k = 0; k < values.length; k++) {
            Object value = shape.read(before, k);
            Object now = named && value instanceof String text ? words(text) : rewritten(value);
            values[k] = now;
            same &= now == value || now.equals(value);
        }
        return same ? before : shape.made(values);
    }
}
