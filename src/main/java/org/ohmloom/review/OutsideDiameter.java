package org.ohmloom.review;

import java.util.OptionalDouble;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.CitedValue;

/** The outside diameter of a wire, where the tables list one for its conductor family or insulation series and size. */
final class OutsideDiameter {

    private OutsideDiameter() {}

    /** Outside diameter, mm; empty when the wire has no size or no table lists it. */
    static OptionalDouble millimetres(Evidence evidence, Wire wire) {
        if (wire.gauge().isEmpty()) {
            return OptionalDouble.empty();
        }
        String insulation = wire.insulation().orElse(evidence.harness().rules().insulation());
        OptionalDouble bySeries = evidence.tables()
                .outsideDiameterMm(insulation, wire.gauge().get())
                .map(CitedValue::value)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
        return bySeries.isPresent()
                ? bySeries
                : new ConductorResistance(evidence.tables(), evidence.basis())
                        .row(wire, wire.gauge().get())
                        .outsideDiameterMm();
    }
}
