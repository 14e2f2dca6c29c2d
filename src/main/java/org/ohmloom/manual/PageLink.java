package org.ohmloom.manual;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A link or a picture on a page.
 *
 * @param target  where it leads, as it stands in the page
 * @param from    id of the page it stands on
 * @param picture whether it shows a picture
 */
public record PageLink(String target, String from, boolean picture) {

    private static final String ENDING = ".md";

    /** The page it leads to, if it leads to one of the manual. */
    public Optional<String> page() {
        String file = target.replaceFirst("#.*$", "");
        return isInside() && file.endsWith(ENDING)
                ? Optional.of(below(file.substring(0, file.length() - ENDING.length())))
                : Optional.empty();
    }

    /** The picture it shows, as a file below the manual's folder. */
    public Optional<String> pictureFile() {
        return picture && isInside() ? Optional.of(below(target)) : Optional.empty();
    }

    private boolean isInside() {
        return !target.contains(":");
    }

    /** A target seen from the manual's folder. */
    private String below(String file) {
        Path folder = Path.of("/" + from).getParent();
        return folder.resolve(file).normalize().toString().replace('\\', '/').replaceFirst("^/", "");
    }
}
