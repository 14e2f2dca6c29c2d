/**
 * Joint choice of conductor sizes: the drop a load may lose is spent by all wires on its way together, so sizes are chosen
 * together, with a proven lower bound on the copper.
 *
 * <p>The currents are taken as solved, so that the drop of a load is a sum over wires of current times resistance. What is
 * chosen is verified by the full analysis (see {@code analysis}), since currents and temperatures move with sizes.
 */
@NullMarked
package org.ohmloom.size.joint;

import org.jspecify.annotations.NullMarked;
