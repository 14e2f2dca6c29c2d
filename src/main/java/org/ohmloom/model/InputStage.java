package org.ohmloom.model;

import static org.ohmloom.units.Require.finite;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;
import static org.ohmloom.units.Require.within;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How an input of a control unit reads. What is left out is not known and not checked.
 *
 * @param inputOhms    resistance from the pin to the unit's sensor return, ohm, more than 0, the shunt not counted
 * @param filterHertz  corner frequency of its first-order filter, Hz, more than 0
 * @param risingVolts  voltage it reads as high from, V
 * @param fallingVolts voltage it reads as low from, V, at most {@code risingVolts}
 * @param scale        what its converter compares the voltage with
 * @param shuntOhms    resistance a current input turns the current into a voltage with, ohm, more than 0
 * @param coldJunction whether a thermocouple input adds the voltage of its own terminals
 * @param converterBits bits of its converter, 1 to 32
 */
public record InputStage(
        OptionalDouble inputOhms,
        OptionalDouble filterHertz,
        OptionalDouble risingVolts,
        OptionalDouble fallingVolts,
        Optional<Scale> scale,
        OptionalDouble shuntOhms,
        Optional<ColdJunction> coldJunction,
        Optional<Integer> converterBits) {

    /** What a converter compares a voltage with. */
    public enum Scale {
        /** The unit's reference supply as it is: what the supply does cancels. */
        RATIOMETRIC,
        /** A voltage of its own. */
        FIXED
    }

    /** Whether the temperature of a thermocouple input's terminals is reckoned with. */
    public enum ColdJunction {
        /** It is measured there and added. */
        MEASURED,
        /** It is not: the reading is the difference to the terminals. */
        NONE
    }

    /** Nothing known. */
    public static final InputStage UNKNOWN = new InputStage(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty());

    public InputStage {
        inputOhms.ifPresent(value -> positive(value, "input resistance"));
        filterHertz.ifPresent(value -> positive(value, "corner frequency of an input"));
        risingVolts.ifPresent(value -> finite(value, "rising threshold"));
        fallingVolts.ifPresent(value -> finite(value, "falling threshold"));
        if (risingVolts.isPresent() && fallingVolts.isPresent()) {
            that(
                    fallingVolts.getAsDouble() <= risingVolts.getAsDouble(),
                    "the falling threshold is at most %s V, not %s V",
                    risingVolts.getAsDouble(),
                    fallingVolts.getAsDouble());
        }
        shuntOhms.ifPresent(value -> positive(value, "shunt of an input"));
        converterBits.ifPresent(value -> within(value, 1, 32, "bits of a converter"));
    }

    /** An input whose converter is not known. */
    public InputStage(
            OptionalDouble inputOhms,
            OptionalDouble filterHertz,
            OptionalDouble risingVolts,
            OptionalDouble fallingVolts,
            Optional<Scale> scale,
            OptionalDouble shuntOhms,
            Optional<ColdJunction> coldJunction) {
        this(inputOhms, filterHertz, risingVolts, fallingVolts, scale, shuntOhms, coldJunction, Optional.empty());
    }

    /** This input with another resistance, ohm; empty when not known. */
    public InputStage withInputOhms(OptionalDouble changed) {
        return new InputStage(
                changed, filterHertz, risingVolts, fallingVolts, scale, shuntOhms, coldJunction, converterBits);
    }

    /** This input with another corner frequency, Hz; empty when not known. */
    public InputStage withFilterHertz(OptionalDouble changed) {
        return new InputStage(
                inputOhms, changed, risingVolts, fallingVolts, scale, shuntOhms, coldJunction, converterBits);
    }

    /** This input with other thresholds, V; empty when not known. */
    public InputStage withThresholds(OptionalDouble rising, OptionalDouble falling) {
        return new InputStage(inputOhms, filterHertz, rising, falling, scale, shuntOhms, coldJunction, converterBits);
    }

    /** This input with another scale; empty when not known. */
    public InputStage withScale(Optional<Scale> changed) {
        return new InputStage(
                inputOhms, filterHertz, risingVolts, fallingVolts, changed, shuntOhms, coldJunction, converterBits);
    }

    /** This input with another shunt, ohm; empty for none. */
    public InputStage withShuntOhms(OptionalDouble changed) {
        return new InputStage(
                inputOhms, filterHertz, risingVolts, fallingVolts, scale, changed, coldJunction, converterBits);
    }

    /** This input with a converter of so many bits; empty when not known. */
    public InputStage withConverterBits(Optional<Integer> changed) {
        return new InputStage(
                inputOhms, filterHertz, risingVolts, fallingVolts, scale, shuntOhms, coldJunction, changed);
    }
}
