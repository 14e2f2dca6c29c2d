package org.ohmloom.ground;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.ReturnLoop;
import org.ohmloom.model.StateId;
import org.ohmloom.words.Text;

/**
 * One loop of the return network with what flows in it.
 *
 * @param loop          its members in order
 * @param ohms          resistance round it in the state it is largest in, ohm; 0 without a state
 * @param ampsByState   mean current of each member along the loop's direction in each state, A, in the order of the members
 * @param intended      the reason why it is meant to be, when a person said so
 * @param stray         the largest load return current in a member meant only for signals, shield or case
 * @param enclosed      the area it encloses, where the harness tells one
 * @param field         what an alternating field drives in it, when an area is known and the person stated a field
 */
public record LoopReading(
        ReturnLoop loop,
        double ohms,
        SortedMap<StateId, List<Double>> ampsByState,
        Optional<String> intended,
        Optional<Stray> stray,
        Optional<Enclosed> enclosed,
        Optional<FieldPickUp> field) {

    public LoopReading {
        ampsByState = Collections.unmodifiableSortedMap(new TreeMap<>(ampsByState));
    }

    /**
     * Load return current where none should flow.
     *
     * @param member the member meant only for signals, shield or case
     * @param state  the state it is largest in
     * @param amps   magnitude of that current, mean, A
     * @param onAmps its largest value, A
     */
    public record Stray(BranchId member, StateId state, double amps, double onAmps) {}

    /**
     * The area of a loop and the inductance that goes with it.
     *
     * @param squareMetres area, m2, 0 or more
     * @param how          what the area is that of, in words
     * @param henries      inductance of the loop, H, when it can be told
     * @param formula      the formula of the inductance, or why there is none
     */
    public record Enclosed(double squareMetres, Text how, OptionalDouble henries, Text formula) {}

    /**
     * What an alternating field does: V = 2 pi f B A (Faraday's law, field at right angles to the loop), I = V / |R + j w L|.
     *
     * @param tesla flux density, T RMS
     * @param hertz frequency, Hz
     * @param volts induced voltage, V RMS
     * @param amps  current it drives round the loop, A RMS; by its resistance alone where the inductance is not known
     */
    public record FieldPickUp(double tesla, double hertz, double volts, double amps) {}
}
