package org.ohmloom.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Law;
import org.ohmloom.graph.Network;

/**
 * Finds what relays and fed outputs come to rest at.
 *
 * <p>All begin at rest. The network is solved; all that want to act at their voltage do, as they would side by side; again, until
 * none wants to. Where one of them then wants back, they hang on each other, and the search begins anew one at a time: of those
 * that want to change the first in branch order does. A relay on an output with a duty follows the mean of its coil voltage. When a state
 * comes back that was there before, the first of those that changed in between buzzes: it is put to rest, its islands
 * have no solution, and the search goes on without it. There are finitely many states, so it always ends; after {@link
 * #CHANGES_EACH} changes for each of them it takes the last one as buzzing.
 */
final class SwitchingSearch {

    private static final int CHANGES_EACH = 10;

    private final Network network;
    private final RestMemory memory;
    private final BooleanSupplier cancelled;
    private final SortedMap<BranchId, Failure> buzzing = new TreeMap<>();
    private final List<Change> changes = new ArrayList<>();
    private final Set<Switching> seen = new HashSet<>();
    private boolean together = true;
    private Switching switching;

    private record Change(Switching before, BranchId deciding, double volts) {
        boolean starts() {
            return !before.active().contains(deciding);
        }
    }

    /** A search begun where a much like network came to rest; keeps its own rest there. */
    SwitchingSearch(Network network, RestMemory memory, BooleanSupplier cancelled) {
        this.network = network;
        this.memory = memory;
        this.cancelled = cancelled;
        this.switching = Switching.atRest(network);
        seen.add(switching);
    }

    /** The trial in which nothing wants to change any more. */
    FullTrial settle() {
        FullTrial full = again().orElseGet(this::search);
        if (buzzing.isEmpty()) {
            memory.keep(switching, full.trial());
        }
        return full;
    }

    /** The trial with all where they rested before, if they still do. */
    private Optional<FullTrial> again() {
        Optional<Switching> rested = memory.switching(switching);
        if (rested.isEmpty()) {
            return Optional.empty();
        }
        FullTrial full = new FullTrial(new Trial(network, rested.get(), memory.trial(), cancelled));
        if (full.trial().hasFailed() || isRestless(rested.get(), full)) {
            return Optional.empty();
        }
        switching = rested.get();
        memory.tried(switching, full.trial());
        return Optional.of(full);
    }

    private static boolean isRestless(Switching switching, FullTrial full) {
        for (BranchId deciding : switching.watched().keySet()) {
            OptionalDouble volts = full.meanVolts(deciding);
            if (volts.isPresent() && switching.wantsChange(deciding, volts.getAsDouble())) {
                return true;
            }
        }
        return false;
    }

    private FullTrial search() {
        Optional<Trial> earlier = Optional.empty();
        while (true) {
            Optional<Trial> before = earlier;
            Trial trial = new Trial(network, switching, memory.near(switching).or(() -> before), cancelled);
            earlier = Optional.of(trial);
            memory.tried(switching, trial);
            if (trial.clocks().isEmpty()
                    || !changes(trial.look(switching.watched().keySet())::restingVolts)) {
                FullTrial full = new FullTrial(trial);
                if (!changes(full::meanVolts)) {
                    return full;
                }
            }
        }
    }

    /** Changes those that want to change, or the first of them; false when none does. */
    private boolean changes(Function<BranchId, OptionalDouble> volts) {
        SortedMap<BranchId, Double> wanting = new TreeMap<>();
        for (BranchId deciding : switching.watched().keySet()) {
            OptionalDouble seen = volts.apply(deciding);
            if (seen.isPresent() && switching.wantsChange(deciding, seen.getAsDouble())) {
                wanting.put(deciding, seen.getAsDouble());
            }
        }
        if (wanting.isEmpty()) {
            return false;
        }
        if (!together) {
            change(wanting.firstKey(), wanting.get(wanting.firstKey()));
        } else if (wanting.keySet().stream().anyMatch(switching.active()::contains)) {
            together = false;
            switching = Switching.atRest(network);
        } else {
            switching = switching.toggled(wanting.keySet());
        }
        return true;
    }

    /** The branches that found no rest, coils and inputs, each with the sentence about it. */
    SortedMap<BranchId, Failure> buzzing() {
        return buzzing;
    }

    /** Whether a branch is a contact of a relay or the output of an input that found no rest. */
    Optional<Failure> buzzing(Branch branch) {
        if (branch.law() instanceof Law.CoilOperated contact) {
            return Optional.ofNullable(buzzing.get(contact.coil()));
        }
        return Optional.ofNullable(buzzing.get(branch.id()));
    }

    private void change(BranchId deciding, double volts) {
        changes.add(new Change(switching, deciding, volts));
        Switching next = switching.toggled(Set.of(deciding));
        boolean tooMany = changes.size() > CHANGES_EACH * switching.watched().size();
        if (seen.add(next) && !tooMany) {
            switching = next;
            return;
        }
        BranchId blamed = changes.stream()
                .dropWhile(change -> !tooMany && !change.before().equals(next))
                .map(Change::deciding)
                .sorted()
                .findFirst()
                .orElse(deciding);
        buzzing.put(blamed, failure(blamed));
        switching = next.pinned(blamed);
        changes.clear();
        seen.clear();
        seen.add(switching);
    }

    private Failure failure(BranchId blamed) {
        Branch branch = network.branches().get(blamed);
        double atRest = lastVolts(blamed, true);
        double active = lastVolts(blamed, false);
        return switching.watched().get(blamed).coil()
                ? Failure.buzzing(branch, atRest, active)
                : Failure.pulsing(branch, atRest, active);
    }

    private double lastVolts(BranchId blamed, boolean starts) {
        return changes.stream()
                .filter(change -> change.deciding().equals(blamed))
                .filter(change -> change.starts() == starts)
                .mapToDouble(Change::volts)
                .reduce(0, (earlier, later) -> later);
    }
}
