package org.ohmloom.bundle.splice;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Place;
import org.ohmloom.model.SpliceId;

/**
 * Where a splice lies best.
 *
 * @param splice     the splice
 * @param presentKg  copper between it and the other ends of its wires where it lies now, kg
 * @param best       the place of least copper that keeps all distances; empty when it stays where it is or no place keeps them
 * @param bestKg     copper there, kg; the present one without a better place
 * @param tooNear    what it lies too near to now, in words; empty when it keeps all distances
 * @param stays      why it is not moved, in words; empty when it may be
 */
public record SpliceAdvice(
        SpliceId splice,
        double presentKg,
        Optional<Place> best,
        double bestKg,
        List<String> tooNear,
        Optional<String> stays) {

    public SpliceAdvice {
        tooNear = List.copyOf(tooNear);
    }

    /** Copper that moving it saves, kg; less than 0 where it has to move away from something. */
    public double savedKg() {
        return presentKg - bestKg;
    }
}
