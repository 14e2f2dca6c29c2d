/**
 * Named edits {@code Harness -> Harness}, undo history, the one mutable session.
 *
 * <p>Floor 1.
 */
@NullMarked
package org.ohmloom.edit;

import org.jspecify.annotations.NullMarked;
