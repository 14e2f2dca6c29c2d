package org.ohmloom.workbench.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bench.AsBuiltRecord;
import org.ohmloom.bench.BenchResults;
import org.ohmloom.bench.Judgement;
import org.ohmloom.bench.Task;
import org.ohmloom.bench.TestPlan;
import org.ohmloom.bench.Verdict;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Reading;
import org.ohmloom.model.ReadingId;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellEdit;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/**
 * Everything that can be measured on one built harness, as a list: what it may measure, what it did, and the verdict, which follows
 * what is typed at once. Readings of something the tests do not have any more, and earlier ones, stand at the end.
 */
final class RecordSheet implements Sheet<RecordSheet.Row> {
    private static final Words WORDS = Words.of("as-built");

    private final Supplier<RecordSettings> settings;
    private @Nullable TestPlan plan;
    private List<Task> tasks = List.of();

    /**
     * A list.
     *
     * @param settings what holds for values typed now, and whose readings are shown
     */
    RecordSheet(Supplier<RecordSettings> settings) {
        this.settings = settings;
    }

    /**
     * One thing to be measured.
     *
     * @param key       what tells it from the others
     * @param task      what is to be measured
     * @param reading   what was measured
     * @param judgement of the reading, or of a value of nothing where there is none, which has the limit
     * @param harness   the harness as it is
     */
    record Row(String key, Task task, Optional<Reading> reading, Judgement judgement, Harness harness) {}

    @Override
    public String title() {
        return WORDS.get("record.as-built-record");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(
                        WORDS.term("record.what"),
                        WORDS.get("record.what.about"),
                        11,
                        row -> Words.said(row.task().words())),
                Column.<Row>text(WORDS.term("record.where"), WORDS.get("record.where.about"), 35, row -> row.task()
                                .blank()
                                .place())
                        .quantities(),
                new Column<Row>(
                                WORDS.term("record.limit"),
                                "",
                                WORDS.get("record.limit.about"),
                                15,
                                row -> CellText.of(Words.said(row.judgement().limitTold()))
                                        .saying(Words.said(row.judgement().why())),
                                Optional.empty())
                        .quantities(),
                new Column<Row>(
                                WORDS.term("record.measured"),
                                "",
                                WORDS.get("record.measured.about"),
                                14,
                                row -> CellText.of(
                                        row.reading().isPresent()
                                                ? row.judgement().valueText()
                                                : ""),
                                Optional.empty())
                        .quantities()
                        .edited(valueEdit()),
                new Column<Row>(
                        WORDS.term("record.verdict"),
                        "",
                        WORDS.get("record.verdict.about"),
                        12,
                        RecordSheet::verdict,
                        Optional.empty()),
                ofReading(
                        WORDS.term("record.at"),
                        "°C",
                        WORDS.get("record.at.about"),
                        8,
                        reading -> reading.conductorCelsius().isPresent()
                                ? TypedNumbers.exact(reading.conductorCelsius().getAsDouble())
                                : "",
                        RecordEdits::celsius),
                ofReading(
                        WORDS.term("record.method"),
                        "",
                        WORDS.get("record.method.about"),
                        11,
                        reading -> reading.method()
                                .map(method -> method == Reading.Method.FOUR_WIRE
                                        ? WORDS.get("record.four-wires")
                                        : WORDS.get("record.two-wires"))
                                .orElse(""),
                        RecordEdits::method),
                ofReading(
                        WORDS.term("record.error"),
                        "mΩ",
                        WORDS.get("record.error.about"),
                        8,
                        reading -> reading.instrumentErrorOhms().isPresent()
                                ? TypedNumbers.exact(Unit.MILLIOHM.fromCanonical(
                                        reading.instrumentErrorOhms().getAsDouble()))
                                : "",
                        RecordEdits::error),
                ofReading(
                        WORDS.term("record.replaces"),
                        "",
                        WORDS.get("record.replaces.about"),
                        9,
                        reading -> TypedNumbers.yesIf(reading.replaces()),
                        RecordEdits::replaces),
                ofReading(
                        WORDS.term("record.instrument"),
                        "",
                        WORDS.get("record.instrument.about"),
                        16,
                        reading -> reading.instrument().orElse(""),
                        RecordEdits::instrument),
                ofReading(
                        WORDS.term("record.by"),
                        "",
                        WORDS.get("record.by.about"),
                        8,
                        reading -> reading.by().orElse(""),
                        RecordEdits::by),
                ofReading(
                        WORDS.term("record.when"),
                        "",
                        WORDS.get("record.when.about"),
                        16,
                        reading -> reading.measuredAt().orElse(""),
                        RecordEdits::date),
                ofReading(
                        WORDS.term("record.remark"),
                        "",
                        WORDS.get("record.remark.about"),
                        24,
                        reading -> reading.remark().orElse(""),
                        RecordEdits::remark),
                Column.text(WORDS.term("record.reading"), WORDS.get("record.reading.about"), 9, row -> row.reading()
                        .map(reading -> reading.id().value())
                        .orElse("")));
    }

    private CellEdit<Row> valueEdit() {
        return ColumnEdits.of(
                row -> true,
                row -> row.reading()
                        .map(reading -> RecordEdits.start(reading.measured()))
                        .orElse(""),
                row -> row,
                (rows, typed) -> {
                    if (rows.size() > 1) {
                        throw new IllegalArgumentException(WORDS.get("record.a-measured-value-belongs"));
                    }
                    Row row = rows.get(0);
                    return RecordEdits.value(row.harness(), row.task(), row.reading(), typed, settings.get());
                });
    }

    private static Column<Row> ofReading(
            Term title,
            String unit,
            String tip,
            int letters,
            Function<Reading, String> text,
            BiFunction<List<Reading>, String, Edit> parse) {
        Function<Row, String> shown = row -> row.reading().map(text).orElse("");
        return new Column<Row>(title, unit, tip, letters, row -> CellText.of(shown.apply(row)), Optional.empty())
                .edited(ColumnEdits.of(
                        row -> row.reading().isPresent(),
                        shown,
                        row -> row.reading().orElseThrow(),
                        parse));
    }

    private static CellText verdict(Row row) {
        Judgement judgement = row.judgement();
        if (row.reading().isEmpty()) {
            return CellText.EMPTY;
        }
        if (!judgement.stands()) {
            return CellText.of(WORDS.get("record.measured-again")).in(Tone.SOFT);
        }
        String low = judgement.implausible().isPresent() ? WORDS.get("record.too-low-to-believe") : "";
        Tone tone = judgement.verdict() == Verdict.FAILED
                ? Tone.ERROR
                : judgement.verdict() == Verdict.NOT_JUDGED || !low.isEmpty() ? Tone.WARNING : Tone.GOOD;
        return CellText.of(TradeWords.named(judgement.verdict()) + low).in(tone).saying(Words.said(judgement.why()));
    }

    @Override
    public List<Row> rows(Readout readout) {
        Optional<Analysis> analysis =
                readout.analysis().filter(each -> each.evidence().isSized());
        if (analysis.isEmpty()) {
            return List.of();
        }
        BenchResults tests = analysis.get().evidence().tests();
        Harness harness = readout.harness();
        List<Reading> all = List.copyOf(harness.readings().all());
        AsBuiltRecord record = AsBuiltRecord.of(tests.input(), tests.plan(), all);
        List<Reading> own = all.stream()
                .filter(reading -> reading.serialNumber().equals(settings.get().serialNumber()))
                .toList();
        Set<ReadingId> shown = new HashSet<>();
        List<Row> rows = new ArrayList<>();
        for (Task task : tasks(tests)) {
            Optional<Judgement> standing = own.stream()
                    .filter(reading -> task.asksFor(reading.measured()))
                    .map(reading -> record.of(reading).orElseThrow())
                    .filter(Judgement::stands)
                    .findFirst();
            standing.ifPresent(judgement -> shown.add(judgement.reading().id()));
            rows.add(new Row(
                    key(task),
                    task,
                    standing.map(Judgement::reading),
                    standing.orElseGet(() -> AsBuiltRecord.judge(tests.input(), tests.plan(), blank(task))),
                    harness));
        }
        for (Reading reading : own) {
            if (!shown.contains(reading.id())) {
                Judgement judgement = record.of(reading).orElseThrow();
                Task task = new Task(
                        reading.measured(),
                        Text.of(TradeWords.capital(Words.said(reading.measured().words()))),
                        List.of());
                rows.add(new Row(key(task) + "|" + reading.id(), task, Optional.of(reading), judgement, harness));
            }
        }
        return rows;
    }

    /** What can be measured, made anew for another plan only. */
    private List<Task> tasks(BenchResults tests) {
        if (plan != tests.plan()) {
            plan = tests.plan();
            tasks = Task.of(tests.input(), plan);
        }
        return tasks;
    }

    private static String key(Task task) {
        return task.blank().getClass().getSimpleName() + "|" + task.blank().place();
    }

    /** A reading of nothing, whose judgement has the limit. */
    private Reading blank(Task task) {
        RecordSettings now = settings.get();
        return new Reading(
                new ReadingId("blank"),
                task.blank(),
                now.serialNumber(),
                Optional.empty(),
                now.celsius(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    @Override
    public String key(Row row) {
        return row.key();
    }

    @Override
    public List<String> about(Row row) {
        return row.task().about();
    }
}
