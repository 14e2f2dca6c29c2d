package org.ohmloom.manual.formula;

import java.util.List;
import java.util.stream.Stream;

/** All formulas, by chapter. */
public final class Formulas {

    /** A chapter of formulas. */
    public record Topic(String title, List<Formula> formulas) {
        public Topic {
            formulas = List.copyOf(formulas);
        }
    }

    /** The chapters in their order. */
    public static final List<Topic> TOPICS = List.of(
            new Topic("Conductors", ConductorFormulas.ALL),
            new Topic("Heat", HeatFormulas.ALL),
            new Topic("Protection", ProtectionFormulas.ALL),
            new Topic("Batteries and alternators", BatteryFormulas.ALL),
            new Topic("Starts", StartFormulas.ALL),
            new Topic("Returns and loops", LoopFormulas.ALL),
            new Topic("Coupling", EdgeFormulas.ALL),
            new Topic("Sensors and buses", SignalFormulas.ALL),
            new Topic("Bundles", BundleFormulas.ALL));

    private Formulas() {}

    /** All formulas in order. */
    public static Stream<Formula> all() {
        return TOPICS.stream().flatMap(topic -> topic.formulas().stream());
    }
}
