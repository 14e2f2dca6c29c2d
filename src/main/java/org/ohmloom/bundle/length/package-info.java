/**
 * Diameters, packing, coverings, bend radius, cut length, mass: how long each wire is cut, part by part.
 *
 * <p>Floor 3.
 */
@NullMarked
package org.ohmloom.bundle.length;

import org.jspecify.annotations.NullMarked;
