package org.ohmloom.workbench.command;

import javax.swing.KeyStroke;

/** A command that is always ready and does one thing handed in: quitting, showing help. */
public final class PlainCommand extends Command {

    private static final long serialVersionUID = 1L;

    private final transient Runnable task;

    public PlainCommand(String id, String name, String about, KeyStroke keys, char mnemonic, Runnable task) {
        super(id, name, about);
        this.task = task;
        withKeys(keys).withMnemonic(mnemonic);
    }

    @Override
    public void run() {
        task.run();
    }
}
