/**
 * What a person has settled about the program and wants found again: the look, recent files, the window's place.
 */
@NullMarked
package org.ohmloom.workbench.settings;

import org.jspecify.annotations.NullMarked;
