/**
 * Operating states as a matrix: what each sets, typed in the cells, and two of them side by side.
 */
@NullMarked
package org.ohmloom.workbench.states;

import org.jspecify.annotations.NullMarked;
