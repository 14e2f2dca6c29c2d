package org.ohmloom.analysis.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Setting;

/** The operating states of a first harness: all off, all on from the battery, all on with the alternator. */
final class StartStates {

    /** The control unit. */
    static final ComponentId UNIT = new ComponentId("U1");

    private final List<ComponentId> components = new ArrayList<>();
    private final List<OutputPin> outputs = new ArrayList<>();

    void load(ComponentId load) {
        components.add(load);
    }

    void component(ComponentId hand) {
        components.add(hand);
    }

    void output(String pin) {
        outputs.add(new OutputPin(UNIT, pin));
    }

    void build(StartDraft draft, Optional<ComponentId> alternator) {
        draft.add(OperatingState.of("all-off", "All off", EngineMode.OFF));
        OperatingState on = allOn("all-on", "Everything on, from the battery", EngineMode.OFF);
        draft.add(on);
        alternator.ifPresent(id -> draft.add(allOn("running", "Everything on, engine running", EngineMode.RUNNING)
                .withSource(id, true)));
    }

    private OperatingState allOn(String id, String name, EngineMode mode) {
        OperatingState state = OperatingState.of(id, name, mode);
        for (ComponentId component : components) {
            state = state.with(component, Setting.ON);
        }
        for (OutputPin output : outputs) {
            state = state.with(output, Setting.ON);
        }
        return state;
    }
}
