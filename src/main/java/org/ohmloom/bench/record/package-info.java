/** Takes measured values out of a filled-in test sheet: which columns say what, in which unit, and where a cell is wrong. */
@NullMarked
package org.ohmloom.bench.record;

import org.jspecify.annotations.NullMarked;
