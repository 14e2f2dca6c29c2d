package org.ohmloom.analysis;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NearestText;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.BatteryType;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.InsulationType;
import org.ohmloom.tables.WireTables;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/** Refuses a harness that names a table entry nobody has, with the nearest one there is. */
final class KnownNames {

    private KnownNames() {}

    /**
     * The harness's design basis.
     *
     * @throws AnalysisRefusedException when the tables do not have it
     */
    static DesignBasis basis(Harness harness, WireTables tables) {
        String name = harness.rules().basis();
        return tables.findBasis(name)
                .orElseThrow(() -> unknown(
                        "$.rules.basis",
                        Refusals.text("design basis"),
                        name,
                        tables.bases().stream().map(DesignBasis::id).toList()));
    }

    /**
     * Checks the conductor families, insulation types, battery types and sets of bus limits.
     *
     * @throws AnalysisRefusedException when the tables do not have one
     */
    static void check(Harness harness, WireTables tables) {
        insulation("$.rules.insulation", harness.rules().insulation(), tables);
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Battery battery) {
                battery.model().ifPresent(model -> battery(component, model.type(), tables));
            }
        }
        for (DataBus bus : harness.buses().all()) {
            List<String> sets = tables.signals().limitSets();
            Optional<String> missing = bus.limits().filter(name -> !sets.contains(name));
            if (missing.isPresent()) {
                throw unknown(
                        "$.buses (" + bus.id() + ").limits", Refusals.text("set of bus limits"), missing.get(), sets);
            }
        }
        for (Wire wire : harness.wires().all()) {
            wire.insulation().ifPresent(name -> insulation("$.wires (" + wire.id() + ").insulation", name, tables));
            Optional<String> missing =
                    wire.family().filter(name -> tables.findFamily(name).isEmpty());
            if (missing.isPresent()) {
                throw unknown(
                        "$.wires (" + wire.id() + ").family",
                        Refusals.text("conductor family"),
                        missing.get(),
                        tables.families().stream().map(ConductorFamily::id).toList());
            }
        }
    }

    private static void battery(Component component, String type, WireTables tables) {
        if (tables.findBatteryType(type).isEmpty()) {
            throw unknown(
                    "$.components (" + component.id() + ").device.model.type",
                    Refusals.text("battery type"),
                    type,
                    tables.batteryTypes().stream().map(BatteryType::id).toList());
        }
    }

    private static void insulation(String place, String name, WireTables tables) {
        if (tables.findInsulation(name).isEmpty()) {
            throw unknown(
                    place,
                    Refusals.text("insulation type"),
                    name,
                    tables.insulations().stream().map(InsulationType::id).toList());
        }
    }

    private static AnalysisRefusedException unknown(String place, Text kind, String name, List<String> known) {
        return new AnalysisRefusedException(
                "%s: the tables have no %s '%s'%s", place, kind, name, NearestText.question(name, known));
    }
}
