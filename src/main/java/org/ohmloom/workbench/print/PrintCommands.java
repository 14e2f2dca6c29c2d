package org.ohmloom.workbench.print;

import java.awt.Container;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.print.DocFlavor;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.ReadyCommand;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** Looks at documents and lists as sheets and prints them. */
public final class PrintCommands {

    private PrintCommands() {}

    /**
     * The command.
     *
     * @param within what is printed besides documents: the lists seen in it
     * @param commit takes over what is being typed; whether that could be done
     */
    public static List<Command> of(Desk desk, Services services, Container within, BooleanSupplier commit) {
        Words words = Words.of("print");
        return List.of(new ReadyCommand(words, "print", desk::isWhole, words.get("not-ready"), () -> {
                    if (commit.getAsBoolean()) {
                        desk.analysis().ifPresent(analysis -> show(desk, analysis, services, within, words));
                    }
                })
                .withKeys(Keys.menu(KeyEvent.VK_P)));
    }

    private static void show(Desk desk, Analysis analysis, Services services, Container within, Words words) {
        PaneDialog dialog = new PaneDialog(within, "print", words.get("title"));
        PrintPane pane = new PrintPane(Printables.of(analysis, within), services, desk::say, dialog::dispose);
        HelpPage.name(pane, "dialogs/print");
        dialog.onEscape(pane::stop);
        dialog.fill(pane, pane.printButton());
        services.reader().execute(() -> {
            List<PrintService> found =
                    List.of(PrintServiceLookup.lookupPrintServices(DocFlavor.SERVICE_FORMATTED.PAGEABLE, null));
            Optional<PrintService> usual = Optional.ofNullable(PrintServiceLookup.lookupDefaultPrintService());
            services.eventThread().execute(() -> pane.offer(found, usual));
        });
        dialog.setVisible(true);
    }
}
