package org.ohmloom.analysis.start;

import java.util.List;

/**
 * Figures the guide takes where nobody has measured yet. Common practice, no source, unless said otherwise; the note in every
 * harness laid out names them, and each is a field a person changes.
 */
final class StartFigures {
    /** Length of the branch from a place to each thing there, m. */
    static final double BRANCH_METRES = 0.3;

    /** Length of the wire from the battery to a fuse beside it, m: below the 7 in of 33 CFR 183.455 (b). */
    static final double FUSE_AT_BATTERY_METRES = 0.15;

    /** Length of a wire inside the fuse box, m. */
    static final double IN_BOX_METRES = 0.05;

    /** Length of a run before its first splice, and between two, m. */
    static final double FIRST_SPLICE_METRES = 0.15, BETWEEN_SPLICES_METRES = 0.1;

    /** Open-circuit voltage of a full lead-acid battery, V for each 12 V. */
    static final double EMF_VOLTS = 12.7;

    /** Set point of an alternator, V for each 12 V. */
    static final double SET_POINT_VOLTS = 14.2;

    /** Internal resistance of a lead-acid battery times its capacity, ohm x Ah for each 12 V. */
    static final double BATTERY_OHM_AMP_HOURS = 0.6;

    /** Fall of an alternator's voltage per ampere, ohm for each 12 V. */
    static final double ALTERNATOR_OHMS = 0.005;

    /** Resistance of a bolted joint, ohm. */
    static final double JOINT_OHMS = 0.0002;

    /** Resistance of the closed contact of a switch, and of a relay, ohm. */
    static final double SWITCH_OHMS = 0.01, RELAY_OHMS = 0.002;

    /** Power of a relay coil, W. */
    static final double COIL_WATTS = 1.6;

    /** Voltages at which a relay closes and opens, as shares of the nominal voltage. */
    static final double PULL_IN = 0.6, DROP_OUT = 0.15;

    /** Most current that is switched without a relay, A: by hand, and by an output of the control unit. */
    static final double MOST_BY_HAND_AMPS = 16, MOST_BY_OUTPUT_AMPS = 8;

    /** Ratings a relay or contactor is taken from, A. */
    static final List<Double> RELAY_AMPS = List.of(20.0, 40.0, 70.0, 120.0, 200.0, 300.0);

    /** How much more than its load's current a fuse is taken for before sizes are chosen. */
    static final double FUSE_MARGIN = 1.5;

    /** Time constant after which a motor or a cold filament takes its running current, s. */
    static final double MOTOR_SECONDS = 0.15, FILAMENT_SECONDS = 0.03;

    /** Current of a control unit itself, and of a sensor from its reference supply, A. */
    static final double UNIT_AMPS = 0.15, SENSOR_AMPS = 0.01;

    /** Resistance of an output of a control unit while on, ohm. */
    static final double OUTPUT_OHMS = 0.02;

    /** Pull-up of an input, and resistance of a two-wire sensor in the middle of its range, ohm. */
    static final double PULL_UP_OHMS = 1000;

    /** Voltage of a reference supply, V. */
    static final double REFERENCE_VOLTS = 5;

    private StartFigures() {}

    /** The smallest rating of a relay that carries a current, A; the largest where none does. */
    static double relayAmps(double amps) {
        for (double rating : RELAY_AMPS) {
            if (rating >= amps) {
                return rating;
            }
        }
        return RELAY_AMPS.get(RELAY_AMPS.size() - 1);
    }
}
