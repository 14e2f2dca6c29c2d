package org.ohmloom.solve.run;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.StateId;
import org.ohmloom.words.Text;

/**
 * One run over time: in an operating state something starts at 0 s while everything else runs steadily.
 *
 * <p>The lists of values in it, its starters, sags and surges have one entry for each entry of {@code seconds}; straight lines
 * between them keep within {@link #SERIES_ERROR_SHARE} of the largest value of each.
 *
 * @param state           the operating state
 * @param kind            whether one thing starts or all of them together
 * @param cranking        whether the engine is cranked in that state
 * @param outcome         how it ended
 * @param told            that in words
 * @param durationSeconds how long the run goes, s; by then what started runs as it will for good
 * @param seconds         instants after the start, s, the first 0
 * @param starters        what starts
 * @param sags            supply of every other load that draws and of every control unit, lowest share of its minimum or of
 *                        its voltage before first
 * @param surges          current of every protective device the start goes through
 * @param dropOuts        relays whose coil gets less than their drop-out voltage; the run goes on as if they held
 * @param limited         outputs whose electronic limit holds the current down
 * @param solutions       how many times the network was solved
 */
public record StartUp(
        StateId state,
        Kind kind,
        boolean cranking,
        Outcome outcome,
        Text told,
        double durationSeconds,
        List<Double> seconds,
        List<StarterTrace> starters,
        List<SupplySag> sags,
        List<DeviceSurge> surges,
        List<RelayDropOut> dropOuts,
        List<LimitedOutput> limited,
        int solutions) {

    /** How it went, in English, as a sentence. */
    public String sentence() {
        return told.english();
    }

    /** How far straight lines between the instants may be off, as a share of the largest value. */
    public static final double SERIES_ERROR_SHARE = 0.01;

    /** What starts. */
    public enum Kind {
        /** One load or control unit. */
        ONE,
        /** All loads of the state at the same instant; control units are on before. */
        TOGETHER
    }

    /** How a run ended. */
    public enum Outcome {
        /** Everything that started runs as it will for good. */
        SETTLED,
        /** A motor stands still: what reaches it does not turn it. */
        STALLED,
        /** Cut off before everything had settled. */
        CUT_OFF,
        /** Loads of constant power ask for more than can be brought at that instant. */
        NO_OPERATING_POINT
    }

    public StartUp {
        seconds = List.copyOf(seconds);
        starters = List.copyOf(starters);
        sags = List.copyOf(sags);
        surges = List.copyOf(surges);
        dropOuts = List.copyOf(dropOuts);
        limited = List.copyOf(limited);
    }

    /** What starts, when it is one thing. */
    public Optional<ComponentId> starter() {
        return kind == Kind.ONE ? starters.stream().map(StarterTrace::id).findFirst() : Optional.empty();
    }

    /** The supply of a load or control unit. */
    public Optional<SupplySag> sag(ComponentId id) {
        return sags.stream().filter(sag -> sag.id().equals(id)).findFirst();
    }

    /** The current of a protective device. */
    public Optional<DeviceSurge> surge(ComponentId device) {
        return surges.stream().filter(surge -> surge.device().equals(device)).findFirst();
    }
}
