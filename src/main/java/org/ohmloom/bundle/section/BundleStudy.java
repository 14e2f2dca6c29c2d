package org.ohmloom.bundle.section;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.bundle.splice.SpliceAdvice;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SpliceId;

/**
 * The cross-sections of all segments, and where splices lie best.
 *
 * @param bySegment cross-section of each segment
 * @param splices   advice on each splice that has a place
 */
public record BundleStudy(SortedMap<SegmentId, SegmentSection> bySegment, SortedMap<SpliceId, SpliceAdvice> splices) {

    /** Nothing was studied. */
    public static final BundleStudy NONE = new BundleStudy(new TreeMap<>(), new TreeMap<>());

    public BundleStudy {
        splices = Collections.unmodifiableSortedMap(new TreeMap<>(splices));
        bySegment = Collections.unmodifiableSortedMap(new TreeMap<>(bySegment));
    }

    /** These cross-sections with advice on splices. */
    public BundleStudy withSplices(SortedMap<SpliceId, SpliceAdvice> advice) {
        return new BundleStudy(bySegment, advice);
    }

    /** The cross-section of a segment. */
    public Optional<SegmentSection> of(SegmentId segment) {
        return Optional.ofNullable(bySegment.get(segment));
    }

    /** Copper along all segments, kg; what wires get on top of their ways is not in it. */
    public double copperKg() {
        return bySegment.values().stream().mapToDouble(SegmentSection::copperKg).sum();
    }

    /** Mass of wires and coverings along all segments, kg. */
    public double massKg() {
        return bySegment.values().stream().mapToDouble(SegmentSection::massKg).sum();
    }
}
