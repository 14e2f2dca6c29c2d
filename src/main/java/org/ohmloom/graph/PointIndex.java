package org.ohmloom.graph;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Wire;

/**
 * Tells which electrical point a place of the harness belongs to. Places without resistance between them are one point,
 * so several places may answer with the same one.
 *
 * @param byPlace the point of every place by its text, such as {@code X1.3}, {@code PUMP1.+}, {@code G1.body}
 * @param watched points whose voltage matters in every moment, see {@link WatchedPoints}
 */
public record PointIndex(Map<String, PointId> byPlace, SortedSet<PointId> watched) {

    /** Knows no place. */
    public static final PointIndex NONE = new PointIndex(Map.of(), new TreeSet<>());

    public PointIndex {
        byPlace = Map.copyOf(byPlace);
        watched = Collections.unmodifiableSortedSet(new TreeSet<>(watched));
    }

    /** The same places with other points watched. */
    public PointIndex watching(SortedSet<PointId> points) {
        return new PointIndex(byPlace, points);
    }

    /** The point of a place by its text. */
    public Optional<PointId> at(String place) {
        return Optional.ofNullable(byPlace.get(place));
    }

    /** The point of a component's terminal. */
    public Optional<PointId> terminal(ComponentId component, String terminal) {
        return at(PointName.terminal(component, terminal).id().value());
    }

    /** The point of the wire side of a cavity; empty for a cavity with neither a wire nor a terminal. */
    public Optional<PointId> cavity(ConnectorId connector, String cavity) {
        return at(PointName.cavity(connector, cavity).id().value());
    }

    /** The point of a splice, behind the joints of its wires. */
    public Optional<PointId> splice(SpliceId splice) {
        return at(PointName.splice(splice).id().value());
    }

    /** The point where wires are stacked on a ground point. */
    public Optional<PointId> ground(GroundPointId ground) {
        return at(PointName.ground(ground).id().value());
    }

    /** The point of the chassis body under a ground point, behind its joint. */
    public Optional<PointId> groundBody(GroundPointId ground) {
        return at(PointName.groundBody(ground).id().value());
    }

    /** The point of what the wire's {@code from} end is joined to, behind the joint of a splice. */
    public Optional<PointId> from(Wire wire) {
        return at(PointName.of(wire.from(), wire.id(), WireBranches.FROM).id().value());
    }

    /** The point of what the wire's {@code to} end is joined to, behind the joint of a splice. */
    public Optional<PointId> to(Wire wire) {
        return at(PointName.of(wire.to(), wire.id(), WireBranches.TO).id().value());
    }
}
