/**
 * Keeps the harness aside while it is worked on, and offers what a stopped program has left.
 *
 * <p>Floor 8, part of {@code workbench}.
 */
@NullMarked
package org.ohmloom.workbench.recovery;

import org.jspecify.annotations.NullMarked;
