package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Totals;
import org.ohmloom.analysis.revision.Change;
import org.ohmloom.analysis.revision.ElementChange;
import org.ohmloom.analysis.revision.FieldChange;
import org.ohmloom.analysis.revision.FindingChange;
import org.ohmloom.analysis.revision.ResultChange;
import org.ohmloom.analysis.revision.RevisionComparison;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.review.Severity;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Quantity;

/** The change sheet as a report: totals of both revisions, then elements, findings, parts and results that differ. */
final class ChangeReport {
    private static final List<Column> TOTALS =
            List.of(Column.words("In all"), Column.code("Before"), Column.code("After"));

    private static final List<Column> ELEMENTS = List.of(
            Column.words("Kind"),
            Column.code("Id"),
            Column.words("Name"),
            Column.code("Change"),
            Column.words("Field"),
            Column.words("Before"),
            Column.words("After"));

    private static final List<Column> RESULTS = List.of(
            Column.code("Of"),
            Column.words("Name"),
            Column.words("Number"),
            Column.code("Before"),
            Column.code("After"),
            Column.count("Change %", 1));

    private static final List<Column> FINDINGS = List.of(
            Column.code("Change"),
            Column.words("Now"),
            Column.words("Before"),
            Column.words("Where"),
            Column.words("Finding"),
            Column.code("Rule"));

    private static final String REMARK = "Elements are told apart by their ids. Numbers are listed where they differ by"
            + " 1 % or more; those of wires and loads that only one revision has stand in its own documents.";

    private final RevisionComparison comparison;

    ChangeReport(RevisionComparison comparison) {
        this.comparison = comparison;
    }

    Report report() {
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(comparison.after().harness()));
        blocks.add(new Block.Heading("From " + revision(comparison.before()) + " to " + revision(comparison.after())));
        blocks.add(new Block.Prose(summary()));
        blocks.add(totals());
        blocks.add(new Block.Heading("Added, removed and changed"));
        blocks.add(elements());
        blocks.add(new Block.Heading("What it does to the findings"));
        blocks.add(findings());
        blocks.add(new Block.Heading("Parts to buy"));
        blocks.add(new PartChanges(comparison).table());
        blocks.add(new Block.Heading("What it does to the numbers"));
        blocks.add(results());
        return new Report(blocks, REMARK);
    }

    private static String revision(Analysis analysis) {
        var block = analysis.harness().titleBlock();
        return block.number() + " revision " + block.currentRevision();
    }

    private String summary() {
        if (comparison.isSame()) {
            return "Both say the same.";
        }
        return comparison.count(Change.ADDED) + " added, " + comparison.count(Change.REMOVED) + " removed, "
                + comparison.count(Change.CHANGED) + " changed, " + comparison.count(Change.RENUMBERED)
                + " renumbered; " + Wording.count(comparison.results().size(), "number") + " and "
                + Wording.count(comparison.findings().size(), "finding") + " differ.";
    }

    private Block totals() {
        Analysis before = comparison.before();
        Analysis after = comparison.after();
        Totals old = before.totals();
        Totals now = after.totals();
        List<Row> rows = new ArrayList<>();
        rows.add(total("Wires to be made", String.valueOf(old.wires()), String.valueOf(now.wires())));
        rows.add(total("Length of them", Formats.metres(old.lengthMetres()), Formats.metres(now.lengthMetres())));
        rows.add(total("Copper in them", Formats.kilograms(old.copperKg()), Formats.kilograms(now.copperKg())));
        rows.add(total("Connectors to be fitted", String.valueOf(old.connectors()), String.valueOf(now.connectors())));
        rows.add(total(
                "Largest drop of any load while on",
                Formats.volts(old.worstDropVolts()),
                Formats.volts(now.worstDropVolts())));
        for (Severity severity : Severity.values()) {
            rows.add(total(
                    "Open findings, " + severity.name().toLowerCase(Locale.ROOT),
                    String.valueOf(before.count(severity)),
                    String.valueOf(after.count(severity))));
        }
        return new Block.Table("totals", TOTALS, rows, "");
    }

    private static Row total(String what, String before, String after) {
        Cell now = Cell.text(after);
        return Row.of(
                Cell.text(what),
                Cell.text(before),
                before.equals(after) ? now.toned(Cell.Tone.SOFT) : now.toned(Cell.Tone.STRONG));
    }

    private Block elements() {
        List<Row> rows = new ArrayList<>();
        String kind = "";
        for (ElementChange change : comparison.elements()) {
            if (!change.kind().equals(kind)) {
                kind = change.kind();
                rows.add(Row.group(kind.substring(0, 1).toUpperCase(Locale.ROOT) + kind.substring(1)));
            }
            addRows(change, rows);
        }
        return new Block.Table("elements", ELEMENTS, rows, "No element was added, removed or changed.");
    }

    private static void addRows(ElementChange change, List<Row> rows) {
        if (change.fields().isEmpty()) {
            rows.add(row(change, true, FieldChange.ofIdentity(change)));
        }
        boolean first = true;
        for (FieldChange field : change.fields()) {
            rows.add(row(change, first, field));
            first = false;
        }
    }

    /** The page names an element once and lists its fields below; the file beside it names it on every line. */
    private static Row row(ElementChange change, boolean first, FieldChange field) {
        Cell.Tone tone = first ? Cell.Tone.STRONG : Cell.Tone.SOFT;
        return Row.of(
                Cell.text(change.kind()).toned(Cell.Tone.SOFT),
                Cell.text(change.id()).toned(tone),
                Cell.text(change.name()).toned(first ? Cell.Tone.PLAIN : Cell.Tone.SOFT),
                Cell.text(change.change().word()).toned(tone),
                Cell.text(field.field()),
                Cell.text(field.before()),
                Cell.text(field.after()));
    }

    private Block results() {
        List<Row> rows = new ArrayList<>();
        for (ResultChange change : comparison.results()) {
            OptionalDouble growth = change.growthFraction();
            rows.add(Row.of(
                    Cell.text(change.subject()).toned(Cell.Tone.STRONG),
                    Cell.text(change.name()),
                    Cell.text(change.quantity()),
                    value(change.before()),
                    value(change.after()),
                    growth.isPresent() ? Cell.number(100 * growth.getAsDouble()) : Cell.empty()));
        }
        return new Block.Table("results", RESULTS, rows, "No number differs by 1 % or more.");
    }

    private static Cell value(Optional<Quantity> value) {
        String text = ResultChange.text(value);
        return value.isPresent() ? Cell.text(text) : Cell.missing(text);
    }

    private Block findings() {
        List<Row> rows = new ArrayList<>();
        for (FindingChange change : comparison.findings()) {
            boolean gone = change.change() == Change.REMOVED;
            String now =
                    gone ? "" : RevisionComparison.standing(change.finding()).english();
            boolean alarming =
                    change.change() == Change.ADDED && change.finding().severity() == Severity.ERROR;
            rows.add(Row.of(
                    Cell.text(change.word()).toned(Cell.Tone.STRONG),
                    alarming ? Cell.missing(now) : Cell.text(now),
                    Cell.text(change.was().english()),
                    Cell.text(String.join(", ", change.finding().subjects())),
                    Cell.text(Wording.printed(change.finding().message())),
                    Cell.text(change.finding().rule())));
        }
        return new Block.Table("findings", FINDINGS, rows, "The findings are the same.");
    }
}
