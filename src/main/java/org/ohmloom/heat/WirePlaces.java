package org.ohmloom.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.graph.Route;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.Zone;
import org.ohmloom.model.ZoneId;

/**
 * The zones a wire passes: those of the segments of its route and those its two ends sit in.
 *
 * <p>A place without a zone has the harness's default ambient. A loose end, and a splice or breakout that lies on the
 * route anyway, add nothing.
 *
 * @param zones          zones passed, each as often as it is met
 * @param defaultAmbient whether some stretch or end has no zone, or nothing is known of the way
 */
record WirePlaces(List<Zone> zones, boolean defaultAmbient) {

    WirePlaces {
        zones = List.copyOf(zones);
    }

    /** The places of a wire. */
    static WirePlaces of(Harness harness, Routes routes, Wire wire) {
        List<Optional<ZoneId>> met = new ArrayList<>();
        List<SegmentId> segments = routes.of(wire.id()).map(Route::segments).orElse(List.of());
        segments.forEach(id -> met.add(harness.segments().get(id).zone()));
        wire.ends().forEach(end -> addEnd(harness, end, met));
        List<Zone> zones = met.stream()
                .flatMap(Optional::stream)
                .map(id -> harness.zones().get(id))
                .toList();
        return new WirePlaces(zones, zones.isEmpty() || met.contains(Optional.empty()));
    }

    private static void addEnd(Harness harness, WireEnd end, List<Optional<ZoneId>> met) {
        if (end instanceof WireEnd.AtCavity cavity) {
            met.add(zoneOf(harness, harness.connectors().get(cavity.connector())));
        } else if (end instanceof WireEnd.AtTerminal terminal) {
            met.add(harness.components().get(terminal.component()).zone());
        } else if (end instanceof WireEnd.AtGround ground) {
            met.add(harness.grounds().get(ground.ground()).zone());
        } else if (end instanceof WireEnd.AtSplice splice) {
            segmentOf(harness, harness.splices().get(splice.splice())).ifPresent(segment -> met.add(segment.zone()));
        }
    }

    /** Zone of a connector: its own, otherwise that of the component it plugs into. */
    static Optional<ZoneId> zoneOf(Harness harness, Connector connector) {
        return connector.zone().or(() -> connector
                .component()
                .map(id -> harness.components().get(id))
                .flatMap(Component::zone));
    }

    private static Optional<BundleSegment> segmentOf(Harness harness, Splice splice) {
        return splice.place().filter(Place.OnSegment.class::isInstance).map(place -> harness.segments()
                .get(((Place.OnSegment) place).segment()));
    }

    /** Whether one of the zones is an engine space. */
    boolean engineSpace() {
        return zones.stream().anyMatch(Zone::engineSpace);
    }

    /** The highest ambient of the places, deg C. */
    double hottestCelsius(double defaultCelsius) {
        double hottest = defaultAmbient ? defaultCelsius : Double.NEGATIVE_INFINITY;
        for (Zone zone : zones) {
            hottest = Math.max(hottest, zone.ambientCelsius());
        }
        return hottest;
    }
}
