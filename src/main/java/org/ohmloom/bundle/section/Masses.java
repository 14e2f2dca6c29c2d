package org.ohmloom.bundle.section;

import java.util.List;
import java.util.Optional;
import org.ohmloom.bundle.CopperMass;
import org.ohmloom.model.Covering;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.CoveringSize;
import org.ohmloom.tables.FabricationTables;

/**
 * Masses along a segment. Copper by the tables; insulation as the ring between the strands and the outside diameter; coverings as
 * a ring of their wall: estimates by the densities of {@code bundle-practice}.
 */
final class Masses {
    private static final double SQUARE_METRES_IN_MM2 = 1e-6;

    private final BundleInput input;
    private final FabricationTables tables;
    private final CopperMass copper;

    Masses(BundleInput input, FabricationTables tables) {
        this.input = input;
        this.tables = tables;
        this.copper = new CopperMass(input.tables().copper().density());
    }

    /** Copper of wires along a length, kg. */
    double copperKg(List<Wire> wires, double lengthMetres) {
        return wires.stream()
                .flatMap(wire -> input.rows().of(wire).stream())
                .mapToDouble(row -> copper.kilograms(row, lengthMetres))
                .sum();
    }

    /** Insulation and jackets, kg: all inside the outside diameters that is not strands. */
    double insulationKg(List<Wire> wires, List<Contents.Round> rounds, double lengthMetres) {
        double roundMm2 = rounds.stream()
                .mapToDouble(round -> Math.PI / 4 * round.outsideMm() * round.outsideMm())
                .sum();
        double spread = tables.value("strand-ratio").value();
        double strandsMm2 = wires.stream()
                .flatMap(wire -> input.rows().of(wire).stream())
                .mapToDouble(row -> spread * spread * row.assuredCopperAreaMm2())
                .sum();
        return Math.max(0, roundMm2 - strandsMm2)
                * SQUARE_METRES_IN_MM2
                * lengthMetres
                * tables.value("insulation-density").value();
    }

    /** A covering, kg. */
    double coveringKg(Optional<CoveringFit> covering, double practicalMm, double lengthMetres) {
        return covering.map(fit -> ringMm2(fit, practicalMm)
                        * SQUARE_METRES_IN_MM2
                        * lengthMetres
                        * tables.value("covering-density").value())
                .orElse(0.0);
    }

    private static double ringMm2(CoveringFit fit, double practicalMm) {
        CoveringSize size = fit.size();
        double outside = fit.finishedMm();
        boolean bored =
                size.kind().equals(Covering.Kind.CONDUIT.name()) || size.kind().equals(Covering.Kind.TUBE.name());
        double inside = bored ? outside - 2 * size.wallMm() : practicalMm;
        return Math.PI / 4 * (outside * outside - inside * inside);
    }
}
