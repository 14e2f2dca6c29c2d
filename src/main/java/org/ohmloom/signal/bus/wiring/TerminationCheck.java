package org.ohmloom.signal.bus.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.DataBus;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.BusLimit;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.SignalTables;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/** Exactly two terminations of the right resistance, and nobody beyond them. */
final class TerminationCheck {

    private static final String SOURCE = "ISO 11898-2; SAE J1939-11: 120 ohm at each end";

    private final Network network;
    private final DataBus bus;
    private final Optional<BusLimit> limits;
    private final SignalTables tables;
    private final LineTree high;
    private final LineTree low;
    private final Optional<BusPlan> plan;
    private final List<NodePlace> nodes;

    TerminationCheck(
            Network network,
            DataBus bus,
            Optional<BusLimit> limits,
            SignalTables tables,
            LineTree high,
            LineTree low,
            Optional<BusPlan> plan,
            List<NodePlace> nodes) {
        this.network = network;
        this.bus = bus;
        this.limits = limits;
        this.tables = tables;
        this.high = high;
        this.low = low;
        this.plan = plan;
        this.nodes = nodes;
    }

    List<BusProblem> problems() {
        List<BusProblem> problems = new ArrayList<>();
        long joined = bus.terminations().stream().filter(this::isAcross).count();
        if (joined != 2) {
            problems.add(BusProblem.of(
                    BusProblem.Kind.TERMINATION_COUNT,
                    SignalTexts.text("bus.terminations", bus.id(), joined, String.valueOf(joined)),
                    List.of(),
                    SOURCE));
        }
        CitedValue least = tables.figure(BusFigure.TERMINATION_LEAST);
        CitedValue most = tables.figure(BusFigure.TERMINATION_MOST);
        for (DataBus.Termination each : bus.terminations()) {
            if (each.ohms() < least.value() || each.ohms() > most.value()) {
                boolean small = each.ohms() < least.value();
                problems.add(BusProblem.beyond(
                        BusProblem.Kind.TERMINATION_OHMS,
                        SignalTexts.text(
                                small ? "bus.termination-small" : "bus.termination-large",
                                bus.id(),
                                each.high().text(),
                                Formats.ohms(each.ohms()),
                                Formats.ohms(small ? least.value() : most.value())),
                        List.of(),
                        each.ohms(),
                        small ? least.value() : most.value(),
                        Unit.OHM,
                        least.citation().text()));
            }
        }
        plan.filter(BusPlan::terminated).ifPresent(each -> beyondEnds(each, problems));
        return problems;
    }

    private boolean isAcross(DataBus.Termination each) {
        return on(high, BusPlan.point(network, each.high())) && on(low, BusPlan.point(network, each.low()))
                || on(low, BusPlan.point(network, each.high())) && on(high, BusPlan.point(network, each.low()));
    }

    private static boolean on(LineTree line, Optional<PointId> point) {
        return point.filter(line::has).isPresent();
    }

    /** A node beyond a termination by more than a stub may be long. */
    private void beyondEnds(BusPlan of, List<BusProblem> problems) {
        double most =
                limits.flatMap(BusLimit::stubMetres).map(CitedValue::value).orElse(0.0);
        double trunk = high.metres(of.trunk());
        for (NodePlace node : nodes) {
            boolean atEnd = node.joined()
                    && (node.alongMetres().orElse(0) <= 0 || node.alongMetres().orElse(0) >= trunk);
            if (atEnd && node.stubMetres().orElse(0) > most) {
                problems.add(BusProblem.beyond(
                        BusProblem.Kind.TERMINATION_NOT_AT_END,
                        SignalTexts.text(
                                "bus.beyond-termination",
                                node.unit(),
                                Formats.metres(node.stubMetres().orElse(0)),
                                bus.id()),
                        List.of(node.unit()),
                        node.stubMetres().orElse(0),
                        most,
                        Unit.METRE,
                        SOURCE));
            }
        }
    }
}
