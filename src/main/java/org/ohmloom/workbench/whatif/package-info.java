/**
 * What if: a change tried on a side copy, what it does to the results, and whether to keep it.
 */
@NullMarked
package org.ohmloom.workbench.whatif;

import org.jspecify.annotations.NullMarked;
