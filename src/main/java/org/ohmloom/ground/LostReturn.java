package org.ohmloom.ground;

import java.util.List;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.StateId;

/**
 * What happens in one state when one return, or one fuse, opens.
 *
 * @param opened    the ground point, wire, strap or protective device that opens
 * @param state     the operating state
 * @param detours   where the current goes instead: members whose current grows, largest growth first
 * @param overLimit those of them that carry more than they may
 * @param fedBackwards loads that get current the wrong way round
 * @param dead      loads that ran and no longer do
 */
public record LostReturn(
        ElementId opened,
        StateId state,
        List<Detour> detours,
        List<Overload> overLimit,
        List<ComponentId> fedBackwards,
        List<ComponentId> dead) {

    public LostReturn {
        detours = List.copyOf(detours);
        overLimit = List.copyOf(overLimit);
        fedBackwards = List.copyOf(fedBackwards);
        dead = List.copyOf(dead);
    }

    /** Whether it overloads something or feeds a load backwards; that loads stop is what an open circuit does. */
    public boolean isHarmful() {
        return !overLimit.isEmpty() || !fedBackwards.isEmpty();
    }

    /**
     * A way the current takes instead.
     *
     * @param member     the wire, strap, ground point or component
     * @param beforeAmps magnitude of its current with everything whole, A
     * @param afterAmps  magnitude afterwards, A
     */
    public record Detour(ElementId member, double beforeAmps, double afterAmps) {

        /** How much larger it gets, A. */
        public double growthAmps() {
            return afterAmps - beforeAmps;
        }
    }

    /**
     * A sensor return, shield or control-unit pin beyond its limit.
     *
     * @param member    what it is
     * @param amps      current afterwards, A
     * @param limitAmps most it may carry, A
     * @param source    where the limit comes from
     */
    public record Overload(ElementId member, double amps, double limitAmps, String source) {}
}
