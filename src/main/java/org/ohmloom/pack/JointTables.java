package org.ohmloom.pack;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Place;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.units.Unit;

/** The splices, with the wires of each side and the barrel they need, and the ground points, with the order of their terminals. */
final class JointTables {
    private static final String BARRELS = "Barrels: next size up of the sum of the areas crimped together"
            + " (NASA-STD-8739.4, change 6, 19.11); the wires lie parallel in them, not twisted. Sides: in brackets the breakout from"
            + " which the wires come.";
    private static final String ORDER =
            "Terminals on a stud: the largest conductor at the bottom, on the clean metal (common practice, no source).";

    private static final List<Column> SPLICES = List.of(
            Column.tick("Done"),
            Column.code("Splice").home(),
            Column.words("Name"),
            Column.words("Type"),
            Column.words("Sealed"),
            Column.words("From datum"),
            Column.number("Distance", Unit.MILLIMETRE, 0),
            Column.words("Side A"),
            Column.words("Side B"),
            Column.number("Areas", Unit.SQUARE_MILLIMETRE, 2),
            Column.code("Barrel for"),
            Column.code("Part").mentioning(),
            Column.words("Cover"));

    private static final List<Column> GROUNDS = List.of(
            Column.tick("Done"),
            Column.code("Ground").home(),
            Column.words("Name"),
            Column.words("Body"),
            Column.count("Stud", 0),
            Column.code("Thread"),
            Column.count("Order", 0),
            Column.code("Wire").mentioning(),
            Column.code("Size"),
            Column.colour("Colour"),
            Column.words("Terminal"),
            Column.words("On this stud"),
            Column.words("Torque"),
            Column.code("Comes from").mentioning());

    private final Analysis analysis;
    private final Harness harness;
    private final Wording wording;
    private final SpliceSides sides;
    private final Map<String, List<Wire>> wiresByEnd = new TreeMap<>(NaturalOrder.INSTANCE);

    JointTables(Analysis analysis) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.wording = new Wording(harness);
        this.sides = new SpliceSides(harness, analysis.routes());
        for (Wire wire : harness.wires().all()) {
            for (WireEnd end : wire.ends()) {
                wiresByEnd.computeIfAbsent(end.text(), key -> new ArrayList<>()).add(wire);
            }
        }
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Splices"));
        blocks.add(new Block.Table("splices", SPLICES, splices(), "No splice is to be made."));
        if (!splices().isEmpty()) {
            blocks.add(new Block.Prose(BARRELS));
        }
        blocks.addAll(groundBlocks());
        return blocks;
    }

    /** The ground points alone. */
    List<Block> groundBlocks() {
        List<Block> blocks = new ArrayList<>();
        List<Row> grounds = grounds();
        blocks.add(new Block.Heading("Ground points"));
        blocks.add(new Block.Table("grounds", GROUNDS, grounds, "No wire is to be fitted to a ground point."));
        if (!grounds.isEmpty()) {
            blocks.add(new Block.Points(List.of(
                    "At most " + Math.round(most().value()) + " terminals on one stud: "
                            + most().citation().text(),
                    ORDER,
                    "A torque stands here only where one was entered with its document; otherwise ask the maker of the"
                            + " fastener.")));
        }
        return blocks;
    }

    private CitedValue most() {
        return analysis.evidence().tables().fabrication().value("stud-terminals");
    }

    /** One row for each splice that is to be made. */
    List<Row> splices() {
        List<Row> rows = new ArrayList<>();
        for (Splice splice : harness.splices().all()) {
            if (!splice.existing()) {
                rows.add(splice(splice, wiresByEnd.getOrDefault(splice.id().value(), List.of())));
            }
        }
        return rows;
    }

    private Row splice(Splice splice, List<Wire> wires) {
        List<SpliceSides.Side> found = sides.of(splice, wires);
        List<SpliceSides.Side> others = found.stream().skip(1).toList();
        double sum =
                wires.stream().mapToDouble(wire -> gauge(wire).nominalAreaMm2()).sum();
        return Row.of(
                Cell.empty(),
                Cell.text(splice.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(splice.name()),
                SpliceSides.form(splice, found)
                        .map(form -> Cell.text(form == Splice.Form.END ? "end" : "in-line"))
                        .orElseGet(() -> Cell.missing("not known")),
                splice.sealed()
                        .map(tight -> Cell.text(tight ? "sealed" : "not sealed"))
                        .orElseGet(() -> Cell.missing("not said")),
                splice.place().map(this::datum).orElseGet(() -> Cell.missing("no place given")),
                splice.place().map(JointTables::distance).orElseGet(Cell::empty),
                found.stream().findFirst().map(this::side).orElseGet(() -> Cell.missing("no wire")),
                others.isEmpty()
                        ? Cell.empty()
                        : Cell.text(
                                others.stream().map(side -> side(side).text()).collect(Collectors.joining("\n"))),
                wires.isEmpty() ? Cell.empty() : Cell.number(sum),
                wires.isEmpty() ? Cell.empty() : Cell.text(barrel(sum)),
                Wording.part(splice.part()),
                splice.cover().map(Cell::text).orElseGet(() -> Cell.missing("not said")));
    }

    /** The wires of a side, those of one size together: "W1 W2 0.5 mm², W3 1 mm² (B1)". */
    private Cell side(SpliceSides.Side side) {
        Map<String, List<String>> bySize = new LinkedHashMap<>();
        side.wires().forEach(wire -> bySize.computeIfAbsent(Wording.size(gauge(wire)), size -> new ArrayList<>())
                .add(wire.id().value()));
        return Cell.text(bySize.entrySet().stream()
                        .map(each -> String.join(" ", each.getValue()) + " " + each.getKey())
                        .collect(Collectors.joining(", "))
                + " (" + side.from() + ")");
    }

    private Cell datum(Place place) {
        if (place instanceof Place.OnSegment along) {
            return Cell.text(harness.segments().get(along.segment()).from() + ", along " + along.segment());
        }
        return Cell.text(wording.place(place));
    }

    private static Cell distance(Place place) {
        return Cell.number(
                place instanceof Place.OnSegment along ? Unit.MILLIMETRE.fromCanonical(along.distanceMetres()) : 0);
    }

    private Gauge gauge(Wire wire) {
        return wire.gauge()
                .orElseGet(() ->
                        analysis.evidence().rating(wire.id()).orElseThrow().gauge());
    }

    /** The size of the harness's conductors that holds that much copper, mm2. */
    private String barrel(double areaMm2) {
        DesignBasis basis = analysis.evidence().basis();
        boolean awg = harness.rules().gaugeSystem() == GaugeSystem.AWG;
        return analysis
                .evidence()
                .tables()
                .family(awg ? basis.defaultAwgFamily() : basis.defaultMetricFamily())
                .rows()
                .stream()
                .map(ConductorRow::gauge)
                .sorted()
                .filter(gauge -> gauge.nominalAreaMm2() >= areaMm2 * (1 - 1e-9))
                .findFirst()
                .map(Wording::size)
                .orElse("above the sizes listed");
    }

    /** One row for each terminal on a ground point, by stud, the largest conductor first. */
    List<Row> grounds() {
        List<Row> rows = new ArrayList<>();
        for (GroundPoint ground : harness.grounds().all()) {
            List<Wire> wires = wiresByEnd.getOrDefault(ground.id().value(), List.of()).stream()
                    .sorted(Comparator.comparing((Wire wire) -> -gauge(wire).nominalAreaMm2())
                            .thenComparing(Wire::id))
                    .toList();
            boolean made = wires.stream().anyMatch(wire -> !wire.existing());
            int perStud = (wires.size() + ground.studCount() - 1) / ground.studCount();
            for (int k = 0; made && k < wires.size(); k++) {
                int stud = k / perStud;
                int here = Math.min(perStud, wires.size() - stud * perStud);
                rows.add(ground(ground, wires.get(k), stud + 1, k % perStud + 1, here));
            }
        }
        return rows;
    }

    private Row ground(GroundPoint ground, Wire wire, int stud, int order, int here) {
        String thread = ground.studMm().isPresent() ? thread(ground.studMm().getAsDouble()) : "";
        String count = here + " of at most " + Math.round(most().value());
        WireEnd end = new WireEnd.AtGround(ground.id());
        return Row.of(
                Cell.empty(),
                Cell.text(ground.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(ground.name()),
                Cell.text(harness.bodies().get(ground.body()).name()),
                Cell.number(stud),
                thread.isEmpty() ? Cell.missing("not entered") : Cell.text(thread),
                Cell.number(order),
                Cell.text(Wording.wire(wire)),
                Cell.text(Wording.size(gauge(wire))),
                Wording.colour(wire),
                Cell.text("ring for " + Wording.size(gauge(wire)) + (thread.isEmpty() ? "" : ", " + thread)),
                here > most().value() ? Cell.missing(count) : Cell.text(count),
                Cell.text(ground.torque().orElse("")),
                Wording.end(wire.from().equals(end) ? wire.to() : wire.from()));
    }

    /** "M8" for a thread of 8 mm. */
    static String thread(double studMm) {
        return "M" + BigDecimal.valueOf(studMm).stripTrailingZeros().toPlainString();
    }
}
