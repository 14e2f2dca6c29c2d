package org.ohmloom.size;

import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.ohmloom.heat.BundleHeat;
import org.ohmloom.heat.WireHeat;
import org.ohmloom.model.Wire;
import org.ohmloom.units.Gauge;

/**
 * Where a wire settles in its bundles by the heat balance, its neighbours at the sizes the states were solved with.
 *
 * @param heat  the heat of the bundles
 * @param sizes the size each wire was solved with
 */
public record Settling(BundleHeat heat, Function<Wire, Gauge> sizes) {

    /**
     * The temperature a wire settles at, deg C; empty when it lies nowhere or does not settle.
     *
     * @param wire  the wire
     * @param gauge the size it is tried at
     * @param amps  the current it is tried with, A RMS
     * @param other current of each other wire, A RMS
     */
    OptionalDouble celsius(Wire wire, Gauge gauge, double amps, ToDoubleFunction<Wire> other) {
        return heat.settle(
                        wire.id(),
                        each -> each.id().equals(wire.id()) ? gauge : sizes.apply(each),
                        each -> each.id().equals(wire.id()) ? amps : other.applyAsDouble(each))
                .filter(found -> !found.runaway())
                .map(WireHeat::celsius)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
