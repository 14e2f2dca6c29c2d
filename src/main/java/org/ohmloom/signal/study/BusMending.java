package org.ohmloom.signal.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.edit.MoveWireEnd;
import org.ohmloom.edit.PutElements;
import org.ohmloom.edit.SetBusRate;
import org.ohmloom.edit.SetTerminations;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.signal.bus.wiring.BusProblem;
import org.ohmloom.signal.bus.wiring.BusWiring;
import org.ohmloom.signal.bus.wiring.BusWiringStudy;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.BusLimit;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.SignalTables;
import org.ohmloom.units.Formats;

/** Changes of a data bus and its wires that mend what is wrong with its wiring, where one is clear. */
public final class BusMending {
    private final Harness harness;
    private final SignalTables tables;
    private final BusReading reading;
    private final DataBus bus;

    /**
     * Changes of one bus.
     *
     * @param harness the harness
     * @param tables  limits and figures
     * @param reading what is known of the bus
     */
    public BusMending(Harness harness, SignalTables tables, BusReading reading) {
        this.harness = harness;
        this.tables = tables;
        this.reading = reading;
        this.bus = reading.bus();
    }

    /** What mends a problem; empty where no change is clear. */
    public Optional<Edit> of(BusProblem problem) {
        return switch (problem.kind()) {
            case SWAPPED -> swapped(problem);
            case TERMINATION_COUNT, TERMINATION_NOT_AT_END -> terminated();
            case TERMINATION_OHMS -> Optional.of(ohms());
            case TOO_LONG, STUB_TOO_LONG, STUBS_TOO_LONG, RATE_NOT_LISTED -> slower();
            case NOT_TWISTED -> twisted();
            default -> Optional.empty();
        };
    }

    /** Both lines change places at the pins of a node. */
    private Optional<Edit> swapped(BusProblem problem) {
        return bus.nodes().stream()
                .filter(node -> problem.elements().contains(node.unit()))
                .findFirst()
                .map(node -> {
                    List<WireEnd> highs = harness.endsAt(node.unit(), node.high());
                    List<WireEnd> lows = harness.endsAt(node.unit(), node.low());
                    List<Edit> moves = new ArrayList<>();
                    for (Wire wire : harness.wires().all()) {
                        for (WireEnd end : wire.ends()) {
                            other(end, highs, lows)
                                    .or(() -> other(end, lows, highs))
                                    .ifPresent(place ->
                                            moves.add(new MoveWireEnd(wire.id(), end, place, wire.lengthMetres())));
                        }
                    }
                    return new Compound(SignalTexts.text("swap-lines", bus.id(), node.unit()), moves);
                });
    }

    private static Optional<WireEnd> other(WireEnd end, List<WireEnd> from, List<WireEnd> to) {
        int at = from.indexOf(end);
        return at >= 0 && at < to.size() ? Optional.of(to.get(at)) : Optional.empty();
    }

    /** One resistor in each of the two nodes furthest apart; what is there already stays. */
    private Optional<Edit> terminated() {
        if (reading.wiring().farthest().size() != 2) {
            return Optional.empty();
        }
        double ohms = tables.figure(BusFigure.TERMINATION).value();
        List<DataBus.Termination> ends = new ArrayList<>();
        for (DataBus.Node node : reading.wiring().farthest()) {
            Set<WireEnd> places = new HashSet<>(harness.endsAt(node.unit(), node.high()));
            ends.add(bus.terminations().stream()
                    .filter(each -> places.contains(each.high()))
                    .findFirst()
                    .orElseGet(() -> DataBus.Termination.inside(ohms, node)));
        }
        return ends.equals(bus.terminations())
                ? Optional.empty()
                : Optional.of(new SetTerminations(
                        SignalTexts.text(
                                "terminate-in",
                                bus.id(),
                                reading.wiring().farthest().get(0).unit(),
                                reading.wiring().farthest().get(1).unit()),
                        bus.id(),
                        ends));
    }

    private Edit ohms() {
        double least = tables.figure(BusFigure.TERMINATION_LEAST).value();
        double most = tables.figure(BusFigure.TERMINATION_MOST).value();
        double ohms = tables.figure(BusFigure.TERMINATION).value();
        return new SetTerminations(
                SignalTexts.text("terminate-with", bus.id(), Formats.ohms(ohms)),
                bus.id(),
                bus.terminations().stream()
                        .map(each -> each.ohms() < least || each.ohms() > most
                                ? new DataBus.Termination(ohms, each.high(), each.low(), each.part())
                                : each)
                        .toList());
    }

    /** The highest bit rate of the set that all lengths are within, where every message still comes in time. */
    private Optional<Edit> slower() {
        BusWiring wiring = reading.wiring();
        return tables.rates(BusWiringStudy.limitSet(bus, tables)).stream()
                .filter(rate -> rate < bus.bitsPerSecond())
                .filter(rate -> tables.limit(BusWiringStudy.limitSet(bus, tables), rate)
                        .filter(limit -> isWithin(wiring, limit))
                        .isPresent())
                .findFirst()
                .filter(rate -> reading.traffic()
                        .isInTimeAt(rate, tables.figure(BusFigure.LOAD_MOST).value()))
                .map(rate -> new SetBusRate(bus.id(), rate));
    }

    private static boolean isWithin(BusWiring wiring, BusLimit limit) {
        double longest = wiring.nodes().stream()
                .mapToDouble(each -> each.stubMetres().orElse(0))
                .max()
                .orElse(0);
        return isWithin(wiring.trunkMetres(), limit.busMetres())
                && isWithin(longest, limit.stubMetres())
                && isWithin(wiring.stubsMetres(), limit.stubTotalMetres());
    }

    private static boolean isWithin(double metres, Optional<CitedValue> limit) {
        return limit.map(each -> metres <= each.value()).orElse(true);
    }

    /** Each single wire of the one line becomes a pair with one of the other that runs beside it between the same places. */
    private Optional<Edit> twisted() {
        List<Wire> single = reading.wiring().untwisted().stream()
                .map((WireId id) -> harness.wires().get(id))
                .filter(wire -> wire.cable().isEmpty())
                .toList();
        Map<Set<Object>, Wire> waiting = new HashMap<>();
        FreshIds fresh = new FreshIds(harness);
        List<Element> made = new ArrayList<>();
        for (Wire wire : single) {
            Set<Object> between =
                    new HashSet<>(wire.ends().stream().map(this::holder).toList());
            Wire other = waiting.remove(between);
            if (other == null || !Objects.equals(other.lengthMetres(), wire.lengthMetres())) {
                waiting.put(between, wire);
            } else {
                CableId id = new CableId(fresh.next("C"));
                made.add(Cable.pair(id, bus.name(), false, wire.assembly()));
                made.add(other.inCable(Optional.of(id)));
                made.add(wire.inCable(Optional.of(id)));
            }
        }
        return made.isEmpty() || !waiting.isEmpty()
                ? Optional.empty()
                : Optional.of(new PutElements(SignalTexts.text("twist-lines", bus.id()), made));
    }

    /** What holds an end: its component, connector, or the place of its splice. */
    private Object holder(WireEnd end) {
        if (end instanceof WireEnd.AtTerminal at) {
            return at.component();
        }
        if (end instanceof WireEnd.AtCavity at) {
            return at.connector();
        }
        if (end instanceof WireEnd.AtSplice at) {
            Optional<Place> place = harness.splices().get(at.splice()).place();
            return place.isPresent() ? place.get() : "splice";
        }
        return end;
    }
}
