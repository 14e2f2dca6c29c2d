/**
 * Canvases that show scenes: the layout of the harness, its zoom, its pointer and its keys.
 */
@NullMarked
package org.ohmloom.workbench.canvas;

import org.jspecify.annotations.NullMarked;
