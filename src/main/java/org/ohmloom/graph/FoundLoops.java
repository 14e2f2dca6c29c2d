package org.ohmloom.graph;

import java.util.List;

/**
 * The loops of a return network.
 *
 * @param loops    independent loops; every other cycle is a sum of them
 * @param shortest whether no other choice of independent loops has fewer elements altogether, and among those with as few no
 *                 other less length; false where the network was too entangled to make sure
 */
public record FoundLoops(List<ReturnLoop> loops, boolean shortest) {

    public FoundLoops {
        loops = List.copyOf(loops);
    }
}
