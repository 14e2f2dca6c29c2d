package org.ohmloom.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.solve.Clock;
import org.ohmloom.solve.DutyResults;
import org.ohmloom.solve.Solution;

/**
 * Puts the parts of a voltage together by who causes them.
 *
 * <p>Share of a cause = sum of the parts of its currents. Its ripple: for each clock by which one of its outputs (or itself)
 * switches, and each stretch s of that clock's period, the sum over its currents of T x (I(s) - I), T the transfer
 * resistance, I(s) the mean current over the stretch with everything else averaged, I the mean over all of time; of each
 * clock the largest magnitude, added up over its clocks. What the same switching draws from other sources and from a supply
 * capacitor stands with those.
 */
final class OffsetShares {

    private final Solution solution;
    private final Causes causes;
    private final Map<Clock, SortedSet<ElementId>> switching = new LinkedHashMap<>();

    OffsetShares(Solution solution, Causes causes) {
        this.solution = solution;
        this.causes = causes;
        for (Clock clock : solution.duty().clocks()) {
            SortedSet<ElementId> own = new TreeSet<>(BY_TEXT);
            clock.stretches().forEach(stretch -> stretch.on().forEach(id -> solution.flow(id)
                    .ifPresent(flow -> causes.of(flow.branch()).forEach(cause -> own.add(cause.element())))));
            switching.put(clock, own);
        }
    }

    private static final Comparator<ElementId> BY_TEXT = Comparator.comparing(ElementId::value, NaturalOrder.INSTANCE);

    /** One branch's part in a cause. */
    private record Piece(BranchId branch, double amps, double volts, double transferOhms) {}

    /** The shares of parts, largest first. */
    List<OffsetShare> of(List<Attribution.Part> parts) {
        Map<ElementId, List<Piece>> pieces = new TreeMap<>(BY_TEXT);
        for (Attribution.Part part : parts) {
            for (Causes.Cause cause : causes.of(part.branch())) {
                double share = cause.shareFraction();
                pieces.computeIfAbsent(cause.element(), element -> new ArrayList<>())
                        .add(new Piece(
                                part.branch().id(),
                                part.amps() * share,
                                part.value() * share,
                                part.transferOhms() * share));
            }
        }
        List<OffsetShare> shares = new ArrayList<>();
        pieces.forEach((element, own) -> shares.add(share(element, own)));
        shares.removeIf(share -> share.volts() == 0 && share.rippleVolts() == 0);
        shares.sort(Comparator.comparingDouble((OffsetShare share) -> -Math.abs(share.volts()))
                .thenComparing(OffsetShare::cause, BY_TEXT));
        return shares;
    }

    private OffsetShare share(ElementId element, List<Piece> pieces) {
        Piece largest = pieces.get(0);
        double volts = 0;
        for (Piece piece : pieces) {
            volts += piece.volts();
            largest = Math.abs(piece.volts()) > Math.abs(largest.volts()) ? piece : largest;
        }
        return new OffsetShare(element, largest.amps(), volts, ripple(element, pieces), OptionalDouble.empty());
    }

    private double ripple(ElementId element, List<Piece> pieces) {
        DutyResults duty = solution.duty();
        double ripple = 0;
        for (Clock clock : duty.clocks()) {
            double most = 0;
            for (int stretch = 0;
                    switching.get(clock).contains(element)
                            && stretch < clock.stretches().size();
                    stretch++) {
                double volts = 0;
                for (Piece piece : pieces) {
                    volts += piece.transferOhms() * duty.deviationAmps(piece.branch(), clock, stretch);
                }
                most = Math.max(most, Math.abs(volts));
            }
            ripple += most;
        }
        return ripple;
    }
}
