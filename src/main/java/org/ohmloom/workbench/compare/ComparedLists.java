package org.ohmloom.workbench.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ohmloom.analysis.revision.Change;
import org.ohmloom.analysis.revision.ElementChange;
import org.ohmloom.analysis.revision.FieldChange;
import org.ohmloom.analysis.revision.FindingChange;
import org.ohmloom.analysis.revision.ResultChange;
import org.ohmloom.analysis.revision.RevisionComparison;
import org.ohmloom.pack.PartChange;
import org.ohmloom.review.Severity;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.widget.Tone;

/** The lists of a comparison: elements field by field, parts, numbers, findings. */
final class ComparedLists {

    private ComparedLists() {}

    /**
     * One line of a comparison.
     *
     * @param key   what tells it from the others
     * @param about ids of the elements it is about
     * @param line  what it tells
     */
    record Row<T>(String key, List<String> about, T line) {}

    /**
     * One field of a changed element, or the element itself where it has none to tell.
     *
     * @param change the element
     * @param field  the field
     */
    record Field(ElementChange change, FieldChange field) {}

    /** A list whose rows come with the comparison and not with the results on the desk. */
    private record Told<T>(String title, List<Column<Row<T>>> columns, Supplier<List<Row<T>>> lines)
            implements Sheet<Row<T>> {
        @Override
        public List<Row<T>> rows(Readout readout) {
            return lines.get();
        }

        @Override
        public String key(Row<T> row) {
            return row.key();
        }

        @Override
        public List<String> about(Row<T> row) {
            return row.about();
        }
    }

    private static <T> Column<Row<T>> text(String title, String tip, int letters, Function<T, String> text) {
        return Column.<Row<T>>text(title, tip, letters, row -> text.apply(row.line()))
                .quantities();
    }

    private static <T> Column<Row<T>> toned(String title, String tip, int letters, Function<T, CellText> cell) {
        return new Column<>(title, "", tip, letters, row -> cell.apply(row.line()), Optional.empty());
    }

    private static <T> Column<Row<T>> number(String title, String unit, String tip, Function<T, CellText> cell) {
        return Column.number(title, unit, tip, row -> cell.apply(row.line()));
    }

    /** Elements added, removed, changed and renumbered, a line for each field. */
    static Sheet<Row<Field>> elements(Supplier<Optional<RevisionComparison>> comparison) {
        List<Column<Row<Field>>> columns = List.of(
                text("Kind", "What it is", 11, field -> field.change().kind()),
                text("Id", "Identity", 7, field -> field.change().id()),
                text("Name", "What people call it", 16, field -> field.change().name()),
                toned(
                        "Change",
                        "What became of it",
                        9,
                        field -> word(field.change().change())),
                text("Field", "What of it is other", 17, field -> field.field().field()),
                text("Before", "In the old revision", 16, field -> field.field().before()),
                text("After", "As it is now", 16, field -> field.field().after()));
        return new Told<>(
                "Added, removed, changed",
                columns,
                () -> comparison.get().map(ComparedLists::fields).orElse(List.of()));
    }

    private static CellText word(Change change) {
        Tone tone =
                switch (change) {
                    case ADDED -> Tone.GOOD;
                    case REMOVED -> Tone.ERROR;
                    case CHANGED, RENUMBERED -> Tone.NOTE;
                };
        return CellText.of(change.word()).in(tone);
    }

    private static List<Row<Field>> fields(RevisionComparison comparison) {
        List<Row<Field>> rows = new ArrayList<>();
        for (ElementChange change : comparison.elements()) {
            List<FieldChange> fields = change.fields().isEmpty()
                    ? List.of(new FieldChange(change.was().isEmpty() ? "" : "id", change.was(), change.id()))
                    : change.fields();
            for (FieldChange field : fields) {
                rows.add(new Row<>(
                        change.kind() + "|" + change.id() + "|" + field.field(),
                        change.id().isEmpty() ? List.of() : List.of(change.id()),
                        new Field(change, field)));
            }
        }
        return rows;
    }

    /** Parts to buy more or less of. */
    static Sheet<Row<PartChange>> parts(Supplier<List<PartChange>> parts) {
        List<Column<Row<PartChange>>> columns = List.of(
                text("Group", "Group of the bill of materials", 14, PartChange::group),
                text(
                        "Part number",
                        "Part number",
                        18,
                        change -> change.number().isEmpty() ? "not chosen" : change.number()),
                text("Description", "What it is", 40, PartChange::description),
                text("Colour", "Colour of a wire", 8, change -> change.colour()
                        .map(each -> each.text())
                        .orElse("")),
                text("Unit", "What is counted", 7, PartChange::unit),
                number("Before", "", "Quantity in the old revision", change -> CellText.of(change.before())),
                number("After", "", "Quantity now", change -> CellText.of(change.after())),
                number("Difference", "", "How many more, or less", change -> CellText.of(change.difference())));
        return new Told<>("Parts", columns, () -> {
            List<Row<PartChange>> rows = new ArrayList<>();
            parts.get().forEach(change -> rows.add(new Row<>("part " + rows.size(), List.of(), change)));
            return rows;
        });
    }

    /** Computed numbers that differ. */
    static Sheet<Row<ResultChange>> results(Supplier<Optional<RevisionComparison>> comparison) {
        List<Column<Row<ResultChange>>> columns = List.of(
                text(
                        "Of",
                        "What it is a number of",
                        10,
                        change -> change.subject().isEmpty() ? "whole" : change.subject()),
                text("Name", "What people call it", 15, ResultChange::name),
                text("Number", "What is other", 24, ResultChange::quantity),
                text("Before", "In the old revision", 12, change -> ResultChange.text(change.before())),
                text("After", "As it is now", 12, change -> ResultChange.text(change.after())),
                number(
                        "Difference",
                        "",
                        "By how much it grew",
                        change -> change.difference().isPresent()
                                ? CellText.of(
                                        ResultChange.difference(change),
                                        change.difference().getAsDouble())
                                : CellText.EMPTY),
                number("Change", "%", "By how much it grew, as a share of what it was", change -> {
                    OptionalDouble growth = change.growthFraction();
                    return growth.isPresent() ? CellText.of(100 * growth.getAsDouble()) : CellText.EMPTY;
                }),
                number(
                        "Size",
                        "%",
                        "Size of the change, whichever way: share of the larger value; a temperature by 100 K",
                        change -> CellText.of(100 * change.sizeFraction())));
        return new Told<>("Numbers", columns, () -> {
            List<Row<ResultChange>> rows = new ArrayList<>();
            comparison.get().stream()
                    .flatMap(each -> Stream.concat(each.totals().stream(), each.results().stream()))
                    .forEach(change -> rows.add(new Row<>(
                            change.subject() + "|" + change.quantity(),
                            change.subject().isEmpty() ? List.of() : List.of(change.subject()),
                            change)));
            return rows;
        });
    }

    /** Findings that came, went or stand otherwise. */
    static Sheet<Row<FindingChange>> findings(Supplier<Optional<RevisionComparison>> comparison) {
        List<Column<Row<FindingChange>>> columns = List.of(
                toned("Change", "New, gone or changed", 9, ComparedLists::word),
                text(
                        "Now",
                        "How it stands",
                        18,
                        change ->
                                change.change() == Change.REMOVED ? "" : RevisionComparison.standing(change.finding())),
                text("Before", "How it stood", 18, FindingChange::was),
                text("Finding", "What was found", 90, change -> change.finding().message()),
                text("Rule", "Which rule found it", 24, change -> change.finding()
                        .rule()));
        return new Told<>("Findings", columns, () -> {
            List<Row<FindingChange>> rows = new ArrayList<>();
            comparison.get().stream()
                    .flatMap(each -> each.findings().stream())
                    .forEach(change -> rows.add(
                            new Row<>("finding " + rows.size(), change.finding().subjects(), change)));
            return rows;
        });
    }

    private static CellText word(FindingChange change) {
        boolean worse = change.change() == Change.ADDED && change.finding().severity() != Severity.NOTE;
        Tone tone = change.change() == Change.REMOVED ? Tone.GOOD : worse ? Tone.ERROR : Tone.NOTE;
        return CellText.of(change.word()).in(tone);
    }
}
