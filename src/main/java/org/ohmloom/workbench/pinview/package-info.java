/**
 * The cavities of a connector as they lie, wires moved about in them by mouse or keyboard.
 */
@NullMarked
package org.ohmloom.workbench.pinview;

import org.jspecify.annotations.NullMarked;
