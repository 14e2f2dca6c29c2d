package org.ohmloom.workbench.window;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;

/** Takes a file dropped on the window. */
final class FileDrop extends TransferHandler {

    private static final long serialVersionUID = 1L;

    private final transient Consumer<Path> open;

    FileDrop(Consumer<Path> open) {
        this.open = open;
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
            Path first = ((File) files.get(0)).toPath();
            SwingUtilities.invokeLater(() -> open.accept(first));
            return true;
        } catch (UnsupportedFlavorException | IOException unreadable) {
            return false;
        }
    }
}
