/**
 * The lists: every kind of thing in a harness as a table, and what a typed cell changes.
 */
@NullMarked
package org.ohmloom.workbench.lists;

import org.jspecify.annotations.NullMarked;
