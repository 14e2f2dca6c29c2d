package org.ohmloom.signal.wiring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireEnd;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.signal.way.Ways;
import org.ohmloom.tables.FuseRating;
import org.ohmloom.tables.WireTables;

/**
 * Feeds what a low-side output switches: by a fuse of its own beside the nearest fuse whose supply side is a stud or screw, fed from
 * that side.
 */
final class FeedMaking {
    /** Rating over the rated current of the load: common practice, no source; the choice of sizes has the last word. */
    private static final double RATING_RATIO = 1.25;

    private final Harness harness;
    private final Joints joints;
    private final Places places;
    private final Ways ways;
    private final FreshIds fresh;
    private final WireTables tables;

    FeedMaking(Harness harness, Joints joints, Places places, Ways ways, FreshIds fresh, WireTables tables) {
        this.harness = harness;
        this.joints = joints;
        this.places = places;
        this.ways = ways;
        this.fresh = fresh;
        this.tables = tables;
    }

    /** Makes the feed of a terminal; the new fuse, or empty where there is no fuse to put one beside, or no rating for it. */
    Optional<Component> make(WireEnd end, String name, double amps, LineMaking tap, LineMaking feed) {
        Optional<Component> beside = nearest(places.at(end));
        Optional<Component> made = beside.flatMap(each -> fuse(each, name, amps));
        if (made.isEmpty()) {
            return Optional.empty();
        }
        Component sibling = beside.orElseThrow();
        ComponentId fuse = made.get().id();
        WireEnd source = new WireEnd.AtTerminal(sibling.id(), ProtectiveDevice.SUPPLY_SIDE);
        WireEnd in = new WireEnd.AtTerminal(fuse, ProtectiveDevice.SUPPLY_SIDE);
        WireEnd out = new WireEnd.AtTerminal(fuse, ProtectiveDevice.LOAD_SIDE);
        tap.from(source, List.of(target(in, sibling.at(), List.of(), name, sibling.assembly())));
        List<Ways.Step> way = ways.way(sibling.at(), places.at(end)).orElse(List.of());
        feed.from(
                out,
                sibling.at(),
                sibling.assembly(),
                List.of(target(end, places.at(end), way, name, places.assembly(end))));
        return made;
    }

    private static LineTarget target(
            WireEnd end, Optional<BreakoutId> at, List<Ways.Step> way, String circuit, Optional<AssemblyId> assembly) {
        return new LineTarget(end, at, way, SignalClass.FEED, circuit, Optional.empty(), assembly);
    }

    private Optional<Component> nearest(Optional<BreakoutId> at) {
        List<Component> fuses = harness.components().all().stream()
                .filter(each -> each.device() instanceof ProtectiveDevice device
                        && device.kind() == ProtectiveDevice.Kind.FUSE
                        && joints.isJoined(each.id(), ProtectiveDevice.SUPPLY_SIDE)
                        && places.end(each.id(), ProtectiveDevice.SUPPLY_SIDE) instanceof WireEnd.AtTerminal)
                .toList();
        return ways.nearest(at, fuses, Component::at);
    }

    private Optional<Component> fuse(Component beside, String name, double amps) {
        ProtectiveDevice pattern = (ProtectiveDevice) beside.device();
        OptionalDouble rating = tables.fuseSeries(pattern.series()).stream()
                .flatMap(series -> series.ratings().stream())
                .mapToDouble(FuseRating::ratingAmps)
                .filter(each -> each >= RATING_RATIO * amps)
                .min();
        if (rating.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Component(
                new ComponentId(fresh.next("F")),
                "Fuse of " + name,
                new ProtectiveDevice(
                        ProtectiveDevice.Kind.FUSE, pattern.series(), rating.getAsDouble(), OptionalDouble.empty()),
                Optional.empty(),
                beside.zone(),
                beside.at(),
                Optional.empty(),
                false,
                beside.assembly()));
    }
}
