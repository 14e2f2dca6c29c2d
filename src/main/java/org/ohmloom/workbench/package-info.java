/**
 * The Swing workbench.
 *
 * <p>Floor 8. Swing and FlatLaf are imported here only.
 */
@NullMarked
package org.ohmloom.workbench;

import org.jspecify.annotations.NullMarked;
