package org.ohmloom.solve.envelope;

import java.util.Collection;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Setting;
import org.ohmloom.model.Switch;

/**
 * How each control is set in a combination: on, at the largest duty any of some states sets it to.
 *
 * @param byControl setting of each control that is on in some of the states
 */
record Settings(SortedMap<Control, Setting> byControl) {
    Settings {
        byControl = Collections.unmodifiableSortedMap(new TreeMap<>(byControl));
    }

    /** The settings of some states. */
    static Settings of(Harness harness, Collection<OperatingState> states) {
        SortedMap<Control, Setting> settings = new TreeMap<>();
        for (OperatingState state : states) {
            state.components().forEach((component, setting) -> {
                if (setting.on()) {
                    settings.merge(control(harness, component, setting), setting, Settings::longer);
                }
            });
            state.outputs().forEach((output, setting) -> {
                if (setting.on()) {
                    settings.merge(control(output), setting, Settings::longer);
                }
            });
        }
        return new Settings(settings);
    }

    private static Control control(OutputPin output) {
        return new Control(output.unit(), output.pin(), true);
    }

    /** The control a component's setting stands for: of a switch its position, of anything else the component itself. */
    private static Control control(Harness harness, ComponentId component, Setting setting) {
        return harness.components()
                .find(component)
                .filter(found -> found.device() instanceof Switch)
                .map(found -> new Control(
                        component,
                        setting.position()
                                .orElse(((Switch) found.device()).positions().get(0)),
                        false))
                .orElse(Control.command(component));
    }

    private static Setting longer(Setting one, Setting other) {
        return other.dutyFraction() > one.dutyFraction() ? other : one;
    }

    /** The setting of a control; on all the time where no state sets it. */
    Setting of(Control control) {
        return byControl.getOrDefault(
                control, control.isPin() || control.part().isEmpty() ? Setting.ON : Setting.at(control.part()));
    }
}
