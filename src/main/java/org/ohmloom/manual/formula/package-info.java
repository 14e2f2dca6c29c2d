/**
 * The formulas the results cite, each with its symbols, its source and a worked example that the program's own code computes again.
 *
 * <p>Part of floor 7.
 */
@NullMarked
package org.ohmloom.manual.formula;

import org.jspecify.annotations.NullMarked;
