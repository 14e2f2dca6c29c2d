package org.ohmloom.draw;

import java.util.Optional;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Splice;
import org.ohmloom.model.WireEnd;

/**
 * Where the end of a wire lies on the physical harness.
 *
 * @param element what the wire ends on: a connector, a component, a splice or a ground point
 * @param place   where that is
 */
record Spot(String element, Place place) {

    /** The spot of an end, if it is on the physical harness. */
    static Optional<Spot> of(Harness harness, WireEnd end) {
        if (end instanceof WireEnd.AtCavity cavity) {
            return harness.connectors()
                    .get(cavity.connector())
                    .at()
                    .map(at -> spot(cavity.connector().value(), at));
        }
        if (end instanceof WireEnd.AtTerminal terminal) {
            return place(harness, terminal.component())
                    .map(at -> spot(terminal.component().value(), at));
        }
        if (end instanceof WireEnd.AtGround ground) {
            return harness.grounds()
                    .get(ground.ground())
                    .at()
                    .map(at -> spot(ground.ground().value(), at));
        }
        if (end instanceof WireEnd.AtSplice splice) {
            return harness.splices()
                    .get(splice.splice())
                    .place()
                    .map(place -> new Spot(splice.splice().value(), place));
        }
        return Optional.empty();
    }

    /** Where a component's own terminals are reached: its own place, otherwise that of its first connector. */
    static Optional<BreakoutId> place(Harness harness, ComponentId id) {
        Component component = harness.components().get(id);
        return component.at().or(() -> harness.connectors().all().stream()
                .filter(connector -> connector.component().filter(id::equals).isPresent())
                .flatMap(connector -> connector.at().stream())
                .findFirst());
    }

    /** Whether a splice lies along a segment, its end not counted as a breakout. */
    static boolean alongSegment(Splice splice) {
        return splice.place().filter(place -> place instanceof Place.OnSegment).isPresent();
    }

    /** Name of a breakout with its id: "B3 Firewall". */
    static String name(Breakout breakout) {
        String id = breakout.id().value();
        return breakout.name().equals(id) ? id : id + " " + breakout.name();
    }

    private static Spot spot(String element, BreakoutId at) {
        return new Spot(element, new Place.AtBreakout(at));
    }
}
