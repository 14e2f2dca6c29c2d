package org.ohmloom.solve;

import java.util.Optional;
import org.ohmloom.graph.BranchId;

/**
 * Part of the network that shares no conductor with the rest, with how far its solution got.
 *
 * @param id       identity: the first of its points
 * @param status   how far the solution got
 * @param sentence the same for people
 * @param cause    the branch to blame when it is overloaded or did not settle
 * @param powered  whether a source in it is on
 */
public record Island(String id, IslandStatus status, String sentence, Optional<BranchId> cause, boolean powered) {}
