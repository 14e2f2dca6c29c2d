/**
 * The cross-section of a bundle: round wires of any diameters drawn together as closely as they go.
 *
 * <p>Floor 3.
 */
@NullMarked
package org.ohmloom.bundle.packing;

import org.jspecify.annotations.NullMarked;
