/**
 * Pictures of the cross-sections of bundles.
 *
 * <p>Floor 6.
 */
@NullMarked
package org.ohmloom.draw.section;

import org.jspecify.annotations.NullMarked;
