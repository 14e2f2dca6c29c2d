package org.ohmloom.graph;

import org.ohmloom.model.ComponentId;

/**
 * Something that feeds conductors: a battery, alternator, charger or bench supply, or the output of a converter.
 *
 * @param branch    its branch
 * @param component the component
 * @param positive  the point of its positive terminal
 * @param converter whether it is the output of a converter, which limits its own current
 */
public record FeedSource(BranchId branch, ComponentId component, PointId positive, boolean converter) {}
