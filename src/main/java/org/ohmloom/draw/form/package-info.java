/**
 * The form board: the harness at 1:1, every segment at its true length, laid without crossings on a board of a given size, and cut
 * into tiles for the paper at hand. Pure layout in millimetres.
 */
@NullMarked
package org.ohmloom.draw.form;

import org.jspecify.annotations.NullMarked;
