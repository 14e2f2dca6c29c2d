package org.ohmloom.pack.page;

import java.util.Optional;
import org.ohmloom.draw.Extent;

/**
 * A place on a page that leads elsewhere when it is pressed.
 *
 * @param page   the page, from 0
 * @param extent where on it
 * @param file   the file it leads to, beside this one; empty for this file
 * @param place  name of the place there
 */
public record Link(int page, Extent extent, Optional<String> file, String place) {}
