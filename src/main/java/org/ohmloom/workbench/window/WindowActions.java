package org.ohmloom.workbench.window;

import java.nio.file.Path;
import java.util.function.Consumer;
import org.ohmloom.workbench.desk.Document;

/**
 * What a window asks of those around it.
 *
 * @param another opens another window, empty
 * @param open    opens another window on a file
 * @param share   opens another window on the same document
 * @param close   closes this window after asking
 * @param quit    closes all windows after asking
 */
public record WindowActions(
        Runnable another, Consumer<Path> open, Consumer<Document> share, Runnable close, Runnable quit) {

    /** Where there is no window. */
    public static final WindowActions NONE =
            new WindowActions(() -> {}, file -> {}, document -> {}, () -> {}, () -> {});
}
