/**
 * A first harness from a few answers: supply, loads, sensors, control unit and where they sit; laid out, wired and sized.
 *
 * <p>Floor 5, part of {@code analysis}: the sizes come from the same choice that sizes any harness.
 */
@NullMarked
package org.ohmloom.analysis.start;

import org.jspecify.annotations.NullMarked;
