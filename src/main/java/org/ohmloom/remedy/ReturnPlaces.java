package org.ohmloom.remedy;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.Passages;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.ReadingUnits;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;

/** What lies where in the returns of a harness, for those who think of changes. */
final class ReturnPlaces {

    /** Wires and cases on one stud that leave room for another: four terminals on a stud, common practice. */
    static final int MOST_STACKED = 4;

    private final Harness harness;
    private final Network network;
    private final Passages passages;
    private final ReadingUnits readings;

    ReturnPlaces(Evidence evidence) {
        this.harness = evidence.harness();
        this.network = evidence.drawn();
        this.passages = new Passages(network);
        this.readings = ReadingUnits.of(network, harness);
    }

    Harness harness() {
        return harness;
    }

    /** Wires on a terminal of a component, in its cavity or on itself. */
    List<Wire> wiresAt(ComponentId component, String terminal) {
        Set<WireEnd> places = new HashSet<>(harness.endsAt(component, terminal));
        return wires(wire -> wire.ends().stream().anyMatch(places::contains));
    }

    /** Wires that end at a place. */
    List<Wire> wiresAt(WireEnd place) {
        return wires(wire -> wire.ends().contains(place));
    }

    private List<Wire> wires(Predicate<Wire> chosen) {
        return harness.wires().all().stream().filter(chosen).toList();
    }

    /** The end of a wire that lies at that terminal. */
    Optional<WireEnd> endAt(Wire wire, ComponentId component, String terminal) {
        List<WireEnd> places = harness.endsAt(component, terminal);
        return wire.ends().stream().filter(places::contains).findFirst();
    }

    /** The end across from one. */
    static WireEnd across(Wire wire, WireEnd end) {
        return wire.from().equals(end) ? wire.to() : wire.from();
    }

    /** Pins of a control unit that sensors return to: its sensor returns, its grounds where it has none. */
    static List<Pin> returnPins(ControlUnit unit) {
        List<Pin> own = unit.pinsOf(PinRole.SENSOR_RETURN).toList();
        return own.isEmpty() ? unit.pinsOf(PinRole.GROUND).toList() : own;
    }

    /** The control unit that reads a sensor. */
    Optional<Component> unitOf(ComponentId sensor) {
        return readings.of(sensor).map(reading -> harness.components().get(reading.unit()));
    }

    /** Wires of the way with the fewest elements between a point and the nearest of some; empty without a way. */
    List<Wire> way(PointId start, Collection<PointId> ends) {
        return elements(start, ends)
                .filter(WireId.class::isInstance)
                .flatMap(id -> harness.wires().find((WireId) id).stream())
                .distinct()
                .toList();
    }

    /** Ground points on the same way. */
    List<GroundPointId> grounds(PointId start, Collection<PointId> ends) {
        return elements(start, ends)
                .filter(GroundPointId.class::isInstance)
                .map(GroundPointId.class::cast)
                .distinct()
                .toList();
    }

    private Stream<ElementId> elements(PointId start, Collection<PointId> ends) {
        return passages.shortest(start, new HashSet<>(ends)).stream().flatMap(branch -> branch.element().stream());
    }

    /** An identity nobody has yet: the wanted one, or the first free one counted up from it. */
    String free(String wanted) {
        String id = wanted;
        for (int k = 2; harness.element(id).isPresent(); k++) {
            id = wanted + "-" + k;
        }
        return id;
    }

    /** The points of some terminals of a component. */
    List<PointId> points(ComponentId component, Stream<String> terminals) {
        return terminals
                .flatMap(terminal -> network.index().terminal(component, terminal).stream())
                .toList();
    }

    /** The first battery, whose negative terminal everything returns to. */
    Optional<Component> battery() {
        return harness.components().all().stream()
                .filter(component -> component.device() instanceof Battery)
                .findFirst();
    }

    /** Negative terminal of the first battery. */
    List<PointId> batteryNegative() {
        return battery()
                .map(found -> points(found.id(), Stream.of(Device.NEGATIVE)))
                .orElse(List.of());
    }

    /** How many wires, cases and straps lie on a ground point. */
    long stacked(GroundPointId ground) {
        return harness.wires().all().stream()
                        .flatMap(wire -> wire.ends().stream())
                        .filter(new WireEnd.AtGround(ground)::equals)
                        .count()
                + harness.components().all().stream()
                        .filter(each -> each.caseGround()
                                .filter(bolt -> bolt.ground().equals(ground))
                                .isPresent())
                        .count()
                + harness.straps().all().stream()
                        .filter(strap ->
                                strap.from().equals(ground) || strap.to().equals(ground))
                        .count();
    }

    /** How many more terminals the studs of a ground point have room for; less than 0 for too many. */
    long room(GroundPointId ground) {
        return (long) MOST_STACKED * harness.grounds().get(ground).studCount() - stacked(ground);
    }

    /** Ground points with room for another terminal, those the battery's negative cable lies on first. */
    List<GroundPointId> roomyGrounds() {
        Set<GroundPointId> grounds = new LinkedHashSet<>();
        battery().ifPresent(found -> {
            wiresAt(found.id(), Device.NEGATIVE).forEach(wire -> wire.ends().forEach(end -> {
                if (end instanceof WireEnd.AtGround at) {
                    grounds.add(at.ground());
                }
            }));
            found.caseGround().ifPresent(bolt -> grounds.add(bolt.ground()));
        });
        grounds.addAll(harness.grounds().ids());
        return grounds.stream().filter(each -> room(each) > 0).toList();
    }
}
