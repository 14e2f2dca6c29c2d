package org.ohmloom.review;

import java.util.Optional;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Wire;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.units.Gauge;

/** The obvious fix of a conductor that is too thin: the size the chooser arrived at, if its contacts take that too. */
final class LargerConductor {

    private LargerConductor() {}

    /** Sets the chosen size, when it is larger than the present one, fits, and the wire is ours to change. */
    static Optional<SetWireGauge> fix(Evidence evidence, WireRating rating) {
        ConductorChoice choice = evidence.conductors().get(rating.wire().id());
        return choice == null ? Optional.empty() : fix(evidence, rating, choice.gauge());
    }

    /** Sets a size, when it is larger than the present one, fits, and the wire is ours to change. */
    static Optional<SetWireGauge> fix(Evidence evidence, WireRating rating, Optional<Gauge> wanted) {
        Wire wire = rating.wire();
        if (wire.existing() || wire.gauge().isEmpty()) {
            return Optional.empty();
        }
        Optional<Gauge> larger =
                wanted.filter(gauge -> gauge.compareTo(rating.gauge()) > 0 && fits(evidence, wire, gauge));
        return larger.map(gauge -> SetWireGauge.of(wire.id(), gauge));
    }

    private static boolean fits(Evidence evidence, Wire wire, Gauge gauge) {
        return CavityWires.of(evidence.harness()).stream()
                .filter(occupied -> occupied.wires().contains(wire))
                .allMatch(occupied -> occupied.isSingle()
                        && occupied.contact(evidence.harness())
                                .map(contact -> CrimpFit.of(evidence, contact, wire, gauge, true)
                                        .fits())
                                .orElse(true));
    }
}
