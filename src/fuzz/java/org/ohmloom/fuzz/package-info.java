/**
 * Coverage-guided fuzzing of what is read from outside: a target gets bytes nobody has thought of, and must refuse them with the
 * one exception it declares, in one line, or take them so that they come through whole.
 */
@NullMarked
package org.ohmloom.fuzz;

import org.jspecify.annotations.NullMarked;
