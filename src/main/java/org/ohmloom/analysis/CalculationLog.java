package org.ohmloom.analysis;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The calculation in readable steps, as a tree. Written when it is first asked for: most results are never read line by line, and
 * writing takes as long as many a study. Safe on any thread.
 */
public final class CalculationLog {

    private final Supplier<List<Line>> writer;
    private Optional<List<Line>> written = Optional.empty();

    /**
     * A log not written yet.
     *
     * @param writer writes the lines in order; the same each time
     */
    CalculationLog(Supplier<List<Line>> writer) {
        this.writer = writer;
    }

    /**
     * One line.
     *
     * @param depth 0 for a heading, 1 and more for what belongs to it
     * @param text  the step with its numbers and units
     */
    public record Line(int depth, String text) {}

    /** Lines in order. */
    public synchronized List<Line> lines() {
        if (written.isEmpty()) {
            written = Optional.of(List.copyOf(writer.get()));
        }
        return written.get();
    }

    /** The lines, two spaces deeper for each level. */
    public String text() {
        StringBuilder text = new StringBuilder();
        lines().forEach(line ->
                text.append("  ".repeat(line.depth())).append(line.text()).append('\n'));
        return text.toString();
    }
}
