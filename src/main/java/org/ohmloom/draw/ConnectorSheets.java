package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;

/** The views and pin tables of all connectors, and one table of all other ends. */
final class ConnectorSheets {

    private final Harness harness;
    private final PinRows rows;
    private final NoteFlags flags;
    private final Lettering lettering;

    ConnectorSheets(Harness harness, Figures figures, NoteFlags flags, Lettering lettering) {
        this.harness = harness;
        this.rows = new PinRows(harness, figures, flags);
        this.flags = flags;
        this.lettering = lettering;
    }

    /** One block for each connector, and one for all other ends. */
    List<ConnectorBlock> blocks() {
        List<ConnectorBlock> blocks = new ArrayList<>();
        harness.connectors().all().forEach(connector -> blocks.add(block(connector)));
        List<PinRow> others = rows.elsewhere();
        if (!others.isEmpty()) {
            String title = "Ends without a connector";
            String name = "terminals, splices and ground points";
            blocks.add(new ConnectorBlock(lettering, Optional.empty(), title, name, Optional.empty(), others, "At"));
        }
        return blocks;
    }

    private ConnectorBlock block(Connector connector) {
        CavityView view = CavityView.of(connector, cavity -> rows.wires(connector, cavity));
        String partner = connector
                .component()
                .map(id -> " on " + id + " " + harness.components().get(id).name())
                .or(() -> harness.mate(connector).map(mate -> ", mates with " + mate.id()))
                .orElse("");
        String part = connector.part().map(id -> ", part " + id).orElse("");
        String existing = connector.existing() ? ", existing" : "";
        String noted = flags.of(connector.id().value());
        String note = noted.isEmpty() ? "" : ", notes " + noted;
        return new ConnectorBlock(
                lettering,
                Optional.of(connector.id().value()),
                connector.id().value(),
                connector.name() + partner + ", " + Words.ways(connector).english() + part + existing + note,
                Optional.of(view),
                rows.of(connector),
                "Cavity");
    }
}
