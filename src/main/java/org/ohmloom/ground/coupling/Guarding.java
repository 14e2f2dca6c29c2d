package org.ohmloom.ground.coupling;

import java.util.List;
import java.util.Optional;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Cable;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.words.Text;

/**
 * What guards a signal wire against its neighbours.
 *
 * @param twistedWithReturn whether it is twisted with the return of its signal
 * @param layMetres         length of a full twist, m; 0 when not twisted or not entered
 * @param shield            the shield or drain round it
 * @param groundedEnds      how many ends of the shield lead anywhere, 0 to 2
 */
record Guarding(boolean twistedWithReturn, double layMetres, Optional<Wire> shield, int groundedEnds) {

    static Guarding of(CouplingInput input, Wire victim, List<Wire> returns) {
        Optional<Cable> cable =
                victim.cable().map(id -> input.harness().cables().get(id));
        boolean twisted =
                cable.filter(each -> each.kind() == Cable.Kind.TWISTED_PAIR).isPresent()
                        && returns.stream().anyMatch(wire -> wire.cable().equals(victim.cable()));
        Optional<Wire> shield = cable.filter(Cable::shielded).flatMap(each -> input.harness().wires().all().stream()
                .filter(wire ->
                        wire.signalClass() == SignalClass.SHIELD && wire.cable().equals(victim.cable()))
                .findFirst());
        return new Guarding(
                twisted,
                cable.map(each -> each.layLengthMm().orElse(0) / 1000).orElse(0.0),
                shield,
                shield.map(wire -> grounded(input, wire)).orElse(0));
    }

    /** Ends of a shield that go on to something else that conducts. */
    private static int grounded(CouplingInput input, Wire shield) {
        return leads(input, shield, shield.from(), input.drawn().index().from(shield))
                + leads(input, shield, shield.to(), input.drawn().index().to(shield));
    }

    private static int leads(CouplingInput input, Wire shield, WireEnd end, Optional<PointId> point) {
        if (end instanceof WireEnd.AtGround) {
            return 1;
        }
        return point.filter(at -> input.drawn().branches().values().stream()
                        .filter(branch ->
                                !branch.id().value().equals(shield.id().value()))
                        .anyMatch(branch -> touches(branch, at)))
                .map(at -> 1)
                .orElse(0);
    }

    private static boolean touches(Branch branch, PointId point) {
        return branch.from().equals(point) || branch.to().equals(point);
    }

    /** Share of the electric field's voltage that is left: none behind a shield that is grounded anywhere. */
    double capacitiveShare() {
        return groundedEnds > 0 ? 0 : 1;
    }

    /** In words. */
    Text words() {
        Text twist = CouplingTexts.text("guard.twisted");
        if (shield.isEmpty()) {
            return twistedWithReturn ? twist : CouplingTexts.text("guard.none");
        }
        Text shielded = CouplingTexts.text(
                groundedEnds == 0
                        ? "guard.shield-nowhere"
                        : groundedEnds == 1 ? "guard.shield-one-end" : "guard.shield-both-ends");
        return twistedWithReturn ? CouplingTexts.text("guard.both", twist, shielded) : shielded;
    }
}
