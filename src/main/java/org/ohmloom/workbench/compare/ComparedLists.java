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
import org.ohmloom.units.Quantity;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.widget.TipText;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The lists of a comparison: elements field by field, parts, numbers, findings. */
final class ComparedLists {
    private static final Words WORDS = Words.of("revision");

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
     * @param behind what went with something that is gone, which the pointer tells
     */
    record Field(ElementChange change, FieldChange field, List<FieldChange> behind) {}

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

    private static <T> Column<Row<T>> text(Term title, String tip, int letters, Function<T, String> text) {
        return Column.<Row<T>>text(title, tip, letters, row -> text.apply(row.line()))
                .quantities();
    }

    private static <T> Column<Row<T>> toned(Term title, String tip, int letters, Function<T, CellText> cell) {
        return new Column<>(title, "", tip, letters, row -> cell.apply(row.line()), Optional.empty());
    }

    private static <T> Column<Row<T>> number(Term title, String unit, String tip, Function<T, CellText> cell) {
        return Column.number(title, unit, tip, row -> cell.apply(row.line()));
    }

    /** Elements added, removed, changed and renumbered, a line for each field. */
    static Sheet<Row<Field>> elements(Supplier<Optional<RevisionComparison>> comparison) {
        List<Column<Row<Field>>> columns = List.of(
                text(
                        WORDS.term("compared-lists.kind"),
                        WORDS.get("compared-lists.kind.about"),
                        10,
                        field -> Words.said(field.change().kindText())),
                text(WORDS.term("compared-lists.id"), WORDS.get("compared-lists.id.about"), 7, field -> field.change()
                        .id()),
                text(
                        WORDS.term("compared-lists.name"),
                        WORDS.get("compared-lists.name.about"),
                        15,
                        field -> field.change().name()),
                toned(
                        WORDS.term("compared-lists.change"),
                        WORDS.get("compared-lists.change.about"),
                        9,
                        field -> word(field.change().change())),
                text(
                        WORDS.term("compared-lists.field"),
                        WORDS.get("compared-lists.field.about"),
                        21,
                        field -> Words.said(field.field().fieldText())),
                toned(
                                WORDS.term("compared-lists.before"),
                                WORDS.get("compared-lists.before.about"),
                                16,
                                ComparedLists::before)
                        .quantities(),
                text(
                        WORDS.term("compared-lists.after"),
                        WORDS.get("compared-lists.after.about"),
                        16,
                        field -> Words.said(field.field().afterText())));
        return new Told<>(
                WORDS.get("compared-lists.added-removed-changed"),
                columns,
                () -> comparison.get().map(ComparedLists::fields).orElse(List.of()));
    }

    private static CellText before(Field field) {
        CellText shown = CellText.of(Words.said(field.field().beforeText()));
        return field.behind().isEmpty()
                ? shown
                : shown.in(Tone.SOFT)
                        .saying(TipText.lines(field.behind().stream()
                                .map(gone -> Words.said(gone.fieldText()) + ": " + Words.said(gone.beforeText()))
                                .toList()));
    }

    private static CellText word(Change change) {
        Tone tone =
                switch (change) {
                    case ADDED -> Tone.GOOD;
                    case REMOVED -> Tone.ERROR;
                    case CHANGED, RENUMBERED -> Tone.NOTE;
                };
        return CellText.of(TradeWords.named(change)).in(tone);
    }

    private static List<Row<Field>> fields(RevisionComparison comparison) {
        List<Row<Field>> rows = new ArrayList<>();
        for (ElementChange change : comparison.elements()) {
            for (Field field : told(change)) {
                rows.add(new Row<>(
                        change.kind() + "|" + change.id() + "|" + field.field().field(),
                        change.id().isEmpty() ? List.of() : List.of(change.id()),
                        field));
            }
        }
        return rows;
    }

    /** A line for each field; one for all that went with an element, or with something in it. */
    private static List<Field> told(ElementChange change) {
        List<FieldChange> fields = change.fields();
        if (fields.isEmpty()) {
            return List.of(new Field(change, FieldChange.ofIdentity(change), List.of()));
        }
        if (change.change() == Change.REMOVED) {
            return List.of(gone(change, Text.NONE, fields));
        }
        List<Field> told = new ArrayList<>();
        for (int from = 0, to; from < fields.size(); from = to) {
            FieldChange first = fields.get(from);
            to = from + 1;
            while (to < fields.size() && goesWith(first, fields.get(to))) {
                to++;
            }
            told.add(
                    to == from + 1
                            ? new Field(change, first, List.of())
                            : gone(change, first.aboveText(), fields.subList(from, to)));
        }
        return told;
    }

    private static boolean goesWith(FieldChange first, FieldChange next) {
        return first.isGone()
                && next.isGone()
                && !first.aboveText().equals(Text.NONE)
                && first.aboveText().equals(next.aboveText());
    }

    private static Field gone(ElementChange change, Text what, List<FieldChange> fields) {
        Text all = WORDS.text("compared-lists.all-gone", fields.size());
        return new Field(change, new FieldChange(Text.NONE, what, all, Text.NONE), fields);
    }

    /** Parts to buy more or less of. */
    static Sheet<Row<PartChange>> parts(Supplier<List<PartChange>> parts) {
        List<Column<Row<PartChange>>> columns = List.of(
                text(
                        WORDS.term("compared-lists.group"),
                        WORDS.get("compared-lists.group.about"),
                        10,
                        change -> Words.said(change.groupText())),
                text(
                        WORDS.term("compared-lists.part-number"),
                        WORDS.get("compared-lists.part-number.about"),
                        12,
                        change -> change.numberText().english().isEmpty()
                                ? WORDS.get("compared-lists.not-chosen")
                                : Words.said(change.numberText())),
                text(
                        WORDS.term("compared-lists.description"),
                        WORDS.get("compared-lists.description.about"),
                        22,
                        change -> Words.said(change.what())),
                text(
                        WORDS.term("compared-lists.colour"),
                        WORDS.get("compared-lists.colour.about"),
                        6,
                        change -> change.colour().map(each -> each.text()).orElse("")),
                text(
                        WORDS.term("compared-lists.unit"),
                        WORDS.get("compared-lists.unit.about"),
                        4,
                        change -> Words.said(change.unitText())),
                number(
                        WORDS.term("compared-lists.before"),
                        "",
                        WORDS.get("compared-lists.before-quantity-in-the"),
                        change -> CellText.of(change.before())),
                number(
                        WORDS.term("compared-lists.after"),
                        "",
                        WORDS.get("compared-lists.after-quantity-now"),
                        change -> CellText.of(change.after())),
                number(
                        WORDS.term("compared-lists.difference"),
                        "",
                        WORDS.get("compared-lists.difference.about"),
                        change -> CellText.of(change.difference())));
        return new Told<>(WORDS.get("compared-lists.parts"), columns, () -> {
            List<Row<PartChange>> rows = new ArrayList<>();
            parts.get()
                    .forEach(change ->
                            rows.add(new Row<>(WORDS.get("compared-lists.part", rows.size()), List.of(), change)));
            return rows;
        });
    }

    /** Computed numbers that differ. */
    static Sheet<Row<ResultChange>> results(Supplier<Optional<RevisionComparison>> comparison) {
        List<Column<Row<ResultChange>>> columns = List.of(
                text(
                        WORDS.term("compared-lists.of"),
                        WORDS.get("compared-lists.of.about"),
                        10,
                        change -> change.subject().isEmpty() ? WORDS.get("compared-lists.whole") : change.subject()),
                text(WORDS.term("compared-lists.name"), WORDS.get("compared-lists.name.about"), 15, ResultChange::name),
                text(
                        WORDS.term("compared-lists.number"),
                        WORDS.get("compared-lists.number.about"),
                        24,
                        change -> Words.said(change.quantityText())),
                number(
                        WORDS.term("compared-lists.before"),
                        "",
                        WORDS.get("compared-lists.before.about"),
                        change -> value(change.before())),
                number(
                        WORDS.term("compared-lists.after"),
                        "",
                        WORDS.get("compared-lists.after.about"),
                        change -> value(change.after())),
                number(
                        WORDS.term("compared-lists.difference"),
                        "",
                        WORDS.get("compared-lists.difference-by-how-much"),
                        change -> change.difference().isPresent()
                                ? CellText.of(
                                        ResultChange.difference(change),
                                        change.difference().getAsDouble())
                                : CellText.EMPTY),
                number(
                        WORDS.term("compared-lists.change"),
                        "%",
                        WORDS.get("compared-lists.change-by-how-much"),
                        change -> {
                            OptionalDouble growth = change.growthFraction();
                            return growth.isPresent() ? CellText.of(100 * growth.getAsDouble()) : CellText.EMPTY;
                        }),
                number(
                        WORDS.term("compared-lists.size"),
                        "%",
                        WORDS.get("compared-lists.size.about"),
                        change -> CellText.of(100 * change.sizeFraction())));
        return new Told<>(WORDS.get("compared-lists.numbers"), columns, () -> {
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

    private static CellText value(Optional<Quantity> value) {
        String text = Words.said(ResultChange.said(value));
        return value.map(each -> CellText.of(text, each.value())).orElseGet(() -> CellText.of(text));
    }

    /** Findings that came, went or stand otherwise. */
    static Sheet<Row<FindingChange>> findings(Supplier<Optional<RevisionComparison>> comparison) {
        List<Column<Row<FindingChange>>> columns = List.of(
                toned(
                        WORDS.term("compared-lists.change"),
                        WORDS.get("compared-lists.change-new-gone-or"),
                        9,
                        ComparedLists::word),
                text(
                        WORDS.term("compared-lists.now"),
                        WORDS.get("compared-lists.now.about"),
                        9,
                        change -> change.change() == Change.REMOVED
                                ? ""
                                : Words.said(RevisionComparison.standing(change.finding()))),
                text(
                        WORDS.term("compared-lists.before"),
                        WORDS.get("compared-lists.before-how-it-stood"),
                        9,
                        change -> Words.said(change.was())),
                text(
                        WORDS.term("compared-lists.finding"),
                        WORDS.get("compared-lists.finding.about"),
                        90,
                        change -> Words.said(change.finding().sentence())),
                text(
                        WORDS.term("compared-lists.rule"),
                        WORDS.get("compared-lists.rule.about"),
                        24,
                        change -> change.finding().rule()));
        return new Told<>(WORDS.get("compared-lists.findings"), columns, () -> {
            List<Row<FindingChange>> rows = new ArrayList<>();
            comparison.get().stream()
                    .flatMap(each -> each.findings().stream())
                    .forEach(change -> rows.add(new Row<>(
                            WORDS.get("compared-lists.finding-2", rows.size()),
                            change.finding().subjects(),
                            change)));
            return rows;
        });
    }

    private static CellText word(FindingChange change) {
        boolean worse = change.change() == Change.ADDED && change.finding().severity() != Severity.NOTE;
        Tone tone = change.change() == Change.REMOVED ? Tone.GOOD : worse ? Tone.ERROR : Tone.NOTE;
        return CellText.of(Words.said(change.text())).in(tone);
    }
}
