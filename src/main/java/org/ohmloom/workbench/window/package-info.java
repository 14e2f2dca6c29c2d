/**
 * The window itself: menus, bars, the start screen, dialogs, and the questions before it closes.
 */
@NullMarked
package org.ohmloom.workbench.window;

import org.jspecify.annotations.NullMarked;
