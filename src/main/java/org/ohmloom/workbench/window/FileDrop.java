package org.ohmloom.workbench.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;
import javax.swing.text.JTextComponent;

/** Takes files dropped on the window: the first is opened in it, each other in a window of its own. */
final class FileDrop extends TransferHandler {

    private static final long serialVersionUID = 1L;

    private final transient Consumer<Path> open;
    private final transient Consumer<Path> openElsewhere;

    /**
     * A handler.
     *
     * @param open          opens a file in the window
     * @param openElsewhere opens a file in another one
     */
    FileDrop(Consumer<Path> open, Consumer<Path> openElsewhere) {
        this.open = open;
        this.openElsewhere = openElsewhere;
    }

    /**
     * Lets files be dropped anywhere on a pane: whatever lies in it and takes no text gives up the drop target of its own,
     * which would refuse them.
     */
    void takeOver(JComponent pane) {
        if (pane.getTransferHandler() != this) {
            pane.setTransferHandler(this);
        }
        giveUp(pane);
    }

    private static void giveUp(Container within) {
        for (Component each : within.getComponents()) {
            boolean takesText = each instanceof JTextComponent text && text.isEditable();
            if (!takesText) {
                each.setDropTarget(null);
            }
            if (each instanceof Container container) {
                giveUp(container);
            }
        }
    }

    @Override
    public boolean canImport(TransferSupport support) {
        if (!support.isDataFlavorSupported(DataFlavor.javaFileListFlavor)) {
            return false;
        }
        if (support.isDrop() && (support.getSourceDropActions() & COPY) == COPY) {
            support.setDropAction(COPY);
        }
        return true;
    }

    @Override
    public boolean importData(TransferSupport support) {
        try {
            List<?> files = (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            if (files.isEmpty()) {
                return false;
            }
            List<Path> paths =
                    files.stream().map(File.class::cast).map(File::toPath).toList();
            SwingUtilities.invokeLater(() -> {
                open.accept(paths.get(0));
                paths.subList(1, paths.size()).forEach(openElsewhere);
            });
            return true;
        } catch (UnsupportedFlavorException | IOException unreadable) {
            return false;
        }
    }
}
