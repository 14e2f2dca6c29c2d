package org.ohmloom.graph;

import org.ohmloom.model.ComponentId;

/**
 * A protective device that a source reaches past no other one.
 *
 * @param device the device
 * @param way    the shortest way to it; its length is the distance along the conductor that nothing protects
 */
public record FirstDevice(ComponentId device, FeedWay way) {}
