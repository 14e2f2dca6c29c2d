package org.ohmloom.workbench.drafting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import org.ohmloom.draw.Point;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.Wire;
import org.ohmloom.workbench.command.Command;

/** The menu of the right button on the layout: what fits what is selected, or the board where nothing lies. */
final class BoardMenu {

    private final Toolbox box;
    private final Function<String, Command> book;

    /**
     * A menu.
     *
     * @param book commands by their ids
     */
    BoardMenu(Toolbox box, Function<String, Command> book) {
        this.box = box;
        this.book = book;
    }

    /** Shows the menu at a pixel; what lies there is selected first unless it is. */
    void show(int xPx, int yPx) {
        List<String> here = box.canvas().under(xPx, yPx);
        List<String> selected = box.easel().selected();
        if (here.stream().noneMatch(selected::contains)) {
            box.easel().pane().pick(here.stream().limit(1).toList());
        }
        Point scene = box.canvas().transform().toScene(xPx, yPx);
        menu(new Aim(box.easel().toBoard(scene), scene)).show(box.canvas(), xPx, yPx);
    }

    /** The menu for what is selected now. */
    JPopupMenu menu(Aim at) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("board-menu");
        Optional<Element> lead = box.easel()
                .harness()
                .flatMap(harness -> box.easel().selected().stream().findFirst().flatMap(harness::element));
        lead.ifPresent(element -> of(menu, element, at));
        if (lead.isPresent()) {
            add(menu, "board-cut", "board-copy", "board-paste", "duplicate", "take-out");
            menu.addSeparator();
            JMenu arrange = new JMenu(box.easel().words().get("arrange"));
            Arrays.stream(Arranging.values()).forEach(each -> arrange.add(item(each.id())));
            menu.add(arrange);
            zones().ifPresent(menu::add);
            menu.addSeparator();
            add(menu, "show-selection");
        } else {
            for (String tool : List.of("component", "connector", "ground", "breakout", "segment", "wire")) {
                add(menu, "tool-" + tool);
            }
            menu.addSeparator();
            add(menu, "board-paste", "select-all");
            menu.addSeparator();
            add(menu, "snap-grid", "fit-layout");
        }
        return menu;
    }

    private void of(JPopupMenu menu, Element element, Aim at) {
        List<JMenuItem> own = new ArrayList<>();
        if (WireTool.takesWires(element)) {
            own.add(begin("wire", "menu.wire-from", element, at));
        }
        if (element instanceof Breakout) {
            own.add(begin("segment", "menu.segment-from", element, at));
        }
        if (element instanceof Wire) {
            own.add(begin("splice", "menu.splice-here", element, at));
        }
        if (HangTool.hangs(element) && box.easel().places().isPresent()) {
            own.add(item("tool-hang"));
        }
        if (element instanceof Connector) {
            own.add(item("study-pin-view"));
        }
        own.forEach(menu::add);
        if (!own.isEmpty()) {
            menu.addSeparator();
        }
    }

    /** Takes a tool in hand and uses it where the menu was asked for. */
    private JMenuItem begin(String tool, String words, Element element, Aim at) {
        JMenuItem item =
                new JMenuItem(box.easel().words().get(words, element.id().value()));
        item.addActionListener(event -> {
            box.take(tool);
            if (box.current() instanceof BoardTool board) {
                board.put(at);
            }
        });
        return item;
    }

    private Optional<JMenu> zones() {
        List<String> ids = box.easel().selected().stream()
                .filter(id -> box.easel().is(id, ZoneTool::canLie))
                .toList();
        if (ids.isEmpty()) {
            return Optional.empty();
        }
        JMenu menu = new JMenu(box.easel().words().get("menu.zone"));
        for (ZoneTool.ZoneChoice choice : ZoneTool.choices(box.easel())) {
            JMenuItem item = new JMenuItem(choice.text());
            item.addActionListener(event ->
                    box.easel().harness().ifPresent(harness -> box.easel().apply(ZoneTool.edit(harness, ids, choice))));
            menu.add(item);
        }
        return Optional.of(menu);
    }

    private void add(JPopupMenu menu, String... ids) {
        for (String id : ids) {
            menu.add(item(id));
        }
    }

    private JMenuItem item(String id) {
        JMenuItem item = new JMenuItem(book.apply(id));
        item.setName("board-menu-" + id);
        item.setToolTipText(null);
        item.setIcon(null);
        return item;
    }
}
