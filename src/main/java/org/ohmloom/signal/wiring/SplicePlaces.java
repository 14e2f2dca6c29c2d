package org.ohmloom.signal.wiring;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.signal.way.Ways;

/** Makes splices, each apart from those made or there before. */
final class SplicePlaces {
    /** Joint of one wire in a splice, ohm: a good crimped splice, common practice, no source. */
    private static final double SPLICE_OHMS = 0.0002;

    /** How far a splice is put from a breakout and from the next splice, m: common practice, no source. */
    private static final double APART_METRES = 0.1;

    private final Harness harness;
    private final FreshIds fresh;
    private final String letters;
    private final Map<SegmentId, Integer> splicesOn = new HashMap<>();

    SplicePlaces(Harness harness, FreshIds fresh) {
        this.harness = harness;
        this.fresh = fresh;
        this.letters = harness.splices().ids().stream()
                .map(id -> id.value().replaceAll("\\d+$", ""))
                .filter(each -> !each.isEmpty())
                .findFirst()
                .orElse("S");
        harness.splices().all().forEach(splice -> splice.place().ifPresent(place -> {
            if (place instanceof Place.OnSegment on) {
                splicesOn.merge(on.segment(), 1, Integer::sum);
            }
        }));
    }

    Splice splice(String circuit, Optional<Place> place, Optional<AssemblyId> assembly) {
        return new Splice(
                new SpliceId(fresh.next(letters)), circuit, SPLICE_OHMS, place, Optional.empty(), false, assembly);
    }

    /** On the segment of a step, short of its end and of the splices made there before; at the breakout where there is no room. */
    Place before(Ways.Step step) {
        SegmentId segment = step.segment().orElseThrow();
        double length = harness.segments().get(segment).lengthMetres();
        int earlier = splicesOn.merge(segment, 1, Integer::sum) - 1;
        double fromEnd = APART_METRES * (earlier + 1);
        if (fromEnd > length - APART_METRES / 2) {
            return new Place.AtBreakout(step.to());
        }
        boolean forward = harness.segments().get(segment).to().equals(step.to());
        return new Place.OnSegment(segment, forward ? length - fromEnd : fromEnd);
    }

    /** Where a splice lies, or the nearer end of its segment. */
    Optional<BreakoutId> at(Splice splice) {
        return splice.place().map(place -> {
            if (place instanceof Place.OnSegment on) {
                var segment = harness.segments().get(on.segment());
                return on.distanceMetres() * 2 > segment.lengthMetres() ? segment.to() : segment.from();
            }
            return ((Place.AtBreakout) place).breakout();
        });
    }
}
