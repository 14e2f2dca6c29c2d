package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;

/** The views and pin tables of all connectors, and one table of all other ends, in columns on as many sheets as needed. */
final class ConnectorSheets {

    private static final double COLUMN_GAP_MM = 8;

    private final Harness harness;
    private final PinRows rows;
    private final Lettering lettering;

    ConnectorSheets(Harness harness, Figures figures, Lettering lettering) {
        this.harness = harness;
        this.rows = new PinRows(harness, figures);
        this.lettering = lettering;
    }

    /** The items of each sheet for the area they may fill. */
    List<List<Item>> sheets(Extent area) {
        int columns = Math.max(
                1, (int) Math.floor((area.widthMm() + COLUMN_GAP_MM) / (ConnectorBlock.WIDTH_MM + COLUMN_GAP_MM)));
        double spare = area.widthMm() - columns * ConnectorBlock.WIDTH_MM;
        double gap = columns > 1 ? Math.min(4 * COLUMN_GAP_MM, spare / (columns - 1)) : 0;
        List<List<Item>> sheets = new ArrayList<>();
        SheetPen pen = new SheetPen(lettering);
        int column = 0;
        double y = area.topMm();
        for (ConnectorBlock block : blocks(area.heightMm())) {
            if (y > area.topMm() && y + block.heightMm(lettering) > area.bottomMm() + ConnectorBlock.SPACE_BELOW_MM) {
                column++;
                y = area.topMm();
            }
            if (column == columns) {
                sheets.add(pen.items());
                pen = new SheetPen(lettering);
                column = 0;
            }
            block.draw(pen, area.leftMm() + column * (ConnectorBlock.WIDTH_MM + gap), y);
            y += block.heightMm(lettering);
        }
        if (!pen.items().isEmpty()) {
            sheets.add(pen.items());
        }
        return sheets;
    }

    private List<ConnectorBlock> blocks(double roomMm) {
        List<ConnectorBlock> blocks = new ArrayList<>();
        for (Connector connector : harness.connectors().all()) {
            blocks.addAll(block(connector).parts(roomMm));
        }
        List<PinRow> others = rows.elsewhere();
        if (!others.isEmpty()) {
            String title = "Ends without a connector";
            String name = "terminals, splices and ground points";
            blocks.addAll(
                    new ConnectorBlock(Optional.empty(), title, name, Optional.empty(), others, "At").parts(roomMm));
        }
        return blocks;
    }

    private ConnectorBlock block(Connector connector) {
        CavityView view = CavityView.of(connector, cavity -> rows.wires(connector, cavity));
        String partner = connector
                .component()
                .map(id -> " on " + id + " " + harness.components().get(id).name())
                .or(() -> connector.mate().map(id -> ", mates with " + id))
                .orElse("");
        String part = connector.part().map(id -> ", part " + id).orElse("");
        String existing = connector.existing() ? ", existing" : "";
        return new ConnectorBlock(
                Optional.of(connector.id().value()),
                connector.id().value(),
                connector.name() + partner + ", " + Words.ways(connector) + part + existing,
                Optional.of(view),
                rows.of(connector),
                "Cavity");
    }
}
