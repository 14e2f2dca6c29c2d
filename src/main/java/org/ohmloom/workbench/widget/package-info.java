/**
 * Small parts of the window that know nothing of harnesses: keys, tones, icons, labels, split panes.
 */
@NullMarked
package org.ohmloom.workbench.widget;

import org.jspecify.annotations.NullMarked;
