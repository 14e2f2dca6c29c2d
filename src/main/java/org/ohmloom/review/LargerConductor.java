package org.ohmloom.review;

import java.util.Optional;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.heat.WireRating;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.units.Gauge;

/** The obvious fix of a conductor that is too thin: the size the chooser arrived at. */
final class LargerConductor {

    private LargerConductor() {}

    /** Sets the chosen size, when it is larger than the present one and the wire is ours to change. */
    static Optional<SetWireGauge> fix(Evidence evidence, WireRating rating) {
        ConductorChoice choice = evidence.conductors().get(rating.wire().id());
        if (choice == null || rating.wire().existing()) {
            return Optional.empty();
        }
        Optional<Gauge> larger = choice.gauge().filter(gauge -> gauge.compareTo(rating.gauge()) > 0);
        return larger.map(gauge -> SetWireGauge.of(rating.wire().id(), gauge));
    }
}
