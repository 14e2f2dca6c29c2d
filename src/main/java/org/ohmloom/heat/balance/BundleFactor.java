package org.ohmloom.heat.balance;

/**
 * What a wire may carry in a bundle of wires like itself, as a share of what it may carry alone in free air: the balance
 * of {@link BundleSection} for equal wires, which has one unknown, the temperature of the bundle's outside.
 */
public final class BundleFactor {

    private BundleFactor() {}

    /**
     * The factor, up to 1.
     *
     * @param wire             the wire
     * @param air              the air
     * @param limitCelsius     conductor temperature to be kept, deg C
     * @param count            wires in the bundle, all of that kind, 1 or more
     * @param capacityFraction percent of total capacity used, as a share: so many of the wires carry the same full current,
     *                         one at least, lying together in the middle, the others none
     */
    public static double of(RoundWire wire, OpenAir air, double limitCelsius, int count, double capacityFraction) {
        double alone = HeatBalance.bare(wire, air).ampacityAmps(limitCelsius);
        if (count <= 1 || alone == 0) {
            return 1;
        }
        double loaded = Math.max(1, capacityFraction * count);
        double inner = wire.insulationKelvinMetresPerWatt() + bodyKelvinMetresPerWatt(count, loaded);
        Surface surface = Cover.NONE.over(BundleSection.packing(count) * Math.sqrt(count) * wire.outsideDiameterMm());
        double outside = Rise.where(
                air.ambientCelsius(),
                celsius -> celsius + surface.wattsPerMetre(celsius, air) / loaded * inner - limitCelsius);
        double watts = surface.wattsPerMetre(outside, air) / loaded;
        return Math.min(1, Math.sqrt(watts / wire.ohmsPerMetreAt(limitCelsius)) / alone);
    }

    /** Rise from the bundle's edge to the wire in the middle for each watt per metre of one loaded wire, K m/W. */
    private static double bodyKelvinMetresPerWatt(int count, double loaded) {
        return (loaded - 1 + loaded * Math.log(count / loaded))
                / (4 * Math.PI * BundleSection.EFFECTIVE_WATTS_PER_METRE_PER_KELVIN);
    }
}
