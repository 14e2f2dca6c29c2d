/**
 * Channels: which sensor is read by which pin of which unit, and how often its value is sent.
 *
 * <p>Floor 4.
 */
@NullMarked
package org.ohmloom.signal.channel;

import org.jspecify.annotations.NullMarked;
