package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.MoveWireEnd;
import org.ohmloom.edit.PutElements;
import org.ohmloom.edit.RemoveWires;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/**
 * A return of its own for a sensor, to the reference of the control unit that reads it: in a free cavity or on a free terminal of a
 * sensor return pin, or in a splice on the pigtail of one that is taken.
 */
final class OwnReturns {

    /** Length of the pigtail between a pin and a new splice, m: common practice, no source. */
    private static final double PIGTAIL_METRES = 0.1;

    /** Most places tried for one sensor. */
    private static final int MOST_PLACES = 2;

    private final ReturnPlaces places;
    private final Lengths lengths;

    OwnReturns(ReturnPlaces places, Lengths lengths) {
        this.places = places;
        this.lengths = lengths;
    }

    List<Candidate> of(ComponentId sensor) {
        List<Wire> returns = places.wiresAt(sensor, Sensor.RETURN);
        Optional<Component> unit = places.unitOf(sensor);
        if (returns.size() != 1 || unit.isEmpty()) {
            return List.of();
        }
        Wire wire = returns.get(0);
        WireEnd old = ReturnPlaces.across(
                wire, places.endAt(wire, sensor, Sensor.RETURN).orElseThrow());
        List<Candidate> found = new ArrayList<>();
        List<WireEnd> taken = new ArrayList<>();
        for (Pin pin : ReturnPlaces.returnPins((ControlUnit) unit.get().device())) {
            for (WireEnd place : wireable(unit.get().id(), pin.name())) {
                if (place.equals(old)) {
                    return List.of();
                }
                if (places.wiresAt(place).isEmpty()) {
                    found.add(new Candidate(RemedyKind.OWN_RETURN, moved(wire, old, place)));
                } else {
                    taken.add(place);
                }
            }
        }
        if (found.isEmpty()) {
            taken.forEach(place -> {
                exchanged(unit.get(), wire, old, place).ifPresent(found::add);
                spliced(wire, old, place).ifPresent(found::add);
            });
        }
        return found.subList(0, Math.min(MOST_PLACES, found.size()));
    }

    /** Cavities of a pin, or its own terminal where no connector has it. */
    private List<WireEnd> wireable(ComponentId unit, String pin) {
        List<WireEnd> all = places.harness().endsAt(unit, pin);
        return all.size() > 1 ? all.subList(1, all.size()) : all;
    }

    private MoveWireEnd moved(Wire wire, WireEnd old, WireEnd place) {
        return new MoveWireEnd(wire.id(), old, place, lengths.moved(wire, old, place));
    }

    /** Whether the return of another sensor of the unit meets this one there, and would lose its way to the unit. */
    private boolean isSharedWithSensors(Component unit, Wire wire, WireEnd old) {
        return places.harness().components().all().stream()
                .filter(sensor -> sensor.device() instanceof Sensor
                        && places.unitOf(sensor.id()).filter(unit::equals).isPresent())
                .flatMap(sensor -> places.wiresAt(sensor.id(), Sensor.RETURN).stream())
                .anyMatch(each -> !each.equals(wire) && each.ends().contains(old));
    }

    /** The sensor's return takes the place of the wire that joins a pin to where other returns meet. */
    private Optional<Candidate> exchanged(Component unit, Wire wire, WireEnd old, WireEnd place) {
        List<Wire> there = places.wiresAt(place);
        return there.size() == 1
                        && !isSharedWithSensors(unit, wire, old)
                        && ReturnPlaces.across(there.get(0), place).equals(old)
                        && !there.get(0).equals(wire)
                ? Optional.of(new Candidate(
                        RemedyKind.OWN_RETURN,
                        new Compound(
                                RemedyTexts.text(
                                        "return-in-place",
                                        wire.id(),
                                        place.text(),
                                        there.get(0).id()),
                                List.of(new RemoveWires(List.of(there.get(0).id())), moved(wire, old, place)))))
                : Optional.empty();
    }

    /** The one wire of a pin becomes a pigtail to a splice, from where it and the sensor's return go on. */
    private Optional<Candidate> spliced(Wire wire, WireEnd old, WireEnd place) {
        List<Wire> there = places.wiresAt(place);
        if (there.size() != 1 || there.get(0).equals(wire)) {
            return Optional.empty();
        }
        Wire present = there.get(0);
        String id = places.free("SP-" + place.text().replace('.', '-'));
        WireEnd splice = new WireEnd.AtSplice(new SpliceId(id));
        Wire pigtail = present.unmeasured().withEnds(place, splice).withLengthMetres(OptionalDouble.of(PIGTAIL_METRES));
        Wire named = renamed(pigtail, places.free("W-" + id));
        return Optional.of(new Candidate(
                RemedyKind.OWN_RETURN,
                new Compound(
                        RemedyTexts.text("return-by-splice", wire.id(), place.text()),
                        List.of(
                                new PutElements(
                                        RemedyTexts.text("add-a-splice"),
                                        List.of(
                                                new Splice(
                                                        new SpliceId(id),
                                                        "Sensor return at " + place.text(),
                                                        0,
                                                        Optional.empty(),
                                                        Optional.empty(),
                                                        false,
                                                        present.assembly()),
                                                named)),
                                new MoveWireEnd(present.id(), place, splice, present.lengthMetres()),
                                new MoveWireEnd(wire.id(), old, splice, lengths.moved(wire, old, place))))));
    }

    private static Wire renamed(Wire wire, String id) {
        return new Wire(
                new WireId(id),
                wire.from(),
                wire.to(),
                wire.gauge(),
                wire.family(),
                wire.insulation(),
                wire.colour(),
                wire.lengthMetres(),
                SignalClass.REFERENCE_RETURN,
                wire.circuit(),
                Optional.empty(),
                wire.measuredOhms(),
                OptionalDouble.empty(),
                false,
                wire.assembly());
    }
}
