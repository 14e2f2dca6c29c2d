package org.ohmloom.ground.sensor;

import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;

/**
 * How much a disturbing voltage at the pin of an input matters to the reading.
 *
 * @param sensor       the sensor
 * @param unit         the control unit that reads it
 * @param pin          the pin it is read at
 * @param quantityUnit unit of the reading; {@code V} for a switch or a pulse sensor, whose reading is the level itself
 * @param unitsPerVolt error of the reading for one volt at the pin, the largest over the span, without sign
 * @param allowed      most error of the reading, in its unit; for a level the distance to its threshold, the smaller of the two
 * @param ohmsAtPin    resistance between pin and sensor return with everything joined to it, ohm, where it is largest over the
 *                     span; infinite where nothing is known to load the pin
 * @param filterHertz  corner frequency of the input's first-order filter, Hz, if known
 */
public record SignalSensitivity(
        ComponentId sensor,
        ComponentId unit,
        String pin,
        String quantityUnit,
        double unitsPerVolt,
        double allowed,
        double ohmsAtPin,
        OptionalDouble filterHertz) {

    /** Voltage at the pin that uses up the allowed error, V. */
    public double allowedVolts() {
        return allowed / unitsPerVolt;
    }
}
