package org.ohmloom.solve;

import org.ohmloom.graph.Law;

/**
 * A source between its limits: amps = (emfVolts + volts) / ohms, never less than minimumAmps and never more than
 * maximumAmps; volts is V(-) - V(+). Regulating, at its maximum, or idle: which one holds comes out of the search.
 *
 * <p>A source without internal resistance is given {@link #IDEAL_OHMS}. In {@link Precise} numbers and with {@link StarMesh}
 * a conductance of 1e15 S does no harm, and no second kind of equation is needed. What is then left undetermined, two
 * such sources in parallel, is found by {@link IdealSources}.
 *
 * @param emfVolts    voltage without current, V
 * @param ohms        internal resistance, ohm, more than 0
 * @param minimumAmps least current, A
 * @param maximumAmps most current, A
 */
record LimitedSource(double emfVolts, double ohms, double minimumAmps, double maximumAmps) implements Characteristic {

    /** What stands in for no resistance, ohm: at 1000 A it loses 1e-12 V. */
    static final double IDEAL_OHMS = 1e-15;

    static LimitedSource of(Law.VoltageSource law) {
        return new LimitedSource(
                law.emfVolts(), Math.max(law.ohms(), IDEAL_OHMS), law.minimumAmps(), law.maximumAmps());
    }

    @Override
    public Precise amps(Precise volts) {
        Precise amps = volts.plus(emfVolts).dividedBy(ohms);
        if (amps.value() >= maximumAmps) {
            return Precise.of(maximumAmps);
        }
        return amps.value() <= minimumAmps ? Precise.of(minimumAmps) : amps;
    }

    @Override
    public boolean isLinear() {
        return !canGoFlat();
    }

    @Override
    public double siemens(Precise volts) {
        double amps = volts.plus(emfVolts).dividedBy(ohms).value();
        return amps > minimumAmps && amps < maximumAmps ? 1 / ohms : 0;
    }

    /** This source with at least so much internal resistance, ohm. */
    LimitedSource soft(double leastOhms) {
        return new LimitedSource(emfVolts, Math.max(ohms, leastOhms), minimumAmps, maximumAmps);
    }

    /** This source giving and taking any current. */
    LimitedSource withoutLimits() {
        return new LimitedSource(emfVolts, ohms, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** Whether it has a current limit. */
    boolean canGoFlat() {
        return !Double.isInfinite(minimumAmps) || !Double.isInfinite(maximumAmps);
    }

    @Override
    public double leakSiemens(double stageSiemens) {
        return canGoFlat() ? stageSiemens : 0;
    }
}
