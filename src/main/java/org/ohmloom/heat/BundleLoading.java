package org.ohmloom.heat;

/**
 * How full of current the fullest bundle along a wire is, in the state with most in it.
 *
 * @param wireCount        wires in the bundle, idle ones and signals too
 * @param capacityFraction sum of their currents over the sum of what each may carry alone in free air there: percent of total
 *                         capacity in the sense of MIL-W-5088L, as a share
 */
public record BundleLoading(int wireCount, double capacityFraction) {

    /** A wire alone. */
    static final BundleLoading ALONE = new BundleLoading(1, 1);
}
