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
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** Every component but the loads, which have a list of their own. */
final class ComponentSheet implements ElementSheet<ComponentSheet.Row> {
    private static final Words WORDS = Words.of("lists");

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
        return WORDS.get("component.components");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.<Row>text(
                        WORDS.term("component.component"),
                        WORDS.get("component.component.about"),
                        10,
                        row -> row.component().id().value()),
                Column.text(WORDS.term("component.name"), WORDS.get("component.name.about"), 26, row -> row.component()
                        .name()),
                Column.text(
                        WORDS.term("component.kind"),
                        WORDS.get("component.kind.about"),
                        20,
                        row -> TradeWords.kind(row.component().device())),
                Column.<Row>number(
                                WORDS.term("component.rating"), "A", WORDS.get("component.rating.about"), Row::rating)
                        .edited(ColumnEdits.<Row, ComponentId>of(
                                row -> row.component().device() instanceof ProtectiveDevice,
                                row -> row.rating().exact() + " A",
                                row -> row.component().id(),
                                TypedEdits::rating)),
                Column.<Row>number(WORDS.term("component.needs"), "A", WORDS.get("component.needs.about"), Row::needs)
                        .wide(14),
                Column.text(WORDS.term("component.zone"), WORDS.get("component.zone.about"), 14, Row::zone),
                Column.text(WORDS.term("component.at"), WORDS.get("component.at.about"), 9, row -> row.component()
                        .at()
                        .map(ElementId::value)
                        .orElse("")),
                Column.text(
                        WORDS.term("component.case-ground"),
                        WORDS.get("component.case-ground.about"),
                        12,
                        row -> row.component()
                                .caseGround()
                                .map(ground -> ground.ground().value())
                                .orElse("")),
                Column.text(WORDS.term("component.part"), WORDS.get("component.part.about"), 14, row -> row.component()
                        .part()
                        .map(ElementId::value)
                        .orElse("")),
                Column.text(
                        WORDS.term("component.existing"),
                        WORDS.get("component.existing.about"),
                        8,
                        row -> TypedNumbers.yesIf(row.component().existing())));
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
                        ? CellText.of(choice.ratingAmps().getAsDouble()).saying(Words.said(choice.why()))
                        : CellText.of(WORDS.get("component.none-serves"))
                                .in(Tone.ERROR)
                                .saying(Words.said(choice.why())))
                .orElse(CellText.EMPTY);
    }

    @Override
    public ElementId id(Row row) {
        return row.component().id();
    }
}
