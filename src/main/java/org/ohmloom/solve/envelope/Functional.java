package org.ohmloom.solve.envelope;

/** A sum over what takes current: a constant and so much for each ampere of each taker; a current in A or a voltage in V. */
final class Functional {
    private final double constant;
    private final double[] perAmp;
    private final double perSensedAmp;

    Functional(double constant, double[] perAmp) {
        this(constant, perAmp, 0);
    }

    /** A sum in which a source with a sense point has its part already; {@code perSensedAmp} is what its ampere adds. */
    Functional(double constant, double[] perAmp, double perSensedAmp) {
        this.constant = constant;
        this.perAmp = perAmp;
        this.perSensedAmp = perSensedAmp;
    }

    double constant() {
        return constant;
    }

    /** What one ampere of a taker adds. */
    double perAmp(int taker) {
        return perAmp[taker];
    }

    /** What one ampere of a source with a sense point adds; its part is in the other numbers already. */
    double perSensedAmp() {
        return perSensedAmp;
    }

    int takers() {
        return perAmp.length;
    }

    Functional negated() {
        return plus(0, this, -1);
    }

    /** This minus another. */
    Functional minus(Functional other) {
        double[] difference = new double[perAmp.length];
        for (int taker = 0; taker < difference.length; taker++) {
            difference[taker] = perAmp[taker] - other.perAmp[taker];
        }
        return new Functional(constant - other.constant, difference, perSensedAmp - other.perSensedAmp);
    }

    /** A number plus so many times a functional. */
    static Functional plus(double constant, Functional of, double times) {
        double[] scaled = new double[of.perAmp.length];
        for (int taker = 0; taker < scaled.length; taker++) {
            scaled[taker] = times * of.perAmp[taker];
        }
        return new Functional(constant + times * of.constant, scaled, times * of.perSensedAmp);
    }

    /** Each number made positive and each taker's multiplied by a share of its own. */
    Functional sizes(double[] ratios) {
        double[] scaled = new double[perAmp.length];
        for (int taker = 0; taker < scaled.length; taker++) {
            scaled[taker] = Math.abs(perAmp[taker]) * ratios[taker];
        }
        return new Functional(Math.abs(constant), scaled, perSensedAmp);
    }

    /** Its value for currents in A. */
    double at(double[] amps) {
        double sum = constant;
        for (int taker = 0; taker < amps.length; taker++) {
            sum += perAmp[taker] * amps[taker];
        }
        return sum;
    }
}
