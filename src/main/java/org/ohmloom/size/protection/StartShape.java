package org.ohmloom.size.protection;

import java.util.Optional;
import org.ohmloom.model.StateId;
import org.ohmloom.words.Text;

/** The current of a protective device over the time a load behind it starts. */
public sealed interface StartShape permits EnteredStart, FollowedStart {

    /** The largest current, A. */
    double peakAmps();

    /** The current that stays, A. */
    double runningAmps();

    /** Time constant by the load's own numbers, s. */
    double decaySeconds();

    /** Time for which it is above a current, s; infinite when it stays above. */
    double secondsAbove(double amps);

    /** Integral of its square while it is above a current, A2s; infinite when it stays above. */
    double squareAbove(double amps);

    /** The current at an instant, A; the start is at 0 s. */
    double ampsAt(double seconds);

    /** The instant from which nothing changes any more, s. */
    double lastSeconds();

    /** Where it comes from, in words. */
    Text text();

    /** The operating state it was followed in; empty for one that was not. */
    Optional<StateId> state();
}
