/**
 * What wires that switch put onto signal wires beside them, by textbook formulas.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.ground.coupling;

import org.jspecify.annotations.NullMarked;
