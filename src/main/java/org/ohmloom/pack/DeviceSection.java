package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Component;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.size.DeviceChoice;
import org.ohmloom.units.Unit;

/** The protective devices: what they carry, what they should be rated, and why. */
final class DeviceSection {
    private static final List<Column> COLUMNS = List.of(
            Column.code("Device"),
            Column.words("Name"),
            Column.words("Kind"),
            Column.words("Series"),
            Column.number("Rating", Unit.AMP, 1),
            Column.number("Carries", Unit.AMP, 2),
            Column.number("Serves from", Unit.AMP, 1),
            Column.words("Because"),
            Column.code("Source"));

    private final Analysis analysis;
    private final Sources sources;

    DeviceSection(Analysis analysis, Sources sources) {
        this.analysis = analysis;
        this.sources = sources;
    }

    List<Block> blocks() {
        List<Row> rows = new ArrayList<>();
        for (Component component : analysis.harness().components().all()) {
            if (component.device() instanceof ProtectiveDevice device) {
                rows.add(row(component, device));
            }
        }
        return List.of(
                new Block.Heading("Protective devices"),
                new Block.Table("protective-devices", COLUMNS, rows, "The harness has no protective device."));
    }

    private Row row(Component component, ProtectiveDevice device) {
        Optional<DeviceChoice> choice = Optional.ofNullable(analysis.devices().get(component.id()));
        Cell chosen = choice.map(each ->
                        each.ratingAmps().isPresent() ? Cell.number(each.ratingAmps()) : Cell.missing("none fits"))
                .orElse(Cell.empty());
        boolean tooSmall = choice.filter(each ->
                        each.ratingAmps().isPresent() && each.ratingAmps().getAsDouble() > device.ratingAmps())
                .isPresent();
        return Row.of(
                Cell.text(component.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(component.name()),
                Cell.text(device.kind().name().toLowerCase(Locale.ROOT)),
                Cell.text(device.series()),
                Cell.number(device.ratingAmps()),
                choice.map(each -> Cell.number(each.loadAmps())).orElse(Cell.empty()),
                tooSmall ? chosen.toned(Cell.Tone.ALERT) : chosen,
                Cell.text(choice.map(DeviceChoice::reason).map(Wording::printed)),
                Cell.text(choice.map(each -> sources.mark(each.citation()))));
    }
}
