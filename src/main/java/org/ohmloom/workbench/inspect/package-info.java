/**
 * The inspector: the selected thing, its numbers in every state, and why its size was chosen.
 */
@NullMarked
package org.ohmloom.workbench.inspect;

import org.jspecify.annotations.NullMarked;
