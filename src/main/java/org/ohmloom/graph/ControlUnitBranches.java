package org.ohmloom.graph;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Driver;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.units.Formats;

/**
 * Branches of a control unit.
 *
 * <p>Inside, all supply pins are one rail, and so are all ground pins, all sensor return pins and all case pins; the
 * contacts outside keep the wires of those pins apart. The unit's own draw goes from the supply rail to the ground
 * rail. A high-side output joins its pin to the supply rail, a low-side output to the ground rail. The outputs of one unit share its
 * clock unless they state one.
 */
final class ControlUnitBranches {

    /** Resistance of an output that states none, ohm. Common practice, no source; noted as an assumption. */
    static final double FALLBACK_ON_OHMS = 0.05;

    private final DeviceDraft draft;
    private final ControlUnit unit;
    private final Optional<PointName> supply;
    private final Optional<PointName> ground;
    private final Optional<PointName> sensorReturn;
    private final Optional<PointName> casing;

    private ControlUnitBranches(DeviceDraft draft, ControlUnit unit) {
        this.draft = draft;
        this.unit = unit;
        this.supply = rail(PinRole.SUPPLY);
        this.ground = rail(PinRole.GROUND);
        this.sensorReturn = rail(PinRole.SENSOR_RETURN);
        this.casing = rail(PinRole.CASE);
    }

    static void unit(DeviceDraft draft, ControlUnit unit) {
        ControlUnitBranches branches = new ControlUnitBranches(draft, unit);
        branches.ownDraw();
        branches.insides();
        unit.pinsOf(PinRole.HIGH_SIDE_OUTPUT).forEach(branches::highSide);
        unit.pinsOf(PinRole.LOW_SIDE_OUTPUT).forEach(branches::lowSide);
        branches.capacitor();
        new ReferenceBranches(draft, unit, branches.supply, branches.ground, branches.sensorReturn).add();
    }

    /** Joins the pins of a role inside the unit; the first stands for all. */
    private Optional<PointName> rail(PinRole role) {
        List<PointName> pins =
                unit.pinsOf(role).map(pin -> draft.terminal(pin.name())).toList();
        pins.stream().skip(1).forEach(pin -> draft.network().join(pins.get(0), pin));
        return pins.stream().findFirst();
    }

    private void ownDraw() {
        if (unit.drawAmps() > 0 && supply.isPresent() && ground.isPresent()) {
            draft.network()
                    .branch(
                            draft.component().id().value(),
                            BranchKind.CONTROL_UNIT,
                            supply.get(),
                            ground.get(),
                            draft.component().id(),
                            new Law.ConstantCurrent(unit.drawAmps()));
        } else if (unit.drawAmps() > 0) {
            draft.assume(
                    NetworkTexts.text(
                            "assumed.no-unit-supply", draft.component().id()),
                    "the harness");
        }
    }

    private void insides() {
        unit.groundToSensorReturnOhms()
                .ifPresent(ohms -> inside("ground~sensor-return", ground, sensorReturn, new Law.Resistance(ohms)));
        unit.groundToCaseOhms().ifPresent(ohms -> inside("ground~case", ground, casing, new Law.Resistance(ohms)));
    }

    private void inside(String part, Optional<PointName> from, Optional<PointName> to, Law law) {
        if (from.isPresent() && to.isPresent()) {
            draft.branch(part, BranchKind.INTERNAL, from.get(), to.get(), law);
        }
    }

    private void highSide(Pin pin) {
        supply.ifPresent(rail -> output(pin, rail, draft.terminal(pin.name())));
    }

    private void lowSide(Pin pin) {
        ground.ifPresent(rail -> output(pin, draft.terminal(pin.name()), rail));
    }

    private void output(Pin pin, PointName in, PointName out) {
        OutputPin output = new OutputPin(draft.component().id(), pin.name());
        DriverBranches driver = new DriverBranches(
                draft,
                output.toString(),
                Optional.of(pin.name()),
                pin.driver(),
                draft.component().id().value());
        Law law =
                driver.law(draft.network().state().setting(output), pin.onOhms().orElse(FALLBACK_ON_OHMS));
        if (pin.onOhms().isEmpty() && !(law instanceof Law.Open)) {
            draft.assume(
                    NetworkTexts.text("assumed.no-on-ohms", output, Formats.ohms(FALLBACK_ON_OHMS)),
                    Assumption.COMMON_PRACTICE);
        }
        draft.branch(pin.name(), BranchKind.OUTPUT_PIN, in, out, law);
        driver.add(in, out, supply, ground, draft.terminal(pin.name()));
    }

    private void capacitor() {
        List<Driver> drivers = Stream.of(PinRole.HIGH_SIDE_OUTPUT, PinRole.LOW_SIDE_OUTPUT)
                .flatMap(unit::pinsOf)
                .flatMap(pin -> pin.driver().stream())
                .toList();
        DriverBranches.capacitor(draft, "supply~capacitor", drivers, supply, ground);
    }
}
