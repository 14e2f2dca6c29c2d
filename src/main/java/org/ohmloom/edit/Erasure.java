package org.ohmloom.edit;

import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Note;
import org.ohmloom.model.Position;
import org.ohmloom.model.Waiver;
import org.ohmloom.model.WireEnd;

/**
 * Rewrites a harness without some of its elements. Whatever names one of them loses the name where it can be without, and goes
 * with it where it cannot: a wire's end becomes loose, a connector no longer plugs into anything, but a segment goes with the
 * breakout at its end. Waivers of findings about them and notes on them go as well.
 */
final class Erasure extends Rewriting {

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

    @Override
    Optional<Object> identity(ElementId id) {
        return gone.contains(id) ? Optional.empty() : Optional.of(id);
    }

    @Override
    Optional<Object> element(Element element) {
        Optional<Object> left = isAboutGone(element) ? Optional.empty() : rewritten(element);
        if (left.isEmpty()) {
            gone.add(element.id());
            names.add(element.id().value());
        }
        return left;
    }

    @Override
    Optional<Object> instead(Class<?> type) {
        return type == WireEnd.class ? Optional.of(new WireEnd.Loose()) : Optional.empty();
    }

    /** A record that refuses to be without goes as well, as a group of one load; the harness itself must not. */
    @Override
    Optional<Object> refused(Record before, IllegalArgumentException why) {
        if (before instanceof Harness) {
            throw why;
        }
        return Optional.empty();
    }

    private boolean isAboutGone(Element element) {
        return element instanceof Note note
                        && note.about().filter(names::contains).isPresent()
                || element instanceof Waiver waiver
                        && waiver.subjects().stream().anyMatch(names::contains);
    }
}
