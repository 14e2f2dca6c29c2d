package org.ohmloom.analysis;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Consumer;
import org.ohmloom.bundle.section.BundleStudy;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.review.StudyResults;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.charge.ChargeStudy;
import org.ohmloom.solve.run.StartUpStudy;
import org.ohmloom.solve.run.StartUps;

/**
 * One analysis, stage by stage: first currents and temperatures, which most of what a person looks at rests on, then the choice of
 * sizes, the envelope and the studies, each of which takes the place of its pending part.
 * <p>The studies need the states as they are in the end. Where every wire has a size those are the first ones, and the studies run
 * beside the choice of sizes; otherwise they wait for it, and for the envelope where load groups let that change sizes.
 */
final class Stages {

    /** Parts that rest on the final states alone. */
    private static final Set<StudyPart> ON_STATES =
            Collections.unmodifiableSet(EnumSet.complementOf(EnumSet.of(StudyPart.SIZES, StudyPart.ENVELOPE)));

    private final Bench bench;
    private final Protection protection;

    Stages(Bench bench) {
        this.bench = bench;
        this.protection = Protection.of(bench);
    }

    /**
     * Runs it and returns the whole.
     *
     * @param listener gets what is there after each stage but the last
     */
    Analysis run(Optional<Consumer<Analysis>> listener) {
        SizesByWire alone = SizesByWire.of(bench, protection);
        Core first = Core.of(bench, protection, alone);
        Snapshots snapshots = new Snapshots(bench, protection, first, listener);
        Optional<AtOnce<Core>> studied = begun(first, snapshots, isSized(bench.harness()));
        JointSized joint = JointSizing.of(bench, protection, alone);
        Core together = first.with(bench, joint, SizesByWire.input(bench, protection, joint.heated(), joint.sizes()));
        if (bench.harness().loadGroups().isEmpty()) {
            snapshots.settle(together, StudyResults::withSizes);
            studied = studied.or(() -> begun(together, snapshots, true));
        }
        SizedByEnvelope byEnvelope = SizedByEnvelope.of(bench, protection, joint);
        Core last = together.with(bench, byEnvelope.sized(), byEnvelope.input());
        snapshots.settle(last, studies -> studies.withSizes().with(byEnvelope.envelope()));
        if (studied.map(AtOnce::result)
                .filter(core -> core.heated() == last.heated())
                .isEmpty()) {
            snapshots.found(studies -> studies.awaiting(ON_STATES));
            study(last, snapshots);
        }
        return snapshots.now();
    }

    /** Tells the first numbers alone: states, temperatures, each wire's size by itself and what rules say of those. */
    void tellFirst(Consumer<Analysis> listener) {
        Core first = Core.of(bench, protection, SizesByWire.of(bench, protection));
        new Snapshots(bench, protection, first, Optional.of(listener));
    }

    private static boolean isSized(Harness harness) {
        return harness.wires().all().stream().allMatch(wire -> wire.gauge().isPresent());
    }

    private Optional<AtOnce<Core>> begun(Core core, Snapshots snapshots, boolean ready) {
        return ready ? Optional.of(AtOnce.begin(() -> study(core, snapshots))) : Optional.empty();
    }

    /** Runs the studies that rest on the final states, some of them side by side. */
    private Core study(Core core, Snapshots snapshots) {
        SortedMap<StateId, Solution> solutions = core.heated().solutions();
        AtOnce<StartUps> startUps = AtOnce.begin(() -> {
            StartUps found = StartUpStudy.of(bench.harness(), solutions, bench.tables(), bench.cancel()::isRequested);
            snapshots.found(studies -> studies.with(found));
            return found;
        });
        AtOnce<ChargeStudy> charges = AtOnce.begin(() -> {
            ChargeStudy found = ChargeStudy.of(bench.harness(), bench.tables(), solutions, bench.cancel()::isRequested);
            snapshots.found(studies -> studies.with(found));
            return found;
        });
        AtOnce<BundleStudy> bundles = AtOnce.begin(() -> {
            BundleStudy found = Bundles.study(bench, core.sized().sizes(), core.ratings());
            snapshots.found(studies -> studies.with(found));
            return found;
        });
        Returns.study(
                bench,
                core.sized().sizes(),
                protection.drawn(),
                core.heated(),
                core.ratings(),
                (returns, part) -> snapshots.found(studies -> studies.with(returns, part)));
        ProtectionResults judged = protection.study(
                SizesByWire.input(bench, protection, core.heated(), core.sized().sizes()),
                core.ratings(),
                startUps.result(),
                bench.cancel());
        snapshots.found(studies -> studies.with(judged));
        charges.result();
        bundles.result();
        return core;
    }
}
