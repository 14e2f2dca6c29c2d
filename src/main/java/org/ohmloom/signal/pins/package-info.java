/**
 * Which sensor or output goes to which pin: the cheapest allocation by what each pin can be, or why there is none.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.signal.pins;

import org.jspecify.annotations.NullMarked;
