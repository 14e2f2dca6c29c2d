package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.ohmloom.graph.PointId;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetShare;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Device;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;

/** The changes worth trying against a finding, likely ones first. */
final class Candidates {

    /** Most causes of an offset whose ground is moved. */
    private static final int MOST_CAUSES = 3;

    private final Evidence evidence;
    private final ReturnPlaces places;
    private final OwnReturns ownReturns;
    private final MovedGrounds movedGrounds;
    private final LargerReturns largerReturns;
    private final OpenedLoops openedLoops;
    private final QuieterPairs quieterPairs;
    private final RoomierStuds roomierStuds;
    private final SeparatedReturns separatedReturns;
    private final CleanedJoints cleanedJoints;
    private final SparedReturns lostReturns;

    Candidates(Evidence evidence) {
        this.evidence = evidence;
        this.places = new ReturnPlaces(evidence);
        Lengths lengths = new Lengths(evidence.harness(), evidence.routes(), evidence.tables());
        this.separatedReturns = new SeparatedReturns(places);
        this.cleanedJoints = new CleanedJoints(places);
        this.ownReturns = new OwnReturns(places, lengths);
        this.movedGrounds = new MovedGrounds(places, lengths);
        this.largerReturns = new LargerReturns(evidence, places);
        this.openedLoops = new OpenedLoops(places);
        this.lostReturns = new SparedReturns(places, lengths, this::ground);
        this.quieterPairs = new QuieterPairs(places, lengths);
        this.roomierStuds = new RoomierStuds(places, lengths);
    }

    List<Candidate> of(Finding finding) {
        List<List<Candidate>> found = new ArrayList<>();
        if (finding.rule().equals("ground-loop")) {
            List<Candidate> ofLoop = new ArrayList<>();
            loop(finding.subjects(), ofLoop);
            found.add(ofLoop);
        } else if (finding.rule().equals("lost-return-overloads")) {
            finding.subjects().forEach(subject -> evidence.harness()
                    .element(subject)
                    .ifPresent(element -> found.add(lostReturns.of(element))));
        } else {
            finding.subjects().forEach(subject -> {
                List<Candidate> ofSubject = new ArrayList<>();
                evidence.harness().element(subject).ifPresent(element -> {
                    if (element instanceof Component component) {
                        component(component, ofSubject);
                    } else if (element.id() instanceof GroundPointId ground) {
                        ofSubject.addAll(ground(ground));
                    } else if (element.id() instanceof WireId wire) {
                        ofSubject.addAll(quieterPairs.of(wire));
                    }
                });
                found.add(ofSubject);
            });
        }
        return inTurn(found);
    }

    /** One of each list after the other, each change once: no subject waits for all that is thought of for another. */
    private static List<Candidate> inTurn(List<List<Candidate>> lists) {
        Map<Object, Candidate> once = new LinkedHashMap<>();
        int most = lists.stream().mapToInt(List::size).max().orElse(0);
        for (int k = 0; k < most; k++) {
            for (List<Candidate> list : lists) {
                if (k < list.size()) {
                    once.putIfAbsent(list.get(k).edit(), list.get(k));
                }
            }
        }
        return List.copyOf(once.values());
    }

    private void loop(List<String> members, List<Candidate> found) {
        Set<ComponentId> loads = new LinkedHashSet<>();
        Set<ComponentId> sensors = new LinkedHashSet<>();
        for (Component component : evidence.harness().components().all()) {
            boolean isSensor = component.device() instanceof Sensor;
            String terminal = isSensor ? Sensor.RETURN : Device.NEGATIVE;
            boolean inLoop = component.terminals().contains(terminal)
                    && !component.device().isSource()
                    && places.wiresAt(component.id(), terminal).stream().anyMatch(wire -> beside(wire, members));
            if (inLoop) {
                (isSensor ? sensors : loads).add(component.id());
            }
        }
        found.addAll(openedLoops.of(members));
        evidence.harness().components().all().stream()
                .filter(component -> members.contains(component.id().value()))
                .forEach(component -> found.addAll(separatedReturns.of(component)));
        sensors.forEach(sensor -> found.addAll(ownReturns.of(sensor)));
        loads.forEach(load -> found.addAll(movedGrounds.of(load)));
    }

    /** Whether a wire is a member of a loop or ends where one does in a splice. */
    private boolean beside(Wire wire, List<String> members) {
        return members.contains(wire.id().value())
                || wire.ends().stream()
                        .anyMatch(end -> end instanceof WireEnd.AtSplice at
                                && members.contains(at.splice().value()));
    }

    private void component(Component component, List<Candidate> found) {
        if (component.device() instanceof Sensor) {
            sensor(component.id(), found);
        } else if (component.device() instanceof ControlUnit unit) {
            found.addAll(movedGrounds.of(component.id()));
            found.addAll(separatedReturns.of(component));
            places.points(component.id(), unit.pinsOf(PinRole.GROUND).map(Pin::name)).stream()
                    .flatMap(point -> places.grounds(point, places.batteryNegative()).stream())
                    .distinct()
                    .forEach(ground -> cleanedJoints.of(ground).ifPresent(found::add));
            places.points(component.id(), unit.pinsOf(PinRole.GROUND).map(Pin::name)).stream()
                    .limit(1)
                    .forEach(point -> found.addAll(largerReturns.of(point, places.batteryNegative())));
            causes(component.id()).forEach(cause -> found.addAll(movedGrounds.of(cause)));
            found.addAll(largerReturns.straps());
        } else {
            found.addAll(movedGrounds.of(component.id()));
        }
    }

    private void sensor(ComponentId sensor, List<Candidate> found) {
        found.addAll(ownReturns.of(sensor));
        places.unitOf(sensor).ifPresent(unit -> {
            found.addAll(separatedReturns.of(unit));
            List<PointId> references = places.points(
                    unit.id(),
                    ReturnPlaces.returnPins((ControlUnit) unit.device()).stream()
                            .map(Pin::name));
            places.points(sensor, Stream.of(Sensor.RETURN)).forEach(back -> {
                sharing(places.way(back, references)).forEach(load -> found.addAll(movedGrounds.of(load)));
                found.addAll(largerReturns.of(back, references));
            });
        });
        causes(sensor).forEach(cause -> found.addAll(movedGrounds.of(cause)));
        places.wiresAt(sensor, Sensor.SIGNAL).forEach(wire -> found.addAll(quieterPairs.of(wire.id())));
    }

    /** Loads whose return ends in a splice of a way. */
    private Set<ComponentId> sharing(List<Wire> way) {
        Set<WireEnd> splices = new LinkedHashSet<>();
        way.forEach(wire ->
                wire.ends().stream().filter(WireEnd.AtSplice.class::isInstance).forEach(splices::add));
        Set<ComponentId> loads = new LinkedHashSet<>();
        for (Component component : evidence.harness().components().all()) {
            if (component.terminals().contains(Device.NEGATIVE)
                    && places.wiresAt(component.id(), Device.NEGATIVE).stream()
                            .anyMatch(wire -> wire.ends().stream().anyMatch(splices::contains))) {
                loads.add(component.id());
            }
        }
        return loads;
    }

    private List<Candidate> ground(GroundPointId ground) {
        List<Candidate> found = new ArrayList<>();
        found.addAll(roomierStuds.of(ground));
        cleanedJoints.of(ground).ifPresent(found::add);
        causes(ground).forEach(cause -> found.addAll(movedGrounds.of(cause)));
        evidence.drawn()
                .index()
                .ground(ground)
                .ifPresent(point -> found.addAll(largerReturns.of(point, places.batteryNegative())));
        found.addAll(largerReturns.straps());
        return found;
    }

    /** Other grounds for components whose current makes an offset, the first one's first. */
    List<Candidate> ofCauses(List<ComponentId> causes) {
        return causes.stream()
                .limit(MOST_CAUSES)
                .flatMap(cause -> movedGrounds.of(cause).stream())
                .toList();
    }

    /** Components whose current makes most of the offset of an element, in the state where it is largest. */
    private List<ComponentId> causes(ElementId owner) {
        return evidence.returns().offsets().stream()
                .filter(offset -> offset.point().owner().equals(owner))
                .max(Comparator.comparingDouble(Offset::worstVolts))
                .map(offset -> offset.shares().stream()
                        .map(OffsetShare::cause)
                        .filter(ComponentId.class::isInstance)
                        .map(ComponentId.class::cast)
                        .distinct()
                        .limit(MOST_CAUSES)
                        .toList())
                .orElse(List.of());
    }
}
