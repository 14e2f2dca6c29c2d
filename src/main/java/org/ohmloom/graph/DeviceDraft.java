package org.ohmloom.graph;

import java.util.Optional;
import java.util.function.DoubleFunction;
import org.ohmloom.model.Component;
import org.ohmloom.model.Setting;

/**
 * One component while its branches are drafted.
 *
 * @param network   where the branches go
 * @param component the component
 */
record DeviceDraft(NetworkDraft network, Component component) {

    /** Frequency of an output that states none, Hz. Common practice, no source; noted as an assumption. */
    static final double FALLBACK_HERTZ = 100;

    /** Frequency of a load that switches itself and states no period, Hz: once a minute. Common practice, no source. */
    static final double FALLBACK_CYCLE_HERTZ = 1.0 / 60;

    /** How the operating state sets the component. */
    Optional<Setting> setting() {
        return network.state().setting(component.id());
    }

    PointName terminal(String name) {
        return PointName.terminal(component.id(), name);
    }

    /** The component's only branch, which has its identity. */
    void branch(BranchKind kind, String from, String to, Law law) {
        network.branch(component.id().value(), kind, terminal(from), terminal(to), component.id(), law);
    }

    /** One of several branches; {@code part} follows the component's identity. */
    void branch(String part, BranchKind kind, String from, String to, Law law) {
        branch(part, kind, terminal(from), terminal(to), law);
    }

    void branch(String part, BranchKind kind, PointName from, PointName to, Law law) {
        network.branch(name(part), kind, from, to, component.id(), law);
    }

    /** Text of the identity of a part's branch. */
    String name(String part) {
        return component.id() + "." + part;
    }

    void assume(String text, String source) {
        network.assume(component.id(), text, source);
    }

    /**
     * A resistance the operating state switches: open, closed, or closed for a share of the time.
     *
     * @param setting how the state sets it
     * @param onOhms  resistance while closed, ohm
     * @param pulse   when it is closed at a duty
     */
    static Law switched(Optional<Setting> setting, double onOhms, DoubleFunction<Pulse> pulse) {
        if (!setting.map(Setting::on).orElse(false)) {
            return new Law.Open();
        }
        double dutyFraction = setting.get().dutyFraction();
        return dutyFraction < 1
                ? new Law.SwitchedResistance(onOhms, pulse.apply(dutyFraction))
                : new Law.Resistance(onOhms);
    }

    /** On a clock of the component's own, its period starting with the on-time. */
    Pulse ownClock(double frequencyHertz, double dutyFraction) {
        return new Pulse(component.id().value(), frequencyHertz, 0, dutyFraction);
    }
}
