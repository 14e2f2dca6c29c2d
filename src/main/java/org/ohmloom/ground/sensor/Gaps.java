package org.ohmloom.ground.sensor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.ohmloom.model.ComponentId;
import org.ohmloom.words.Text;

/** What could not be judged, gathered by what is missing. */
final class Gaps {

    private final Map<Text, Set<ComponentId>> byReason = new LinkedHashMap<>();

    /** Adds a sensor to those that miss something. */
    void add(Text reason, ComponentId sensor) {
        byReason.computeIfAbsent(reason, each -> new TreeSet<>()).add(sensor);
    }

    /** One for each thing missing. */
    List<Unjudged> all() {
        List<Unjudged> all = new ArrayList<>();
        byReason.forEach((reason, sensors) -> all.add(Unjudged.of(
                Unjudged.Study.SENSORS, Unjudged.Reason.NOT_ENTERED, ReadingTexts.text("gap", reason), sensors)));
        return all;
    }
}
