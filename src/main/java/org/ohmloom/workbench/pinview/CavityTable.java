package org.ohmloom.workbench.pinview;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.JTableHeader;
import org.jspecify.annotations.Nullable;
import org.ohmloom.edit.CavityUse;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.EndOfWire;
import org.ohmloom.edit.MoveWireEnd;
import org.ohmloom.edit.PutInCavity;
import org.ohmloom.edit.SwapCavities;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/**
 * The cavities by mouse and keyboard. Arrows go from one to the next; Space takes up what is there and puts it down elsewhere, where
 * it changes places with what it finds; Escape lets it be; Delete lifts the wire out. Dragging does the same.
 */
final class CavityTable extends JTable {

    private static final long serialVersionUID = 1L;
    private static final int LEAST_HEIGHT = 82;
    private static final int LEAST_WIDTH = 100;
    private static final int MOST_WIDTH = 150;

    private final CavityModel cavities;
    private final CavityRenderer renderer;
    private final transient Words words;
    private final transient Consumer<Edit> edits;
    private transient Optional<String> takenUp = Optional.empty();

    CavityTable(CavityModel model, CavityRenderer renderer, Words words, Consumer<Edit> edits) {
        super(model);
        this.cavities = model;
        this.renderer = renderer;
        this.words = words;
        this.edits = edits;
        setName("pin-view-cavities");
        getAccessibleContext().setAccessibleName(words.get("cavities"));
        setDefaultRenderer(Object.class, renderer);
        setCellSelectionEnabled(true);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setShowGrid(false);
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setFillsViewportHeight(true);
        setIntercellSpacing(new Dimension(0, 0));
        bind("take-up", Keys.plain(KeyEvent.VK_SPACE), this::takeUpOrPutDown);
        bind("let-be", Keys.plain(KeyEvent.VK_ESCAPE), () -> takeUp(Optional.empty()));
        bind("lift", Keys.plain(KeyEvent.VK_DELETE), this::liftChosen);
        Keys.leave(this, KeyEvent.VK_F6, KeyEvent.VK_F8);
        CavityDrag.within(this);
    }

    private void bind(String name, KeyStroke keys, Runnable task) {
        Keys.bind(this, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, keys, name, task);
    }

    @Override
    protected @Nullable JTableHeader createDefaultTableHeader() {
        return new JTableHeader(columnModel);
    }

    @Override
    protected void configureEnclosingScrollPane() {
        // places have no heads
    }

    /** Gives rows and columns their sizes. */
    void arrange() {
        setRowHeight(
                Math.max(UIScale.scale(LEAST_HEIGHT), getFontMetrics(getFont()).getHeight() * 4 + UIScale.scale(14)));
        int count = Math.max(1, getColumnCount());
        int room = getParent() == null ? 0 : getParent().getWidth() / count;
        int width = Math.max(UIScale.scale(LEAST_WIDTH), Math.min(UIScale.scale(MOST_WIDTH), room));
        for (int k = 0; k < getColumnCount(); k++) {
            getColumnModel().getColumn(k).setPreferredWidth(width);
        }
    }

    /** The cavity with the focus. */
    Optional<CavityUse> chosen() {
        return cavities.use(getSelectedRow(), getSelectedColumn());
    }

    void choose(int row, int column) {
        if (row < getRowCount() && column < getColumnCount()) {
            changeSelection(row, column, false, false);
        }
    }

    /** Goes to a cavity by its name. */
    void choose(String cavity) {
        cavities.place(cavity).ifPresent(place -> choose(place[0], place[1]));
    }

    /** The cavity at a point. */
    Optional<CavityUse> at(Point point) {
        return cavities.use(rowAtPoint(point), columnAtPoint(point));
    }

    /** The cavity whose wire is carried. */
    Optional<String> takenUp() {
        return takenUp;
    }

    void takeUp(Optional<String> cavity) {
        takenUp = cavity;
        renderer.takeUp(cavity);
        repaint();
    }

    private void takeUpOrPutDown() {
        Optional<CavityUse> here = chosen();
        if (here.isEmpty()) {
            return;
        }
        if (takenUp.isPresent()) {
            put(takenUp.get(), here.get());
        } else if (!here.get().ends().isEmpty()) {
            takeUp(Optional.of(here.get().cavity().name()));
        }
    }

    /** Puts what a cavity holds into another; what it finds there goes the other way. */
    void put(String from, CavityUse to) {
        takeUp(Optional.empty());
        Connector connector = cavities.connector().orElseThrow();
        String name = to.cavity().name();
        Optional<CavityUse> source = cavities.use(from);
        if (from.equals(name) || source.isEmpty() || source.get().ends().isEmpty()) {
            return;
        }
        boolean alone = source.get().ends().size() == 1
                && to.ends().isEmpty()
                && to.cavity().plug().isEmpty();
        edits.accept(
                alone
                        ? PutInCavity.one(source.get().ends().get(0), connector.id(), name)
                        : new SwapCavities(connector.id(), from, name));
        choose(name);
    }

    /** Puts a loose end into the cavity with the focus. */
    void putInChosen(EndOfWire end) {
        chosen().ifPresent(use -> put(end, use));
    }

    /** Puts a loose end into a cavity. */
    void put(EndOfWire end, CavityUse to) {
        edits.accept(PutInCavity.one(
                end, cavities.connector().orElseThrow().id(), to.cavity().name()));
        choose(to.cavity().name());
    }

    /** Lifts the wires out of the cavity with the focus: their ends become loose. */
    void liftChosen() {
        chosen().filter(use -> !use.ends().isEmpty()).ifPresent(use -> {
            EndOfWire end = use.ends().get(use.ends().size() - 1);
            Wire wire = cavities.wire(end);
            WireEnd old = end.atFrom() ? wire.from() : wire.to();
            edits.accept(new MoveWireEnd(wire.id(), old, new WireEnd.Loose(), wire.lengthMetres()));
        });
    }

    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        return at(event.getPoint()).map(this::tip).orElse(null);
    }

    private String tip(CavityUse use) {
        String contact =
                use.cavity().contact().map(id -> words.get("contact", id)).orElse(words.get("no-contact"));
        String plug = use.cavity().plug().map(id -> words.get("plug-part", id)).orElse("");
        return words.get("cavity", use.cavity().name()) + contact + plug;
    }
}
