/**
 * The question how to write the build pack, and the writing of it beside the event thread.
 */
@NullMarked
package org.ohmloom.workbench.export;

import org.jspecify.annotations.NullMarked;
