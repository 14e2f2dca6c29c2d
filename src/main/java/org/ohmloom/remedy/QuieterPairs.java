package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Element;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/** A signal wire twisted with the return of its sensor, and the pair shielded, the shield grounded at the control unit alone. */
final class QuieterPairs {

    /** Length of one twist, mm: common practice, no source. */
    private static final double LAY_LENGTH_MM = 25;

    private final ReturnPlaces places;
    private final Lengths lengths;

    QuieterPairs(ReturnPlaces places, Lengths lengths) {
        this.places = places;
        this.lengths = lengths;
    }

    /** Remedies for a signal wire. */
    List<Candidate> of(WireId victim) {
        List<Candidate> found = new ArrayList<>();
        places.harness().wires().find(victim).ifPresent(signal -> {
            for (Component component : places.harness().components().all()) {
                if (component.device() instanceof Sensor
                        && places.endAt(signal, component.id(), Sensor.SIGNAL).isPresent()) {
                    pairs(signal, component, found);
                }
            }
        });
        return found;
    }

    private void pairs(Wire signal, Component sensor, List<Candidate> found) {
        List<Wire> returns = places.wiresAt(sensor.id(), Sensor.RETURN);
        boolean isPair = returns.size() == 1 && returns.get(0).cable().equals(signal.cable());
        if (!isPair || (signal.cable().isPresent() && shielded(signal))) {
            return;
        }
        String id = signal.cable().map(CableId::value).orElse("C-" + signal.id());
        if (signal.cable().isEmpty()) {
            if (places.harness().element(id).isPresent()) {
                return;
            }
            found.add(new Candidate(
                    RemedyKind.TWISTED,
                    new PutElements(
                            RemedyTexts.text(
                                    "twist", signal.id(), returns.get(0).id()),
                            paired(id, signal, returns.get(0), false))));
        }
        shield(id, signal, sensor).ifPresent(drain -> {
            List<Element> elements = new ArrayList<>(paired(id, signal, returns.get(0), true));
            elements.add(drain);
            found.add(new Candidate(
                    RemedyKind.SHIELDED,
                    new PutElements(
                            RemedyTexts.text(
                                    "shield", signal.id(), returns.get(0).id()),
                            elements)));
        });
    }

    private boolean shielded(Wire signal) {
        return signal.cable()
                .map(places.harness().cables()::get)
                .filter(Cable::shielded)
                .isPresent();
    }

    private static List<Element> paired(String id, Wire signal, Wire back, boolean shielded) {
        Optional<CableId> cable = Optional.of(new CableId(id));
        return List.of(
                new Cable(
                        cable.get(),
                        (shielded ? "Shielded pair of " : "Twisted pair of ") + signal.id(),
                        Cable.Kind.TWISTED_PAIR,
                        shielded,
                        OptionalDouble.empty(),
                        OptionalDouble.of(LAY_LENGTH_MM),
                        Optional.empty(),
                        signal.assembly()),
                signal.inCable(cable),
                back.inCable(cable));
    }

    /** Free cavities of a pin, then the pin itself where it has none or wires end on it already. */
    private Stream<WireEnd> roomAt(List<WireEnd> pinAndCavities) {
        WireEnd pin = pinAndCavities.get(0);
        List<WireEnd> cavities = pinAndCavities.subList(1, pinAndCavities.size());
        boolean bare = cavities.isEmpty() || !places.wiresAt(pin).isEmpty();
        return Stream.concat(
                cavities.stream().filter(place -> places.wiresAt(place).isEmpty()),
                bare ? Stream.of(pin) : Stream.empty());
    }

    /** A drain wire from a sensor return of the unit, on a stud or in a free cavity, that reads the sensor to nothing at the sensor. */
    private Optional<Wire> shield(String cable, Wire signal, Component sensor) {
        String id = "W-" + cable + "-SH";
        return places.unitOf(sensor.id())
                .filter(unit -> places.harness().element(id).isEmpty())
                .flatMap(unit -> ReturnPlaces.returnPins((ControlUnit) unit.device()).stream()
                        .map(Pin::name)
                        .flatMap(pin -> roomAt(places.harness().endsAt(unit.id(), pin)))
                        .findFirst())
                .map(place -> Wire.of(id, place, new WireEnd.Loose(), SignalClass.SHIELD)
                        .withGauge(signal.gauge())
                        .withLengthMetres(lengths.of(signal))
                        .inCable(Optional.of(new CableId(cable))));
    }
}
