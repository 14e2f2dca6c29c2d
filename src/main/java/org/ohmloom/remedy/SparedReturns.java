package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Strap;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** A harness made to stand the loss of one return. */
final class SparedReturns {

    private final ReturnPlaces places;
    private final Function<GroundPointId, List<Candidate>> ofGround;
    private final SecondGrounds secondGrounds;
    private final SeparatedReturns separatedReturns;
    private final MovedGrounds movedGrounds;
    private final OwnReturns ownReturns;

    /**
     * Made for a harness.
     *
     * @param ofGround what else can be done about a ground point
     */
    SparedReturns(ReturnPlaces places, Lengths lengths, Function<GroundPointId, List<Candidate>> ofGround) {
        this.places = places;
        this.ofGround = ofGround;
        this.secondGrounds = new SecondGrounds(places, lengths);
        this.separatedReturns = new SeparatedReturns(places);
        this.movedGrounds = new MovedGrounds(places, lengths);
        this.ownReturns = new OwnReturns(places, lengths);
    }

    /**
     * What a lost return, or what it overloads, can do with: a second way back for what is lost, no way through the unit that is
     * hit, less current on what is lost.
     */
    List<Candidate> of(Element element) {
        List<Candidate> found = new ArrayList<>();
        if (element instanceof Connector connector) {
            connector.component().map(places.harness().components()::get).ifPresent(hit -> detour(hit, found));
        } else if (element instanceof Component component) {
            detour(component, found);
        } else if (element instanceof GroundPoint ground) {
            found.addAll(secondGrounds.of(ground.id()));
            found.addAll(ofGround.apply(ground.id()));
        } else if (element instanceof Wire wire) {
            wire.ends().forEach(end -> {
                if (end instanceof WireEnd.AtGround at) {
                    found.addAll(secondGrounds.of(at.ground()));
                }
            });
            places.harness().components().all().stream()
                    .filter(component -> component.device() instanceof ControlUnit
                            && wire.ends().stream().anyMatch(end -> isOf(component, end)))
                    .forEach(unit -> detour(unit, found));
            loadsAt(wire).forEach(load -> found.addAll(movedGrounds.of(load)));
        } else if (element instanceof Strap strap) {
            found.addAll(ofGround.apply(strap.from()));
        }
        return found;
    }

    private void detour(Component hit, List<Candidate> found) {
        found.addAll(separatedReturns.of(hit));
        found.addAll(movedGrounds.of(hit.id()));
        places.harness().components().all().stream()
                .filter(sensor -> sensor.device() instanceof Sensor
                        && places.unitOf(sensor.id()).filter(hit::equals).isPresent())
                .forEach(sensor -> found.addAll(ownReturns.of(sensor.id())));
    }

    private boolean isOf(Component component, WireEnd end) {
        return component.terminals().stream()
                .anyMatch(terminal ->
                        places.harness().endsAt(component.id(), terminal).contains(end));
    }

    /** Loads whose return a wire is. */
    private List<ComponentId> loadsAt(Wire wire) {
        return places.harness().components().all().stream()
                .filter(component -> component.terminals().contains(Device.NEGATIVE)
                        && places.wiresAt(component.id(), Device.NEGATIVE).contains(wire))
                .map(Component::id)
                .toList();
    }
}
