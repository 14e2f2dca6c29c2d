package org.ohmloom.workbench.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.Action;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import org.ohmloom.workbench.bench.ShowNumbers;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandBook;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Examples;
import org.ohmloom.workbench.desk.Filing;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.words.Words;

/** Makes the menu bar from the plan. */
final class Menus {
    private static final Words WORDS = Words.of("window");

    private final CommandBook book;
    private final Filing filing;
    private final PreferenceStore preferences;

    Menus(CommandBook book, Filing filing, PreferenceStore preferences) {
        this.book = book;
        this.filing = filing;
        this.preferences = preferences;
    }

    JMenuBar bar() {
        JMenuBar bar = new JMenuBar();
        MenuPlan.MENUS.forEach(plan -> bar.add(menu(plan)));
        return bar;
    }

    private JMenu menu(MenuPlan.Menu plan) {
        JMenu menu = new JMenu(plan.title());
        menu.setMnemonic(plan.mnemonic());
        ButtonGroup numbers = new ButtonGroup();
        for (String id : plan.ids()) {
            switch (id) {
                case MenuPlan.LINE -> menu.addSeparator();
                case MenuPlan.RECENT -> menu.add(recent());
                case MenuPlan.EXAMPLES -> menu.add(examples());
                default -> menu.add(item(book.get(id), numbers));
            }
        }
        return menu;
    }

    private static JMenuItem item(Command command, ButtonGroup numbers) {
        JMenuItem item;
        if (command instanceof ShowNumbers) {
            item = new JRadioButtonMenuItem(command);
            numbers.add(item);
        } else if (command.getValue(Action.SELECTED_KEY) != null) {
            item = new JCheckBoxMenuItem(command);
        } else {
            item = new JMenuItem(command);
        }
        item.setName("menu-" + command.id());
        item.setToolTipText(null);
        item.setIcon(null);
        return item;
    }

    private JMenu examples() {
        JMenu menu = new JMenu(WORDS.get("menus.open-example"));
        menu.setMnemonic('E');
        Examples.ALL.forEach(example -> {
            JMenuItem item = new JMenuItem(book.get("open-example-" + example.name()));
            menu.add(item);
        });
        return menu;
    }

    private JMenu recent() {
        JMenu menu = new JMenu(WORDS.get("menus.open-recent"));
        menu.setMnemonic('R');
        menu.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent event) {
                fill(menu);
            }

            @Override
            public void menuDeselected(MenuEvent event) {}

            @Override
            public void menuCanceled(MenuEvent event) {}
        });
        fill(menu);
        return menu;
    }

    private void fill(JMenu menu) {
        menu.removeAll();
        List<Path> files = preferences.now().recent();
        for (Path file : files) {
            JMenuItem item = new JMenuItem(Document.nameOf(file) + "   " + file.getParent());
            item.setEnabled(Files.isReadable(file));
            item.addActionListener(event -> filing.open(file));
            menu.add(item);
        }
        if (files.isEmpty()) {
            JMenuItem none = new JMenuItem(WORDS.get("menus.no-files-yet"));
            none.setEnabled(false);
            menu.add(none);
        }
    }
}
