package org.ohmloom.solve.envelope;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;

/** The bounds of one situation, as far as they may be claimed. */
final class Bounds {
    /** A bound so little above a value proves it, as a share of the value. */
    static final double PROVEN_RATIO = 2e-6;

    private static final double PROVEN_FLOOR = 2e-6;

    /** What a source with a sense point may add to a sum, for each of its amperes, and still not count. */
    private static final double NO_SHARE = 1e-8;

    private final Blocks blocks;
    private final boolean claimed;
    private final boolean isPulsed;
    private final Map<BranchId, Double> on = new HashMap<>();
    private final Map<BranchId, Double> rms = new HashMap<>();
    private final Map<ComponentId, Double> drops = new HashMap<>();

    Bounds(Models models, Blocks blocks) {
        this.blocks = blocks;
        claimed = models.doubts().isEmpty();
        isPulsed = models.isPulsed();
    }

    /**
     * While outputs switch, a regulator holds the mean at its sense point, and an inductive load's current hangs on its
     * ripple: of what depends on the share of either at a moment no bound is claimed.
     */
    private boolean claims(Targets.Target<?> target) {
        if (!claimed || isPulsed && target.perSensedAmp() > NO_SHARE) {
            return false;
        }
        for (int taker = 0; taker < blocks.takers().size(); taker++) {
            if (blocks.takers().get(taker).isSeen() && target.perAmp(taker) > NO_SHARE) {
                return false;
            }
        }
        return true;
    }

    void on(Targets.Target<BranchId> target, double bound) {
        if (claims(target)) {
            target.members().forEach(branch -> on.put(branch, bound));
        }
    }

    void rms(Targets.Target<BranchId> target, double bound) {
        if (claims(target)) {
            target.members().forEach(branch -> rms.put(branch, Math.min(bound, on.get(branch))));
        }
    }

    /** The largest over the sources a drop may be measured from. */
    void drop(Targets.Target<ComponentId> target, double bound) {
        boolean known = claims(target);
        target.members().forEach(load -> drops.merge(load, known ? bound : Double.POSITIVE_INFINITY, Math::max));
    }

    OptionalDouble on(BranchId branch, double value) {
        return checked(on.get(branch), value);
    }

    OptionalDouble rms(BranchId branch, double value) {
        return checked(isPulsed ? rms.get(branch) : on.get(branch), value);
    }

    OptionalDouble drop(ComponentId load, double value) {
        return checked(drops.get(load), value);
    }

    /** A bound that a full solution exceeds is none: then something behaves otherwise than the models take it. */
    private static OptionalDouble checked(@Nullable Double bound, double value) {
        return bound == null || Double.isInfinite(bound) || bound < value - tolerance(value)
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(bound, value));
    }

    private static double tolerance(double value) {
        return PROVEN_FLOOR + PROVEN_RATIO * Math.abs(value);
    }

    /** Whether a bound proves a value. */
    static boolean proves(OptionalDouble bound, double value) {
        return bound.isPresent() && bound.getAsDouble() <= value + tolerance(value);
    }
}
