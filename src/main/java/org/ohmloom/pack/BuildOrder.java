package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bench.CrimpFamily;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Cable;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Covering;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.pack.label.LabelText;
import org.ohmloom.pack.label.LabelTexts;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;

/**
 * What a bench worker does, step by step, each with what it needs and a box to tick: cut and mark, twist, crimp, splice,
 * lay on the board, slide closed sleeves on, populate, cover, label, test, fit, test. Only what is to be made counts. The order is the trade's; there is no
 * published source for it.
 */
final class BuildOrder {
    private static final String REMARK =
            "Work from the top. Cut lengths, cavities and limits stand in the wire and cut list, the pin tables and the test"
                    + " sheet of the same revision. A crimp that failed is replaced, never crimped again.";

    private static final List<Column> COLUMNS = List.of(
            Column.count("Step", 0),
            Column.fileOnly("Stage"),
            Column.words("Do"),
            Column.words("With"),
            Column.count("Count", 0),
            Column.tick("Done"),
            Column.blank("By, date"));

    private final Analysis analysis;
    private final Harness harness;
    private final Wording wording;
    private final Map<String, List<Wire>> wiresByEnd = new TreeMap<>(NaturalOrder.INSTANCE);
    private final List<Row> rows = new ArrayList<>();
    private final Supplier<List<LabelText>> labels;
    private String stage = "";
    private String headed = "";
    private int step;

    BuildOrder(Analysis analysis) {
        this(analysis, () -> LabelTexts.of(analysis));
    }

    /** The order with the texts of labels that may be known already. */
    BuildOrder(Analysis analysis, Supplier<List<LabelText>> labels) {
        this.labels = labels;
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.wording = new Wording(harness);
        for (Wire wire : harness.wires().all()) {
            if (!wire.existing()) {
                wire.ends().forEach(end -> wiresByEnd
                        .computeIfAbsent(end.text(), key -> new ArrayList<>())
                        .add(wire));
            }
        }
    }

    Report report() {
        cut();
        twist();
        crimp();
        splice();
        lay();
        slide();
        populate();
        cover();
        label();
        testOnTheBoard();
        fit();
        test();
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        blocks.add(new Block.Facts(List.of(Workmanship.fact(analysis))));
        blocks.add(new Block.Table("", COLUMNS, rows, "Nothing is to be made."));
        return new Report(blocks, REMARK);
    }

    private void stage(String name) {
        stage = name;
    }

    private void step(String what, String with, long count) {
        if (!headed.equals(stage)) {
            rows.add(Row.group(stage));
            headed = stage;
        }
        rows.add(Row.of(
                Cell.number(++step),
                Cell.text(stage),
                Cell.text(what),
                Cell.text(with),
                Cell.number(count),
                Cell.empty(),
                Cell.empty()));
    }

    private void cut() {
        stage("Cut and mark");
        Map<String, List<Wire>> drums = new TreeMap<>(NaturalOrder.INSTANCE);
        for (Wire wire : harness.wires().all()) {
            if (!wire.existing() && !isCore(wire)) {
                String size = wire.gauge().map(Wording::size).orElse("size " + Wording.NOT_CHOSEN);
                String colour = wire.colour().map(each -> each.text()).orElse("colour " + Wording.NOT_CHOSEN);
                drums.computeIfAbsent(size + " " + wording.insulation(wire) + ", " + colour, key -> new ArrayList<>())
                        .add(wire);
            }
        }
        drums.forEach((drum, wires) -> step(
                "Cut to the cut list, mark, slide label sleeves on: " + ids(wires),
                drum + length(wires.stream().mapToDouble(this::metres).sum(), wires.size() > 1 ? " in all" : ""),
                wires.size()));
        for (Cable cable : harness.cables().all()) {
            List<Wire> cores = cores(cable);
            if (cable.isBought() && !cores.isEmpty()) {
                step(
                        "Cut cable " + cable.id() + " " + cable.name()
                                + " to the cut list, mark its cores at both ends: " + ids(cores),
                        cable.part().map(wording::described).orElse("cable " + Wording.NOT_CHOSEN)
                                + length(
                                        cores.stream()
                                                .mapToDouble(this::metres)
                                                .max()
                                                .orElse(0),
                                        ""),
                        cores.size());
            }
        }
    }

    /** Whether a wire comes as a core of a cable that is bought. */
    private boolean isCore(Wire wire) {
        return wire.cable().map(harness.cables()::get).filter(Cable::isBought).isPresent();
    }

    private List<Wire> cores(Cable cable) {
        return harness.wires().all().stream()
                .filter(wire -> !wire.existing() && wire.cable().equals(Optional.of(cable.id())))
                .toList();
    }

    /** Length a wire is cut to, m; 0 when nobody knows it. */
    private double metres(Wire wire) {
        return analysis.routes().lengthMetres(wire).orElse(0);
    }

    private static String length(double metres, String of) {
        return metres > 0 ? ", " + Formats.metres(metres) + of : "";
    }

    private static String ids(List<Wire> wires) {
        return Wording.ids(wires.stream().map(Wire::id).toList());
    }

    private void twist() {
        stage("Twist and shield");
        for (Cable cable : harness.cables().all()) {
            List<Wire> cores = cores(cable);
            if (cores.isEmpty()) {
                continue;
            }
            boolean pair = !cable.isBought();
            String lay = cable.layLengthMm().isPresent()
                    ? ", one turn in " + Formats.millimetres(cable.layLengthMm().getAsDouble())
                    : "";
            String shield = cores.stream()
                    .filter(wire -> wire.signalClass() == SignalClass.SHIELD)
                    .map(wire -> "; shield " + wire.id() + " to " + wire.from().text() + " and "
                            + wire.to().text())
                    .collect(Collectors.joining());
            step(
                    (pair ? "Twist " : "Prepare cable ") + cable.id() + " " + cable.name() + ": " + ids(cores) + lay
                            + shield,
                    "the " + (pair ? "wires" : "cable") + " cut before",
                    cores.size());
        }
    }

    private void crimp() {
        stage("Crimp");
        for (CrimpFamily family : analysis.evidence().tests().plan().crimps()) {
            Optional<ContactPart> contact = family.contact();
            String strip = contact.map(part -> ", strip " + Formats.millimetres(part.stripLengthMm()))
                    .orElse(", strip to the barrel");
            String seal = contact.flatMap(ContactPart::seal)
                    .map(each -> ", seal " + each.part() + " first")
                    .orElse("");
            String part =
                    contact.flatMap(ContactPart::part).map(id -> id.value()).orElse(Wording.NOT_CHOSEN);
            String tool =
                    contact.flatMap(ContactPart::tool).map(wording::described).orElse("tool " + Wording.NOT_CHOSEN);
            step(
                    "Crimp " + family.terminal() + (contact.isPresent() ? " " + part : "") + " on "
                            + Wording.size(family.gauge()) + strip + seal + shared(family)
                            + "; pull test the set-up first"
                            + family.force()
                                    .map(least -> ", "
                                            + Formats.number(
                                                    least.forceNewtons().value()) + " N at least")
                                    .orElse(", by the terminal maker's force: none is listed for this size"),
                    tool,
                    family.crimps());
        }
    }

    /** Cavities where two wires share the crimp, whose smaller wire is of the family. */
    private String shared(CrimpFamily family) {
        List<String> cavities = wiresByEnd.entrySet().stream()
                .filter(entry -> entry.getValue().size() > 1
                        && harness.contact(end(entry.getValue().get(0), entry.getKey()))
                                .filter(contact -> Optional.of(contact).equals(family.contact()))
                                .isPresent()
                        && entry.getValue().stream()
                                .map(this::gauge)
                                .min(Comparator.comparingDouble(Gauge::nominalAreaMm2))
                                .equals(Optional.of(family.gauge())))
                .map(entry -> entry.getKey() + " with " + ids(entry.getValue()).replace(", ", " and "))
                .toList();
        return cavities.isEmpty() ? "" : "; two wires in one crimp: " + String.join("; ", cavities);
    }

    private Gauge gauge(Wire wire) {
        return wire.gauge()
                .orElseGet(() ->
                        analysis.evidence().rating(wire.id()).orElseThrow().gauge());
    }

    private static WireEnd end(Wire wire, String text) {
        return wire.from().text().equals(text) ? wire.from() : wire.to();
    }

    private void splice() {
        stage("Splice");
        SpliceSides sides = new SpliceSides(harness, analysis.routes());
        for (Splice splice : harness.splices().all()) {
            List<Wire> wires = wiresByEnd.getOrDefault(splice.id().value(), List.of());
            if (!splice.existing() && !wires.isEmpty()) {
                String place = splice.place()
                        .map(wording::place)
                        .map(text -> ", at " + text)
                        .orElse("");
                List<SpliceSides.Side> found = sides.of(splice, wires);
                String form = SpliceSides.form(splice, found)
                        .map(each -> each == Splice.Form.END ? "end splice " : "in-line splice ")
                        .orElse("splice ");
                String members = found.stream().map(side -> ids(side.wires())).collect(Collectors.joining(" | "));
                String closed = splice.sealed().filter(each -> each).isPresent() ? ", seal it" : "";
                step(
                        "Make " + form + splice.id() + " " + splice.name() + ": " + members + place + closed,
                        splice.part().map(wording::described).orElse(Wording.NOT_CHOSEN)
                                + splice.cover().map(cover -> "; " + cover).orElse(""),
                        wires.size());
            }
        }
    }

    /** The stretch with the most wires first: what is laid later lies on top and leaves at breakouts. */
    private void lay() {
        stage("Lay on the board");
        Map<SegmentId, Long> laid = new TreeMap<>();
        analysis.routes().wiresBySegment().forEach((segment, wires) -> {
            long made = wires.stream()
                    .filter(id -> !harness.wires().get(id).existing())
                    .count();
            if (made > 0) {
                laid.put(segment, made);
            }
        });
        List<SegmentId> order = laid.keySet().stream()
                .sorted(Comparator.comparing((SegmentId id) -> -laid.get(id)))
                .toList();
        for (SegmentId id : order) {
            BundleSegment segment = harness.segments().get(id);
            step(
                    "Lay " + id + " from " + segment.from() + " to " + segment.to() + ", "
                            + Formats.metres(segment.lengthMetres()) + "; tie beside each breakout",
                    "board" + ties(id),
                    laid.get(id));
        }
    }

    private String ties(SegmentId id) {
        int ties = analysis.evidence()
                .bundles()
                .of(id)
                .map(section -> section.supports().tieMetres().size())
                .orElse(0);
        return ties == 0 ? "" : ", " + Wording.count(ties, "tie");
    }

    private void populate() {
        stage("Populate connectors");
        for (Connector connector : harness.connectors().all()) {
            long filled = connector.cavities().stream()
                    .filter(cavity -> wiresByEnd.containsKey(end(connector, cavity)))
                    .count();
            if (connector.existing() || filled == 0) {
                continue;
            }
            String plugs = connector.cavities().stream()
                    .filter(cavity -> !wiresByEnd.containsKey(end(connector, cavity))
                            && cavity.plug().isPresent())
                    .map(Cavity::name)
                    .collect(Collectors.joining(", "));
            String lock =
                    connector.lock().map(part -> ", then close lock " + part).orElse("");
            step(
                    "Populate " + connector.id() + " " + connector.name()
                            + connector
                                    .backshell()
                                    .map(part -> ", backshell " + part + " on the wires first,")
                                    .orElse("")
                            + " by its pin table, pull each wire lightly to feel it seated"
                            + (plugs.isEmpty() ? "" : ", plug " + plugs) + lock,
                    connector.part().map(wording::described).orElse(Wording.NOT_CHOSEN),
                    filled);
        }
    }

    private static String end(Connector connector, Cavity cavity) {
        return new WireEnd.AtCavity(connector.id(), cavity.name()).text();
    }

    /** Closed sleeves pass no filled housing: they go on before it. */
    private static boolean isClosed(Covering covering) {
        return switch (covering.kind()) {
            case BRAIDED_SLEEVE, HEAT_SHRINK, TUBE -> true;
            case TAPE, CONDUIT -> false;
        };
    }

    private void slide() {
        stage("Slide sleeves on");
        cover("Slide onto ", true);
    }

    private void cover() {
        stage("Cover");
        cover("Cover ", false);
    }

    private void cover(String what, boolean closed) {
        for (BundleSegment segment : harness.segments().all()) {
            segment.covering()
                    .filter(covering -> isClosed(covering) == closed)
                    .ifPresent(covering -> step(
                            what + segment.id() + " from " + segment.from() + " to " + segment.to() + ", "
                                    + Formats.metres(segment.lengthMetres()) + cut(segment)
                                    + covering.endFinish()
                                            .map(finish -> ", ends "
                                                    + finish.name()
                                                            .toLowerCase(Locale.ROOT)
                                                            .replace('_', ' '))
                                            .orElse(""),
                            covering.part().map(wording::described).orElse(covering.text()),
                            1));
        }
    }

    private String cut(BundleSegment segment) {
        return analysis.evidence()
                .bundles()
                .of(segment.id())
                .flatMap(SegmentSection::covering)
                .filter(fit -> fit.materialMetres() > 1)
                .map(fit -> ", cut " + Formats.metres(segment.lengthMetres() * fit.materialMetres()))
                .orElse("");
    }

    private void label() {
        stage("Label");
        Map<LabelText.Kind, List<LabelText>> byKind = labels.get().stream()
                .collect(Collectors.groupingBy(LabelText::kind, TreeMap::new, Collectors.toList()));
        byKind.forEach((kind, texts) -> {
            if (kind != LabelText.Kind.WIRE) {
                step(
                        "Label " + kind.words().toLowerCase(Locale.ROOT) + ": "
                                + texts.stream().map(LabelText::subject).collect(Collectors.joining(", ")),
                        "the sheets of labels",
                        texts.size());
            }
        });
    }

    private void testOnTheBoard() {
        if (step > 0) {
            stage("Test on the board");
            step("Continuity, isolation and cables by the test sheet, before anything is plugged in", "ohmmeter", 1);
        }
    }

    private void fit() {
        stage("Fit in the vehicle, battery disconnected");
        for (GroundPoint ground : harness.grounds().all()) {
            List<Wire> wires = wiresByEnd.getOrDefault(ground.id().value(), List.of());
            if (!wires.isEmpty()) {
                List<Wire> order = wires.stream()
                        .sorted(Comparator.comparing((Wire wire) -> -gauge(wire).nominalAreaMm2())
                                .thenComparing(Wire::id))
                        .toList();
                step(
                        "Clean and fit " + ground.id() + " " + ground.name() + ", by the table of ground points: "
                                + ids(order) + ", the largest first",
                        ground.part().map(wording::described).orElse("the fastener there")
                                + ground.torque().map(torque -> "; " + torque).orElse(""),
                        wires.size());
            }
        }
        long studs = wiresByEnd.entrySet().stream()
                .flatMap(entry -> entry.getValue().stream()
                        .flatMap(wire -> wire.ends().stream())
                        .filter(end ->
                                end instanceof WireEnd.AtTerminal && end.text().equals(entry.getKey())))
                .count();
        if (studs > 0) {
            step(
                    "Fit the terminals on studs and screws by the table of terminals",
                    "as the equipment's maker says",
                    studs);
        }
    }

    private void test() {
        if (step > 0) {
            stage("Test in the vehicle");
            step("Powered test by the test sheet, protective devices fitted last", "voltmeter", 1);
        }
    }
}
