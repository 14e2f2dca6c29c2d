/**
 * Pure layout to a {@code Scene} in millimetres; one painter to any {@code Graphics2D}; hit testing.
 *
 * <p>Floor 6. java.awt is imported from here down the table; javax.swing not before {@code workbench}.
 */
@NullMarked
package org.ohmloom.draw;

import org.jspecify.annotations.NullMarked;
