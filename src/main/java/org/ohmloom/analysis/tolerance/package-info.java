/**
 * What the spreads of parts, loads and surroundings do to an analysed harness, and how much of it each of them does.
 *
 * <p>Floor 5, part of {@code analysis}: every draw is solved and heated like the harness itself.
 */
@NullMarked
package org.ohmloom.analysis.tolerance;

import org.jspecify.annotations.NullMarked;
