/**
 * Diameters, packing, coverings, bend radius, cut length, mass: where splices lie best along the bundle.
 *
 * <p>Floor 3.
 */
@NullMarked
package org.ohmloom.bundle.splice;

import org.jspecify.annotations.NullMarked;
