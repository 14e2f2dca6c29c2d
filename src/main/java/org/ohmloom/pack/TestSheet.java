package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Cable;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.pack.bench.BenchEnd;
import org.ohmloom.pack.bench.BenchNet;
import org.ohmloom.pack.bench.BenchNets;
import org.ohmloom.pack.bench.CrimpFamily;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.tables.BenchLimit;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/** What the finished harness must measure, with blanks for what it does: continuity, isolation, cables, crimps, and powered. */
final class TestSheet {
    private static final String REMARK =
            "On the bench, every connector and terminal off its equipment. A value over its"
                    + " limit, or a net joined to another, is a defect: mend it and test again.";

    private static final List<Column> CONTINUITY = List.of(
            Column.code("Net"),
            Column.code("From").mentioning(),
            Column.code("To").mentioning(),
            Column.number("Wires at 20 °C", Unit.MILLIOHM, 1),
            Column.number("Contacts, joints", Unit.MILLIOHM, 1),
            Column.number("Instrument", Unit.MILLIOHM, 0),
            Column.number("At most, 20 °C", Unit.MILLIOHM, 1),
            Column.code("Method"),
            Column.words("Wires"),
            Column.blank("Measured"),
            Column.blank("By, date"));

    private static final List<Column> ISOLATION = List.of(
            Column.code("Net"),
            Column.code("Probe at").mentioning(),
            Column.words("Against"),
            Column.number("Test voltage", Unit.VOLT, 0),
            Column.words("Because"),
            Column.number("At least", Unit.MEGAOHM, 0),
            Column.blank("Measured"),
            Column.blank("By, date"));

    private static final List<Column> CABLES = List.of(
            Column.code("Cable"),
            Column.words("Name"),
            Column.words("Check"),
            Column.words("Must be"),
            Column.blank("Found"),
            Column.blank("By, date"));

    private static final List<Column> PULLS = List.of(
            Column.code("Terminal"),
            Column.code("Part").mentioning(),
            Column.code("Conductor"),
            Column.code("Tool").mentioning(),
            Column.count("Crimps", 0),
            Column.count("Pull", 0),
            Column.count("At least N", 0),
            Column.words("Set of requirements"),
            Column.blank("Lowest force"),
            Column.blank("By, date"));

    private static final List<Column> POWERED = List.of(
            Column.code("Load").mentioning(),
            Column.words("Name"),
            Column.number("Voltage", Unit.VOLT, 2),
            Column.number("Feed drop", Unit.VOLT, 3),
            Column.number("Return drop", Unit.VOLT, 3),
            Column.number("Drop at most", Unit.VOLT, 3),
            Column.number("Current", Unit.AMP, 2),
            Column.blank("Voltage found"),
            Column.blank("Drop found"),
            Column.blank("By, date"));

    private final Analysis analysis;
    private final Harness harness;
    private final WireTables tables;
    private int headings;

    TestSheet(Analysis analysis) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.tables = analysis.evidence().tables();
    }

    Report report() {
        List<BenchNet> nets = BenchNets.of(analysis);
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        blocks.add(new Block.Facts(List.of(
                new Block.Fact("Serial number", "____________"),
                new Block.Fact("Instrument and its calibration date", "____________"),
                new Block.Fact("Temperature of the harness", "______ °C"))));
        blocks.add(new Block.Heading(heading("Continuity")));
        blocks.add(new Block.Prose(continuityMethod()));
        blocks.add(new Block.Table("continuity", CONTINUITY, continuity(nets), "No net has two ends."));
        blocks.add(new Block.Heading(heading("Isolation")));
        blocks.add(new Block.Prose(isolationMethod(nets.size())));
        blocks.add(new Block.Table(
                "isolation", ISOLATION, isolation(nets), "One net alone has nothing to be isolated from."));
        List<Row> cables = cables();
        if (!cables.isEmpty()) {
            blocks.add(new Block.Heading(heading("Cables, twisted pairs and shields")));
            blocks.add(new Block.Table("cables", CABLES, cables, ""));
        }
        blocks.add(new Block.Heading(heading("Pull test of crimps")));
        blocks.add(new Block.Prose(pullMethod()));
        blocks.add(new Block.Table("pull-test", PULLS, pulls(), "No terminal is crimped."));
        blocks.addAll(powered());
        return new Report(blocks, REMARK);
    }

    private String heading(String text) {
        return ++headings + "  " + text;
    }

    private double limit(String item) {
        return tables.benchLimit(item).value();
    }

    private String cited(String item) {
        CitedValue value = tables.benchLimit(item);
        return value.citation().text();
    }

    private String continuityMethod() {
        return "The limit is the listed maximum resistance of the wires, plus contacts and joints, plus what the instrument"
                + " adds: " + milliohms(limit(BenchLimit.TWO_WIRE_OHMS)) + " with two wires after zeroing the leads, "
                + milliohms(limit(BenchLimit.FOUR_WIRE_OHMS)) + " with four (" + cited(BenchLimit.TWO_WIRE_OHMS)
                + "); four are used where less than " + milliohms(limit(BenchLimit.FOUR_WIRE_BELOW_OHMS))
                + " is expected. There is no lower limit. At another temperature T the share of the wires is to be"
                + " multiplied by (234.5 + T)/254.5: 0.96 at 10 °C, 1.04 at 30 °C.";
    }

    private static String milliohms(double ohms) {
        return Formats.in(ohms * 1e3, Unit.MILLIOHM);
    }

    private List<Row> continuity(List<BenchNet> nets) {
        List<Row> rows = new ArrayList<>();
        for (BenchNet net : nets) {
            for (Map.Entry<BenchEnd, BenchNet.Path> path : net.paths().entrySet()) {
                rows.add(continuity(net, path.getKey(), path.getValue()));
            }
        }
        return rows;
    }

    private Row continuity(BenchNet net, BenchEnd to, BenchNet.Path path) {
        OptionalDouble expected = path.ohms(1);
        boolean four = expected.isPresent() && expected.getAsDouble() < limit(BenchLimit.FOUR_WIRE_BELOW_OHMS);
        double error = limit(four ? BenchLimit.FOUR_WIRE_OHMS : BenchLimit.TWO_WIRE_OHMS);
        Cell unknown = Cell.missing("length?");
        return Row.of(
                Cell.text(net.id()),
                Cell.text(net.ends().get(0).text()),
                Cell.text(to.text()),
                path.wireOhms().isPresent() ? Cell.number(path.wireOhms().getAsDouble() * 1e3) : unknown,
                Cell.number(path.jointOhms() * 1e3),
                Cell.number(error * 1e3),
                expected.isPresent()
                        ? Cell.number((expected.getAsDouble() + error) * 1e3).toned(Cell.Tone.STRONG)
                        : unknown,
                Cell.text(four ? "four wires" : "two wires"),
                Cell.text(net.wires().stream().map(wire -> wire.id().value()).collect(Collectors.joining(", "))),
                Cell.empty(),
                Cell.empty());
    }

    private String isolationMethod(int nets) {
        return "Each net against all others joined together: " + Wording.count(nets, "test") + ". At least "
                + Formats.in(limit(BenchLimit.ISOLATION_OHMS) / 1e6, Unit.MEGAOHM) + " at "
                + Formats.volts(limit(BenchLimit.ISOLATION_VOLTS)) + ", read when it has settled and within "
                + Formats.seconds(limit(BenchLimit.ISOLATION_SECONDS)) + " (" + cited(BenchLimit.ISOLATION_OHMS)
                + "), but never above the lowest voltage rating of a contact in the net. Control units, sensors and loads"
                + " must be unplugged: this voltage destroys them.";
    }

    private List<Row> isolation(List<BenchNet> nets) {
        List<Row> rows = new ArrayList<>();
        if (nets.size() < 2) {
            return rows;
        }
        for (BenchNet net : nets) {
            if (net.ends().isEmpty()) {
                continue;
            }
            OptionalDouble rated = net.ends().stream()
                    .flatMap(end -> end.contact().stream())
                    .flatMapToDouble(contact -> contact.ratedVolts().stream())
                    .min();
            boolean allRated = net.ends().stream()
                    .allMatch(end -> end.contact().isEmpty()
                            || end.contact().get().ratedVolts().isPresent());
            double standing = limit(BenchLimit.ISOLATION_VOLTS);
            boolean lower = rated.isPresent() && rated.getAsDouble() < standing;
            rows.add(Row.of(
                    Cell.text(net.id()).toned(Cell.Tone.STRONG),
                    Cell.text(net.ends().get(0).text()),
                    Cell.text("all other nets"),
                    allRated ? Cell.number(lower ? rated.getAsDouble() : standing) : Cell.missing("ohmmeter only"),
                    Cell.text(
                            !allRated
                                    ? "the voltage rating of a contact is not entered"
                                    : lower ? "lowest rating of a contact in it" : "no contact in it is rated lower"),
                    Cell.number(limit(BenchLimit.ISOLATION_OHMS) / 1e6),
                    Cell.empty(),
                    Cell.empty()));
        }
        return rows;
    }

    private List<Row> cables() {
        List<Row> rows = new ArrayList<>();
        for (Cable cable : harness.cables().all()) {
            List<Wire> members = harness.wires().all().stream()
                    .filter(wire -> wire.cable().equals(Optional.of(cable.id())) && !wire.existing())
                    .toList();
            if (members.isEmpty()) {
                continue;
            }
            List<Wire> cores = members.stream()
                    .filter(wire -> wire.signalClass() != SignalClass.SHIELD)
                    .toList();
            rows.add(cable(cable, "Cores not swapped: " + ends(cores), "each core at its own two ends"));
            if (cable.kind() == Cable.Kind.TWISTED_PAIR) {
                String lay = cable.layLengthMm().isPresent()
                        ? "one turn in "
                                + Formats.millimetres(cable.layLengthMm().getAsDouble())
                        : "twisted over its whole length";
                rows.add(cable(cable, "Twist, untwisted ends as short as the connector allows", lay));
            }
            for (Wire shield : members) {
                if (shield.signalClass() == SignalClass.SHIELD) {
                    rows.add(cable(
                            cable,
                            "Shield " + shield.id() + " from " + shield.from().text() + " to "
                                    + shield.to().text(),
                            "continuous, and isolated from every core"));
                }
            }
        }
        return rows;
    }

    private static String ends(List<Wire> cores) {
        return cores.stream()
                .map(wire ->
                        wire.id() + " " + wire.from().text() + "–" + wire.to().text())
                .collect(Collectors.joining(", "));
    }

    private static Row cable(Cable cable, String check, String must) {
        return Row.of(
                Cell.text(cable.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(cable.name()),
                Cell.text(check),
                Cell.text(must),
                Cell.empty(),
                Cell.empty());
    }

    private String pullMethod() {
        return "On samples made by the same set-up, never on the harness itself: "
                + Math.round(limit(BenchLimit.PULL_COUNT)) + " of each (" + cited(BenchLimit.PULL_COUNT)
                + "), pulled at "
                + Formats.number(limit(BenchLimit.PULL_RATE)) + " mm/min, the force held for "
                + Formats.seconds(limit(BenchLimit.PULL_SECONDS)) + " (" + cited(BenchLimit.PULL_RATE)
                + "). A crimp of two conductors is judged by the smaller one. Sets of requirements differ by up to two times"
                + " for one size: the set stands beside each force.";
    }

    private List<Row> pulls() {
        List<Row> rows = new ArrayList<>();
        for (CrimpFamily family : CrimpFamily.of(analysis)) {
            rows.add(Row.of(
                    Cell.text(family.terminal()).toned(Cell.Tone.STRONG),
                    Cell.text(
                            family.contact().flatMap(contact -> contact.part()).map(part -> part.value())),
                    Cell.text(Wording.size(family.gauge())),
                    Cell.text(
                            family.contact().flatMap(contact -> contact.tool()).map(tool -> tool.value())),
                    Cell.number(family.crimps()),
                    Cell.number(Math.round(limit(BenchLimit.PULL_COUNT))),
                    family.force()
                            .map(force -> Cell.number(
                                            Math.ceil(force.forceNewtons().value()))
                                    .toned(Cell.Tone.STRONG))
                            .orElseGet(() -> Cell.missing("not listed")),
                    Cell.text(family.force()
                            .map(force -> Wording.printed(
                                    force.forceNewtons().citation().text()))
                            .orElse(CrimpFamily.set(family.gauge().system()) + " does not list this size")),
                    Cell.empty(),
                    Cell.empty()));
        }
        return rows;
    }

    /** The state that lasts with the most loads on, and what each of them must see. */
    private List<Block> powered() {
        Optional<OperatingState> state = analysis.states().stream()
                .filter(each -> each.mode() != OperatingState.EngineMode.CRANKING)
                .max(Comparator.comparingInt((OperatingState each) ->
                                LoadSection.running(analysis, each).size())
                        .thenComparing(OperatingState::id, Comparator.reverseOrder()));
        List<Row> rows = state.stream()
                .flatMap(each -> LoadSection.running(analysis, each).stream())
                .map(this::powered)
                .toList();
        if (rows.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Block.Heading(heading("Powered, in the state " + state.get().name())),
                new Block.Prose(
                        "After continuity and isolation have passed, with the protective devices fitted and everything plugged in,"
                                + " from the source the harness is calculated with. Voltage and drops while the load is on, as"
                                + " calculated with warm conductors; the drop is that of feed and return together."),
                new Block.Table("powered", POWERED, rows, ""));
    }

    private Row powered(LoadVolts volts) {
        return Row.of(
                Cell.text(volts.load().value()).toned(Cell.Tone.STRONG),
                Cell.text(harness.components().find(volts.load()).map(load -> load.name())),
                Cell.number(volts.on().volts()),
                Cell.number(volts.on().feedDropVolts()),
                Cell.number(volts.on().returnDropVolts()),
                Cell.number(volts.limitVolts()),
                Cell.number(volts.on().amps()),
                Cell.empty(),
                Cell.empty(),
                Cell.empty());
    }
}
