package org.ohmloom.signal.pins;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.model.PinRole;

/**
 * Claims that need more slots than can serve them. From a claim that a largest assignment leaves out, every slot it could have
 * and every claim that holds one of those, and so on, are a set of claims with too few slots (Hall, J. London Math. Soc. 10,
 * 1935): the smallest reason to show a person.
 */
final class Scarcity {

    private Scarcity() {}

    /** Why there is no allocation by roles and counts alone; empty when there is one. */
    static Optional<PinPlan.Impossible> of(PinProblem problem) {
        Relaxation.Assigned assigned = Relaxation.byRole(problem);
        if (assigned.unserved().isEmpty()) {
            return Optional.empty();
        }
        List<PinPlan.Competition> competitions = new ArrayList<>();
        Set<Claim> told = new LinkedHashSet<>();
        for (Claim unserved : assigned.unserved()) {
            if (!told.contains(unserved)) {
                PinPlan.Competition competition = around(problem, assigned, unserved);
                told.addAll(competition.claims());
                competitions.add(competition);
            }
        }
        return Optional.of(new PinPlan.Impossible(
                competitions, List.of(), assigned.unserved().size(), helps(problem, assigned, competitions)));
    }

    private static PinPlan.Competition around(PinProblem problem, Relaxation.Assigned assigned, Claim unserved) {
        Set<Claim> claims = new LinkedHashSet<>(Set.of(unserved));
        Set<Slot> slots = new LinkedHashSet<>();
        List<Claim> waiting = new ArrayList<>(claims);
        while (!waiting.isEmpty()) {
            for (Slot slot : problem.slotsFor(waiting.remove(0))) {
                if (slots.add(slot)) {
                    assigned.chosen().forEach((claim, held) -> {
                        if (held.equals(slot) && claims.add(claim)) {
                            waiting.add(claim);
                        }
                    });
                }
            }
        }
        return new PinPlan.Competition(
                problem.claims().stream().filter(claims::contains).toList(),
                problem.slots().stream().filter(slots::contains).toList(),
                slots.stream().mapToInt(Slot::capacity).sum());
    }

    /** The fewest pins to be added by role, and pins left over that would serve if they could be that. */
    private static List<String> helps(
            PinProblem problem, Relaxation.Assigned assigned, List<PinPlan.Competition> competitions) {
        List<String> helps = new ArrayList<>();
        for (PinPlan.Competition each : competitions) {
            Set<PinRole> roles = each.claims().stream()
                    .filter(claim -> claim.locked().isEmpty())
                    .map(Claim::role)
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            int missing = each.claims().size() - each.capacity();
            for (PinRole role : roles) {
                helps.add(
                        missing + (missing == 1 ? " more pin that can be " : " more pins that can be ") + words(role));
            }
            List<String> spare = problem.slots().stream()
                    .filter(slot ->
                            !each.slots().contains(slot) && !assigned.chosen().containsValue(slot))
                    .map(Slot::id)
                    .toList();
            if (!spare.isEmpty() && !roles.isEmpty()) {
                helps.add("or one of the unused pins " + String.join(", ", spare) + " set up as "
                        + roles.stream().map(Scarcity::words).collect(Collectors.joining(" or "))
                        + ", if the unit allows it");
            }
            each.claims().stream()
                    .filter(claim -> claim.locked().isPresent())
                    .forEach(claim -> helps.add(
                            "the choice of " + claim.locked().orElseThrow() + " for " + claim.id() + " given up"));
        }
        return List.copyOf(helps);
    }

    static String words(PinRole role) {
        return role.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
