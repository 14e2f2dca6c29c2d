package org.ohmloom.graph;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.model.ComponentId;

/**
 * How protective devices stand between one source and a place on a feed, with every switch and relay taken as able to
 * close.
 *
 * @param source   the source
 * @param bare     whether a way from the source reaches the place past no protective device at all
 * @param inSeries devices that stand on every way; any one of them opening parts the place from the source
 * @param nearest  the last device of each way; empty when the place is bare. One device on an ordinary feed; several
 *                 where feeds are joined behind their devices
 */
public record Guard(FeedSource source, boolean bare, SortedSet<ComponentId> inSeries, SortedSet<ComponentId> nearest) {

    public Guard {
        inSeries = Collections.unmodifiableSortedSet(new TreeSet<>(inSeries));
        nearest = Collections.unmodifiableSortedSet(new TreeSet<>(nearest));
    }
}
