/**
 * A new harness: empty, or laid out from a short guided list of supply, places, loads, sensors and control unit.
 *
 * <p>Floor 8, part of {@code workbench}.
 */
@NullMarked
package org.ohmloom.workbench.guide;

import org.jspecify.annotations.NullMarked;
