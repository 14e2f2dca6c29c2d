package org.ohmloom.bundle.section;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.model.SegmentId;

/**
 * The cross-sections of all segments.
 *
 * @param bySegment cross-section of each segment
 */
public record BundleStudy(SortedMap<SegmentId, SegmentSection> bySegment) {

    /** Nothing was studied. */
    public static final BundleStudy NONE = new BundleStudy(new TreeMap<>());

    public BundleStudy {
        bySegment = Collections.unmodifiableSortedMap(new TreeMap<>(bySegment));
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
