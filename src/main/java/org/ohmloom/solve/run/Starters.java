package org.ohmloom.solve.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.Assumption;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Inrush;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Setting;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Finds what can start in a state: motors, filament lamps, loads that state an inrush, control units that state an input
 * capacitor, each where it draws in that state. Control units are on before the engine is cranked, so they do not start in
 * a cranking state.
 */
final class Starters {

    /** Current above which a load counts as on, A. */
    private static final double ON_AMPS = 1e-6;

    /** Voltage above which a control unit counts as supplied, V. */
    private static final double FED_VOLTS = 1;

    /** A peak that is not above the running current by this is none. */
    private static final double PEAK_RATIO = 1.05;

    /** Placeholder for the resistance of a branch whose law is set before every solution, ohm. */
    private static final double ANY_OHMS = 1;

    private final Harness harness;
    private final OperatingState state;
    private final Solution solution;
    private final Network moment;
    private final StartDefaults defaults;
    private final List<Starter> found = new ArrayList<>();
    private final List<Branch> extra = new ArrayList<>();
    private final List<Assumption> assumptions = new ArrayList<>();

    Starters(Harness harness, OperatingState state, Solution solution, StartDefaults defaults) {
        this.harness = harness;
        this.state = state;
        this.solution = solution;
        this.defaults = defaults;
        moment = MomentNetwork.of(solution, harness);
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Load load) {
                branch(component, BranchKind.LOAD)
                        .filter(this::draws)
                        .ifPresent(branch -> load(component, load, branch));
            } else if (component.device() instanceof ControlUnit unit
                    && unit.inputFarads().isPresent()
                    && state.mode() != OperatingState.EngineMode.CRANKING) {
                unit(component, unit);
            }
        }
    }

    /** What can start, in the order of ids. */
    List<Starter> found() {
        return found;
    }

    /** What was taken for granted. */
    List<Assumption> assumptions() {
        return assumptions;
    }

    /** The network at its worst instant with a branch beside each load that has a peak. */
    Network network() {
        SortedMap<BranchId, Branch> branches = new TreeMap<>(moment.branches());
        extra.forEach(branch -> branches.put(branch.id(), branch));
        SortedSet<PointId> points = new TreeSet<>(moment.points());
        return new Network(moment.state(), points, branches, moment.datum(), moment.index(), moment.assumptions());
    }

    private Optional<Branch> branch(Component component, BranchKind kind) {
        return moment.of(component.id()).stream()
                .filter(branch -> branch.kind() == kind)
                .findFirst();
    }

    private boolean draws(Branch branch) {
        return Math.abs(solution.flow(branch.id()).orElseThrow().onAmps()) > ON_AMPS;
    }

    private void load(Component component, Load load, Branch branch) {
        Optional<Setting> setting = state.setting(component.id()).filter(Setting::on);
        boolean held = setting.filter(Setting::starting).isPresent();
        if (load.draw() instanceof Draw.MagnetMotor motor) {
            double ownShare = setting.map(Setting::dutyFraction).orElse(1.0);
            boolean commanded = ownShare < 1;
            double duty = commanded ? ownShare : MomentNetwork.dutyFraction(solution, branch);
            add(component, branch, new RunningUp(branch.id(), motor, duty, commanded), held, !held);
            return;
        }
        double rated = load.draw().ratedAmps();
        Optional<Inrush> peak = peak(component, load);
        Law running = held ? new Law.ConstantCurrent(rated) : branch.law();
        if (peak.isPresent() && peak.get().peakAmps() > PEAK_RATIO * rated) {
            Branch cold = beside(component.id() + "~cold", branch);
            Fading fading = new Fading(
                    branch.id(),
                    cold.id(),
                    running,
                    load.draw().ratedVolts(),
                    peak.get().peakAmps(),
                    peak.get().decaySeconds());
            add(component, branch, fading, true, false);
        }
    }

    private Optional<Inrush> peak(Component component, Load load) {
        if (load.draw() instanceof Draw.Motor motor) {
            double peakAmps = Math.max(
                    motor.startAmps(), load.inrush().map(Inrush::peakAmps).orElse(0.0));
            if (load.inrush().isEmpty() && motor.startAmps() > PEAK_RATIO * motor.ratedAmps()) {
                assume(
                        component,
                        SolveTexts.text(
                                "start.motor-time", component.id(), Formats.seconds(defaults.motorDecaySeconds())),
                        Assumption.COMMON_PRACTICE);
            }
            return Optional.of(
                    new Inrush(peakAmps, load.inrush().map(Inrush::decaySeconds).orElse(defaults.motorDecaySeconds())));
        }
        if (load.draw() instanceof Draw.Lamp lamp && load.inrush().isEmpty()) {
            double ratio = defaults.lampPeakRatio().value();
            assume(
                    component,
                    SolveTexts.text(
                            "start.lamp-inrush",
                            component.id(),
                            Formats.number(ratio),
                            Formats.seconds(defaults.lampDecaySeconds())),
                    defaults.lampPeakRatio().citation().text());
            return Optional.of(new Inrush(ratio * lamp.ratedAmps(), defaults.lampDecaySeconds()));
        }
        return load.inrush();
    }

    private void unit(Component component, ControlUnit unit) {
        Optional<PointId> positive = rail(component, unit, PinRole.SUPPLY);
        Optional<PointId> negative = rail(component, unit, PinRole.GROUND);
        if (positive.isEmpty() || negative.isEmpty() || !isFed(positive.get(), negative.get())) {
            return;
        }
        double ohms = unit.inputOhms().orElse(defaults.capacitorOhms());
        if (unit.inputOhms().isEmpty()) {
            assume(
                    component,
                    SolveTexts.text("start.unit-ohms", component.id(), Formats.ohms(ohms)),
                    Assumption.COMMON_PRACTICE);
        }
        Optional<Branch> own = branch(component, BranchKind.CONTROL_UNIT);
        Branch capacitor = new Branch(
                new BranchId(component.id() + "~capacitor"),
                BranchKind.CONTROL_UNIT,
                positive.get(),
                negative.get(),
                Optional.of(component.id()),
                new Law.Resistance(ANY_OHMS));
        extra.add(capacitor);
        Charging charging = new Charging(
                own.map(Branch::id).stream().toList(),
                own.map(Branch::law).orElse(new Law.Open()),
                capacitor.id(),
                unit.inputFarads().getAsDouble(),
                ohms);
        SortedMap<BranchId, Law> running = new TreeMap<>();
        own.ifPresent(branch -> running.put(branch.id(), branch.law()));
        running.put(capacitor.id(), new Law.Open());
        found.add(new Starter(component.id(), charging, running, positive.get(), negative.get(), false));
    }

    private boolean isFed(PointId positive, PointId negative) {
        return solution.volts(positive).orElse(0) - solution.volts(negative).orElse(0) > FED_VOLTS;
    }

    private Optional<PointId> rail(Component component, ControlUnit unit, PinRole role) {
        return unit.pinsOf(role).findFirst().flatMap(pin -> moment.index().terminal(component.id(), pin.name()));
    }

    private Branch beside(String id, Branch branch) {
        Branch cold = new Branch(
                new BranchId(id),
                branch.kind(),
                branch.from(),
                branch.to(),
                branch.element(),
                new Law.Resistance(ANY_OHMS));
        extra.add(cold);
        return cold;
    }

    private void add(Component component, Branch branch, Moving moving, boolean restore, boolean follows) {
        SortedMap<BranchId, Law> running = new TreeMap<>();
        if (restore) {
            moving.branches().forEach(id -> running.put(id, new Law.Open()));
            running.put(branch.id(), branch.law());
        }
        found.add(new Starter(component.id(), moving, running, branch.from(), branch.to(), follows));
    }

    private void assume(Component component, Text text, String source) {
        assumptions.add(new Assumption(component.id(), text, source));
    }
}
