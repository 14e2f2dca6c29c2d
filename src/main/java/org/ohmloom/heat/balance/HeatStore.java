package org.ohmloom.heat.balance;

import static org.ohmloom.units.Require.positive;

/**
 * Heat a metre of wire stores for each kelvin: copper, and insulation at the conductor's temperature.
 *
 * @param copperJoulesPerKelvin     of the copper of a metre, J/K
 * @param insulationJoulesPerKelvin of the insulation of a metre, J/K
 */
public record HeatStore(double copperJoulesPerKelvin, double insulationJoulesPerKelvin) {

    /** Heat capacity of copper, J/(K mm3): IEC 60364-5-54 Annex A. */
    public static final double COPPER_JOULES_PER_KELVIN_PER_MM3 = 3.45e-3;
    /** Heat capacity of PVC, J/(K mm3): 1350 kg/m3 x 1000 J/kgK, common practice; other insulation is near it. */
    public static final double INSULATION_JOULES_PER_KELVIN_PER_MM3 = 1.35e-3;

    private static final double MM_PER_METRE = 1e3;

    public HeatStore {
        positive(copperJoulesPerKelvin, "heat capacity of the copper in J/K");
    }

    /** Of a wire: its sure copper and all between its two diameters as insulation. */
    public static HeatStore of(RoundWire wire) {
        double outside = wire.outsideDiameterMm();
        double inside = wire.conductorDiameterMm();
        double insulationMm2 = Math.PI / 4 * (outside * outside - inside * inside);
        return new HeatStore(
                wire.copperAreaMm2() * MM_PER_METRE * COPPER_JOULES_PER_KELVIN_PER_MM3,
                insulationMm2 * MM_PER_METRE * INSULATION_JOULES_PER_KELVIN_PER_MM3);
    }

    /** Both together, J/K for each metre. */
    public double joulesPerKelvin() {
        return copperJoulesPerKelvin + insulationJoulesPerKelvin;
    }
}
