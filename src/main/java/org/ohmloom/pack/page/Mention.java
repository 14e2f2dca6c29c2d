package org.ohmloom.pack.page;

import org.ohmloom.draw.Extent;

/**
 * A place on a page that names an element of the harness.
 *
 * @param page   the page, from 0
 * @param extent where on it
 * @param name   what it says: an id, or a wire end such as "X1.3"
 * @param home   whether the element is described here, so that others lead here
 */
public record Mention(int page, Extent extent, String name, boolean home) {}
