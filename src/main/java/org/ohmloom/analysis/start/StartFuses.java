package org.ohmloom.analysis.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.ZoneId;
import org.ohmloom.tables.FuseRating;
import org.ohmloom.tables.FuseSeries;
import org.ohmloom.tables.WireTables;

/** The fuses of a first harness: one beside the battery, a rail in the fuse box and one fuse for each circuit. */
final class StartFuses {

    /** Types a fuse is taken from, the smallest ratings and the least breaking capacity first. */
    static final List<String> TYPES = List.of("ISO 8820-3 type C", "ISO 8820-5 type SF30", "ISO 8820-5 type SF51");

    private static final String IN = "in";

    private final StartDraft draft;
    private final StartPlaces places;
    private final WireTables tables;
    private final ComponentId rail;
    private final List<String> ways = new ArrayList<>(List.of(IN));

    StartFuses(StartDraft draft, StartPlaces places, WireTables tables) {
        this.draft = draft;
        this.places = places;
        this.tables = tables;
        this.rail = new ComponentId(draft.next("BB"));
    }

    /** Where the feed comes into the box. */
    WireEnd feed() {
        return new WireEnd.AtTerminal(rail, IN);
    }

    /** A fuse for a circuit that takes a current, A; gives the end its wire begins at. */
    WireEnd circuit(String name, double amps) {
        String way = String.valueOf(ways.size());
        ways.add(way);
        Component fuse = draft.component("F", name + " fuse", device(amps), Optional.empty(), places.hub());
        draft.wire(
                new WireEnd.AtTerminal(rail, way),
                StartDraft.terminal(fuse, ProtectiveDevice.SUPPLY_SIDE),
                SignalClass.FEED,
                name,
                OptionalDouble.of(StartFigures.IN_BOX_METRES));
        return StartDraft.terminal(fuse, ProtectiveDevice.LOAD_SIDE);
    }

    /** A fuse beside the battery. */
    Component atBattery(String name, double amps, ZoneId zone, BreakoutId at) {
        return draft.component("F", name, device(amps), Optional.of(zone), at);
    }

    /** Makes the rail, with a way for each circuit. */
    void build() {
        if (ways.size() == 1) {
            ways.add("1");
        }
        draft.put(
                rail,
                "Fuse rail",
                new BusBar(ways, StartFigures.JOINT_OHMS),
                Optional.empty(),
                Optional.of(places.hub()));
    }

    /** The first type with a rating above the current, its smallest such rating; the choice of sizes takes it from there. */
    private ProtectiveDevice device(double amps) {
        double least = amps * StartFigures.FUSE_MARGIN;
        for (String type : TYPES) {
            FuseSeries series = tables.fuseSeries(type).orElseThrow();
            Optional<FuseRating> rating = series.ratingFrom(least);
            if (rating.isPresent()) {
                return device(series, rating.get().ratingAmps());
            }
        }
        FuseSeries largest = tables.fuseSeries(TYPES.get(TYPES.size() - 1)).orElseThrow();
        return device(
                largest, largest.ratings().get(largest.ratings().size() - 1).ratingAmps());
    }

    private ProtectiveDevice device(FuseSeries series, double ratingAmps) {
        double charging = draft.plan().supply().blocks() * StartFigures.SET_POINT_VOLTS;
        OptionalDouble volts = series.voltages().stream()
                .mapToDouble(Double::doubleValue)
                .filter(each -> each >= charging)
                .findFirst();
        return new ProtectiveDevice(
                ProtectiveDevice.Kind.FUSE,
                series.type(),
                ratingAmps,
                OptionalDouble.empty(),
                volts,
                OptionalDouble.empty());
    }
}
