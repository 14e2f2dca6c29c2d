package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.MoveWireEnd;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/**
 * The returns of all sensors of a control unit taken out of a splice they share with loads: they and the wire to the unit's
 * return pin go into a splice of their own beside it. No wire grows, and no load finds a way through the unit any more.
 */
final class SeparatedReturns {

    private final ReturnPlaces places;

    SeparatedReturns(ReturnPlaces places) {
        this.places = places;
    }

    List<Candidate> of(Component unit) {
        List<Candidate> found = new ArrayList<>();
        if (unit.device() instanceof ControlUnit device) {
            for (Pin pin : ReturnPlaces.returnPins(device)) {
                for (Wire wire : places.wiresAt(unit.id(), pin.name())) {
                    WireEnd far = ReturnPlaces.across(
                            wire, places.endAt(wire, unit.id(), pin.name()).orElseThrow());
                    if (far instanceof WireEnd.AtSplice at) {
                        separated(unit.id(), wire, at).ifPresent(found::add);
                    }
                }
            }
        }
        return found;
    }

    private Optional<Candidate> separated(ComponentId unit, Wire toPin, WireEnd.AtSplice shared) {
        Set<Wire> returns = places.harness().components().all().stream()
                .filter(sensor -> sensor.device() instanceof Sensor
                        && places.unitOf(sensor.id())
                                .filter(found -> found.id().equals(unit))
                                .isPresent())
                .flatMap(sensor -> places.wiresAt(sensor.id(), Sensor.RETURN).stream())
                .collect(Collectors.toSet());
        List<Wire> there = places.wiresAt(shared);
        List<Wire> own = there.stream()
                .filter(wire -> wire.equals(toPin) || returns.contains(wire))
                .toList();
        if (own.size() < 2 || own.size() == there.size()) {
            return Optional.empty();
        }
        Splice old = places.harness().splices().get(shared.splice());
        SpliceId id = new SpliceId(places.free(old.id() + "-S"));
        List<Edit> edits = new ArrayList<>();
        edits.add(PutElements.one(
                RemedyTexts.text("add-splice", id),
                new Splice(
                        id,
                        "Sensor returns of " + unit,
                        old.jointOhms(),
                        old.place(),
                        old.part(),
                        false,
                        old.assembly())));
        own.forEach(
                wire -> edits.add(new MoveWireEnd(wire.id(), shared, new WireEnd.AtSplice(id), wire.lengthMetres())));
        String names =
                String.join(", ", own.stream().map(wire -> wire.id().value()).toList());
        return Optional.of(
                new Candidate(RemedyKind.OWN_RETURN, new Compound(RemedyTexts.text("join", names, old.id()), edits)));
    }
}
