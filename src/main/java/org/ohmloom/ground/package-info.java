/**
 * The return path study: loops, shared returns, offsets, sensor error.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.ground;

import org.jspecify.annotations.NullMarked;
