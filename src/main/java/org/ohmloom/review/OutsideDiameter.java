package org.ohmloom.review;

import java.util.OptionalDouble;
import org.ohmloom.bundle.WireDiameters;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.units.Gauge;

/** The outside diameter of a wire, where the tables list one for its conductor family or insulation series and size. */
final class OutsideDiameter {

    private OutsideDiameter() {}

    /** Outside diameter with a size, mm; empty when no table lists it. */
    static OptionalDouble millimetres(Evidence evidence, Wire wire, Gauge gauge) {
        String insulation = wire.insulation().orElse(evidence.harness().rules().insulation());
        ConductorRow row = new ConductorResistance(evidence.tables(), evidence.basis()).row(wire, gauge);
        return new WireDiameters(evidence.tables())
                .outsideMm(insulation, row)
                .map(CitedValue::value)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
