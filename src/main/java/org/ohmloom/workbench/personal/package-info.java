/**
 * What a person settles for themselves: look, size, font, keys; and the list of changes to go back in.
 *
 * <p>Floor 8, part of {@code workbench}.
 */
@NullMarked
package org.ohmloom.workbench.personal;

import org.jspecify.annotations.NullMarked;
