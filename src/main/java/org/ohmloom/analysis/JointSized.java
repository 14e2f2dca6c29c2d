package org.ohmloom.analysis;

import java.util.SortedMap;
import org.ohmloom.model.WireId;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.ProvisionalSizes;

/**
 * The sizes a harness is shown with.
 *
 * @param sizes      own sizes, and for wires without one the chosen ones
 * @param heated     the states solved with them
 * @param choice     how the open sizes were chosen together
 * @param conductors the size each wire needs, and why
 */
record JointSized(
        ProvisionalSizes sizes,
        HeatedSolutions heated,
        JointChoice choice,
        SortedMap<WireId, ConductorChoice> conductors) {}
