package org.ohmloom.pack;

import java.util.Optional;
import org.ohmloom.model.Component;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Strap;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** What is neither wire nor connector: splices, ground points, straps, protective devices, equipment. */
final class DeviceMaterials {
    private final Harness harness;
    private final Materials materials;

    DeviceMaterials(Harness harness, Materials materials) {
        this.harness = harness;
        this.materials = materials;
    }

    void collect() {
        for (Splice splice : harness.splices().all()) {
            if (!splice.existing()) {
                materials.piece(
                        Material.piece(
                                splice.assembly(), MaterialKind.SPLICE, splice.part(), MaterialTexts.text("splice")),
                        splice.id().value());
                splice.cover()
                        .ifPresent(cover -> materials.piece(
                                Material.piece(
                                        splice.assembly(),
                                        MaterialKind.SPLICE,
                                        Optional.empty(),
                                        MaterialTexts.text("cover", cover)),
                                splice.id().value()));
            }
        }
        for (GroundPoint ground : harness.grounds().all()) {
            if (!ground.existing()) {
                materials.piece(
                        Material.piece(
                                ground.assembly(),
                                MaterialKind.GROUND,
                                ground.part(),
                                ground.studMm().stream()
                                        .mapToObj(
                                                thread -> MaterialTexts.text("fastener-of", JointTables.thread(thread)))
                                        .findFirst()
                                        .orElseGet(() -> MaterialTexts.text("fastener"))),
                        ground.id().value());
            }
        }
        for (Strap strap : harness.straps().all()) {
            if (!strap.existing()) {
                materials.piece(
                        Material.piece(
                                strap.assembly(), MaterialKind.GROUND, strap.part(), MaterialTexts.text("strap")),
                        strap.id().value());
            }
        }
        harness.buses().all().forEach(this::terminations);
        for (Component component : harness.components().all()) {
            if (!component.existing()) {
                component(component);
            }
        }
    }

    /**
     * Resistors of a bus that are parts of their own; those inside a unit come with it and are told on the sheet of the bus. A bus joins
     * assemblies, so they are on the bill of the whole.
     */
    private void terminations(DataBus bus) {
        for (DataBus.Termination each : bus.terminations()) {
            if (each.insideUnit().isEmpty()) {
                materials.piece(
                        Material.piece(
                                Optional.empty(),
                                MaterialKind.EQUIPMENT,
                                each.part(),
                                MaterialTexts.text("termination", Formats.ohms(each.ohms()))),
                        bus.id() + " at " + each.high().text());
            }
        }
    }

    private void component(Component component) {
        Optional<ProtectiveDevice> device = Optional.of(component.device())
                .filter(ProtectiveDevice.class::isInstance)
                .map(ProtectiveDevice.class::cast);
        MaterialKind kind = device.isPresent() ? MaterialKind.PROTECTION : MaterialKind.EQUIPMENT;
        Text words = device.map(each -> MaterialTexts.text(
                        each.kind() == ProtectiveDevice.Kind.FUSE ? "fuse" : "breaker",
                        Formats.amps(each.ratingAmps()),
                        each.series()))
                .orElseGet(() -> Text.of(component.name()));
        materials.piece(
                Material.piece(component.assembly(), kind, component.part(), words),
                component.id().value());
    }
}
