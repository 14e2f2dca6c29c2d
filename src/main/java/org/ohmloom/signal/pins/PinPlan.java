package org.ohmloom.signal.pins;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.words.Text;

/** The answer to a {@link PinProblem}. */
public sealed interface PinPlan {

    /**
     * Every claim has a slot.
     *
     * @param chosen slot of each claim, in the order of the claims
     * @param parts  what it costs, and why
     * @param boundPoints  no allocation costs less than this
     * @param proven whether none costs less than this one
     */
    record Found(Map<Claim, Slot> chosen, List<CostPart> parts, double boundPoints, boolean proven) implements PinPlan {
        public Found {
            chosen = Collections.unmodifiableMap(new LinkedHashMap<>(chosen));
            parts = List.copyOf(parts);
        }

        /** What it costs in all. */
        public double costPoints() {
            return parts.stream().mapToDouble(CostPart::costPoints).sum();
        }

        /** How much cheaper one might be that was not found, 0 when it is proven. */
        public double gapPoints() {
            return proven ? 0 : Math.max(0, costPoints() - boundPoints);
        }
    }

    /**
     * There is none.
     *
     * @param competitions claims that compete for too few slots; empty when currents are in the way
     * @param limits       limits of current that no assignment keeps, as far as the search went
     * @param missing      fewest slots to be added before there is one by roles and counts
     * @param changes      the smallest changes that would make it possible, in words
     */
    record Impossible(List<Competition> competitions, List<Text> limits, int missing, List<Text> changes)
            implements PinPlan {
        public Impossible {
            competitions = List.copyOf(competitions);
            limits = List.copyOf(limits);
            changes = List.copyOf(changes);
        }

        /** Limits that no assignment keeps, in English. */
        public List<String> currents() {
            return Text.english(limits);
        }

        /** What would make it possible, in English. */
        public List<String> helps() {
            return Text.english(changes);
        }
    }

    /**
     * The search was stopped before it found one or knew that there is none.
     *
     * @param nodes how many part allocations it looked at
     */
    record Unknown(int nodes) implements PinPlan {}

    /**
     * Claims that need more slots than there are for them.
     *
     * @param claims   the claims
     * @param slots    all slots that could serve any of them
     * @param capacity how many claims those slots take
     */
    record Competition(List<Claim> claims, List<Slot> slots, int capacity) {
        public Competition {
            claims = List.copyOf(claims);
            slots = List.copyOf(slots);
        }
    }
}
