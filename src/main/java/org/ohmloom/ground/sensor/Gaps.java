package org.ohmloom.ground.sensor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ohmloom.model.ComponentId;

/** What could not be judged, gathered by what is missing. */
final class Gaps {

    private static final int MOST_NAMED = 8;

    private final Map<String, Set<ComponentId>> byReason = new LinkedHashMap<>();

    /** Adds a sensor to those that miss something. */
    void add(String reason, ComponentId sensor) {
        byReason.computeIfAbsent(reason, each -> new TreeSet<>()).add(sensor);
    }

    /** A sentence for each thing missing. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        byReason.forEach((reason, sensors) -> {
            List<String> names = sensors.stream().map(ComponentId::value).toList();
            String named = String.join(", ", names.subList(0, Math.min(MOST_NAMED, names.size())));
            int more = names.size() - MOST_NAMED;
            sentences.add(SensorStudy.NOT_CHECKED + " " + reason + " " + named
                    + (more > 0 ? " and " + more + " more" : "") + ".");
        });
        return sentences;
    }
}
