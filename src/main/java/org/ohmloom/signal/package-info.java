/**
 * Sensors, channels, bus topology and load.
 *
 * <p>Floor 4. JGraphT is imported here and in {@code graph} only.
 */
@NullMarked
package org.ohmloom.signal;

import org.jspecify.annotations.NullMarked;
