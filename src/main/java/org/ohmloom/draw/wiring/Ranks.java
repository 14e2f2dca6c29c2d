package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The column of each symbol: right of all that leads to it. Lines that would close a ring are turned round first. */
final class Ranks {

    private final List<Link> links;
    private final Map<String, Integer> columns = new LinkedHashMap<>();

    Ranks(Collection<String> keys, List<Link> given) {
        this.links = acyclic(keys, given);
        Map<String, List<Link>> out = byKey(links, true);
        Map<String, List<Link>> in = byKey(links, false);
        List<String> order = sorted(keys, out, in);
        for (String key : order) {
            int most = in.getOrDefault(key, List.of()).stream()
                    .mapToInt(link -> columns.getOrDefault(link.from(), 0) + 1)
                    .max()
                    .orElse(0);
            columns.put(key, most);
        }
        for (int k = order.size() - 1; k >= 0; k--) {
            String key = order.get(k);
            int ins = in.getOrDefault(key, List.of()).size();
            List<Link> leaving = out.getOrDefault(key, List.of());
            if (leaving.size() > ins) {
                int least = leaving.stream()
                        .mapToInt(link -> columns.getOrDefault(link.to(), 0) - 1)
                        .min()
                        .orElse(0);
                columns.put(key, Math.max(least, columns.getOrDefault(key, 0)));
            }
        }
        int first = columns.values().stream().mapToInt(column -> column).min().orElse(0);
        columns.replaceAll((key, column) -> column - first);
    }

    List<Link> links() {
        return links;
    }

    int column(String key) {
        return columns.getOrDefault(key, 0);
    }

    /** Symbols in an order in which every line leads onwards. */
    private static List<String> sorted(
            Collection<String> keys, Map<String, List<Link>> out, Map<String, List<Link>> in) {
        Map<String, Integer> waiting = new HashMap<>();
        List<String> order = new ArrayList<>();
        for (String key : keys) {
            int count = in.getOrDefault(key, List.of()).size();
            waiting.put(key, count);
            if (count == 0) {
                order.add(key);
            }
        }
        for (int k = 0; k < order.size(); k++) {
            for (Link link : out.getOrDefault(order.get(k), List.of())) {
                if (waiting.merge(link.to(), -1, Integer::sum) == 0) {
                    order.add(link.to());
                }
            }
        }
        return order;
    }

    private static List<Link> acyclic(Collection<String> keys, List<Link> links) {
        Map<String, List<Link>> out = byKey(links, true);
        Set<String> done = new HashSet<>();
        Set<Link> turned = new HashSet<>();
        List<String> starts = new ArrayList<>();
        Map<String, List<Link>> in = byKey(links, false);
        keys.stream().filter(key -> !in.containsKey(key)).forEach(starts::add);
        keys.stream().filter(in::containsKey).forEach(starts::add);
        for (String start : starts) {
            walk(start, out, done, turned);
        }
        return links.stream()
                .map(link -> turned.contains(link) ? link.turned() : link)
                .toList();
    }

    private static void walk(String start, Map<String, List<Link>> out, Set<String> done, Set<Link> turned) {
        List<String> path = new ArrayList<>(List.of(start));
        List<Integer> next = new ArrayList<>(List.of(0));
        Set<String> onPath = new HashSet<>(path);
        if (done.contains(start)) {
            return;
        }
        while (!path.isEmpty()) {
            int last = path.size() - 1;
            String here = path.get(last);
            List<Link> leaving = out.getOrDefault(here, List.of());
            int k = next.get(last);
            if (k == leaving.size()) {
                done.add(here);
                onPath.remove(here);
                path.remove(last);
                next.remove(last);
                continue;
            }
            next.set(last, k + 1);
            Link link = leaving.get(k);
            if (onPath.contains(link.to())) {
                turned.add(link);
            } else if (!done.contains(link.to())) {
                path.add(link.to());
                next.add(0);
                onPath.add(link.to());
            }
        }
    }

    private static Map<String, List<Link>> byKey(List<Link> links, boolean from) {
        Map<String, List<Link>> found = new HashMap<>();
        links.forEach(link -> found.computeIfAbsent(from ? link.from() : link.to(), key -> new ArrayList<>())
                .add(link));
        return found;
    }
}
