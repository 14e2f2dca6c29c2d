package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.bundle.CopperMass;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Strap;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.review.Evidence;

/**
 * Length and copper of the straps to be made.
 *
 * <p>A length that is not entered is that of the way between the two ground points over the physical harness. A cross-section
 * that is not entered is the least a copper strap of that resistance and length can have: A = rho L / R at 20 deg C; the joints that
 * the resistance contains too make the real one larger.
 *
 * @param lengthMetres length of all of them, m, as far as known
 * @param copperKg     copper in them, kg, as far as known
 * @param unknown      ids of those whose length nothing tells
 */
record StrapCopper(double lengthMetres, double copperKg, List<String> unknown) {

    StrapCopper {
        unknown = List.copyOf(unknown);
    }

    static StrapCopper of(Evidence evidence) {
        CopperMass copper = new CopperMass(evidence.tables().copper().density());
        double ohmMm2PerMetre = evidence.tables().copper().resistivity().value();
        double lengthMetres = 0;
        double copperKg = 0;
        List<String> unknown = new ArrayList<>();
        for (Strap strap : evidence.harness().straps().all()) {
            OptionalDouble length = strap.existing() ? OptionalDouble.of(0) : length(evidence.harness(), strap);
            if (length.isEmpty()) {
                unknown.add(strap.id().value());
            } else {
                double metres = length.getAsDouble();
                lengthMetres += metres;
                copperKg += copper.kilograms(strap.areaMm2().orElse(ohmMm2PerMetre * metres / strap.ohms()), metres);
            }
        }
        return new StrapCopper(lengthMetres, copperKg, unknown);
    }

    private static OptionalDouble length(Harness harness, Strap strap) {
        if (strap.lengthMetres().isPresent()) {
            return strap.lengthMetres();
        }
        Wire between = Wire.of(
                "way-of-" + strap.id(),
                new WireEnd.AtGround(strap.from()),
                new WireEnd.AtGround(strap.to()),
                SignalClass.RETURN);
        return Routes.of(harness.with(between)).lengthMetres(between);
    }
}
