package org.ohmloom.solve.run;

import java.util.List;
import org.ohmloom.graph.BranchId;
import org.ohmloom.solve.WarmNetwork;
import org.ohmloom.words.Text;

/**
 * Something whose current changes with time after it has been switched on, by a state of its own (a speed, a voltage) or by
 * the time alone.
 */
interface Moving {

    /** Its branches; their currents together are its current. */
    List<BranchId> branches();

    /** Time constant by its own numbers, s. */
    double timeConstantSeconds();

    /** How its current comes about, with its numbers. */
    Text method();

    /** What it does in a start. */
    Manner manner();

    /** Whether it has a state that must be followed; otherwise it goes by the time alone. */
    default boolean hasState() {
        return true;
    }

    /** Gives its branches the laws they have at a time after the start and in a state. */
    void apply(WarmNetwork network, double seconds, double state);

    /** Makes its branches draw nothing. */
    void switchOff(WarmNetwork network);

    /** Change of the state per second in the network as it was last solved. */
    double rate(WarmNetwork network, double state);

    /** What is left of the start: 1 at first, 0 when it runs as it will for good. */
    double unrest(WarmNetwork network, double seconds, double state);

    /** Size of its state by which an error is judged. */
    default double stateSize(WarmNetwork network) {
        return 1;
    }

    /** Whether its state does not move any more. */
    default boolean isFrozen() {
        return false;
    }

    /** Takes note of how much of its start is left at an instant the run has got to. */
    default void reached(double unrest) {}

    /** Whether it has not got going at all although nothing moves any more. */
    default boolean isStalled(double state) {
        return false;
    }
}
