package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Note;
import org.ohmloom.model.Position;
import org.ohmloom.model.Register;
import org.ohmloom.model.Waiver;
import org.ohmloom.model.WireEnd;

/**
 * Rewrites a harness without some of its elements. Whatever names one of them loses the name where it can be without, and goes
 * with it where it cannot: a wire's end becomes loose, a connector no longer plugs into anything, but a segment goes with the
 * breakout at its end. Waivers of findings about them and notes on them go as well.
 * <p>It walks the components of the model's records, so a field added to the model needs nothing here.
 */
final class Erasure {

    private final Set<ElementId> gone;
    private final Set<String> names = new HashSet<>();

    private Erasure(Collection<? extends ElementId> elements) {
        this.gone = new HashSet<>(elements);
        elements.forEach(id -> names.add(id.value()));
    }

    /** The harness without those elements and without what cannot be without them. */
    static Harness of(Harness before, Collection<? extends ElementId> elements) {
        Erasure erasure = new Erasure(elements);
        int known;
        do {
            known = erasure.gone.size();
            before.registers().forEach(erasure::rewrittenRegister);
        } while (erasure.gone.size() > known);
        Harness after = (Harness) erasure.rewritten(before)
                .orElseThrow(() -> new IllegalStateException("a harness cannot be without " + elements));
        SortedMap<String, Position> layout = new TreeMap<>(after.layout());
        layout.keySet().removeAll(erasure.names);
        return layout.size() == after.layout().size() ? after : after.withLayout(layout);
    }

    /** A value without names of what is gone; empty when it cannot be without. */
    private Optional<Object> rewritten(Object value) {
        if (value instanceof ElementId id) {
            return gone.contains(id) ? Optional.empty() : Optional.of(value);
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
        return value instanceof Record held ? rewrittenRecord(held) : Optional.of(value);
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
            same &= key.isPresent() && value.isPresent() && value.get() == entry.getValue();
        }
        return same ? before : after;
    }

    private Register<?, ?> rewrittenRegister(Register<?, ?> before) {
        List<Element> after = new ArrayList<>();
        boolean same = true;
        for (Element element : before.all()) {
            Optional<Object> left = isAboutGone(element) ? Optional.empty() : rewritten(element);
            if (left.isPresent()) {
                after.add((Element) left.get());
            } else {
                gone.add(element.id());
                names.add(element.id().value());
            }
            same &= left.isPresent() && left.get() == element;
        }
        return same ? before : Register.of(after);
    }

    private boolean isAboutGone(Element element) {
        return element instanceof Note note
                        && note.about().filter(names::contains).isPresent()
                || element instanceof Waiver waiver
                        && waiver.subjects().stream().anyMatch(names::contains);
    }

    private Optional<Object> rewrittenRecord(Record before) {
        RecordShape shape = RecordShape.of(before);
        Object[] values = new Object[shape.size()];
        boolean same = true;
        for (int k = 0; k < values.length; k++) {
            Object value = shape.read(before, k);
            Optional<Object> left = rewritten(value);
            if (left.isEmpty() && shape.type(k) == WireEnd.class) {
                left = Optional.of(new WireEnd.Loose());
            }
            if (left.isEmpty()) {
                return Optional.empty();
            }
            values[k] = left.get();
            same &= left.get() == value;
        }
        return same ? Optional.of(before) : anew(before, shape, values);
    }

    /** A record of other values; empty when it refuses them, as a group of one load. The harness itself must not. */
    private static Optional<Object> anew(Record before, RecordShape shape, Object... values) {
        try {
            return Optional.of(shape.made(values));
        } catch (IllegalArgumentException refused) {
            if (before instanceof Harness) {
                throw refused;
            }
            return Optional.empty();
        }
    }
}
