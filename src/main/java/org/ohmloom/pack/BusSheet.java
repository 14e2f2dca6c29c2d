package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.study.BusCharts;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.bus.traffic.BusSignal;
import org.ohmloom.signal.bus.traffic.PackedMessage;
import org.ohmloom.signal.bus.wiring.BusWiring;
import org.ohmloom.signal.bus.wiring.NodePlace;
import org.ohmloom.signal.study.BusReading;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.BusLimit;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/** Each data bus: its wiring against its limits, what a meter reads at each node, and its messages with their timing. */
final class BusSheet {

    private static final String REMARK =
            "Resistance at rest: battery disconnected, meter across both lines at the node.";

    private static final List<Column> NODES = List.of(
            Column.code("Bus"),
            Column.code("Node").mentioning(),
            Column.words("Name"),
            Column.code("High, low"),
            Column.number("Along the trunk", Unit.METRE, 2),
            Column.number("Stub", Unit.METRE, 2),
            Column.number("Ground offset, worst", Unit.VOLT, 3),
            Column.number("At rest", Unit.OHM, 1),
            Column.blank("Measured", Unit.OHM));

    private static final List<Column> TERMINATIONS = List.of(
            Column.code("Bus"),
            Column.number("Resistance", Unit.OHM, 0),
            Column.words("What"),
            Column.code("High line"),
            Column.code("Low line"),
            Column.code("Part").mentioning(),
            Column.tick("Fitted"));

    private static final List<Column> MESSAGES = List.of(
            Column.code("Bus"),
            Column.words("Message"),
            Column.code("Identifier"),
            Column.code("Sender").mentioning(),
            Column.words("Holds, first bits first"),
            Column.count("Bytes", 0),
            Column.number("Period", Unit.MILLISECOND, 1),
            Column.count("Bits, most", 0),
            Column.number("Frame", Unit.MILLISECOND, 3),
            Column.number("Blocked", Unit.MILLISECOND, 3),
            Column.number("Worst response", Unit.MILLISECOND, 3),
            Column.number("Deadline", Unit.MILLISECOND, 1));

    private final Analysis analysis;
    private final Harness harness;
    private final SceneFonts fonts;

    BusSheet(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.fonts = fonts;
    }

    Report report() {
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        for (BusReading reading : analysis.evidence().signals().buses()) {
            blocks.addAll(blocks(reading));
        }
        if (harness.buses().isEmpty()) {
            blocks.add(new Block.Prose("The harness has no data bus."));
        }
        return new Report(blocks, REMARK);
    }

    private List<Block> blocks(BusReading reading) {
        DataBus bus = reading.bus();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(
                "Data bus " + bus.id() + ", " + bus.name(), Optional.of(bus.id().value())));
        blocks.add(new Block.Facts(facts(reading)));
        List<String> wrong = new ArrayList<>(reading.wiring().problems().stream()
                .map(problem -> problem.words().english() + ".")
                .toList());
        reading.traffic().clashing().forEach(name -> wrong.add("Message " + name + " has the identifier of another."));
        reading.traffic().unsent().forEach(name -> wrong.add(name + " has no rate and is in no message."));
        reading.traffic().seldom().forEach(name -> wrong.add(name + " is sent less often than its rate asks."));
        if (!wrong.isEmpty()) {
            blocks.add(new Block.Notice("To be put right", wrong));
        }
        blocks.add(new Block.Heading("Nodes of " + bus.id()));
        blocks.add(new Block.Table(
                "nodes",
                NODES,
                reading.wiring().nodes().stream().map(node -> node(bus, node)).toList(),
                "Bus " + bus.id() + " has no node."));
        blocks.add(new Block.Heading("Terminations of " + bus.id()));
        blocks.add(new Block.Table(
                "terminations",
                TERMINATIONS,
                bus.terminations().stream().map(each -> termination(bus, each)).toList(),
                "Bus " + bus.id() + " has no termination."));
        blocks.add(new Block.Heading("Messages of " + bus.id()));
        blocks.add(new Block.Table(
                "messages",
                MESSAGES,
                reading.traffic().messages().stream()
                        .map(message -> message(reading, message))
                        .toList(),
                "Nothing is sent on bus " + bus.id() + "."));
        double most = figure(BusFigure.LOAD_MOST).value();
        List<Scene> pictures = new ArrayList<>();
        BusCharts.load(reading, most).ifPresent(chart -> pictures.add(chart.scene(fonts, Block.Pictures.HALF_MM)));
        BusCharts.responses(reading).ifPresent(chart -> pictures.add(chart.scene(fonts, Block.Pictures.HALF_MM)));
        if (!pictures.isEmpty()) {
            blocks.add(new Block.Pictures(pictures));
        }
        return blocks;
    }

    private CitedValue figure(String item) {
        return analysis.evidence().tables().signals().figure(item);
    }

    private List<Block.Fact> facts(BusReading reading) {
        BusWiring wiring = reading.wiring();
        Optional<BusLimit> limits = wiring.limits();
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(
                new Block.Fact("Bit rate", Formats.in(reading.bus().bitsPerSecond() / 1000, Unit.KILOBIT_PER_SECOND)));
        facts.add(new Block.Fact(
                "Limits",
                limits.map(each -> each.title() + ", row "
                                + Formats.in(each.bitsPerSecond() / 1000, Unit.KILOBIT_PER_SECOND))
                        .orElse("none listed for this rate")));
        facts.add(new Block.Fact("Trunk", within(wiring.trunkMetres(), limits.flatMap(BusLimit::busMetres))));
        facts.add(new Block.Fact(
                "Stubs together", within(wiring.stubsMetres(), limits.flatMap(BusLimit::stubTotalMetres))));
        limits.flatMap(BusLimit::stubMetres)
                .ifPresent(most -> facts.add(new Block.Fact("Each stub at most", Formats.metres(most.value()))));
        limits.map(BusSheet::sources)
                .filter(text -> !text.isEmpty())
                .ifPresent(text -> facts.add(new Block.Fact("Lengths are limited by", text)));
        facts.add(new Block.Fact(
                "Nodes",
                reading.bus().nodes().size() + " of "
                        + limits.flatMap(BusLimit::nodes)
                                .map(each -> (int) each.value())
                                .orElse(wiring.allowedNodes())));
        wiring.loopOhms()
                .ifPresent(ohms -> facts.add(new Block.Fact(
                        "Resistance of the lines, there and back",
                        Formats.ohms(ohms) + ", at most " + Formats.ohms(wiring.allowedOhms()))));
        facts.add(new Block.Fact(
                "Load",
                Formats.percent(reading.traffic().loadFraction()) + ", at most "
                        + Formats.percent(figure(BusFigure.LOAD_MOST).value()) + " by practice"));
        nodeOffsets()
                .filter(each -> reading.bus().nodes().stream()
                        .anyMatch(node -> node.unit().equals(each.point().owner())))
                .findFirst()
                .ifPresent(each -> facts.add(new Block.Fact(
                        "Ground offsets against", each.point().against().value())));
        facts.add(new Block.Fact(
                "Not in a twisted pair", wiring.untwisted().isEmpty() ? "none" : Wording.ids(wiring.untwisted())));
        return facts;
    }

    private static String within(double metres, Optional<CitedValue> most) {
        return Formats.metres(metres)
                + most.map(each -> ", at most " + Formats.metres(each.value())).orElse("");
    }

    /** Where the limits of lengths are from, each source once. */
    private static String sources(BusLimit limits) {
        return Stream.of(limits.busMetres(), limits.stubTotalMetres(), limits.stubMetres())
                .flatMap(Optional::stream)
                .map(each -> each.citation().text())
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private Row node(DataBus bus, NodePlace node) {
        String pins = bus.nodes().stream()
                .filter(each -> each.unit().equals(node.unit()))
                .map(each -> each.high() + ", " + each.low())
                .findFirst()
                .orElse("");
        return Row.of(
                Cell.text(bus.id().value()),
                node.joined()
                        ? Cell.text(node.unit().value()).toned(Cell.Tone.STRONG)
                        : Cell.missing(node.unit().value()),
                Cell.text(harness.components().get(node.unit()).name()),
                Cell.text(pins),
                Cell.number(node.alongMetres()),
                Cell.number(node.stubMetres()),
                Cell.number(offsetVolts(node.unit())),
                Cell.number(node.restOhms()),
                Cell.empty());
    }

    /** The worst offset of a node's ground over all states, V; 0 of the node the others are held against. */
    private OptionalDouble offsetVolts(ComponentId unit) {
        return nodeOffsets().anyMatch(each -> each.point().against().equals(unit))
                ? OptionalDouble.of(0)
                : nodeOffsets()
                        .filter(each -> each.point().owner().equals(unit))
                        .mapToDouble(Offset::worstVolts)
                        .max();
    }

    private Stream<Offset> nodeOffsets() {
        return analysis.evidence().returns().offsets().stream()
                .filter(each -> each.point().kind() == ReferencePoint.Kind.BUS_NODE_GROUND);
    }

    private static Row termination(DataBus bus, DataBus.Termination each) {
        String what = each.insideUnit()
                .map(unit -> "inner resistor of " + unit + ", switched on")
                .orElseGet(() -> each.part().isPresent() ? "resistor, a part of its own" : "resistor");
        return Row.of(
                Cell.text(bus.id().value()),
                Cell.number(each.ohms()),
                Cell.text(what),
                Cell.text(each.high().text()),
                Cell.text(each.low().text()),
                Cell.text(each.part().map(part -> part.value())),
                Cell.empty());
    }

    private static Row message(BusReading reading, PackedMessage message) {
        Optional<MessageTiming> timing = reading.traffic().timingOf(message);
        boolean late = timing.filter(each -> !each.isInTime()).isPresent();
        Cell response = timing.map(MessageTiming::responseSeconds)
                .filter(OptionalDouble::isPresent)
                .map(each -> Cell.number(Unit.MILLISECOND.fromCanonical(each.getAsDouble())))
                .orElse(Cell.missing("never"));
        return Row.of(
                Cell.text(reading.bus().id().value()),
                Cell.text(message.message().id()).toned(Cell.Tone.STRONG),
                Cell.text(message.identifierText()),
                Cell.text(message.sender().value()),
                Cell.text(
                        message.signals().isEmpty()
                                ? "by its data sheet"
                                : message.signals().stream()
                                        .map(BusSignal::name)
                                        .collect(Collectors.joining(", "))),
                Cell.number(message.message().dataBytes()),
                Cell.number(Unit.MILLISECOND.fromCanonical(message.message().periodSeconds())),
                Cell.number(
                        message.message().format().mostBits(message.message().dataBytes())),
                Cell.number(milliseconds(timing.map(MessageTiming::frameSeconds))),
                Cell.number(milliseconds(timing.map(MessageTiming::blockingSeconds))),
                late ? response.toned(Cell.Tone.ALERT) : response,
                Cell.number(Unit.MILLISECOND.fromCanonical(message.message().deadlineSeconds())));
    }

    private static OptionalDouble milliseconds(Optional<Double> seconds) {
        return seconds.map(each -> OptionalDouble.of(Unit.MILLISECOND.fromCanonical(each)))
                .orElse(OptionalDouble.empty());
    }
}
