/**
 * Whether the plan of the pins holds: against the wires that are there, against what each pin can be, names, and shared currents.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.signal.plan;

import org.jspecify.annotations.NullMarked;
