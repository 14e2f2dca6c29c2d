package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.ohmloom.model.ComponentId;
import org.ohmloom.solve.SolveTexts;
import org.ohmloom.words.Text;

/**
 * Finds the worst current of every branch and the worst drop of every load over all allowed combinations of loads.
 *
 * <p>Exact for constant currents: superposition and a combinatorial maximum. Otherwise a bounded search from the linear
 * winner on; the values are always those of full solutions, the bounds are stated beside them. Deterministic: limits are
 * counts of steps, never time.
 */
public final class EnvelopeStudy {
    /** Most situations that are studied. */
    static final int MOST_SITUATIONS = 4;

    private EnvelopeStudy() {}

    /**
     * Studies a harness.
     *
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static Envelope of(EnvelopeInput input) {
        List<Text> notes = new ArrayList<>();
        boolean hasGroups = !input.harness().loadGroups().isEmpty();
        Takers takers = Takers.of(input.harness(), input.lasting(), input.solutions(), input.cancelled());
        List<SituationEnvelope> studied = new ArrayList<>();
        List<Situation> situations = Situation.of(input.harness(), input.lasting());
        for (Situation situation : situations) {
            if (studied.size() == MOST_SITUATIONS) {
                notes.add(SolveTexts.text("envelope.first-ways", MOST_SITUATIONS, situations.size()));
                break;
            }
            new SituationStudy(input, situation, takers).study(notes).ifPresent(studied::add);
        }
        if (!takers.never().isEmpty()) {
            notes.add(SolveTexts.text(
                    "envelope.never",
                    takers.never().stream().map(ComponentId::value).collect(Collectors.joining(", "))));
        }
        return new Envelope(
                studied, takers.never(), hasGroups, notes.stream().distinct().toList());
    }
}
