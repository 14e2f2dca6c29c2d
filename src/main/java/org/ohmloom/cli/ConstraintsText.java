package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.Governor;

/** For each wire the size each constraint asks for, in one table; the one that governs is marked. */
final class ConstraintsText {

    private ConstraintsText() {}

    static void print(Analysis analysis, PrintWriter out) {
        List<ConductorChoice> choices = List.copyOf(analysis.conductors().values());
        List<Governor> governors = Arrays.stream(Governor.values())
                .filter(governor -> choices.stream()
                        .flatMap(choice -> choice.requirements().stream())
                        .anyMatch(requirement -> requirement.governor() == governor))
                .toList();
        if (governors.isEmpty()) {
            return;
        }
        TextTable table = new TextTable().left("WIRE").left("NEEDS");
        governors.forEach(governor -> table.left(governor.words().toUpperCase(Locale.ROOT)));
        for (ConductorChoice choice : choices) {
            String[] cells = new String[2 + governors.size()];
            cells[0] = choice.wire().value();
            cells[1] = choice.gauge().map(gauge -> gauge.text()).orElse("none fits");
            for (int k = 0; k < governors.size(); k++) {
                cells[2 + k] = cell(choice, governors.get(k));
            }
            table.row(cells);
        }
        out.println();
        out.println("WHAT EACH WIRE NEEDS, BY CONSTRAINT (> governs; 'size' and JSON say why)");
        table.print(out);
    }

    private static String cell(ConductorChoice choice, Governor governor) {
        return choice.requirements().stream()
                .filter(requirement -> requirement.governor() == governor)
                .findFirst()
                .map(requirement -> (requirement.equals(choice.governing()) ? "> " : "")
                        + requirement.smallest().map(gauge -> gauge.text()).orElse("none fits"))
                .orElse("-");
    }
}
