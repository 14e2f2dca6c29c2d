package org.ohmloom.workbench.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The documents that lie on the desks of all windows, so that a file opened in two windows is one document there: what is
 * edited in one is seen in the other, and nothing is saved over anything. Belongs to the event thread.
 */
public final class OpenDocuments {

    private final List<Desk> desks = new ArrayList<>();
    private final Map<Desk, Runnable> listeners = new LinkedHashMap<>();

    /** Counts a desk in. */
    public void add(Desk desk) {
        desks.add(desk);
        desk.listen(topic -> {
            if (topic == Topic.DOCUMENT && desks.contains(desk)) {
                tell();
            }
        });
    }

    /** Counts a desk out: its window is gone. */
    public void remove(Desk desk) {
        desks.remove(desk);
        listeners.remove(desk);
        tell();
    }

    /** Calls a listener whenever another document lies on any desk, until its own desk is counted out. */
    public void listen(Desk own, Runnable listener) {
        listeners.put(own, listener);
    }

    /** The documents that live in files and lie on other desks than that of the one who asks, by their files. */
    Map<Path, Document> byFile(Desk asking) {
        Map<Path, Document> found = new LinkedHashMap<>();
        desks.stream()
                .filter(desk -> desk != asking)
                .flatMap(desk -> lying(desk).stream())
                .forEach(document -> document.file().ifPresent(file -> found.putIfAbsent(file, document)));
        return found;
    }

    /** The document of a file under whatever name. Asks the file system, so not on the event thread. */
    static Optional<Document> under(Path file, Map<Path, Document> byFile) {
        return byFile.entrySet().stream()
                .filter(each -> same(each.getKey(), file))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** Whether a document lies on another desk than that of the one who asks. */
    boolean lies(Document document, Desk asking) {
        return desks.stream().anyMatch(desk -> desk != asking && lying(desk).equals(Optional.of(document)));
    }

    /** Whether the document on a desk, or what it is a side copy of, lies on another desk too. */
    public boolean isElsewhere(Desk asking) {
        Optional<Document> mine = lying(asking);
        return mine.isPresent()
                && desks.stream().anyMatch(desk -> desk != asking && lying(desk).equals(mine));
    }

    /** The results of a document that lies on another desk too, if those there are of the harness as it is. */
    Results resultsOf(Document document, Desk asking) {
        return desks.stream()
                .filter(desk -> desk != asking && desk.document().equals(Optional.of(document)) && desk.isCurrent())
                .map(Desk::results)
                .findFirst()
                .orElse(Results.NONE);
    }

    /** What lies on a desk; of a side copy its original. */
    private static Optional<Document> lying(Desk desk) {
        return desk.document().map(document -> document.original().orElse(document));
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException gone) {
            return false;
        }
    }

    private void tell() {
        List.copyOf(listeners.values()).forEach(Runnable::run);
    }
}
