/**
 * Ways over the bundle segments and through in-line pairs of connectors, for planning and for wiring alike.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.signal.way;

import org.jspecify.annotations.NullMarked;
