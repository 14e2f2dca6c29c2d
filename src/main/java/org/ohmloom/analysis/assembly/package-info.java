/**
 * One assembly of a harness by itself: what belongs to it and touches it, with the results of the whole.
 *
 * <p>Floor 5.
 */
@NullMarked
package org.ohmloom.analysis.assembly;

import org.jspecify.annotations.NullMarked;
