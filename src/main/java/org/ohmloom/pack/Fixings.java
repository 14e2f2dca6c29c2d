package org.ohmloom.pack;

import java.util.List;
import org.ohmloom.bundle.section.SegmentSection;

/**
 * What holds a segment, counted the same on the bill, the installation sheet and the list of bundles: a segment in which no wire lies
 * takes nothing.
 *
 * @param supportMetres places of supports from the segment's first end, m
 * @param tieMetres     places of ties, m
 */
record Fixings(List<Double> supportMetres, List<Double> tieMetres) {

    static Fixings of(SegmentSection section) {
        return section.members().isEmpty()
                ? new Fixings(List.of(), List.of())
                : new Fixings(
                        section.supports().supportMetres(), section.supports().tieMetres());
    }
}
