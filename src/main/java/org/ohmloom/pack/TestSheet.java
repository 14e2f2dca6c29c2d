package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bench.AsBuiltRecord;
import org.ohmloom.bench.BenchInput;
import org.ohmloom.bench.BenchResults;
import org.ohmloom.bench.CableTest;
import org.ohmloom.bench.ContinuityTest;
import org.ohmloom.bench.CrimpFamily;
import org.ohmloom.bench.IsolationTest;
import org.ohmloom.bench.PoweredTest;
import org.ohmloom.bench.TestPlan;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Reading;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.tables.BenchLimit;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/**
 * What the finished harness must measure, with blanks for what it does: continuity, isolation, cables, crimps, and powered; then the
 * record of what was measured.
 */
final class TestSheet {
    private static final String REMARK =
            "On the bench, every connector and terminal off its equipment. A value over its"
                    + " limit, or a net joined to another, is a defect: mend it and test again.";

    /** Ends every table's file, so that the file with its blanks filled in is a whole record. */
    private static final List<Column> RECORD = List.of(
            Column.blank("By, date"),
            Column.fileOnly("Serial number"),
            Column.fileOnly("Temperature °C"),
            Column.fileOnly("Instrument"),
            Column.fileOnly("Remark"));

    private static final List<Column> CONTINUITY = columns(
            Column.code("Net"),
            Column.code("From").mentioning(),
            Column.code("To").mentioning(),
            Column.number("Wires at 20 °C", Unit.MILLIOHM, 1),
            Column.number("Contacts, joints", Unit.MILLIOHM, 1),
            Column.number("Instrument", Unit.MILLIOHM, 0),
            Column.number("At least, 20 °C", Unit.MILLIOHM, 1),
            Column.number("At most, 20 °C", Unit.MILLIOHM, 1),
            Column.code("Method"),
            Column.words("Wires"),
            Column.blank("Measured", Unit.MILLIOHM));

    private static final List<Column> ISOLATION = columns(
            Column.code("Net"),
            Column.code("Probe at").mentioning(),
            Column.fileOnly("Against"),
            Column.number("Test voltage", Unit.VOLT, 0).inFileOnly(),
            Column.fileOnly("Because"),
            Column.number("At least", Unit.MEGAOHM, 0).inFileOnly(),
            Column.tick("Good"),
            Column.blank("Measured", Unit.MEGAOHM));

    private static final List<Column> CABLES = columns(
            Column.code("Cable").mentioning(),
            Column.words("Name"),
            Column.code("Check"),
            Column.words("Look at"),
            Column.words("Must be"),
            Column.blank("Passed or failed"));

    private static final List<Column> PULLS = columns(
            Column.code("Terminal"),
            Column.code("Part").mentioning(),
            Column.code("Conductor"),
            Column.code("Tool").mentioning(),
            Column.count("Crimps", 0),
            Column.count("Pull", 0),
            Column.number("At least", Unit.NEWTON, 0),
            Column.words("Set of requirements"),
            Column.blank("Lowest force", Unit.NEWTON));

    private static final List<Column> POWERED = columns(
            Column.code("Load").mentioning(),
            Column.words("Name"),
            Column.fileOnly("State"),
            Column.number("Voltage", Unit.VOLT, 2),
            Column.number("Feed drop", Unit.VOLT, 3),
            Column.number("Return drop", Unit.VOLT, 3),
            Column.number("Drop at most", Unit.VOLT, 3),
            Column.number("Current", Unit.AMP, 2),
            Column.blank("Voltage found", Unit.VOLT),
            Column.blank("Drop found", Unit.VOLT));

    private final String workmanship;
    private final BenchResults tests;
    private final BenchInput input;
    private final TestPlan plan;
    private final Harness harness;
    private int headings;

    TestSheet(Analysis analysis) {
        this.workmanship = Workmanship.text(analysis);
        this.tests = analysis.evidence().tests();
        this.input = tests.input();
        this.plan = tests.plan();
        this.harness = analysis.harness();
    }

    private static List<Column> columns(Column... own) {
        return Stream.concat(Arrays.stream(own), RECORD.stream()).toList();
    }

    Report report() {
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        blocks.add(new Block.Facts(List.of(
                new Block.Fact("Serial number", "____________"),
                new Block.Fact("Instrument and its calibration date", "____________"),
                new Block.Fact("Temperature of the harness", "______ °C"))));
        blocks.add(new Block.Heading(heading("Continuity")));
        blocks.add(new Block.Prose(continuityMethod()));
        blocks.add(new Block.Table("continuity", CONTINUITY, continuity(), "No net has two ends."));
        blocks.add(new Block.Heading(heading("Isolation")));
        blocks.add(new Block.Prose(isolationMethod()));
        blocks.add(
                new Block.Table("isolation", ISOLATION, isolation(), "One net alone has nothing to be isolated from."));
        List<Row> cables = plan.cables().stream().map(this::cable).toList();
        if (!cables.isEmpty()) {
            blocks.add(new Block.Heading(heading("Cables, twisted pairs and shields")));
            blocks.add(new Block.Table("cables", CABLES, cables, ""));
        }
        blocks.add(new Block.Heading(heading("Pull test of crimps")));
        blocks.add(new Block.Prose(pullMethod()));
        blocks.add(new Block.Table("pull-test", PULLS, pulls(), "No terminal is crimped."));
        blocks.addAll(powered());
        AsBuiltRecord record = tests.record();
        if (!record.judgements().isEmpty()) {
            blocks.add(new Block.Heading(heading("As-built record")));
            blocks.addAll(new AsBuiltSection(record).blocks());
        }
        return new Report(blocks, REMARK);
    }

    /** A row with its blanks and what the file has besides. */
    private static Row row(Cell... cells) {
        Stream<Cell> blanks = RECORD.stream().map(column -> Cell.empty());
        return Row.of(Stream.concat(Arrays.stream(cells), blanks).toArray(Cell[]::new));
    }

    private String heading(String text) {
        return ++headings + "  " + text;
    }

    private double limit(String item) {
        return input.limit(item);
    }

    private String cited(String item) {
        return input.cited(item).citation().text();
    }

    private String continuityMethod() {
        return "The limit is the listed maximum resistance of the wires, plus contacts and joints, plus what the instrument"
                + " adds: " + milliohms(limit(BenchLimit.TWO_WIRE_OHMS)) + " with two wires after zeroing the leads, "
                + milliohms(limit(BenchLimit.FOUR_WIRE_OHMS)) + " with four (" + cited(BenchLimit.TWO_WIRE_OHMS)
                + "); four are used where less than " + milliohms(limit(BenchLimit.FOUR_WIRE_BELOW_OHMS))
                + " is expected. " + lowerLimit() + " At another temperature T the share of the wires is to be"
                + " multiplied by (234.5 + T)/254.5: 0.96 at 10 °C, 1.04 at 30 °C.";
    }

    private String lowerLimit() {
        OptionalDouble typical = input.harness().rules().fabricationRules().typicalFraction();
        return typical.isPresent()
                ? "At least " + Formats.percent(typical.getAsDouble())
                        + " of the wires, as is typical of them (entered)," + " less what the instrument adds."
                : "There is no lower limit, for no typical resistance is entered.";
    }

    private static String milliohms(double ohms) {
        return Formats.in(ohms * 1e3, Unit.MILLIOHM);
    }

    private List<Row> continuity() {
        return plan.continuity().stream().map(TestSheet::continuity).toList();
    }

    private static Row continuity(ContinuityTest test) {
        Cell unknown = Cell.missing("length?");
        OptionalDouble wires = test.path().wireOhms();
        return row(
                Cell.text(test.net().id()),
                Cell.text(test.from().text()),
                Cell.text(test.to().text()),
                wires.isPresent() ? Cell.number(wires.getAsDouble() * 1e3) : unknown,
                Cell.number(test.path().jointOhms() * 1e3),
                Cell.number(test.errorOhms() * 1e3),
                test.leastOhms().isPresent() ? Cell.number(test.leastOhms().getAsDouble() * 1e3) : Cell.empty(),
                test.limitOhms().isPresent()
                        ? Cell.number(test.limitOhms().getAsDouble() * 1e3).toned(Cell.Tone.STRONG)
                        : unknown,
                Cell.text(test.method() == Reading.Method.FOUR_WIRE ? "four wires" : "two wires"),
                Cell.text(test.net().wires().stream()
                        .map(wire -> wire.id().value())
                        .collect(Collectors.joining(", "))),
                Cell.empty());
    }

    private String isolationMethod() {
        return "Touch one probe to all other nets joined together, the other to each net in turn, and tick it: "
                + Wording.count(plan.nets().size(), "test") + ". At least "
                + Formats.in(limit(BenchLimit.ISOLATION_OHMS) / 1e6, Unit.MEGAOHM) + " at "
                + Formats.volts(limit(BenchLimit.ISOLATION_VOLTS)) + ", read when it has settled and within "
                + Formats.seconds(limit(BenchLimit.ISOLATION_SECONDS)) + " (" + cited(BenchLimit.ISOLATION_OHMS)
                + "), but never above the lowest voltage rating of a contact in the net. Control units, sensors and loads"
                + " must be unplugged: this voltage destroys them.";
    }

    /** Nets that are tested alike stand together below one instruction. */
    private List<Row> isolation() {
        Map<String, List<IsolationTest>> alike = new LinkedHashMap<>();
        for (IsolationTest test : plan.isolation()) {
            alike.computeIfAbsent(instruction(test), words -> new ArrayList<>()).add(test);
        }
        List<Row> rows = new ArrayList<>();
        alike.forEach((words, tests) -> {
            rows.add(Row.group(words));
            rows.addAll(isolation(tests));
        });
        return rows;
    }

    private static String instruction(IsolationTest test) {
        String how =
                test.testVolts().isPresent() ? Formats.volts(test.testVolts().getAsDouble()) : "Ohmmeter only";
        return how + ", at least " + Formats.in(test.leastOhms() / 1e6, Unit.MEGAOHM) + "; " + test.because();
    }

    private static List<Row> isolation(List<IsolationTest> tests) {
        return tests.stream()
                .map(test -> row(
                        Cell.text(test.net().id()).toned(Cell.Tone.STRONG),
                        Cell.text(test.probe().text()),
                        Cell.text("all other nets"),
                        test.testVolts().isPresent()
                                ? Cell.number(test.testVolts().getAsDouble())
                                : Cell.missing("ohmmeter only"),
                        Cell.text(test.because().english()),
                        Cell.number(test.leastOhms() / 1e6),
                        Cell.empty(),
                        Cell.empty()))
                .toList();
    }

    private Row cable(CableTest test) {
        return row(
                Cell.text(test.cable().id().value()).toned(Cell.Tone.STRONG),
                Cell.text(test.cable().name()),
                Cell.text(test.check()),
                Cell.text(test.words()),
                Cell.text(test.must().english()),
                Cell.empty());
    }

    private String pullMethod() {
        return "On samples made by the same set-up, never on the harness itself: "
                + Math.round(limit(BenchLimit.PULL_COUNT)) + " of each (" + cited(BenchLimit.PULL_COUNT)
                + "), pulled at "
                + Formats.number(limit(BenchLimit.PULL_RATE)) + " mm/min, the force held for "
                + Formats.seconds(limit(BenchLimit.PULL_SECONDS)) + " (" + cited(BenchLimit.PULL_RATE)
                + "). A crimp of two conductors is judged by the smaller one. Sets of requirements differ by up to two times"
                + " for one size: the set stands beside each force. Workmanship asked for: "
                + workmanship + ".";
    }

    private List<Row> pulls() {
        return plan.crimps().stream().map(this::pull).toList();
    }

    private Row pull(CrimpFamily family) {
        return row(
                Cell.text(family.terminal()).toned(Cell.Tone.STRONG),
                Cell.text(family.contact().flatMap(contact -> contact.part()).map(part -> part.value())),
                Cell.text(Wording.size(family.gauge())),
                Cell.text(family.contact().flatMap(contact -> contact.tool()).map(tool -> tool.value())),
                Cell.number(family.crimps()),
                Cell.number(Math.round(limit(BenchLimit.PULL_COUNT))),
                family.force()
                        .map(force -> Cell.number(Math.ceil(force.forceNewtons().value()))
                                .toned(Cell.Tone.STRONG))
                        .orElseGet(() -> Cell.missing("not listed")),
                Cell.text(family.force()
                        .map(force ->
                                Wording.printed(force.forceNewtons().citation().text()))
                        .orElse(CrimpFamily.set(family.gauge().system()) + " does not list this size")),
                Cell.empty());
    }

    /** The state that lasts with the most loads on, and what each of them must see. */
    private List<Block> powered() {
        if (plan.powered().isEmpty()) {
            return List.of();
        }
        return List.of(
                new Block.Heading(heading(
                        "Powered, in the state " + plan.powered().get(0).state().name())),
                new Block.Prose(
                        "After continuity and isolation have passed, with the protective devices fitted and everything plugged in,"
                                + " from the source the harness is calculated with. Voltage and drops while the load is on, as"
                                + " calculated with warm conductors; the drop is that of feed and return together."),
                new Block.Table(
                        "powered",
                        POWERED,
                        plan.powered().stream().map(this::powered).toList(),
                        ""));
    }

    private Row powered(PoweredTest test) {
        LoadVolts volts = test.load();
        return row(
                Cell.text(volts.load().value()).toned(Cell.Tone.STRONG),
                Cell.text(harness.components().find(volts.load()).map(load -> load.name())),
                Cell.text(test.state().id().value()),
                Cell.number(volts.on().volts()),
                Cell.number(volts.on().feedDropVolts()),
                Cell.number(volts.on().returnDropVolts()),
                Cell.number(volts.limitVolts()),
                Cell.number(volts.on().amps()),
                Cell.empty(),
                Cell.empty());
    }
}
