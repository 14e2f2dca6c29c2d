/**
 * The currents of a harness as a picture: from the sources on the left over devices and splices through the loads in the middle and
 * back over the returns to the right, each wire as wide as its current.
 */
@NullMarked
package org.ohmloom.draw.flow;

import org.jspecify.annotations.NullMarked;
