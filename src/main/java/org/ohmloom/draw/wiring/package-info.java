/**
 * The wiring diagram: circuit by circuit from source to load to return, every wire a line of its own between symbols with their
 * terminals, on as many sheets as it needs.
 */
@NullMarked
package org.ohmloom.draw.wiring;

import org.jspecify.annotations.NullMarked;
