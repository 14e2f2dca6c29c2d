package org.ohmloom.signal.bus.wiring;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.signal.SignalTexts;
import org.ohmloom.tables.BusLimit;

/** Whether both lines run twisted about each other, and whether a shield is there where the set asks for one and grounded once. */
final class PairCheck {

    private static final String TWIST = "SAE J1939-11, SAE J1939-15: twisted pair";
    private static final String SHIELD =
            "SAE J1939-11: shielded twisted pair, its drain grounded at one place (from memory)";

    private final Harness harness;
    private final DataBus bus;
    private final LineTree high;
    private final LineTree low;
    private final Optional<BusLimit> limits;
    private final List<WireId> untwisted;

    PairCheck(Harness harness, DataBus bus, LineTree high, LineTree low, Optional<BusLimit> limits) {
        this.harness = harness;
        this.bus = bus;
        this.high = high;
        this.low = low;
        this.limits = limits;
        this.untwisted = apart();
    }

    /** Wires that are no cores of a twisted pair with a wire of the other line. */
    List<WireId> untwisted() {
        return untwisted;
    }

    private List<WireId> apart() {
        List<WireId> highs = high.wires();
        List<WireId> lows = low.wires();
        return Stream.concat(
                        highs.stream().filter(wire -> !isPaired(wire, lows)),
                        lows.stream().filter(wire -> !isPaired(wire, highs)))
                .sorted()
                .distinct()
                .toList();
    }

    List<BusProblem> problems() {
        List<BusProblem> problems = new ArrayList<>();
        if (!untwisted.isEmpty()) {
            problems.add(BusProblem.of(
                    BusProblem.Kind.NOT_TWISTED,
                    SignalTexts.text("bus.not-twisted", bus.id(), words(untwisted)),
                    untwisted,
                    TWIST));
        }
        boolean wanted = limits.flatMap(BusLimit::shield).filter("yes"::equals).isPresent();
        Set<CableId> cables = new TreeSet<>();
        Stream.concat(high.wires().stream(), low.wires().stream())
                .forEach(wire -> harness.wires().get(wire).cable().ifPresent(cables::add));
        List<CableId> bare = cables.stream()
                .filter(id -> !harness.cables().get(id).shielded())
                .toList();
        if (wanted && (!bare.isEmpty() || cables.isEmpty())) {
            problems.add(BusProblem.of(
                    BusProblem.Kind.SHIELD,
                    bare.isEmpty()
                            ? SignalTexts.text("bus.no-shield", bus.id())
                            : SignalTexts.text("bus.no-shield-in", bus.id(), words(bare)),
                    bare,
                    SHIELD));
        }
        if (cables.size() > bare.size()) {
            grounded(cables, problems);
        }
        return problems;
    }

    private void grounded(Set<CableId> cables, List<BusProblem> problems) {
        Set<WireEnd> grounds = new HashSet<>();
        List<WireId> drains = new ArrayList<>();
        for (Wire wire : harness.wires().all()) {
            boolean shield = wire.signalClass() == SignalClass.SHIELD
                    && wire.cable().filter(cables::contains).isPresent();
            if (shield) {
                drains.add(wire.id());
                wire.ends().stream().filter(this::isGround).forEach(grounds::add);
            }
        }
        if (grounds.size() != 1) {
            problems.add(BusProblem.of(
                    BusProblem.Kind.SHIELD,
                    grounds.isEmpty()
                            ? SignalTexts.text("bus.shield-not-grounded", bus.id())
                            : SignalTexts.text("bus.shield-grounded", bus.id(), grounds.size()),
                    drains,
                    SHIELD));
        }
    }

    private boolean isGround(WireEnd end) {
        if (end instanceof WireEnd.AtGround) {
            return true;
        }
        Optional<String> pin = Optional.empty();
        Optional<ControlUnit> unit = Optional.empty();
        if (end instanceof WireEnd.AtTerminal at) {
            pin = Optional.of(at.terminal());
            unit = unit(at.component());
        } else if (end instanceof WireEnd.AtCavity at) {
            pin = harness.connectors().get(at.connector()).cavity(at.cavity()).flatMap(cavity -> cavity.terminal());
            unit = harness.connectors().get(at.connector()).component().flatMap(this::unit);
        }
        Optional<String> name = pin;
        return unit.flatMap(each -> name.flatMap(each::pin))
                .filter(each -> each.role() == PinRole.GROUND || each.role() == PinRole.CASE)
                .isPresent();
    }

    private Optional<ControlUnit> unit(ComponentId id) {
        return harness.components().get(id).device() instanceof ControlUnit unit ? Optional.of(unit) : Optional.empty();
    }

    private boolean isPaired(WireId id, List<WireId> others) {
        Optional<CableId> cable = harness.wires().get(id).cable();
        return cable.map(harness.cables()::get)
                        .filter(each -> each.kind() == Cable.Kind.TWISTED_PAIR)
                        .isPresent()
                && others.stream()
                        .anyMatch(other -> harness.wires().get(other).cable().equals(cable));
    }

    private static String words(List<? extends ElementId> ids) {
        String shown = ids.stream().limit(3).map(ElementId::value).collect(Collectors.joining(", "));
        return ids.size() > 3 ? shown + " and " + (ids.size() - 3) + " more" : shown;
    }
}
