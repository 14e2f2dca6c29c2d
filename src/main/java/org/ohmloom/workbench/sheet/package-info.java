/**
 * A table edited in place: columns, cells, editors, and blocks taken in from and given to a spreadsheet.
 */
@NullMarked
package org.ohmloom.workbench.sheet;

import org.jspecify.annotations.NullMarked;
