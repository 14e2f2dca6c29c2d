package org.ohmloom.graph;

import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.ChassisPath;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Formats;

/**
 * Branches of chassis bodies.
 *
 * <p>An entered path joins the body under its two ground points. Ground points that entered paths join hang together; of
 * each such group the first in natural order, and every ground point that no path mentions, goes to the middle of the
 * body with the resistance of the body's rule, or with 0 ohm where there is no rule. A body never falls apart: a single
 * group needs no middle. That a body without rule is one point there is noted as an assumption; so is the use of a rule,
 * with its source. A body declared isolated conducts like any other.
 */
final class ChassisBranches {
    private final NetworkDraft network;
    private final Harness harness;

    ChassisBranches(NetworkDraft network, Harness harness) {
        this.network = network;
        this.harness = harness;
    }

    void add() {
        for (ChassisBody body : harness.bodies().all()) {
            for (ChassisPath path : body.paths()) {
                network.branch(
                        body.id() + "." + path.from() + "-" + path.to(),
                        BranchKind.CHASSIS,
                        PointName.groundBody(path.from()),
                        PointName.groundBody(path.to()),
                        body.id(),
                        new Law.Resistance(path.ohms()));
            }
            toMiddle(body, heads(body));
        }
    }

    private void toMiddle(ChassisBody body, SortedSet<GroundPointId> heads) {
        boolean single = heads.size() == 1 && !body.paths().isEmpty();
        if (heads.isEmpty() || single) {
            return;
        }
        PointName middle = PointName.body(body.id());
        for (GroundPointId head : heads) {
            network.resistance(
                    body.id() + "." + head,
                    BranchKind.CHASSIS,
                    PointName.groundBody(head),
                    middle,
                    body.id(),
                    body.rule().map(rule -> rule.toMiddleOhms()).orElse(0.0));
        }
        if (heads.size() > 1) {
            assume(
                    body,
                    String.join(", ", heads.stream().map(GroundPointId::value).toList()));
        }
    }

    private void assume(ChassisBody body, String heads) {
        body.rule()
                .ifPresentOrElse(
                        rule -> network.assume(
                                body.id(),
                                NetworkTexts.text("assumed.star", body.id(), Formats.ohms(rule.toMiddleOhms()), heads),
                                rule.source()),
                        () -> network.assume(
                                body.id(),
                                NetworkTexts.text("assumed.no-chassis-ohms", body.id(), heads, Formats.ohms(0)),
                                Assumption.COMMON_PRACTICE));
    }

    /** The first ground point of each group that entered paths hold together; a group may be a single one. */
    private SortedSet<GroundPointId> heads(ChassisBody body) {
        SortedMap<GroundPointId, GroundPointId> headOf = new TreeMap<>();
        harness.grounds().all().stream()
                .filter(ground -> ground.body().equals(body.id()))
                .map(GroundPoint::id)
                .forEach(id -> headOf.put(id, id));
        for (ChassisPath path : body.paths()) {
            GroundPointId one = headOf.getOrDefault(path.from(), path.from());
            GroundPointId other = headOf.getOrDefault(path.to(), path.to());
            headOf.putIfAbsent(path.from(), one);
            headOf.putIfAbsent(path.to(), other);
            GroundPointId head = one.compareTo(other) <= 0 ? one : other;
            headOf.replaceAll((id, old) -> old.equals(one) || old.equals(other) ? head : old);
        }
        return new TreeSet<>(headOf.values());
    }
}
