package org.ohmloom.ground.sensor;

import java.util.Optional;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * What disturbs a reading, as the solved network has it or as it would ideally be.
 *
 * @param referenceVolts   the unit's reference supply between its pin and the sensor return, V; NaN without one
 * @param supplyVolts      V(sensor's supply) - V(unit's sensor return), V; NaN without one
 * @param ownReturnVolts   V(sensor's return) - V(unit's sensor return) by the sensor's own supply current, V
 * @param otherReturnVolts the same by everything else, V
 * @param leadOhms         resistance of the signal wire with its contacts, ohm; of a current loop its feed too
 * @param returnOhms       resistance between the sensor's return and the unit's sensor return, ohm
 * @param inputSiemens     conductance of the input to the sensor return, S; 0 where it is not known
 * @param heated           whether the sensor warms itself
 * @param jointCelsius     temperature where the wires behind a thermocouple begin, deg C
 * @param coldJunction     whether the voltage of the terminals of a thermocouple input is added
 */
record Conditions(
        double referenceVolts,
        double supplyVolts,
        double ownReturnVolts,
        double otherReturnVolts,
        double leadOhms,
        double returnOhms,
        double inputSiemens,
        boolean heated,
        double jointCelsius,
        boolean coldJunction) {

    /** V(sensor's return) - V(unit's sensor return) without the signal's own current, V. */
    double returnVolts() {
        return ownReturnVolts + otherReturnVolts;
    }

    /** How wires and input came between these and the conditions before; empty for what is no matter of theirs. */
    Optional<Text> wiring(Disturbance disturbance, Conditions before) {
        return switch (disturbance) {
            case OWN_RETURN, OTHER_RETURN -> Optional.of(
                    ReadingTexts.text("formula.in-return", Formats.volts(returnVolts() - before.returnVolts())));
            case LEADS -> Optional.of(
                    ReadingTexts.text("formula.in-series", Formats.ohms(leadOhms), Formats.ohms(returnOhms)));
            case LOAD -> Optional.of(ReadingTexts.text("formula.across-input", Formats.ohms(1 / inputSiemens)));
            default -> Optional.empty();
        };
    }

    Conditions withReference(double reference, double supply) {
        return new Conditions(
                reference,
                supply,
                ownReturnVolts,
                otherReturnVolts,
                leadOhms,
                returnOhms,
                inputSiemens,
                heated,
                jointCelsius,
                coldJunction);
    }

    Conditions withOwnReturnVolts(double changed) {
        return new Conditions(
                referenceVolts,
                supplyVolts,
                changed,
                otherReturnVolts,
                leadOhms,
                returnOhms,
                inputSiemens,
                heated,
                jointCelsius,
                coldJunction);
    }

    Conditions withOtherReturnVolts(double changed) {
        return new Conditions(
                referenceVolts,
                supplyVolts,
                ownReturnVolts,
                changed,
                leadOhms,
                returnOhms,
                inputSiemens,
                heated,
                jointCelsius,
                coldJunction);
    }

    Conditions withLeads(double lead, double back) {
        return new Conditions(
                referenceVolts,
                supplyVolts,
                ownReturnVolts,
                otherReturnVolts,
                lead,
                back,
                inputSiemens,
                heated,
                jointCelsius,
                coldJunction);
    }

    Conditions withInputSiemens(double changed) {
        return new Conditions(
                referenceVolts,
                supplyVolts,
                ownReturnVolts,
                otherReturnVolts,
                leadOhms,
                returnOhms,
                changed,
                heated,
                jointCelsius,
                coldJunction);
    }

    Conditions withHeat(boolean changed) {
        return new Conditions(
                referenceVolts,
                supplyVolts,
                ownReturnVolts,
                otherReturnVolts,
                leadOhms,
                returnOhms,
                inputSiemens,
                changed,
                jointCelsius,
                coldJunction);
    }

    Conditions withJoints(double joint, boolean added) {
        return new Conditions(
                referenceVolts,
                supplyVolts,
                ownReturnVolts,
                otherReturnVolts,
                leadOhms,
                returnOhms,
                inputSiemens,
                heated,
                joint,
                added);
    }
}
