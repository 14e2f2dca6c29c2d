package org.ohmloom.edit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
import org.ohmloom.model.Note;
import org.ohmloom.model.Position;
import org.ohmloom.model.UnknownKeys;
import org.ohmloom.model.Waiver;

/**
 * Rewrites a harness with other identities for some of its elements. Whatever names one of them names it by its new identity:
 * the ends of wires, rules, states, notes, waivers, the as-built record, places on the layout and keys kept from the file.
 * Free text that mentions an identity stays as a person wrote it.
 */
final class IdentityChange extends Rewriting {

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
        Harness after = (Harness) change.rewritten(before)
                .orElseThrow(() -> new IllegalStateException("a harness cannot go when its things are renamed"));
        SortedMap<String, Position> layout = new TreeMap<>();
        before.layout().forEach((id, position) -> layout.put(change.name(id), position));
        return after.withLayout(layout).withUnknownKeys(change.kept(before.unknownKeys()));
    }

    private String name(String id) {
        return names.getOrDefault(id, id);
    }

    /** A text in which identities are words, as {@code X1.3} or {@code G2, terminal of W7}. */
    private String words(String text) {
        String after = WORD.matcher(text).replaceAll(found -> Matcher.quoteReplacement(name(found.group())));
        return after.equals(text) ? text : after;
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

    @Override
    Optional<Object> identity(ElementId id) {
        return Optional.of(renamed.getOrDefault(id, id));
    }

    @Override
    Optional<Object> record(Record before) {
        if (before instanceof Note note) {
            return Optional.of(new Note(renamed(note.id()), note.about().map(this::words), note.text()));
        }
        if (before instanceof Waiver waiver) {
            List<String> subjects = waiver.subjects().stream().map(this::words).toList();
            return Optional.of(new Waiver(
                    renamed(waiver.id()), waiver.rule(), subjects, waiver.reason(), waiver.by(), waiver.date()));
        }
        return walked(before);
    }

    /** What was measured names what it was measured on in texts. */
    @Override
    Optional<Object> component(Record holder, Object value) {
        return holder instanceof Measured && value instanceof String text ? Optional.of(words(text)) : rewritten(value);
    }

    @SuppressWarnings("unchecked") // an identity is renamed to one of its kind
    private <I extends ElementId> I renamed(I id) {
        return (I) renamed.getOrDefault(id, id);
    }
}
