/**
 * Quantities: parsing "2.5 mm2", "14 AWG", "10 ft", "4,7 kOhm"; formatting with the right digits.
 *
 * <p>Floor 0: may use {@code words} and nothing else of ours.
 */
@NullMarked
package org.ohmloom.units;

import org.jspecify.annotations.NullMarked;
