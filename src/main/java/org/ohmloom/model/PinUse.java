package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a pin of a control unit works when it is set up for one of its roles, where that is not how it works now.
 *
 * @param role           the role
 * @param limitAmps      as {@link Pin#limitAmps()}, A, more than 0
 * @param onOhms         as {@link Pin#onOhms()}, ohm, more than 0
 * @param referenceVolts as {@link Pin#referenceVolts()}, V, more than 0
 * @param pullUpVolts    as {@link Pin#pullUpVolts()}, V, more than 0
 * @param pullUpOhms     as {@link Pin#pullUpOhms()}, ohm, more than 0
 * @param driver         how it switches, if known
 * @param input          how it reads, if known
 * @param range          what it can tell apart, if known
 */
public record PinUse(
        PinRole role,
        OptionalDouble limitAmps,
        OptionalDouble onOhms,
        OptionalDouble referenceVolts,
        OptionalDouble pullUpVolts,
        OptionalDouble pullUpOhms,
        Optional<Driver> driver,
        Optional<InputStage> input,
        Optional<InputRange> range) {

    public PinUse {
        limitAmps.ifPresent(value -> positive(value, "current limit of a pin"));
        onOhms.ifPresent(value -> positive(value, "on-state resistance of a pin"));
        referenceVolts.ifPresent(value -> positive(value, "reference voltage of a pin"));
        pullUpVolts.ifPresent(value -> positive(value, "pull-up voltage of a pin"));
        pullUpOhms.ifPresent(value -> positive(value, "pull-up resistance of a pin"));
    }

    /** How a pin works now. */
    public static PinUse now(Pin pin) {
        return new PinUse(
                pin.role(),
                pin.limitAmps(),
                pin.onOhms(),
                pin.referenceVolts(),
                pin.pullUpVolts(),
                pin.pullUpOhms(),
                pin.driver(),
                pin.input(),
                pin.range());
    }

    /** This in another role. */
    PinUse as(PinRole changed) {
        return new PinUse(changed, limitAmps, onOhms, referenceVolts, pullUpVolts, pullUpOhms, driver, input, range);
    }
}
