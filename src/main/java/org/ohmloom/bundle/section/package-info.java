/**
 * Diameters, packing, coverings, bend radius, cut length, mass: the cross-section of each bundle segment and what goes over it.
 *
 * <p>Floor 3.
 */
@NullMarked
package org.ohmloom.bundle.section;

import org.jspecify.annotations.NullMarked;
