package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.remedy.Foresight.Foreseen;

/**
 * Looks for one, two or three changes that bring a number within its limit together: a beam search over what {@link Foresight}
 * tells of them.
 *
 * <p>Every change by itself comes first. The {@link #BEAM} that leave least of the number, and do not serve yet, are then joined
 * with each of the others, and with other grounds for whoever makes most of what is left; so again for a third. Who serves is
 * not joined with more.
 *
 * @param alone   single changes, those that leave least first; what cannot be made is left out
 * @param serving what brings the number within its limit, fewest changes first, then what leaves least
 * @param count   how many were foreseen in all
 * @param spent   whether that count ended the search
 */
record Combinations(List<Foreseen> alone, List<Foreseen> serving, int count, boolean spent) {

    /** Unfinished combinations carried on to the next round. */
    private static final int BEAM = 4;

    /** Most changes in one combination. */
    static final int MOST_CHANGES = 3;

    /** Changes joined with each unfinished combination, those that leave least by themselves. */
    private static final int MOST_JOINED = 14;

    /** Enough that serve to stop looking for larger combinations. */
    private static final int ENOUGH = 4;

    /** A change joined has to take away at least this share of what is left. */
    private static final double LEAST_GAIN = 0.02;

    private static final Comparator<Foreseen> LEAST_FIRST = Comparator.comparingDouble(Foreseen::value);

    static Combinations of(List<Candidate> singles, Candidates more, Foresight foresight) {
        List<Foreseen> alone = new ArrayList<>();
        Set<Set<Edit>> seen = new HashSet<>();
        for (Candidate single : singles) {
            if (!foresight.isSpent() && seen.add(Set.copyOf(single.steps()))) {
                foresight.of(single).ifPresent(alone::add);
            }
        }
        alone.sort(LEAST_FIRST);
        List<Foreseen> serving =
                new ArrayList<>(alone.stream().filter(Foreseen::serves).toList());
        List<Foreseen> open = alone.stream().filter(each -> !each.serves()).toList();
        List<Candidate> joined =
                open.stream().limit(MOST_JOINED).map(Foreseen::candidate).toList();
        for (int changes = 2; changes <= MOST_CHANGES && serving.size() < ENOUGH; changes++) {
            List<Foreseen> next = new ArrayList<>();
            for (Foreseen start : open.subList(0, Math.min(BEAM, open.size()))) {
                List<Candidate> partners = new ArrayList<>(more.ofCauses(start.causes()));
                partners.addAll(joined);
                for (Candidate partner : partners) {
                    Optional<Candidate> both = start.candidate().with(partner);
                    if (!foresight.isSpent() && both.isPresent() && isNew(both.get(), changes, seen)) {
                        Optional<Foreseen> found = foresight.of(both.get());
                        found.filter(each -> each.value() < (1 - LEAST_GAIN) * start.value())
                                .ifPresent(next::add);
                    }
                }
            }
            next.sort(LEAST_FIRST);
            next.stream().filter(Foreseen::serves).forEach(serving::add);
            open = next.stream().filter(each -> !each.serves()).toList();
        }
        serving.sort(Comparator.<Foreseen>comparingInt(
                        each -> each.candidate().steps().size())
                .thenComparing(LEAST_FIRST));
        return new Combinations(alone, serving, foresight.count(), foresight.isSpent());
    }

    private static boolean isNew(Candidate both, int changes, Set<Set<Edit>> seen) {
        List<Object> sized = new ArrayList<>();
        for (Edit step : both.steps()) {
            if (step instanceof SetWireGauge size) {
                sized.addAll(size.wires());
            }
        }
        return both.steps().size() == changes
                && new HashSet<>(sized).size() == sized.size()
                && seen.add(Set.copyOf(both.steps()));
    }
}
