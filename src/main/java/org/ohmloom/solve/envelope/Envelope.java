package org.ohmloom.solve.envelope;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.words.Text;

/**
 * The worst currents and voltage drops over all combinations of loads a builder allows.
 *
 * <p>Allowed is what the load groups allow and the wiring makes possible: loads behind one switch run together, a load that
 * nothing switches always runs. A combination sets the switches, outputs and commands its loads need, as the operating state
 * does in which each of them takes most; outputs at the largest duty of any state that lasts.
 *
 * @param situations one for each way the sources are found in the states that last
 * @param never      loads that run in no state that lasts and so in no combination
 * @param hasGroups  whether the harness has load groups: only then has its builder said what may run together
 * @param notes      what was left out or could not be held to the letter, in sentences
 */
public record Envelope(
        List<SituationEnvelope> situations, SortedSet<ComponentId> never, boolean hasGroups, List<Text> notes) {
    /** Nothing studied. */
    public static final Envelope NONE = new Envelope(List.of(), new TreeSet<>(), false, List.of());

    public Envelope {
        situations = List.copyOf(situations);
        never = Collections.unmodifiableSortedSet(new TreeSet<>(never));
        notes = List.copyOf(notes);
    }

    /** The situation in which a branch carries its largest RMS current; empty when it carries none in any. */
    public Optional<SituationEnvelope> hottest(BranchId branch) {
        return situations.stream()
                .filter(situation -> situation.branches().containsKey(branch))
                .max(Comparator.comparingDouble(
                        situation -> situation.branches().get(branch).rmsAmps()));
    }

    /** The situation in which a load's drop is largest; empty when it runs in none. */
    public Optional<SituationEnvelope> worstDrop(ComponentId load) {
        return situations.stream()
                .filter(situation -> situation.loads().containsKey(load))
                .max(Comparator.comparingDouble(
                        situation -> situation.loads().get(load).dropVolts()));
    }
}
