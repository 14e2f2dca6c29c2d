package org.ohmloom.model;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/** Thrown when a reference in a harness leads to no element. */
public final class BrokenReferenceException extends UnfitException {

    private static final long serialVersionUID = 1L;

    private final String place;
    private final String target;
    private final transient Text problem;
    private final transient Optional<String> nearest;

    BrokenReferenceException(String place, String target, Text kind, Collection<String> names) {
        super(Text.joined(": ", List.of(Text.of(place), problem(target, kind, names))));
        this.place = place;
        this.target = target;
        this.problem = problem(target, kind, names);
        this.nearest = NearestText.to(target, names);
    }

    private static Text problem(String target, Text kind, Collection<String> names) {
        return Refusals.text("no %s '%s'%s", kind, target, NearestText.questionOrNone(target, names));
    }

    /** Where the reference stands: section, id and keys, for example {@code wires/W3/from/connector}. */
    public String place() {
        return place;
    }

    /** What it names. */
    public String target() {
        return target;
    }

    /** What is wrong, without the place. */
    public Text problem() {
        return problem == null ? words() : problem;
    }

    /** The existing name nearest to it by count of changed letters, if there is any name. */
    public Optional<String> nearest() {
        return nearest == null ? Optional.empty() : nearest;
    }
}
