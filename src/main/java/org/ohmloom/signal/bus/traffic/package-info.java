/**
 * What is sent on a data bus: channels put into messages, the load of the bus, and how late each message can come.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.signal.bus.traffic;

import org.jspecify.annotations.NullMarked;
