package org.ohmloom.signal.bus.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.DataBus;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.BusLimit;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.SignalTables;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** Lengths, counts and resistance of a bus against its set of limits. */
final class LimitCheck {

    private static final String ON_STUB = "body-builder manual of a van (2016): no stub on a stub";

    private final DataBus bus;
    private final Optional<BusLimit> limits;
    private final SignalTables tables;
    private final Optional<BusPlan> plan;
    private final LineTree high;
    private final List<NodePlace> nodes;

    LimitCheck(
            DataBus bus,
            Optional<BusLimit> limits,
            SignalTables tables,
            Optional<BusPlan> plan,
            LineTree high,
            List<NodePlace> nodes) {
        this.bus = bus;
        this.limits = limits;
        this.tables = tables;
        this.plan = plan;
        this.high = high;
        this.nodes = nodes;
    }

    List<BusProblem> problems(double trunkMetres, double stubsMetres, OptionalDouble loopOhms) {
        List<BusProblem> problems = new ArrayList<>();
        String rate = Formats.in(bus.bitsPerSecond() / 1000, Unit.KILOBIT_PER_SECOND);
        if (limits.isEmpty()) {
            problems.add(BusProblem.of(
                    BusProblem.Kind.RATE_NOT_LISTED,
                    SignalTexts.text("bus.not-listed", BusWiringStudy.limitSet(bus, tables), bus.id(), rate),
                    List.of(),
                    "wire-tables/can-limits.csv"));
        }
        limits.flatMap(BusLimit::busMetres)
                .filter(limit -> trunkMetres > limit.value())
                .ifPresent(limit -> problems.add(length(
                        BusProblem.Kind.TOO_LONG,
                        SignalTexts.text(
                                "bus.too-long",
                                bus.id(),
                                Formats.metres(trunkMetres),
                                Formats.metres(limit.value()),
                                rate),
                        trunkMetres,
                        limit)));
        limits.flatMap(BusLimit::stubMetres).ifPresent(limit -> stubs(limit, rate, trunkMetres, problems));
        limits.flatMap(BusLimit::stubTotalMetres)
                .filter(limit -> stubsMetres > limit.value())
                .ifPresent(limit -> problems.add(length(
                        BusProblem.Kind.STUBS_TOO_LONG,
                        SignalTexts.text(
                                "bus.stubs-too-long",
                                bus.id(),
                                Formats.metres(stubsMetres),
                                Formats.metres(limit.value()),
                                rate),
                        stubsMetres,
                        limit)));
        count(problems);
        double allowed = LineFormulas.allowedOhms(Math.max(1, bus.nodes().size()), tables);
        if (loopOhms.isPresent() && loopOhms.getAsDouble() > allowed) {
            problems.add(BusProblem.beyond(
                    BusProblem.Kind.LINE_OHMS,
                    SignalTexts.text(
                            "bus.line-ohms",
                            bus.id(),
                            Formats.ohms(loopOhms.getAsDouble()),
                            Formats.ohms(allowed),
                            bus.nodes().size()),
                    List.of(),
                    loopOhms.getAsDouble(),
                    allowed,
                    Unit.OHM,
                    tables.figure(BusFigure.DRIVER_LEAST_VOLTS).citation().text()));
        }
        plan.ifPresent(each -> each.onStubs(high)
                .forEach(node -> problems.add(BusProblem.of(
                        BusProblem.Kind.STUB_ON_STUB,
                        SignalTexts.text("bus.stub-on-stub", node.unit(), bus.id()),
                        List.of(node.unit()),
                        ON_STUB))));
        return problems;
    }

    private void stubs(CitedValue limit, String rate, double trunkMetres, List<BusProblem> problems) {
        boolean ended = plan.filter(BusPlan::terminated).isPresent();
        for (NodePlace node : nodes) {
            double along = node.alongMetres().orElse(0);
            boolean beyond = ended && (along <= 0 || along >= trunkMetres);
            double stub = node.stubMetres().orElse(0);
            if (!beyond && stub > limit.value()) {
                problems.add(BusProblem.beyond(
                        BusProblem.Kind.STUB_TOO_LONG,
                        SignalTexts.text(
                                "bus.stub-too-long",
                                node.unit(),
                                bus.id(),
                                Formats.metres(stub),
                                Formats.metres(limit.value()),
                                rate),
                        List.of(node.unit()),
                        stub,
                        limit.value(),
                        Unit.METRE,
                        limit.citation().text()));
            }
        }
    }

    private void count(List<BusProblem> problems) {
        int served = LineFormulas.allowedNodes(tables);
        double most = limits.flatMap(BusLimit::nodes).map(CitedValue::value).orElse((double) served);
        if (bus.nodes().size() > most) {
            problems.add(BusProblem.beyond(
                    BusProblem.Kind.TOO_MANY_NODES,
                    SignalTexts.text("bus.too-many-nodes", bus.id(), bus.nodes().size(), (int) most),
                    List.of(),
                    bus.nodes().size(),
                    most,
                    Unit.FRACTION,
                    limits.flatMap(BusLimit::nodes)
                            .map(each -> each.citation().text())
                            .orElseGet(() -> tables.figure(BusFigure.LOAD_LEAST_OHMS)
                                    .citation()
                                    .text())));
        }
    }

    private static BusProblem length(BusProblem.Kind kind, Text words, double metres, CitedValue limit) {
        return BusProblem.beyond(
                kind,
                words,
                List.of(),
                metres,
                limit.value(),
                Unit.METRE,
                limit.citation().text());
    }
}
