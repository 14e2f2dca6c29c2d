/**
 * Conductor temperature and ampacity; bundle, ambient, altitude.
 *
 * <p>Floor 3.
 */
@NullMarked
package org.ohmloom.heat;

import org.jspecify.annotations.NullMarked;
