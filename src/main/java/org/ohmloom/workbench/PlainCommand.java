package org.ohmloom.workbench;

import javax.swing.KeyStroke;

/** A command that is always ready and does one thing handed in: quitting, showing help. */
final class PlainCommand extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Runnable task;

    PlainCommand(String id, String name, String about, KeyStroke keys, char mnemonic, Runnable task) {
        super(id, name, about);
        this.task = task;
        withKeys(keys).withMnemonic(mnemonic);
    }

    @Override
    void run() {
        task.run();
    }
}
