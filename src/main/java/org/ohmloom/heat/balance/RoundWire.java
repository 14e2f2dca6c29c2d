package org.ohmloom.heat.balance;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

/**
 * A single insulated round conductor as the heat balance sees it.
 *
 * @param ohmsPerMetre           resistance of a metre at 20 C, ohm
 * @param copperAreaMm2          copper area that is sure to be there, mm2: what stores heat
 * @param conductorDiameterMm    diameter over the strands, mm
 * @param outsideDiameterMm      diameter over the insulation, mm, not less than the conductor's
 * @param wattsPerMetrePerKelvin heat conductivity of the insulation, W/mK
 */
public record RoundWire(
        double ohmsPerMetre,
        double copperAreaMm2,
        double conductorDiameterMm,
        double outsideDiameterMm,
        double wattsPerMetrePerKelvin) {

    /** Heat conductivity of insulation whose type states none, W/mK: common for PVC. */
    public static final double USUAL_INSULATION = 0.17;
    /** Temperature below 0 C at which copper's straight line of resistance ends, C: IEC 60949. */
    public static final double BETA_CELSIUS = 234.5;
    /** Melting point of copper, C: NBS Handbook 100. */
    public static final double MELTING_CELSIUS = 1083;

    public RoundWire {
        positive(ohmsPerMetre, "resistance of a metre in ohm");
        positive(copperAreaMm2, "copper area in mm2");
        positive(conductorDiameterMm, "conductor diameter in mm");
        positive(wattsPerMetrePerKelvin, "heat conductivity of the insulation in W/mK");
        that(
                outsideDiameterMm >= conductorDiameterMm && Double.isFinite(outsideDiameterMm),
                "outside diameter %s mm is less than the conductor's %s mm",
                outsideDiameterMm,
                conductorDiameterMm);
    }

    /** Resistance of a metre at a conductor temperature, ohm: listed value x (234.5 + T)/254.5. */
    public double ohmsPerMetreAt(double celsius) {
        return ohmsPerMetre * (BETA_CELSIUS + celsius) / (BETA_CELSIUS + 20);
    }

    /** Heat made by a current at a conductor temperature, W per metre. */
    public double heatWattsPerMetre(double amps, double celsius) {
        return amps * amps * ohmsPerMetreAt(celsius);
    }

    /** Rise across the insulation for each watt per metre, K m/W: ln(D/d)/(2 pi k). */
    public double insulationKelvinMetresPerWatt() {
        return Math.log(outsideDiameterMm / conductorDiameterMm) / (2 * Math.PI * wattsPerMetrePerKelvin);
    }
}
