/**
 * The envelope: the worst current of every branch and the worst drop of every load over all combinations of loads a
 * builder allows, with the combination, a bound and whether it is proven.
 */
@NullMarked
package org.ohmloom.solve.envelope;

import org.jspecify.annotations.NullMarked;
