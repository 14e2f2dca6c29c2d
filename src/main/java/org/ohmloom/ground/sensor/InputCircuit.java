package org.ohmloom.ground.sensor;

import java.util.Optional;

/**
 * The one loop a signal flows in: a voltage behind a resistance at the sensor's end, a pull-up and the input's resistance at the
 * unit's, all against the unit's sensor return. By Kirchhoff's current law at the pin.
 *
 * @param openVolts    voltage of the sensor's end without current, V
 * @param ohms         resistance from there to the pin, ohm, 0 or more; infinite where the sensor is open
 * @param pullUp       the pull-up, if there is one
 * @param inputSiemens conductance of the input, S
 */
record InputCircuit(double openVolts, double ohms, Optional<PullUp> pullUp, double inputSiemens) {

    /**
     * A pull-up resistor.
     *
     * @param volts voltage it goes to, V
     * @param ohms  its resistance, ohm, more than 0
     */
    record PullUp(double volts, double ohms) {}

    /** Voltage at the pin, V. */
    double pinVolts() {
        if (ohms == 0) {
            return openVolts;
        }
        double loop = 1 / ohms;
        double lift = pullUp.map(each -> 1 / each.ohms()).orElse(0.0);
        double sum = loop + lift + inputSiemens;
        return sum == 0
                ? 0
                : (loop * openVolts + pullUp.map(each -> lift * each.volts()).orElse(0.0)) / sum;
    }

    /** Current from the pin into the sensor, A. */
    double amps() {
        double volts = pinVolts();
        double lift = pullUp.map(each -> (each.volts() - volts) / each.ohms()).orElse(0.0);
        return lift - inputSiemens * volts;
    }

    /** Resistance seen from the pin, ohm. */
    double ohmsAtPin() {
        double sum = (ohms == 0 ? Double.POSITIVE_INFINITY : 1 / ohms)
                + pullUp.map(each -> 1 / each.ohms()).orElse(0.0)
                + inputSiemens;
        return 1 / sum;
    }
}
