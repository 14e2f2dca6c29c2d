package org.ohmloom.solve;

import org.ohmloom.graph.Law;

/**
 * What a slow source asks of its mean current and voltage. Regulators and the chemistry of batteries are slow against duty
 * cycles: within a period such a source is an electromotive force behind a resistance, and its law binds the means.
 */
interface MeanLaw {

    /**
     * By how much the law is missed: 0 where it holds, rising with the electromotive force.
     *
     * @param emfVolts   electromotive force, V
     * @param amps       mean current it gives, A
     * @param senseVolts mean voltage at its sense point, V
     */
    double missVolts(double emfVolts, double amps, double senseVolts);

    /** Whether the law holds well enough. */
    boolean holds(double emfVolts, double amps, double senseVolts);

    /**
     * An alternator: holds its set point at its sense point, or gives its limit below it, or nothing above it.
     *
     * @param setPointVolts voltage it holds, V
     * @param limitAmps     most mean current, A
     */
    record Regulated(double setPointVolts, double limitAmps) implements MeanLaw {

        /** Puts currents and voltages on one scale, ohm. */
        private static final double SCALE_OHMS = 0.01;

        @Override
        public double missVolts(double emfVolts, double amps, double senseVolts) {
            return Math.max(senseVolts - setPointVolts, SCALE_OHMS * (amps - limitAmps));
        }

        @Override
        public boolean holds(double emfVolts, double amps, double senseVolts) {
            double miss = missVolts(emfVolts, amps, senseVolts);
            return Math.abs(miss) <= SteadySources.HELD_VOLTS
                    || amps <= SteadySources.HELD_AMPS
                            && senseVolts > setPointVolts
                            && SCALE_OHMS * (amps - limitAmps) <= 0;
        }
    }

    /**
     * A battery: gives over its discharge resistance, is charged over its charge resistance up to what it accepts.
     *
     * @param law       its slow law
     * @param fastOhms  its resistance within a period, ohm
     */
    record Charged(Law.VoltageSource law, double fastOhms) implements MeanLaw {

        @Override
        public double missVolts(double emfVolts, double amps, double senseVolts) {
            return (amps - asked(emfVolts - fastOhms * amps)) * fastOhms;
        }

        /** The current its slow law asks at a terminal voltage, A. */
        private double asked(double terminalVolts) {
            double over = law.emfVolts() - terminalVolts;
            return over >= 0 ? over / law.ohms() : Math.max(over / law.chargeOhms(), law.minimumAmps());
        }

        @Override
        public boolean holds(double emfVolts, double amps, double senseVolts) {
            return Math.abs(missVolts(emfVolts, amps, senseVolts)) <= SteadySources.HELD_VOLTS;
        }
    }
}
