package org.ohmloom.analysis.start;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Component;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Device;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Inrush;
import org.ohmloom.model.Load;
import org.ohmloom.model.Relay;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Switch;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.InrushMultiple;
import org.ohmloom.tables.WireTables;

/**
 * The circuits of the loads of a first harness: fuse, what switches it, load, and a return of its own. What is too much for a
 * hand switch or an output is switched by a relay in the fuse box; all coils are fed from one fuse.
 */
final class StartLoads {

    private static final String POSITION = "2";

    private final StartDraft draft;
    private final StartPlaces places;
    private final StartFuses fuses;
    private final StartReturns returns;
    private final Optional<StartUnit> unit;
    private final StartStates states;
    private final WireTables tables;
    private Optional<StartSplit> coils = Optional.empty();

    StartLoads(
            StartDraft draft,
            StartPlaces places,
            StartFuses fuses,
            StartReturns returns,
            Optional<StartUnit> unit,
            StartStates states,
            WireTables tables) {
        this.draft = draft;
        this.places = places;
        this.fuses = fuses;
        this.returns = returns;
        this.unit = unit;
        this.states = states;
        this.tables = tables;
    }

    /** Makes the circuit of one load. */
    void build(StartLoad load) {
        Component component = draft.plugged(
                "L",
                load.name(),
                new Load(
                        draw(load),
                        control(load),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        inrush(load),
                        OptionalDouble.empty()),
                Optional.of(places.zone(load.place())));
        ConnectorId plug = places.connector(component, List.of(Device.POSITIVE, Device.NEGATIVE), load.place());
        WireEnd positive = new WireEnd.AtCavity(plug, "1");
        states.load(component.id());
        switch (load.control()) {
            case ALWAYS_FED -> draft.wire(fuse(load), positive, SignalClass.FEED, load.name());
            case SWITCH -> byHand(load, positive);
            case CONTROL_UNIT -> byUnit(load, positive, unit.orElseThrow());
        }
        returns.join(new WireEnd.AtCavity(plug, "2"), load.name());
    }

    private WireEnd fuse(StartLoad load) {
        return fuses.circuit(load.name(), load.amps());
    }

    private void byHand(StartLoad load, WireEnd positive) {
        boolean direct = load.amps() <= StartFigures.MOST_BY_HAND_AMPS;
        Component hand = handSwitch(load);
        WireEnd closed = StartDraft.terminal(hand, POSITION);
        WireEnd common = StartDraft.terminal(hand, Switch.COMMON);
        if (direct) {
            draft.wire(fuse(load), common, SignalClass.FEED, load.name());
            draft.wire(closed, positive, SignalClass.SWITCHED_OUTPUT, load.name());
        } else {
            Component relay = relay(load, positive);
            coils().join(common, load.name());
            draft.wire(
                    closed,
                    StartDraft.terminal(relay, Relay.COIL_B),
                    SignalClass.SWITCHED_OUTPUT,
                    load.name() + " coil");
            returns.join(StartDraft.terminal(relay, Relay.COIL_A), load.name() + " coil");
        }
    }

    private void byUnit(StartLoad load, WireEnd positive, StartUnit switching) {
        if (load.amps() <= StartFigures.MOST_BY_OUTPUT_AMPS) {
            String pin = switching.highSide(load.amps());
            states.output(pin);
            draft.wire(switching.end(pin), positive, SignalClass.SWITCHED_OUTPUT, load.name());
            return;
        }
        Component relay = relay(load, positive);
        String pin = switching.lowSide();
        states.output(pin);
        coils().join(StartDraft.terminal(relay, Relay.COIL_B), load.name() + " coil");
        draft.wire(
                StartDraft.terminal(relay, Relay.COIL_A),
                switching.end(pin),
                SignalClass.SWITCHED_OUTPUT,
                load.name() + " coil");
    }

    private Component handSwitch(StartLoad load) {
        String place = draft.plan().switchPlace();
        Component hand = draft.component(
                "S",
                load.name() + " switch",
                new Switch(List.of(POSITION), StartFigures.SWITCH_OHMS, StartFigures.MOST_BY_HAND_AMPS),
                Optional.of(places.zone(place)),
                places.branch(place, load.name() + " switch"));
        states.component(hand.id());
        return hand;
    }

    private Component relay(StartLoad load, WireEnd positive) {
        double nominal = draft.plan().supply().nominalVolts();
        Component relay = draft.component(
                "K",
                load.name() + " relay",
                new Relay(
                        nominal * nominal / StartFigures.COIL_WATTS,
                        nominal * StartFigures.PULL_IN,
                        nominal * StartFigures.DROP_OUT,
                        StartFigures.RELAY_OHMS,
                        StartFigures.relayAmps(load.amps()),
                        false),
                Optional.empty(),
                places.hub());
        draft.wire(fuse(load), StartDraft.terminal(relay, Relay.COMMON), SignalClass.FEED, load.name());
        draft.wire(StartDraft.terminal(relay, Relay.MAKE), positive, SignalClass.SWITCHED_OUTPUT, load.name());
        return relay;
    }

    private StartSplit coils() {
        if (coils.isEmpty()) {
            coils = Optional.of(
                    new StartSplit(draft, places, draft.plan().switchPlace(), "Feed of the coils", SignalClass.FEED));
        }
        return coils.get();
    }

    /** Feeds the coils, where there are any. */
    void finish() {
        coils.ifPresent(split -> split.build(
                fuses.circuit(
                        "Relay coils",
                        split.count()
                                * StartFigures.COIL_WATTS
                                / draft.plan().supply().nominalVolts()),
                "relay coils"));
    }

    private static Load.Control control(StartLoad load) {
        return load.control() == StartLoad.Control.ALWAYS_FED ? Load.Control.COMMAND : Load.Control.FEED;
    }

    private Draw draw(StartLoad load) {
        double volts = draft.plan().supply().nominalVolts();
        return switch (load.kind()) {
            case MOTOR -> new Draw.Motor(load.amps(), load.amps() * inrushMultiple(load), volts);
            case FILAMENT_LAMP -> new Draw.Lamp(load.amps() * volts, volts);
            case HEATER_OR_COIL -> new Draw.Resistive(load.amps(), volts);
            case ELECTRONICS -> new Draw.ConstantPower(load.amps() * volts, volts);
        };
    }

    private Optional<Inrush> inrush(StartLoad load) {
        return load.kind()
                .inrush()
                .map(kind -> new Inrush(
                        load.amps() * inrushMultiple(load),
                        kind.equals(InrushMultiple.LAMP) ? StartFigures.FILAMENT_SECONDS : StartFigures.MOTOR_SECONDS));
    }

    private double inrushMultiple(StartLoad load) {
        String kind = load.kind().inrush().orElseThrow();
        return tables.inrushMultiples().stream()
                .filter(each -> each.load().equals(kind))
                .findFirst()
                .orElseThrow()
                .low()
                .value();
    }
}
