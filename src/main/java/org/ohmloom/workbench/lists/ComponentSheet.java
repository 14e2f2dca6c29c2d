package org.ohmloom.workbench.lists;

import java.util.List;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Load;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedEdits;

/** Every component but the loads, which have a list of their own. */
final class ComponentSheet implements ElementSheet<ComponentSheet.Row> {

    /**
     * One component.
     *
     * @param component the component
     * @param zone      where it sits
     * @param needs     rating its protective device needs
     */
    record Row(Component component, String zone, CellText needs) {

        CellText rating() {
            return component.device() instanceof ProtectiveDevice protective
                    ? CellText.of(protective.ratingAmps())
                    : CellText.EMPTY;
        }
    }

    @Override
    public String title() {
        return "Components";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.<Row>text("Component", "Identity of the component", 10, row -> row.component()
                        .id()
                        .value()),
                Column.text("Name", "What people call it", 26, row -> row.component()
                        .name()),
                Column.text(
                        "Kind",
                        "What it does",
                        20,
                        row -> TradeWords.kind(row.component().device())),
                Column.<Row>number("Rating", "A", "Rated current of a fuse or breaker; type 15 or 15 A", Row::rating)
                        .edited(ColumnEdits.<Row, ComponentId>of(
                                row -> row.component().device() instanceof ProtectiveDevice,
                                row -> row.rating().exact() + " A",
                                row -> row.component().id(),
                                TypedEdits::rating)),
                Column.<Row>number("Needs", "A", "Rating that serves load and conductor, and why", Row::needs)
                        .wide(14),
                Column.text("Zone", "Where it sits", 14, Row::zone),
                Column.text("At", "Where the harness reaches it", 9, row -> row.component()
                        .at()
                        .map(ElementId::value)
                        .orElse("")),
                Column.text("Case ground", "Terminal bolted to a ground point", 12, row -> row.component()
                        .caseGround()
                        .map(ground -> ground.ground().value())
                        .orElse("")),
                Column.text("Part", "Entry of the parts list", 14, row -> row.component()
                        .part()
                        .map(ElementId::value)
                        .orElse("")),
                Column.text(
                        "Existing",
                        "Already in the vehicle",
                        8,
                        row -> row.component().existing() ? "yes" : ""));
    }

    @Override
    public List<Row> rows(Readout readout) {
        return readout.harness().components().all().stream()
                .filter(component -> !(component.device() instanceof Load))
                .map(component -> new Row(component, zone(component, readout), needs(component, readout)))
                .toList();
    }

    private static String zone(Component component, Readout readout) {
        return component
                .zone()
                .map(id -> readout.harness().zones().get(id).name())
                .orElse("");
    }

    private static CellText needs(Component component, Readout readout) {
        return readout.device(component.id())
                .map(choice -> choice.ratingAmps().isPresent()
                        ? CellText.of(choice.ratingAmps().getAsDouble()).saying(choice.reason())
                        : CellText.of("none serves").in(Tone.ERROR).saying(choice.reason()))
                .orElse(CellText.EMPTY);
    }

    @Override
    public ElementId id(Row row) {
        return row.component().id();
    }
}
