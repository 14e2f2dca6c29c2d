package org.ohmloom.heat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.heat.balance.TimeToLimit;
import org.ohmloom.model.StateId;

/**
 * How warm a wire runs, by every way of reckoning, and how long it takes to its limit.
 *
 * @param heat                where it settles in the state that lasts and is hottest: the physical estimate
 * @param state               that state; empty when there is none
 * @param amps                its RMS current there, A
 * @param tableCelsius        by the ampacity it is designed to and the square law, deg C; empty when that is not known
 * @param conservativeCelsius by the design basis's own conservative formula, deg C; empty when it has none
 * @param timeConstantSeconds time constant where it runs, s
 * @param overloadAmps        twice what it may carry, A
 * @param overload            how long that takes from there to the insulation's limit; empty when the limit is not known
 * @param shortPeak           hottest end of a state that does not last, when one ends hotter than it runs
 * @param loading             how full of current its fullest bundle is
 * @param chart               by the chart procedure of the design basis, where it has one
 * @param skin                skin depth at the frequencies that switch in it, lowest first
 * @param shape               dimensions the heat balance took, in words
 */
public record WireTemperature(
        WireHeat heat,
        Optional<StateId> state,
        double amps,
        OptionalDouble tableCelsius,
        OptionalDouble conservativeCelsius,
        double timeConstantSeconds,
        double overloadAmps,
        Optional<TimeToLimit> overload,
        Optional<ShortPeak> shortPeak,
        BundleLoading loading,
        Optional<ChartAmps> chart,
        List<SkinCheck> skin,
        String shape) {

    /** Name of the only conservative formula any basis has. */
    public static final String CONSERVATIVE_FORMULA = "AC 43.13-1B paragraph 11-66, T1 + (TR - T1) x sqrt(I/Imax)";

    public WireTemperature {
        skin = List.copyOf(skin);
    }

    /** The hottest it gets in any state, short ones too, deg C. */
    public double hottestCelsius() {
        return Math.max(heat.celsius(), shortPeak.map(ShortPeak::celsius).orElse(heat.celsius()));
    }
}
