/**
 * One snapshot in, one immutable {@code Analysis} out; cancellable; iterates solve and heat to agreement.
 *
 * <p>Floor 5. Runs the rules, so it may import {@code review}, its neighbour on the floor.
 */
@NullMarked
package org.ohmloom.analysis;

import org.jspecify.annotations.NullMarked;
