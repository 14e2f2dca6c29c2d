package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Scene;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.pack.page.Bookmark;

/** The outline of a document of drawings: its sheets, and under each the connectors it shows. */
final class SheetBookmarks {
    private SheetBookmarks() {}

    static List<Bookmark> of(Harness harness, List<Scene> sheets) {
        List<Bookmark> bookmarks = new ArrayList<>();
        for (int page = 0; page < sheets.size(); page++) {
            int at = page;
            List<Bookmark> connectors = sheets.get(page).elements().stream()
                    .map(id -> harness.connectors().find(new ConnectorId(id)))
                    .flatMap(Optional::stream)
                    .sorted(Comparator.comparing(Connector::id))
                    .map(connector -> new Bookmark(connector.id() + "  " + connector.name(), at))
                    .toList();
            bookmarks.add(new Bookmark("Sheet " + (page + 1), page, connectors));
        }
        return bookmarks;
    }
}
