package org.ohmloom.analysis;

import java.util.List;

/**
 * The calculation in readable steps, as a tree.
 *
 * @param lines lines in order
 */
public record CalculationLog(List<Line> lines) {

    public CalculationLog {
        lines = List.copyOf(lines);
    }

    /**
     * One line.
     *
     * @param depth 0 for a heading, 1 and more for what belongs to it
     * @param text  the step with its numbers and units
     */
    public record Line(int depth, String text) {}

    /** The lines, two spaces deeper for each level. */
    public String text() {
        StringBuilder text = new StringBuilder();
        lines.forEach(line ->
                text.append("  ".repeat(line.depth())).append(line.text()).append('\n'));
        return text.toString();
    }
}
