/**
 * Charts of the results of an analysis: start-up, protection, charge, duty. Window and report show the same ones.
 */
@NullMarked
package org.ohmloom.draw.study;

import org.jspecify.annotations.NullMarked;
