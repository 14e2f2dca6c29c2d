/**
 * Drawing on the layout board as edits: new things at a place, clips to copy and paste, and where things stand.
 *
 * <p>Floor 1.
 */
@NullMarked
package org.ohmloom.edit.board;

import org.jspecify.annotations.NullMarked;
