package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;
import org.ohmloom.words.Worded;

/**
 * New identities for some elements, each with what speaks against it, to be looked at before they are given.
 *
 * @param lines the elements in their order
 */
public record RenamePlan(List<Line> lines) {

    /**
     * One element.
     *
     * @param old     its identity now
     * @param now     its identity afterwards; that of now where nothing can be made
     * @param problem what speaks against it; empty when nothing does
     */
    public record Line(ElementId old, String now, Text problem) {
        /** Whether nothing is wrong with it. */
        public boolean fits() {
            return problem.equals(Text.NONE);
        }
    }

    public RenamePlan {
        lines = List.copyOf(lines);
    }

    /**
     * Identities by a pattern. What an identity cannot hold becomes a hyphen.
     *
     * @param elements the elements in the order they are counted in
     * @param says     what an element says of itself by a word of the pattern
     */
    public static RenamePlan of(
            Harness harness,
            List<? extends ElementId> elements,
            NamePattern pattern,
            BiFunction<Element, String, Optional<String>> says) {
        List<Line> lines = new ArrayList<>();
        for (int k = 0; k < elements.size(); k++) {
            ElementId old = elements.get(k);
            Element element =
                    harness.element(old.value()).orElseThrow(() -> new UnfitException("there is no %s any more", old));
            try {
                String made = pattern.name(k, old.value(), word -> says.apply(element, word));
                lines.add(new Line(old, fitting(made), Text.NONE));
            } catch (IllegalArgumentException lacking) {
                lines.add(new Line(old, old.value(), Worded.of(lacking)));
            }
        }
        return checked(harness, lines);
    }

    /** Identities as they are given, one for each element. */
    public static RenamePlan of(Harness harness, Map<? extends ElementId, String> wanted) {
        List<Line> lines = new ArrayList<>();
        wanted.forEach((old, now) -> lines.add(new Line(old, now.strip(), Text.NONE)));
        return checked(harness, lines);
    }

    private static String fitting(String made) {
        return made.strip().replaceAll("[^\\p{L}\\p{N}_-]+", "-").replaceAll("-+$", "");
    }

    private static RenamePlan checked(Harness harness, List<Line> lines) {
        Map<String, Integer> wanted = new HashMap<>();
        lines.forEach(line -> wanted.merge(line.now(), 1, Integer::sum));
        Set<String> left = new HashSet<>();
        harness.elements().forEach(element -> left.add(element.id().value()));
        lines.forEach(line -> left.remove(line.old().value()));
        List<Line> checked = new ArrayList<>();
        for (Line line : lines) {
            checked.add(line.fits() ? new Line(line.old(), line.now(), problem(line, wanted, left)) : line);
        }
        return new RenamePlan(checked);
    }

    private static Text problem(Line line, Map<String, Integer> wanted, Set<String> left) {
        if (wanted.getOrDefault(line.now(), 0) > 1) {
            return Refusals.text("%s things would be '%s'", wanted.get(line.now()), line.now());
        }
        if (left.contains(line.now())) {
            return Refusals.text("'%s' is another thing in the harness", line.now());
        }
        try {
            renamed(line);
            return Text.NONE;
        } catch (IllegalArgumentException unfit) {
            return Worded.of(unfit);
        }
    }

    private static ElementId renamed(Line line) {
        return (ElementId) RecordShape.of((Record) line.old()).made(line.now());
    }

    /** Whether all of them can be given and one changes at least. */
    public boolean isReady() {
        return lines.stream().allMatch(Line::fits)
                && lines.stream().anyMatch(line -> !line.now().equals(line.old().value()));
    }

    /** What speaks against it, first come first. */
    public Optional<Text> problem() {
        return lines.stream().filter(line -> !line.fits()).map(Line::problem).findFirst();
    }

    /**
     * The edit that gives the identities, as one step.
     *
     * @throws IllegalArgumentException when something speaks against one of them
     */
    public RenameElements edit() {
        problem().ifPresent(text -> {
            throw new UnfitException(text);
        });
        Map<ElementId, ElementId> renamed = new LinkedHashMap<>();
        lines.forEach(line -> renamed.put(line.old(), renamed(line)));
        return new RenameElements(renamed);
    }
}
