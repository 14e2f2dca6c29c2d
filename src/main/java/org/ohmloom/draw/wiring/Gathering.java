package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Pairs of cavities of one in-line connector that came into one column are drawn as one symbol. */
final class Gathering {

    private final Map<String, Symbol> nodes = new LinkedHashMap<>();
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final List<Link> links = new ArrayList<>();

    Gathering(Map<String, Symbol> given, Ranks ranks) {
        Map<String, String> gathered = new LinkedHashMap<>();
        given.forEach((key, symbol) -> {
            int column = ranks.column(key);
            String own = symbol.kind() == Symbol.Kind.CONNECTOR ? symbol.key() + "\t" + column : key;
            gathered.put(key, own);
            nodes.putIfAbsent(own, symbol);
            columns.put(own, column);
        });
        for (Link link : ranks.links()) {
            links.add(link.between(
                    gathered.getOrDefault(link.from(), link.from()), gathered.getOrDefault(link.to(), link.to())));
        }
    }

    Map<String, Symbol> nodes() {
        return nodes;
    }

    int column(String key) {
        return columns.getOrDefault(key, 0);
    }

    List<Link> links() {
        return links;
    }
}
