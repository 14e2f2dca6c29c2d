/**
 * The data bus: frames, how much of its time they take, and how late each message can come.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.signal.bus;

import org.jspecify.annotations.NullMarked;
