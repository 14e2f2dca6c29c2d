package org.ohmloom.workbench.window;

import java.util.List;
import java.util.function.Consumer;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.settings.Look;

/**
 * What only a window can do, handed to the view inside it.
 *
 * @param looks    puts a look on
 * @param export   asks how to write the build pack and writes it
 * @param cautions shows all cautions
 * @param actions  opens and closes windows
 * @param help     commands that show something in a dialog
 */
public record WindowTasks(
        Consumer<Look> looks, Consumer<Desk> export, Runnable cautions, WindowActions actions, List<Command> help) {}
