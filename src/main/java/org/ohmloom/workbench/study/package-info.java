/**
 * The studies beside the layout: one tab each, with rows, pictures and numbers by state.
 */
@NullMarked
package org.ohmloom.workbench.study;

import org.jspecify.annotations.NullMarked;
