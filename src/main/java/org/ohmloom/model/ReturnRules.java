package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;
import static org.ohmloom.units.Require.within;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a person asks of the return paths.
 *
 * @param sensorErrorFraction error allowed to a sensor that states none, as a share of its span, more than 0, at most 1; empty
 *                            means {@link #SENSOR_ERROR_FRACTION}
 * @param unitGroundVolts     most voltage between the ground of a control unit and the negative terminal of the first source,
 *                            V, more than 0; empty means {@link #UNIT_GROUND_VOLTS}
 * @param groundVolts         the same at any other ground, V, more than 0; empty means {@link #GROUND_VOLTS}
 * @param fieldTesla          flux density of an alternating field that passes every loop at right angles, T RMS, 0 or more
 * @param fieldHertz          frequency of that field, Hz, more than 0
 * @param heightMetres        height of bundles above the chassis, m, more than 0: for inductances and coupling
 * @param couplingFraction    share of a sensor's allowed error that coupling along a bundle may take, more than 0, at most 1;
 *                            empty means {@link #COUPLING_FRACTION}
 * @param intended            returns that lie side by side on purpose
 */
public record ReturnRules(
        OptionalDouble sensorErrorFraction,
        OptionalDouble unitGroundVolts,
        OptionalDouble groundVolts,
        OptionalDouble fieldTesla,
        OptionalDouble fieldHertz,
        OptionalDouble heightMetres,
        OptionalDouble couplingFraction,
        List<IntendedParallel> intended) {

    /** 1 % of span: common practice, no source. */
    public static final double SENSOR_ERROR_FRACTION = 0.01;

    /** 0.05 V: workshop practice for control-unit grounds (a service magazine's ground circuit series, part 12, 2019). */
    public static final double UNIT_GROUND_VOLTS = 0.05;

    /** 0.10 V: workshop practice for other grounds (the same). */
    public static final double GROUND_VOLTS = 0.10;

    /** A quarter: common practice, no source. */
    public static final double COUPLING_FRACTION = 0.25;

    /**
     * Returns that lie side by side on purpose: a loop of which every wire and strap is named here is intended.
     *
     * @param wires  wires of the loop
     * @param straps bonding straps of the loop
     * @param reason why
     */
    public record IntendedParallel(List<WireId> wires, List<StrapId> straps, String reason) {
        public IntendedParallel {
            wires = List.copyOf(wires);
            straps = List.copyOf(straps);
            notBlank(reason, "reason why returns lie side by side");
            that(wires.size() + straps.size() >= 2, "returns side by side are at least two, not %s", wires);
        }
    }

    /** Nothing asked. */
    public static final ReturnRules NONE = new ReturnRules(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of());

    public ReturnRules {
        sensorErrorFraction.ifPresent(value -> within(value, Double.MIN_NORMAL, 1, "allowed sensor error"));
        unitGroundVolts.ifPresent(value -> positive(value, "allowed offset of a control unit's ground"));
        groundVolts.ifPresent(value -> positive(value, "allowed offset of a ground"));
        fieldTesla.ifPresent(value -> within(value, 0, 10, "flux density"));
        fieldHertz.ifPresent(value -> positive(value, "frequency of the field"));
        heightMetres.ifPresent(value -> positive(value, "height above the chassis"));
        couplingFraction.ifPresent(value -> within(value, Double.MIN_NORMAL, 1, "share for coupling"));
        intended = List.copyOf(intended);
    }

    /** Error allowed to a sensor that states none, as a share of its span. */
    public double sensorErrorShare() {
        return sensorErrorFraction.orElse(SENSOR_ERROR_FRACTION);
    }

    /** Most offset of a control unit's ground, V. */
    public double unitGroundLimitVolts() {
        return unitGroundVolts.orElse(UNIT_GROUND_VOLTS);
    }

    /** Most offset of any other ground, V. */
    public double groundLimitVolts() {
        return groundVolts.orElse(GROUND_VOLTS);
    }

    /** Share of the allowed error that coupling may take. */
    public double couplingShare() {
        return couplingFraction.orElse(COUPLING_FRACTION);
    }
}
