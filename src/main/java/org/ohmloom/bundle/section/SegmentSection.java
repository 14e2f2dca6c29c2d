package org.ohmloom.bundle.section;

import java.util.List;
import java.util.Optional;
import org.ohmloom.bundle.packing.ConcentricLay;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.WireId;

/**
 * The cross-section of a bundle segment, and what goes over it.
 *
 * @param segment       the segment
 * @param members       wires and cables where they lie in the ideal packing, its centre at 0, 0
 * @param idealMm       diameter of that packing, mm: a lower bound, no real bundle is thinner; 0 without wires
 * @param steps         from the ideal to the finished diameter
 * @param practicalMm   diameter without the covering, mm; coverings are chosen by it
 * @param finishedMm    diameter over the covering, mm; the practical one where there is none
 * @param unsized       wires without a size, which are left out
 * @param celsius       temperature a covering must stand, deg C
 * @param entered       how the covering suits that is entered with its size
 * @param chosen        the covering of the entered sort that serves
 * @param lay           layers of a segment twisted in concentric layers, positions of members in them
 * @param bendLeastMm   least inside bend radius while fitting, mm
 * @param bendLastingMm least inside bend radius where it stays bent, mm
 * @param copperKg      copper along the segment, kg
 * @param massKg        mass of wires and covering along the segment, kg
 * @param supports      supports and ties along it
 */
public record SegmentSection(
        SegmentId segment,
        List<Member> members,
        double idealMm,
        List<DiameterStep> steps,
        double practicalMm,
        double finishedMm,
        List<WireId> unsized,
        double celsius,
        Optional<CoveringFit> entered,
        Optional<CoveringFit> chosen,
        Optional<ConcentricLay> lay,
        double bendLeastMm,
        double bendLastingMm,
        double copperKg,
        double massKg,
        SupportPlan supports) {

    public SegmentSection {
        members = List.copyOf(members);
        steps = List.copyOf(steps);
        unsized = List.copyOf(unsized);
    }

    /** The covering the finished diameter is reckoned with: the entered one, else the chosen one. */
    public Optional<CoveringFit> covering() {
        return entered.or(() -> chosen);
    }

    /** How many diameters are estimated. */
    public long estimated() {
        return members.stream().filter(member -> !member.isListed()).count();
    }

    /** How many wires lie in it, cores of cables counted. */
    public int wireCount() {
        return members.stream().mapToInt(member -> member.wires().size()).sum();
    }
}
