package org.ohmloom.review;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.ohmloom.bundle.section.BundleStudy;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.solve.charge.ChargeStudy;
import org.ohmloom.solve.envelope.Envelope;
import org.ohmloom.solve.run.StartUps;

/**
 * What the studies found, as far as they have come. A part that is pending is empty: nothing found is not the same as nothing
 * looked for, so a rule that needs it has to wait.
 *
 * @param envelope   worst currents and drops over all allowed combinations of loads
 * @param startUps   how loads and control units start in every state, over time
 * @param charge     charge balance of every state, timed sequences, load analysis
 * @param protection what every protective device carries, protects and clears
 * @param returns    ground points, loops, offsets and what they do to sensors
 * @param bundles    cross-sections, coverings and supports of the segments, places of the splices
 * @param pending    parts not worked out yet
 */
public record StudyResults(
        Envelope envelope,
        StartUps startUps,
        ChargeStudy charge,
        ProtectionResults protection,
        ReturnStudy returns,
        BundleStudy bundles,
        Set<StudyPart> pending) {

    /** All parts pending. */
    public static final StudyResults AWAITED = new StudyResults(
            Envelope.NONE,
            StartUps.NONE,
            ChargeStudy.NONE,
            ProtectionResults.NONE,
            ReturnStudy.NONE,
            BundleStudy.NONE,
            EnumSet.allOf(StudyPart.class));

    public StudyResults {
        pending = pending.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(pending));
    }

    /** Nothing but the return paths asked for, and those worked out. */
    public static StudyResults ofReturnsAlone(ReturnStudy returns) {
        return new StudyResults(
                AWAITED.envelope,
                AWAITED.startUps,
                AWAITED.charge,
                AWAITED.protection,
                returns,
                AWAITED.bundles,
                Set.of());
    }

    /** The same with the sizes chosen. */
    public StudyResults withSizes() {
        return new StudyResults(envelope, startUps, charge, protection, returns, bundles, without(StudyPart.SIZES));
    }

    /** The same with the envelope worked out. */
    public StudyResults with(Envelope found) {
        return new StudyResults(found, startUps, charge, protection, returns, bundles, without(StudyPart.ENVELOPE));
    }

    /** The same with the starts followed. */
    public StudyResults with(StartUps found) {
        return new StudyResults(envelope, found, charge, protection, returns, bundles, without(StudyPart.STARTS));
    }

    /** The same with the charge balance drawn up. */
    public StudyResults with(ChargeStudy found) {
        return new StudyResults(envelope, startUps, found, protection, returns, bundles, without(StudyPart.CHARGE));
    }

    /** The same with the protective devices judged. */
    public StudyResults with(ProtectionResults found) {
        return new StudyResults(envelope, startUps, charge, found, returns, bundles, without(StudyPart.PROTECTION));
    }

    /**
     * The same with one more part of the return paths worked out.
     *
     * @param found the return paths as far as they are worked out
     * @param part  the part that is new in them
     */
    public StudyResults with(ReturnStudy found, StudyPart part) {
        return new StudyResults(envelope, startUps, charge, protection, found, bundles, without(part));
    }

    /** The same with the bundles looked into. */
    public StudyResults with(BundleStudy found) {
        return new StudyResults(envelope, startUps, charge, protection, returns, found, without(StudyPart.BUNDLES));
    }

    /** The same with some parts pending again, as if they had not been worked out. */
    public StudyResults awaiting(Set<StudyPart> parts) {
        Set<StudyPart> more = EnumSet.noneOf(StudyPart.class);
        more.addAll(pending);
        more.addAll(parts);
        return new StudyResults(envelope, startUps, charge, protection, returns, bundles, more);
    }

    /** Whether all of these parts are worked out. */
    public boolean has(Set<StudyPart> parts) {
        return Collections.disjoint(pending, parts);
    }

    private Set<StudyPart> without(StudyPart part) {
        Set<StudyPart> left = EnumSet.noneOf(StudyPart.class);
        left.addAll(pending);
        left.remove(part);
        return left;
    }
}
