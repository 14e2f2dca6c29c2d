package org.ohmloom.signal.pins;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.model.PinRole;
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/**
 * Claims that need more slots than can serve them. From a claim that a largest assignment leaves out, every slot it could have
 * and every claim that holds one of those, and so on, are a set of claims with too few slots (Hall, J. London Math. Soc. 10,
 * 1935): the smallest reason to show a person.
 */
final class Scarcity {

    /** Pins named before the others are counted. */
    private static final int MOST_NAMED = 6;

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
                put(problem, competition, competitions);
            }
        }
        return Optional.of(new PinPlan.Impossible(
                competitions, List.of(), assigned.unserved().size(), helps(problem, assigned, competitions)));
    }

    /** Adds a competition; one for the same slots is a part of it. */
    private static void put(PinProblem problem, PinPlan.Competition added, List<PinPlan.Competition> competitions) {
        for (int k = 0; k < competitions.size(); k++) {
            PinPlan.Competition there = competitions.get(k);
            if (!added.slots().isEmpty() && there.slots().equals(added.slots())) {
                competitions.set(
                        k,
                        new PinPlan.Competition(
                                problem.claims().stream()
                                        .filter(claim -> there.claims().contains(claim)
                                                || added.claims().contains(claim))
                                        .toList(),
                                added.slots(),
                                added.capacity()));
                return;
            }
        }
        competitions.add(added);
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
    private static List<Text> helps(
            PinProblem problem, Relaxation.Assigned assigned, List<PinPlan.Competition> competitions) {
        List<Text> helps = new ArrayList<>();
        Map<Text, Integer> missing = new LinkedHashMap<>();
        Map<Text, List<String>> unused = new LinkedHashMap<>();
        for (PinPlan.Competition each : competitions) {
            if (each.slots().isEmpty()) {
                Optional<Text> unfit = each.claims().stream()
                        .flatMap(claim -> unfit(problem, claim).stream())
                        .findFirst();
                if (unfit.isPresent()) {
                    helps.add(unfit.get());
                    continue;
                }
            }
            Set<PinRole> roles = each.claims().stream()
                    .filter(claim -> claim.locked().isEmpty())
                    .map(Claim::role)
                    .collect(Collectors.toCollection(LinkedHashSet::new));
            List<String> spare = problem.slots().stream()
                    .filter(slot ->
                            !each.slots().contains(slot) && !assigned.chosen().containsValue(slot))
                    .filter(slot -> roles.stream().anyMatch(role -> slot.roles().stream()
                            .anyMatch(now -> now.isInput() == role.isInput() && now.isOutput() == role.isOutput())))
                    .map(Slot::id)
                    .toList();
            if (!roles.isEmpty()) {
                Text wanted = PinTexts.linked(
                        "or", roles.stream().map(Constants::text).toList());
                missing.merge(wanted, each.claims().size() - each.capacity(), Integer::sum);
                unused.put(wanted, spare);
            }
            each.claims().stream()
                    .filter(claim -> claim.locked().isPresent())
                    .forEach(claim ->
                            helps.add(PinTexts.text("given-up", claim.locked().orElseThrow(), claim.id())));
        }
        List<Text> all = new ArrayList<>();
        missing.forEach((roles, pins) -> {
            all.add(PinTexts.text("more-pins", String.valueOf(pins), pins, roles));
            if (!unused.get(roles).isEmpty()) {
                all.add(PinTexts.text("unused", some(unused.get(roles)), roles));
            }
        });
        all.addAll(helps);
        return List.copyOf(all);
    }

    /** What a pin would have to be for a claim that those of its role do not suit; empty where there is none of its role. */
    private static Optional<Text> unfit(PinProblem problem, Claim claim) {
        List<Slot> ofRole = problem.slots().stream()
                .filter(slot -> slot.roles().contains(claim.role()))
                .toList();
        if (ofRole.isEmpty() || claim.locked().isPresent()) {
            return Optional.empty();
        }
        List<Slot> telling = ofRole.stream()
                .filter(slot -> !claim.barred().contains(slot.id()))
                .toList();
        Text role = Constants.text(claim.role());
        return Optional.of(
                telling.isEmpty()
                        ? PinTexts.text("tells-all", claim.id(), role, claim.owner())
                        : PinTexts.text(
                                "too-strong",
                                claim.id(),
                                role,
                                Currents.text(claim.amps()),
                                Currents.text(telling.stream()
                                        .mapToDouble(slot -> slot.limitAmps().orElse(0))
                                        .max()
                                        .orElse(0))));
    }

    /** The first of some pins, and how many more there are. */
    private static Text some(List<String> pins) {
        return pins.size() <= MOST_NAMED
                ? Text.of(String.join(", ", pins))
                : PinTexts.text(
                        "and-more",
                        String.join(", ", pins.subList(0, MOST_NAMED)),
                        String.valueOf(pins.size() - MOST_NAMED));
    }
}
