package org.ohmloom.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.Component;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Setting;
import org.ohmloom.model.Wire;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.units.Unit;

/**
 * No load loses more voltage on its feed and return than it is allowed.
 * <p>On-state drop from the terminals of the reference source, in the worst state that asks the load on. An error when the
 * load has a limit of its own, a warning when only the harness's general limit is passed.
 * {@link LoadNotFed} judges a load that gets less than half its rated voltage. A motor at standstill is not judged, nor is a
 * state whose network has no solution.
 */
final class DropOverLimit implements Rule {

    private static final RuleInfo INFO = new RuleInfo("drop-over-limit", Severity.WARNING);

    /** The worst state of one load. */
    private record Worst(OperatingState state, LoadVolts volts) {}

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.SIZES);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (Component component : evidence.harness().components().all()) {
            if (component.device() instanceof Load load) {
                worst(evidence, component, load)
                        .filter(worst -> Limits.exceeds(
                                worst.volts().onDropVolts(), worst.volts().limitVolts()))
                        .ifPresent(worst -> report.accept(finding(evidence, component, load, worst)));
            }
        }
    }

    private static Optional<Worst> worst(Evidence evidence, Component component, Load load) {
        Worst worst = null;
        for (OperatingState state : evidence.harness().states().all()) {
            Solution solution = evidence.solutions().get(state.id());
            Optional<Setting> setting = state.setting(component.id()).filter(Setting::on);
            if (solution == null || setting.isEmpty() || setting.get().starting()) {
                continue;
            }
            LoadVolts volts = solution.loads().get(component.id());
            if (volts != null
                    && volts.onVolts() >= LoadNotFed.FED_SHARE * load.draw().ratedVolts()
                    && (worst == null || volts.onDropVolts() > worst.volts().onDropVolts())) {
                worst = new Worst(state, volts);
            }
        }
        return Optional.ofNullable(worst);
    }

    private static Finding finding(Evidence evidence, Component component, Load load, Worst worst) {
        List<String> path = new ArrayList<>();
        worst.volts().feedPath().forEach(branch -> path.add(branch.value()));
        worst.volts().returnPath().forEach(branch -> path.add(branch.value()));
        boolean own = load.allowedDropVolts().isPresent();
        return new FindingDraft(INFO, "loses")
                .word("name", component.name())
                .word("load", component.id())
                .word("state", StateNames.quoted(worst.state()))
                .beyond(
                        "drop",
                        worst.volts().onDropVolts(),
                        "limit",
                        worst.volts().limitVolts(),
                        Unit.VOLT)
                .severity(own ? Severity.ERROR : Severity.WARNING)
                .source(own ? INFO.text("own-limit") : INFO.source())
                .subject(component.id())
                .highlight(path)
                .fix(fix(evidence, component, path))
                .build();
    }

    /** The chosen size for every wire on the way that is too thin for the drop; nothing when one of them cannot have it. */
    private static Optional<Edit> fix(Evidence evidence, Component load, List<String> path) {
        List<Edit> edits = new ArrayList<>();
        for (String branch : path) {
            Optional<WireRating> rating = evidence.harness()
                    .element(branch)
                    .filter(Wire.class::isInstance)
                    .flatMap(wire -> evidence.rating(((Wire) wire).id()));
            if (rating.isPresent() && wantsLarger(evidence, rating.get())) {
                Optional<SetWireGauge> larger = LargerConductor.fix(evidence, rating.get());
                if (larger.isEmpty()) {
                    return Optional.empty();
                }
                edits.add(larger.get());
            }
        }
        return edits.isEmpty()
                ? Optional.empty()
                : Optional.of(new Compound(INFO.text("set-on-way", load.id()), edits));
    }

    private static boolean wantsLarger(Evidence evidence, WireRating rating) {
        ConductorChoice choice = evidence.conductors().get(rating.wire().id());
        return choice != null
                && choice.gauge()
                        .map(gauge -> gauge.compareTo(rating.gauge()) > 0)
                        .orElse(true);
    }
}
