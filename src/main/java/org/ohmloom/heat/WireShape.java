package org.ohmloom.heat;

import org.ohmloom.heat.balance.RoundWire;

/**
 * A wire as the heat balance sees it, and how its dimensions were found.
 *
 * @param wire  its dimensions
 * @param words in words, for example "outside 2.4 mm as listed, insulation 0.17 W/mK"
 */
public record WireShape(RoundWire wire, String words) {}
