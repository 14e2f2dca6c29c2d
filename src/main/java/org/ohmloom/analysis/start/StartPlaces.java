package org.ohmloom.analysis.start;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Zone;
import org.ohmloom.model.ZoneId;

/** The bundle of a first harness: the fuse box in the middle, a run to every place, a branch to everything that sits there. */
final class StartPlaces {

    private record Spot(BreakoutId breakout, ZoneId zone, SegmentId run) {}

    private final StartDraft draft;
    private final BreakoutId hub;
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private int splices;

    StartPlaces(StartDraft draft) {
        this.draft = draft;
        this.hub = breakout("Fuse box");
        for (StartPlace place : draft.plan().places()) {
            ZoneId zone = new ZoneId(draft.next("Z"));
            draft.add(new Zone(zone, place.name(), place.ambientCelsius(), false));
            BreakoutId end = breakout(place.name());
            SegmentId run = segment(hub, end, place.metres(), zone);
            spots.put(place.name(), new Spot(end, zone, run));
        }
    }

    /** The middle: where fuses, relays and the meeting point of the returns sit. */
    BreakoutId hub() {
        return hub;
    }

    ZoneId zone(String place) {
        return spots.get(place).zone();
    }

    /** A branch from a place to something there. */
    BreakoutId branch(String place, String thing) {
        BreakoutId end = breakout(thing);
        segment(spots.get(place).breakout(), end, StartFigures.BRANCH_METRES, zone(place));
        return end;
    }

    /** A connector on a component at the end of a branch of its own, a cavity for each terminal. */
    ConnectorId connector(Component component, List<String> terminals, String place) {
        ConnectorId id = new ConnectorId(draft.next("X"));
        connector(id, component, terminals, place);
        return id;
    }

    /** The same with an id that is already given away. */
    void connector(ConnectorId id, Component component, List<String> terminals, String place) {
        List<Cavity> cavities = IntStream.range(0, terminals.size())
                .mapToObj(k -> new Cavity(
                        String.valueOf(k + 1),
                        Optional.of(terminals.get(k)),
                        Optional.empty(),
                        Optional.empty(),
                        false))
                .toList();
        draft.add(new Connector(
                id,
                component.name(),
                Optional.of(component.id()),
                Optional.empty(),
                Optional.of(branch(place, component.name())),
                cavities,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty()));
    }

    private BreakoutId breakout(String name) {
        BreakoutId id = new BreakoutId(draft.next("B"));
        draft.add(new Breakout(id, name, Optional.empty()));
        return id;
    }

    /** A place for the next splice on the run from the fuse box to a place, clear of the one before where the run allows it. */
    Place splice(String near) {
        StartPlace place = draft.plan().places().stream()
                .filter(each -> each.name().equals(near))
                .findFirst()
                .orElseThrow();
        splices++;
        double from = StartFigures.FIRST_SPLICE_METRES + (splices - 1) * StartFigures.BETWEEN_SPLICES_METRES;
        return from < place.metres()
                ? new Place.OnSegment(spots.get(near).run(), from)
                : new Place.AtBreakout(spots.get(near).breakout());
    }

    private SegmentId segment(BreakoutId from, BreakoutId to, double metres, ZoneId zone) {
        SegmentId id = new SegmentId(draft.next("SG"));
        draft.add(new BundleSegment(id, from, to, metres, Optional.of(zone), Optional.empty(), Optional.empty()));
        return id;
    }
}
