package org.ohmloom.model;

import static org.ohmloom.units.Require.finite;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;
import static org.ohmloom.units.Require.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a sensor gives for what it measures. The ends of a line belong to the lowest and highest value of the
 * {@link Measurement} it stands in.
 */
public sealed interface Calibration {

    /**
     * A voltage in proportion to the voltage between the sensor's supply and return.
     *
     * @param lowFraction  share of the supply at the lowest value, 0 to 1
     * @param highFraction share of the supply at the highest value, 0 to 1; not that at the lowest
     * @param outputOhms   resistance behind the signal terminal, ohm, 0 or more, if known
     */
    record RatiometricLine(double lowFraction, double highFraction, OptionalDouble outputOhms) implements Calibration {
        public RatiometricLine {
            within(lowFraction, 0, 1, "share of the supply at the lowest value");
            within(highFraction, 0, 1, "share of the supply at the highest value");
            that(lowFraction != highFraction, "a line gives different shares at its ends, not %s twice", lowFraction);
            outputOhms.ifPresent(value -> notNegative(value, "output resistance of a sensor"));
        }
    }

    /**
     * A voltage over the sensor's return, whatever its supply.
     *
     * @param lowVolts   voltage at the lowest value, V
     * @param highVolts  voltage at the highest value, V; not that at the lowest
     * @param outputOhms resistance behind the signal terminal, ohm, 0 or more, if known
     */
    record VoltageLine(double lowVolts, double highVolts, OptionalDouble outputOhms) implements Calibration {
        public VoltageLine {
            finite(lowVolts, "voltage at the lowest value");
            finite(highVolts, "voltage at the highest value");
            that(lowVolts != highVolts, "a line gives different voltages at its ends, not %s V twice", lowVolts);
            outputOhms.ifPresent(value -> notNegative(value, "output resistance of a sensor"));
        }
    }

    /**
     * A thermistor by two points of its curve: R = R0 exp(B (1/T - 1/T0)), T in kelvin (textbook).
     *
     * @param referenceOhms    resistance at the reference temperature, ohm, more than 0
     * @param referenceCelsius reference temperature, deg C, more than -273.15
     * @param betaKelvin       B, K, not 0: more than 0 for an NTC
     */
    record Beta(double referenceOhms, double referenceCelsius, double betaKelvin)
            implements Calibration, ResistanceCurve {
        public Beta {
            positive(referenceOhms, "resistance at the reference temperature");
            that(referenceCelsius > -Celsius.ZERO_KELVIN, "no temperature is %s deg C", referenceCelsius);
            that(betaKelvin != 0 && Double.isFinite(betaKelvin), "Beta is not %s K", betaKelvin);
        }

        @Override
        public double ohms(double celsius) {
            return referenceOhms
                    * Math.exp(betaKelvin * (1 / Celsius.kelvin(celsius) - 1 / Celsius.kelvin(referenceCelsius)));
        }

        @Override
        public double value(double ohms) {
            return Celsius.of(1 / (1 / Celsius.kelvin(referenceCelsius) + Math.log(ohms / referenceOhms) / betaKelvin));
        }
    }

    /**
     * A thermistor by three points of its curve: 1/T = A + B ln R + C (ln R)^3, T in kelvin, R in ohm (Steinhart and Hart,
     * Deep-Sea Research 15, 1968).
     *
     * @param a A, 1/K
     * @param b B, 1/K, more than 0
     * @param c C, 1/K, 0 or more
     */
    record SteinhartHart(double a, double b, double c) implements Calibration, ResistanceCurve {

        /** Newton's steps that settle ln R to the last digit. */
        private static final int STEPS = 60;

        public SteinhartHart {
            finite(a, "Steinhart-Hart A");
            positive(b, "Steinhart-Hart B");
            notNegative(c, "Steinhart-Hart C");
        }

        @Override
        public double ohms(double celsius) {
            double wanted = 1 / Celsius.kelvin(celsius) - a;
            double log = wanted / b;
            for (int step = 0; step < STEPS; step++) {
                log -= (b * log + c * log * log * log - wanted) / (b + 3 * c * log * log);
            }
            return Math.exp(log);
        }

        @Override
        public double value(double ohms) {
            double log = Math.log(ohms);
            return Celsius.of(1 / (a + b * log + c * log * log * log));
        }
    }

    /**
     * A resistance by a table, straight between its rows and beyond its ends.
     *
     * @param points at least two, values rising, resistances all rising or all falling
     */
    record ResistanceTable(List<ResistancePoint> points) implements Calibration, ResistanceCurve {
        public ResistanceTable {
            points = List.copyOf(points);
            that(points.size() >= 2, "a table of resistances needs two rows, not %s", points.size());
            double turn = points.get(1).ohms() - points.get(0).ohms();
            for (int row = 1; row < points.size(); row++) {
                ResistancePoint before = points.get(row - 1);
                ResistancePoint here = points.get(row);
                that(here.value() > before.value(), "values of a table rise: %s follows %s", here, before);
                that((here.ohms() - before.ohms()) * turn > 0, "resistances turn back: %s follows %s", here, before);
            }
        }

        @Override
        public double ohms(double value) {
            return TableLine.at(points, ResistancePoint::value, ResistancePoint::ohms, value);
        }

        @Override
        public double value(double ohms) {
            return TableLine.at(points, ResistancePoint::ohms, ResistancePoint::value, ohms);
        }
    }

    /**
     * A row of a table of resistances.
     *
     * @param value value in the unit of the measurement
     * @param ohms  resistance there, ohm, 0 or more
     */
    record ResistancePoint(double value, double ohms) {
        public ResistancePoint {
            finite(value, "value of a row");
            notNegative(ohms, "resistance of a row");
        }
    }

    /**
     * A voltage over the sensor's return by a table, straight between its rows and beyond its ends.
     *
     * @param points      at least two, values rising, voltages all rising or all falling
     * @param supplyVolts supply the voltages are told for, V, more than 0, where they go in proportion to it; empty where they do not
     * @param outputOhms  resistance behind the signal terminal, ohm, 0 or more, if known
     */
    record VoltageTable(List<VoltagePoint> points, OptionalDouble supplyVolts, OptionalDouble outputOhms)
            implements Calibration, VoltageCurve {
        public VoltageTable {
            points = List.copyOf(points);
            that(points.size() >= 2, "a table of voltages needs two rows, not %s", points.size());
            double turn = points.get(1).volts() - points.get(0).volts();
            for (int row = 1; row < points.size(); row++) {
                VoltagePoint before = points.get(row - 1);
                VoltagePoint here = points.get(row);
                that(here.value() > before.value(), "values of a table rise: %s follows %s", here, before);
                that((here.volts() - before.volts()) * turn > 0, "voltages turn back: %s follows %s", here, before);
            }
            supplyVolts.ifPresent(value -> positive(value, "supply of a table of voltages"));
            outputOhms.ifPresent(value -> notNegative(value, "output resistance of a sensor"));
        }

        @Override
        public double volts(double value) {
            return TableLine.at(points, VoltagePoint::value, VoltagePoint::volts, value);
        }

        @Override
        public double value(double volts) {
            return TableLine.at(points, VoltagePoint::volts, VoltagePoint::value, volts);
        }
    }

    /**
     * A row of a table of voltages.
     *
     * @param value value in the unit of the measurement
     * @param volts voltage there, V
     */
    record VoltagePoint(double value, double volts) {
        public VoltagePoint {
            finite(value, "value of a row");
            finite(volts, "voltage of a row");
        }
    }

    /**
     * A thermocouple with an amplifier that adds its cold junction: U = offset + gain E(T), by {@link ThermocoupleVolts}.
     *
     * @param type        type of the thermocouple
     * @param gainRatio   volts out for one volt of the thermocouple, more than 0
     * @param offsetVolts output at 0 deg C, V
     * @param outputOhms  resistance behind the signal terminal, ohm, 0 or more, if known
     */
    record AmplifiedThermocouple(
            Thermocouple.Type type, double gainRatio, double offsetVolts, OptionalDouble outputOhms)
            implements Calibration, VoltageCurve {
        public AmplifiedThermocouple {
            positive(gainRatio, "gain of an amplifier");
            finite(offsetVolts, "output of an amplifier at 0 deg C");
            outputOhms.ifPresent(value -> notNegative(value, "output resistance of a sensor"));
        }

        @Override
        public double volts(double celsius) {
            return offsetVolts + gainRatio * ThermocoupleVolts.volts(celsius);
        }

        @Override
        public double value(double volts) {
            return ThermocoupleVolts.celsius((volts - offsetVolts) / gainRatio);
        }

        @Override
        public OptionalDouble supplyVolts() {
            return OptionalDouble.empty();
        }
    }

    /**
     * A contact that opens and closes.
     *
     * @param closedOhms resistance while closed, ohm, 0 or more
     * @param openOhms   resistance while open, ohm, more than {@code closedOhms}; empty when it insulates
     */
    record SwitchContact(double closedOhms, OptionalDouble openOhms) implements Calibration {
        public SwitchContact {
            notNegative(closedOhms, "resistance of a closed contact");
            openOhms.ifPresent(
                    value -> that(value > closedOhms, "an open contact has more resistance than %s ohm", closedOhms));
        }
    }

    /**
     * Pulses between two levels over the sensor's return.
     *
     * @param lowVolts     the low level, V
     * @param highVolts    the high level, V, more than the low one; empty for an open collector that a pull-up lifts
     * @param outputOhms   resistance behind the signal terminal, ohm, 0 or more, if known
     * @param hertzPerUnit pulses in a second for one unit of what is measured, more than 0, if known
     * @param turns        the wheel or shaft that gives them, if it is one; not together with {@code hertzPerUnit}
     */
    record PulseLevels(
            double lowVolts,
            OptionalDouble highVolts,
            OptionalDouble outputOhms,
            OptionalDouble hertzPerUnit,
            Optional<Turns> turns)
            implements Calibration {

        /** Pulses that no wheel or shaft is known for. */
        public PulseLevels(
                double lowVolts, OptionalDouble highVolts, OptionalDouble outputOhms, OptionalDouble hertzPerUnit) {
            this(lowVolts, highVolts, outputOhms, hertzPerUnit, Optional.empty());
        }

        public PulseLevels {
            that(
                    hertzPerUnit.isEmpty() || turns.isEmpty(),
                    "pulses for one unit are given by 'hertzPerUnit' or by 'turns', not by both");
            finite(lowVolts, "low level");
            highVolts.ifPresent(
                    value -> that(value > lowVolts, "the high level is above %s V, not %s", lowVolts, value));
            outputOhms.ifPresent(value -> notNegative(value, "output resistance of a sensor"));
            hertzPerUnit.ifPresent(value -> positive(value, "pulses in a second for one unit"));
        }
    }

    /**
     * A wheel or shaft that gives pulses, and what it drives or is driven by.
     *
     * @param pulsesPerRevolution pulses in one turn of the wheel the sensor looks at, more than 0
     * @param turnsRatio    turns of that wheel for one turn of what is measured, more than 0; empty means 1
     * @param tyreMetres    diameter of the tyre on what is measured, m, more than 0; empty where turns are measured
     */
    record Turns(double pulsesPerRevolution, OptionalDouble turnsRatio, OptionalDouble tyreMetres) {
        public Turns {
            positive(pulsesPerRevolution, "pulses of one turn");
            turnsRatio.ifPresent(value -> positive(value, "ratio of turns"));
            tyreMetres.ifPresent(value -> positive(value, "diameter of a tyre"));
        }
    }

    /**
     * A current out of the signal terminal, taken from the supply.
     *
     * @param lowAmps      current at the lowest value, A, 0 or more
     * @param highAmps     current at the highest value, A, 0 or more; not that at the lowest
     * @param minimumVolts least voltage between supply and signal it works at, V, more than 0, if known
     */
    record CurrentLine(double lowAmps, double highAmps, OptionalDouble minimumVolts) implements Calibration {
        public CurrentLine {
            notNegative(lowAmps, "current at the lowest value");
            notNegative(highAmps, "current at the highest value");
            that(lowAmps != highAmps, "a line gives different currents at its ends, not %s A twice", lowAmps);
            minimumVolts.ifPresent(value -> positive(value, "least voltage of a current transmitter"));
        }
    }

    /**
     * A thermocouple between signal (positive leg) and return, by {@link ThermocoupleVolts}.
     *
     * @param type         its type
     * @param extension    what the wires from it to the unit are made of, if known
     * @param jointCelsius temperature where those wires begin, deg C; empty means the ambient of the sensor
     */
    record Thermocouple(Type type, Optional<Extension> extension, OptionalDouble jointCelsius) implements Calibration {

        /** Types by IEC 60584. */
        public enum Type {
            K
        }

        /** What the wires behind the thermocouple are made of. */
        public enum Extension {
            /** The thermocouple's own metals, or a compensating cable for the type. */
            MATCHING,
            /** Copper on both legs: the joint becomes the cold junction. */
            COPPER
        }

        public Thermocouple {
            jointCelsius.ifPresent(value -> within(value, -200, 400, "temperature of a joint"));
        }
    }
}
