package org.ohmloom.graph;

import java.util.Optional;
import org.ohmloom.model.BatteryIsolator;
import org.ohmloom.model.Diode;
import org.ohmloom.model.Driver;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;

/** Branches of what lets current through or not: switches, relays, electronic switches and diodes. */
final class SwitchingBranches {

    private SwitchingBranches() {}

    /** One branch for each position; the chosen one is closed, at its duty, the others are open. */
    static void handSwitch(DeviceDraft draft, Switch device) {
        String id = draft.component().id().value();
        String chosen = draft.setting()
                .flatMap(Setting::position)
                .orElse(device.positions().get(0));
        if (!device.positions().contains(chosen)) {
            draft.assume(
                    NetworkTexts.text(
                            "assumed.no-position",
                            draft.component().id(),
                            chosen,
                            String.join(", ", device.positions())),
                    "the harness");
        }
        for (String position : device.positions()) {
            draft.branch(
                    Switch.COMMON + "-" + position,
                    BranchKind.SWITCH,
                    Switch.COMMON,
                    position,
                    position.equals(chosen)
                            ? new DriverBranches(draft, id, Optional.of(position), Optional.empty(), id)
                                    .law(draft.setting(), device.contactOhms())
                            : new Law.Open());
        }
    }

    /** Its clock is its own unless it states one; which rail its terminal {@code fw} is the freewheel diode decides. */
    static void solidState(DeviceDraft draft, SolidStateOutput device) {
        String id = draft.component().id().value();
        PointName in = draft.terminal(SolidStateOutput.IN);
        PointName out = draft.terminal(SolidStateOutput.OUT);
        DriverBranches driver = new DriverBranches(draft, id, Optional.empty(), device.driver(), id);
        draft.branch(
                BranchKind.SOLID_STATE_OUTPUT,
                SolidStateOutput.IN,
                SolidStateOutput.OUT,
                driver.law(draft.setting(), device.onOhms()));
        Optional<PointName> rail = Optional.of(SolidStateOutput.FREEWHEEL)
                .filter(each -> device.hasFreewheelTerminal())
                .map(draft::terminal);
        boolean lowSide = device.driver()
                .filter(each -> each.freewheel() == Driver.Freewheel.DRIVER_SUPPLY)
                .isPresent();
        Optional<PointName> supply = lowSide ? rail : Optional.of(in);
        Optional<PointName> ground = lowSide ? Optional.of(out) : rail;
        driver.add(in, out, supply, ground, lowSide ? in : out);
        DriverBranches.capacitor(draft, "capacitor", device.driver().stream().toList(), supply, ground);
    }

    /** The coil is a resistance from 86, its positive end by DIN 72552, to 85; the contacts follow its voltage. */
    static void relay(DeviceDraft draft, Relay relay) {
        draft.branch("coil", BranchKind.RELAY_COIL, Relay.COIL_B, Relay.COIL_A, new Law.Resistance(relay.coilOhms()));
        contact(draft, relay, Relay.MAKE, false);
        if (relay.changeOver()) {
            contact(draft, relay, Relay.BREAK, true);
        }
    }

    private static void contact(DeviceDraft draft, Relay relay, String terminal, boolean closedAtRest) {
        draft.branch(
                Relay.COMMON + "-" + terminal,
                BranchKind.RELAY_CONTACT,
                Relay.COMMON,
                terminal,
                new Law.CoilOperated(
                        new BranchId(draft.name("coil")),
                        relay.pullInVolts(),
                        relay.dropOutVolts(),
                        relay.contactOhms(),
                        closedAtRest));
    }

    static void diode(DeviceDraft draft, Diode diode) {
        draft.branch(
                BranchKind.DIODE,
                Diode.ANODE,
                Diode.CATHODE,
                new Law.Threshold(diode.forwardVolts(), diode.forwardOhms()));
    }

    static void isolator(DeviceDraft draft, BatteryIsolator isolator) {
        for (String output : isolator.outputTerminals()) {
            draft.branch(
                    BatteryIsolator.IN + "-" + output,
                    BranchKind.DIODE,
                    BatteryIsolator.IN,
                    output,
                    new Law.Threshold(isolator.forwardVolts(), isolator.forwardOhms()));
        }
    }
}
