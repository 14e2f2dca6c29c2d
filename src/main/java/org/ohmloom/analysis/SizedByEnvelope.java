package org.ohmloom.analysis;

import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.ConductorChooser;
import org.ohmloom.size.Governor;
import org.ohmloom.size.ProvisionalSizes;
import org.ohmloom.size.Requirement;
import org.ohmloom.size.SizingInput;
import org.ohmloom.solve.envelope.Envelope;

/**
 * The sizes of a harness held against the envelope.
 *
 * <p>Where the harness has load groups, a wire that needs more by itself with the worst combinations among the states than
 * with the named states alone gets that size; a larger size for voltage drop only while some load's drop in the envelope is
 * over its limit. Wires without a size then grow and the states are solved anew, until nothing grows.
 *
 * @param sized    the sizes, and what each wire needs
 * @param envelope the envelope with these sizes
 * @param input    what the choice of protective devices rests on: the named states and the worst combinations
 */
record SizedByEnvelope(JointSized sized, Envelope envelope, SizingInput input) {

    private static final int MOST_ROUNDS = 6;

    static SizedByEnvelope of(Bench bench, Protection protection, JointSized start) {
        JointSized sized = start;
        for (int round = 1; ; round++) {
            Envelope envelope = Envelopes.of(bench, sized.sizes(), sized.heated());
            SizingInput named = SizesByWire.input(bench, protection, sized.heated(), sized.sizes());
            SizingInput widened = EnvelopeSizing.widened(named, envelope);
            if (widened == named) {
                return new SizedByEnvelope(sized, envelope, named);
            }
            SortedMap<WireId, ConductorChoice> needs = needs(sized, named, widened, envelope);
            JointSized held = new JointSized(sized.sizes(), sized.heated(), sized.choice(), needs);
            ProvisionalSizes grown = sized.sizes().grow(needs);
            if (grown == sized.sizes() || round == MOST_ROUNDS) {
                return new SizedByEnvelope(held, envelope, widened);
            }
            sized = new JointSized(grown, HeatedSolutions.solve(bench, grown), sized.choice(), needs);
        }
    }

    /** What each wire needs: as chosen, or by the envelope where that asks for more. */
    private static SortedMap<WireId, ConductorChoice> needs(
            JointSized sized, SizingInput named, SizingInput widened, Envelope envelope) {
        boolean dropsCount = envelope.situations().stream()
                .flatMap(situation -> situation.loads().values().stream())
                .anyMatch(load -> load.dropVolts() > load.limitVolts());
        AtMostOnce<SortedMap<WireId, ConductorChoice>> byNamed =
                new AtMostOnce<>(() -> new ConductorChooser(named).chooseAll());
        SortedMap<WireId, ConductorChoice> needs = new TreeMap<>(sized.conductors());
        new ConductorChooser(widened).chooseAll().forEach((wire, choice) -> {
            boolean asks = asksMore(choice, needs.get(wire))
                    && asksMore(choice, byNamed.get().get(wire));
            if (asks && (dropsCount || choice.governing().governor() != Governor.VOLTAGE_DROP)) {
                needs.put(wire, choice);
            } else {
                needs.computeIfPresent(wire, (id, chosen) -> withAmpacityOf(choice, chosen));
            }
        });
        return needs;
    }

    /** A choice with the ampacity requirement of another: the largest current is that of the envelope. */
    private static ConductorChoice withAmpacityOf(ConductorChoice other, ConductorChoice choice) {
        Optional<Requirement> ampacity = other.requirements().stream()
                .filter(each -> each.governor() == Governor.AMPACITY)
                .findFirst();
        if (ampacity.isEmpty()) {
            return choice;
        }
        UnaryOperator<Requirement> replaced = each -> each.governor() == Governor.AMPACITY ? ampacity.get() : each;
        return new ConductorChoice(
                choice.wire(),
                choice.gauge(),
                replaced.apply(choice.governing()),
                choice.requirements().stream().map(replaced).toList());
    }

    /** Whether one choice asks for a larger size than another; no size at all asks for the most. */
    private static boolean asksMore(ConductorChoice one, ConductorChoice other) {
        if (other.gauge().isEmpty()) {
            return false;
        }
        return one.gauge().isEmpty()
                || one.gauge().get().compareTo(other.gauge().get()) > 0;
    }
}
