package org.ohmloom.solve.charge;

import static org.ohmloom.units.Require.positive;

/**
 * How long a battery lasts at a steady current (Peukert 1897). Holds for steady discharge from full to empty only; charge
 * counted over changing currents is counted in plain ampere hours.
 */
public final class Peukert {

    /** The current and the end of SAE J537's reserve capacity: minutes at 25 A. */
    private static final double RESERVE_AMPS = 25;

    private static final double MINUTES_PER_HOUR = 60;

    private Peukert() {}

    /**
     * Hours from full to empty: H (C / (I H))^k.
     *
     * @param capacityAmpHours rated capacity C, Ah
     * @param ratedHours       hours H it was rated by
     * @param exponent         Peukert's exponent k
     * @param amps             steady current I, A, more than 0
     */
    public static double hours(double capacityAmpHours, double ratedHours, double exponent, double amps) {
        positive(amps, "discharge current");
        return ratedHours * Math.pow(capacityAmpHours / (amps * ratedHours), exponent);
    }

    /**
     * Hours from full to empty by the capacity form, Cp / I^k, whose capacity is that at 1 A.
     *
     * @param ampHoursAtOneAmp capacity Cp at 1 A, Ah
     * @param exponent         Peukert's exponent
     * @param amps             steady current, A, more than 0
     */
    public static double hoursByOneAmpCapacity(double ampHoursAtOneAmp, double exponent, double amps) {
        positive(amps, "discharge current");
        return ampHoursAtOneAmp / Math.pow(amps, exponent);
    }

    /**
     * The exponent from two tests at steady currents: (log t2 - log t1) / (log I1 - log I2).
     *
     * @param firstAmps   current of the first test, A
     * @param firstHours  hours it lasted
     * @param secondAmps  current of the second, A
     * @param secondHours hours it lasted
     */
    public static double exponent(double firstAmps, double firstHours, double secondAmps, double secondHours) {
        return (Math.log(secondHours) - Math.log(firstHours)) / (Math.log(firstAmps) - Math.log(secondAmps));
    }

    /** Capacity at 25 A, Ah, of a battery with that reserve capacity, minutes at 25 A. */
    public static double reserveAmpHours(double reserveMinutes) {
        return reserveMinutes * RESERVE_AMPS / MINUTES_PER_HOUR;
    }

    /** Minutes at another current, A, by the reserve capacity in minutes at 25 A, without Peukert's correction. */
    public static double reserveMinutes(double reserveMinutes, double amps) {
        positive(amps, "discharge current");
        return reserveMinutes * RESERVE_AMPS / amps;
    }
}
