package org.ohmloom.size;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.ohmloom.heat.BundleHeat;
import org.ohmloom.model.Wire;
import org.ohmloom.units.Gauge;

/**
 * Where a wire settles in its bundles by the heat balance, its neighbours at the sizes the states were solved with.
 *
 * @param heat  the heat of the bundles
 * @param sizes the size each wire was solved with
 */
public record Settling(BundleHeat heat, Function<Wire, Gauge> sizes) {

    /** The wires at those sizes, among which one is tried. */
    BundleHeat.Neighbours neighbours(ToDoubleFunction<Wire> rmsAmps) {
        return heat.neighbours(sizes, rmsAmps);
    }
}
