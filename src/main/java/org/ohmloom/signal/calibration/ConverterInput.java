package org.ohmloom.signal.calibration;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.ohmloom.model.InputRange;
import org.ohmloom.model.InputStage;
import org.ohmloom.model.Pin;

/**
 * What an input makes of a sensor's signal: the voltage at the pin, and the step its converter tells it in.
 *
 * @param pullUpVolts    voltage of its pull-up, V, if it has one
 * @param pullUpOhms     resistance of its pull-up, ohm, if it has one
 * @param shuntOhms      resistance a current becomes a voltage over, ohm, if it has one
 * @param ratiometric    whether its converter goes by the reference supply; empty where that is not entered
 * @param lowestVolts    lowest voltage it converts, V
 * @param highestVolts   highest voltage it converts, V; empty where not known
 * @param lowestHertz    lowest frequency it counts, Hz, if limited
 * @param highestHertz   highest frequency it counts, Hz, if limited
 * @param converterBits  bits of its converter, if entered
 */
public record ConverterInput(
        OptionalDouble pullUpVolts,
        OptionalDouble pullUpOhms,
        OptionalDouble shuntOhms,
        Optional<Boolean> ratiometric,
        double lowestVolts,
        OptionalDouble highestVolts,
        OptionalDouble lowestHertz,
        OptionalDouble highestHertz,
        OptionalInt converterBits) {

    /**
     * The input of a pin. Where no range is entered it is that of the pull-up, else that of the reference supply a ratiometric
     * converter goes by.
     *
     * @param pin            the pin
     * @param referenceVolts reference supply of its unit, V, if it has one
     */
    public static ConverterInput of(Pin pin, OptionalDouble referenceVolts) {
        InputStage stage = pin.input().orElse(InputStage.UNKNOWN);
        Optional<Boolean> ratiometric = stage.scale().map(scale -> scale == InputStage.Scale.RATIOMETRIC);
        OptionalDouble full = pin.pullUpOhms().isPresent()
                ? pin.pullUpVolts()
                : ratiometric.orElse(false) ? referenceVolts : OptionalDouble.empty();
        Optional<InputRange> range = pin.range();
        OptionalDouble highest = range.map(InputRange::highestVolts).orElse(OptionalDouble.empty());
        return new ConverterInput(
                pin.pullUpOhms().isPresent() ? pin.pullUpVolts() : OptionalDouble.empty(),
                pin.pullUpVolts().isPresent() ? pin.pullUpOhms() : OptionalDouble.empty(),
                stage.shuntOhms(),
                ratiometric,
                range.map(InputRange::lowestVolts)
                        .orElse(OptionalDouble.empty())
                        .orElse(0),
                highest.isPresent() ? highest : full,
                range.map(InputRange::lowestHertz).orElse(OptionalDouble.empty()),
                range.map(InputRange::highestHertz).orElse(OptionalDouble.empty()),
                stage.converterBits().map(OptionalInt::of).orElse(OptionalInt.empty()));
    }

    /** Step of the converter, V: its range over 2 to the power of its bits (textbook); empty where one is not known. */
    public OptionalDouble stepVolts() {
        return converterBits.isPresent() && highestVolts.isPresent()
                ? OptionalDouble.of((highestVolts.getAsDouble() - lowestVolts) / Math.pow(2, converterBits.getAsInt()))
                : OptionalDouble.empty();
    }

    /**
     * Voltage at the pin for what a sensor gives, V: a resistance R under a pull-up Rp to Vp is Vp R / (R + Rp), a current over a shunt
     * their product (textbook). Empty for a frequency, and where pull-up or shunt is not entered.
     */
    public OptionalDouble pinVolts(SignalKind kind, double signal) {
        return switch (kind) {
            case VOLTAGE, SHARE_OF_SUPPLY -> OptionalDouble.of(signal);
            case RESISTANCE -> pullUpVolts.isPresent() && pullUpOhms.isPresent()
                    ? OptionalDouble.of(pullUpVolts.getAsDouble() * signal / (signal + pullUpOhms.getAsDouble()))
                    : OptionalDouble.empty();
            case CURRENT -> shuntOhms.isPresent()
                    ? OptionalDouble.of(signal * shuntOhms.getAsDouble())
                    : OptionalDouble.empty();
            case FREQUENCY -> OptionalDouble.empty();
        };
    }

    /** What the sensor gives for a voltage at the pin; empty as for {@link #pinVolts}, and at or beyond the pull-up's voltage. */
    public OptionalDouble signal(SignalKind kind, double pinVolts) {
        return switch (kind) {
            case VOLTAGE, SHARE_OF_SUPPLY -> OptionalDouble.of(pinVolts);
            case RESISTANCE -> pullUpVolts.isPresent() && pullUpOhms.isPresent() && pinVolts < pullUpVolts.getAsDouble()
                    ? OptionalDouble.of(pullUpOhms.getAsDouble() * pinVolts / (pullUpVolts.getAsDouble() - pinVolts))
                    : OptionalDouble.empty();
            case CURRENT -> shuntOhms.isPresent()
                    ? OptionalDouble.of(pinVolts / shuntOhms.getAsDouble())
                    : OptionalDouble.empty();
            case FREQUENCY -> OptionalDouble.empty();
        };
    }
}
