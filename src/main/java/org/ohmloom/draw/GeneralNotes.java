package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.tables.LengthTolerance;
import org.ohmloom.tables.Status;
import org.ohmloom.units.Formats;

/** The general notes of a drawing: how it is to be read, what is allowed, and how the harness is made, marked and tested. */
final class GeneralNotes {

    /** Number of the note on tolerances, which the title block names. */
    static final int TOLERANCE_NOTE = 3;

    private final Harness harness;
    private final Optional<FabricationTables> tables;

    GeneralNotes(Harness harness, Optional<FabricationTables> tables) {
        this.harness = harness;
        this.tables = tables;
    }

    List<String> all() {
        return List.of(
                "Not to scale; lengths in mm. The harness is laid out flat: no projection applies.",
                "Each dimension reads from breakout centre to breakout centre. At a connector its datum is the rear face, at a"
                        + " ring terminal the middle of its hole. D1, D2: datums of the running dimensions.",
                tolerances(),
                "Connectors are seen from the wire side; the black corner marks the cavity named under the view. The names"
                        + " moulded into the housing decide.",
                "Wire sizes of a bundle from the smallest to the largest. Thickness of lines grows with the count of wires."
                        + " Insulation colours by the letter codes of IEC 60757.",
                workmanship(),
                bundling(),
                labelling(),
                "Testing: every harness, by the test sheet of this number and revision, before it leaves the bench.");
    }

    private String tolerances() {
        String rows = tables.map(GeneralNotes::rows).orElse("as agreed");
        return "Lengths may be longer, never shorter: " + rows + ". A tolerance at a dimension comes first.";
    }

    /** The rows of the table, "+25 up to 300, +50 up to 1500, ... (document, table)". */
    static String rows(FabricationTables tables) {
        List<String> words = new ArrayList<>();
        double beyond = 0;
        String source = "";
        while (true) {
            LengthTolerance row = tables.tolerance(beyond);
            String plus = row.plusMetres().isPresent()
                    ? "+" + Words.millimetres(row.plusMetres().getAsDouble())
                    : "+" + Formats.percent(row.plusFraction().orElse(0));
            source = row.citation().document() + ", " + row.citation().table();
            if (row.upToMetres().isEmpty()) {
                words.add("beyond " + plus + status(row));
                return String.join(", ", words) + " (" + source + ")";
            }
            words.add("up to " + Words.millimetres(row.upToMetres().getAsDouble()) + " " + plus + status(row));
            beyond = Math.nextUp(row.upToMetres().getAsDouble());
        }
    }

    private static String status(LengthTolerance row) {
        Status status = row.citation().status();
        return status == Status.PUBLISHED ? "" : " (" + status.words() + ")";
    }

    private String workmanship() {
        String wanted = harness.rules()
                .fabricationRules()
                .workmanshipClass()
                .flatMap(number ->
                        tables.map(each -> each.workmanshipClass(number).text()))
                .orElse("IPC/WHMA-A-620, class 1, 2 or 3 as ordered");
        return "Workmanship: " + wanted + "; crimps with the tool that the contact's maker names.";
    }

    private String bundling() {
        FabricationRules rules = harness.rules().fabricationRules();
        String support = rules.supportSpacingMetres().isPresent()
                ? ", supports at most every "
                        + Words.millimetres(rules.supportSpacingMetres().getAsDouble()) + " mm"
                : "";
        return "Bundling: coverings from bar to bar, over the whole segment" + support
                + ". Marks of supports and ties stand where there is room for them; the table of segments lists all.";
    }

    private String labelling() {
        String wires = tables.map(each -> "Labelling: each wire "
                        + Words.millimetres(each.value("label-first").value()) + " mm from both ends and at most every "
                        + Words.millimetres(harness.rules()
                                .fabricationRules()
                                .labelSpacingMetres()
                                .orElse(each.value("label-spacing").value()))
                        + " mm")
                .orElse("Labelling: each wire at both ends");
        return wires + "; each connector at its wires where the drawing shows a label.";
    }
}
