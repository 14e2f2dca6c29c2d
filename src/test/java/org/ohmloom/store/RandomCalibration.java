package org.ohmloom.store;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Measurement;

/**
 * A calibration of any kind, for harnesses made at random.
 *
 * @param random decides
 * @param value  makes numbers of more than 0
 * @param number makes such numbers, or none
 */
record RandomCalibration(Random random, DoubleSupplier value, Supplier<OptionalDouble> number) {

    /** Any of the kinds. */
    Calibration next() {
        List<Calibration> kinds = List.of(
                new Calibration.RatiometricLine(0.1, random.nextInt(2) * 0.9, number.get()),
                new Calibration.VoltageLine(-0.5, value.getAsDouble(), OptionalDouble.of(zeroOr())),
                new Calibration.Beta(value.getAsDouble(), 25, 3435),
                new Calibration.SteinhartHart(8.785e-4, 2.53e-4, zeroOr()),
                new Calibration.ResistanceTable(List.of(
                        new Calibration.ResistancePoint(-40, 45000),
                        new Calibration.ResistancePoint(20, 2500.5),
                        new Calibration.ResistancePoint(120, 0))),
                new Calibration.SwitchContact(
                        0.05, random.nextBoolean() ? OptionalDouble.of(1e6) : OptionalDouble.empty()),
                new Calibration.PulseLevels(
                        0.4,
                        random.nextBoolean() ? OptionalDouble.of(4.8) : OptionalDouble.empty(),
                        number.get(),
                        random.nextBoolean() ? number.get() : OptionalDouble.empty()),
                new Calibration.PulseLevels(
                        0.4,
                        OptionalDouble.empty(),
                        number.get(),
                        OptionalDouble.empty(),
                        Optional.of(new Calibration.Turns(value.getAsDouble(), number.get(), number.get()))),
                new Calibration.VoltageTable(
                        List.of(
                                new Calibration.VoltagePoint(-5, 4.5),
                                new Calibration.VoltagePoint(10, value.getAsDouble() / 1e9)),
                        number.get(),
                        OptionalDouble.of(zeroOr())),
                new Calibration.AmplifiedThermocouple(
                        Calibration.Thermocouple.Type.K, value.getAsDouble(), -0.25, number.get()),
                new Calibration.CurrentLine(0.004, 0.02, number.get()),
                new Calibration.Thermocouple(
                        Calibration.Thermocouple.Type.K,
                        random.nextBoolean()
                                ? Optional.of(
                                        Calibration.Thermocouple.Extension.values()[
                                                random.nextInt(Calibration.Thermocouple.Extension.values().length)])
                                : Optional.empty(),
                        random.nextBoolean() ? OptionalDouble.of(-20) : OptionalDouble.empty()));
        return kinds.get(random.nextInt(kinds.size()));
    }

    /** Whether its values are temperatures. */
    static boolean isTemperature(Calibration calibration) {
        return calibration instanceof Calibration.Beta
                || calibration instanceof Calibration.SteinhartHart
                || calibration instanceof Calibration.Thermocouple
                || calibration instanceof Calibration.AmplifiedThermocouple;
    }

    /** What a sensor meets in use, from some value on. */
    Measurement.Use use(double lowest) {
        return new Measurement.Use(
                random.nextBoolean() ? OptionalDouble.of(lowest) : OptionalDouble.empty(),
                random.nextBoolean() ? OptionalDouble.of(lowest + 0.5) : OptionalDouble.empty(),
                number.get(),
                number.get(),
                number.get());
    }

    private double zeroOr() {
        return random.nextInt(3) == 0 ? 0 : value.getAsDouble();
    }
}
