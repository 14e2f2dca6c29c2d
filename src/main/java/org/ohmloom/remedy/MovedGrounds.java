package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.MoveCaseGround;
import org.ohmloom.edit.MoveWireEnd;
import org.ohmloom.model.CaseGround;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * The ground of a load or of a control unit at another ground point, or at the negative terminal of the battery: what goes from it
 * to a ground point or a splice is moved, what others are fed by stays.
 */
final class MovedGrounds {

    /** Most places tried for one wire. */
    private static final int MOST_PLACES = 3;

    private final ReturnPlaces places;
    private final Lengths lengths;

    MovedGrounds(ReturnPlaces places, Lengths lengths) {
        this.places = places;
        this.lengths = lengths;
    }

    /** Other places for what comes back from a component. */
    List<Candidate> of(ComponentId id) {
        Component component = places.harness().components().get(id);
        List<Candidate> found = new ArrayList<>();
        if (component.device() instanceof ControlUnit unit) {
            unit.pinsOf(PinRole.GROUND)
                    .forEach(pin -> found.addAll(of(component, pin.name(), RemedyKind.SINGLE_POINT)));
        } else if (component.terminals().contains(Device.NEGATIVE)
                && !component.device().isSource()) {
            found.addAll(of(component, Device.NEGATIVE, RemedyKind.MOVED_GROUND));
        }
        return found;
    }

    private List<Candidate> of(Component component, String terminal, RemedyKind kind) {
        List<Candidate> found = new ArrayList<>();
        for (Wire wire : places.wiresAt(component.id(), terminal)) {
            WireEnd old = ReturnPlaces.across(
                    wire, places.endAt(wire, component.id(), terminal).orElseThrow());
            boolean isGroundWire = old instanceof WireEnd.AtGround || old instanceof WireEnd.AtSplice;
            for (WireEnd place : isGroundWire ? placesFor(old) : List.<WireEnd>of()) {
                found.add(new Candidate(kind, new MoveWireEnd(wire.id(), old, place, lengths.moved(wire, old, place))));
            }
        }
        component.caseGround().filter(bolt -> bolt.terminal().equals(terminal)).ifPresent(bolt -> bolts(component, bolt)
                .forEach(ground ->
                        found.add(new Candidate(kind, new MoveCaseGround(component.id(), Optional.of(ground))))));
        return found;
    }

    private List<GroundPointId> bolts(Component component, CaseGround bolt) {
        return places.roomyGrounds().stream()
                .filter(each -> !each.equals(bolt.ground()))
                .limit(MOST_PLACES)
                .toList();
    }

    /** Ground points with room, the battery's own first, then its negative terminal. */
    private List<WireEnd> placesFor(WireEnd old) {
        List<WireEnd> all = new ArrayList<>();
        places.roomyGrounds().forEach(ground -> all.add(new WireEnd.AtGround(ground)));
        places.battery().ifPresent(battery -> {
            List<WireEnd> posts = places.harness().endsAt(battery.id(), Device.NEGATIVE);
            all.add(Math.min(1, all.size()), posts.get(posts.size() - 1));
        });
        all.remove(old);
        return all.subList(0, Math.min(MOST_PLACES, all.size()));
    }
}
