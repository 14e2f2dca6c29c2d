/**
 * Diameters, packing, coverings, bend radius, cut length, mass.
 *
 * <p>Floor 3.
 */
@NullMarked
package org.ohmloom.bundle;

import org.jspecify.annotations.NullMarked;
