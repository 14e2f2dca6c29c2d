package org.ohmloom.analysis.start;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Device;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.ZoneId;

/** Battery and alternator of a first harness, each with its fuse beside the battery. */
final class StartSources {

    private final StartDraft draft;
    private final StartPlaces places;
    private final StartFuses fuses;
    private final StartReturns returns;

    StartSources(StartDraft draft, StartPlaces places, StartFuses fuses, StartReturns returns) {
        this.draft = draft;
        this.places = places;
        this.fuses = fuses;
        this.returns = returns;
    }

    /** Makes them; gives the alternator where there is one. */
    Optional<ComponentId> build(double totalAmps) {
        StartSupply supply = draft.plan().supply();
        ZoneId zone = places.zone(supply.place());
        BreakoutId at = places.branch(supply.place(), "Battery");
        double blocks = supply.blocks();
        Component battery = draft.component(
                "BT",
                "Battery",
                new Battery(
                        StartFigures.EMF_VOLTS * blocks,
                        StartFigures.BATTERY_OHM_AMP_HOURS * blocks / supply.ampHours(),
                        supply.ampHours()),
                Optional.of(zone),
                at);
        fused(battery, fuses.atBattery("Main fuse", totalAmps, zone, at), fuses.feed(), "main");
        returns.join(StartDraft.terminal(battery, Device.NEGATIVE), "main");
        return supply.alternatorAmps().isPresent()
                ? Optional.of(alternator(supply, battery, zone, at))
                : Optional.empty();
    }

    private ComponentId alternator(StartSupply supply, Component battery, ZoneId zone, BreakoutId atBattery) {
        double amps = supply.alternatorAmps().orElseThrow();
        double blocks = supply.blocks();
        BreakoutId at = places.branch(supply.place(), "Alternator");
        Component alternator = draft.component(
                "AL",
                "Alternator",
                new Alternator(StartFigures.SET_POINT_VOLTS * blocks, StartFigures.ALTERNATOR_OHMS * blocks, amps),
                Optional.of(zone),
                at);
        Component fuse = fuses.atBattery("Charging fuse", amps, zone, atBattery);
        fused(battery, fuse, StartDraft.terminal(alternator, Device.POSITIVE), "charging");
        returns.join(StartDraft.terminal(alternator, Device.NEGATIVE), "charging");
        return alternator.id();
    }

    /** Wires from the battery through a fuse beside it to an end. */
    private void fused(Component battery, Component fuse, WireEnd to, String circuit) {
        draft.wire(
                StartDraft.terminal(battery, Device.POSITIVE),
                StartDraft.terminal(fuse, ProtectiveDevice.SUPPLY_SIDE),
                SignalClass.FEED,
                circuit,
                OptionalDouble.of(StartFigures.FUSE_AT_BATTERY_METRES));
        draft.wire(StartDraft.terminal(fuse, ProtectiveDevice.LOAD_SIDE), to, SignalClass.FEED, circuit);
    }
}
