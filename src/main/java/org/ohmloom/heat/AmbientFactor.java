package org.ohmloom.heat;

import java.util.Optional;
import org.ohmloom.heat.Ampacity.Factor;
import org.ohmloom.tables.AmbientFactors;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.InsulationType;
import org.ohmloom.tables.Status;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * The factor on an ampacity for air of another temperature than the table's: sqrt((Tc - Ta)/(Tc - Tbase)), because the
 * heat a conductor makes goes with the square of its current and the heat it sheds with its rise over the air.
 *
 * <p>A basis with ambient factors of its own (33 CFR 183.425 note 1) has them used in engine spaces, unless hotter air
 * asks for less by the formula; elsewhere the formula serves it too, but cooler air never raises what such a basis
 * allows. At and above the insulation's limit the factor is 0.
 *
 * @param published   the basis's own ambient factors, where it has them
 * @param baseCelsius air temperature the ampacity table holds for, deg C
 */
record AmbientFactor(Optional<AmbientFactors> published, double baseCelsius) {

    /** The air an engine space counts as, deg C: 33 CFR 183.425 Table 5 note 1. */
    private static final double ENGINE_SPACE_CELSIUS = 50;

    private static final Citation SQUARE_ROOT = new Citation(
            "IEC 60364-5-52", "not stated", "ambient correction", "sqrt((Tc - Ta)/(Tc - Tbase))", Status.COMPUTED);

    static AmbientFactor of(WireTables tables, DesignBasis basis) {
        return new AmbientFactor(
                basis.ambientTable().map(tables::ambientFactors),
                tables.ampacity(basis.ampacityTable()).baseAmbientCelsius());
    }

    /** The factor for the hottest air along a wire, deg C, around that insulation. */
    Factor factor(double ambientCelsius, boolean engineSpace, InsulationType insulation) {
        double limit = insulation.maximumCelsius();
        Text air = HeatTexts.text("ambient", Formats.celsius(ambientCelsius));
        if (ambientCelsius >= limit || baseCelsius >= limit) {
            return new Factor(
                    HeatTexts.text("insulation-limit", air, Formats.celsius(limit)), 0, insulation.citation());
        }
        Factor formula = new Factor(air, AmbientRatio.of(limit, ambientCelsius, baseCelsius), SQUARE_ROOT);
        if (published.isEmpty()) {
            return formula;
        }
        double tableCelsius = engineSpace ? ENGINE_SPACE_CELSIUS : baseCelsius;
        return published
                .get()
                .factor(tableCelsius, limit)
                .map(own -> new Factor(
                        engineSpace ? HeatTexts.text("engine-space") : HeatTexts.text("own-of-table", air),
                        own.value(),
                        own.citation()))
                .filter(own -> ambientCelsius <= tableCelsius || own.ratio() <= formula.ratio())
                .orElse(formula);
    }
}
