package org.ohmloom.solve;

import org.ohmloom.graph.Law;

/**
 * A source between its limits: amps = (emfVolts + volts) / ohms, never less than minimumAmps and never more than
 * maximumAmps; volts is V(-) - V(+). Where that is negative it is taken over chargeOhms. Regulating, at its maximum, or
 * idle: which one holds comes out of the search.
 *
 * <p>A source without internal resistance is given {@link #IDEAL_OHMS}. In {@link Precise} numbers and with {@link StarMesh}
 * a conductance of 1e15 S does no harm, and no second kind of equation is needed. What is then left undetermined, two
 * such sources in parallel, is found by {@link IdealSources}.
 *
 * @param emfVolts    voltage without current, V
 * @param ohms        internal resistance while it gives, ohm, more than 0
 * @param minimumAmps least current, A
 * @param maximumAmps most current, A
 * @param chargeOhms  internal resistance while it takes, ohm, more than 0
 */
record LimitedSource(double emfVolts, double ohms, double minimumAmps, double maximumAmps, double chargeOhms)
        implements Characteristic {

    /** What stands in for no resistance, ohm: at 1000 A it loses 1e-12 V. */
    static final double IDEAL_OHMS = 1e-15;

    static LimitedSource of(Law.VoltageSource law) {
        return new LimitedSource(
                law.emfVolts(),
                Math.max(law.ohms(), IDEAL_OHMS),
                law.minimumAmps(),
                law.maximumAmps(),
                Math.max(law.chargeOhms(), IDEAL_OHMS));
    }

    @Override
    public Precise amps(Precise volts) {
        Precise amps = lawAmps(volts);
        if (amps.value() >= maximumAmps) {
            return Precise.of(maximumAmps);
        }
        return amps.value() <= minimumAmps ? Precise.of(minimumAmps) : amps;
    }

    private Precise lawAmps(Precise volts) {
        Precise over = volts.plus(emfVolts);
        return over.dividedBy(over.value() >= 0 ? ohms : chargeOhms);
    }

    @Override
    public boolean isLinear() {
        return !canGoFlat() && ohms == chargeOhms;
    }

    @Override
    public double siemens(Precise volts) {
        double amps = lawAmps(volts).value();
        double steep = amps >= 0 ? ohms : chargeOhms;
        return amps > minimumAmps && amps < maximumAmps ? 1 / steep : 0;
    }

    /** The smaller of its internal resistances, ohm. */
    double leastOhms() {
        return Math.min(ohms, chargeOhms);
    }

    /** This source with at least so much internal resistance, ohm. */
    LimitedSource soft(double leastOhms) {
        return new LimitedSource(
                emfVolts, Math.max(ohms, leastOhms), minimumAmps, maximumAmps, Math.max(chargeOhms, leastOhms));
    }

    /** This source giving and taking any current. */
    LimitedSource withoutLimits() {
        return new LimitedSource(emfVolts, ohms, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, chargeOhms);
    }

    /** A battery that accepts a limited current, be it minus zero, accepting any; every other source as it is. */
    LimitedSource acceptingAny() {
        return Double.compare(minimumAmps, 0.0) < 0
                ? new LimitedSource(emfVolts, ohms, Double.NEGATIVE_INFINITY, maximumAmps, chargeOhms)
                : this;
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
