package org.ohmloom.workbench.whatif;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.ReadyCommand;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.words.Words;

/** Begin a side copy, keep it, drop it, and take up one that was dropped. */
public final class WhatIfCommands {

    private WhatIfCommands() {}

    /**
     * The commands.
     *
     * @param commit takes over what is being typed; whether that could be done
     */
    public static List<Command> of(Desk desk, BooleanSupplier commit) {
        Words words = Words.of("what-if");
        return List.of(
                new ReadyCommand(
                                words,
                                "begin-side-copy",
                                () -> desk.document().isPresent() && !desk.isSideCopy(),
                                words.get("not-ready.begin"),
                                () -> {
                                    if (commit.getAsBoolean()) {
                                        desk.beginSideCopy();
                                        desk.say(words.get(
                                                "begun",
                                                desk.document()
                                                        .flatMap(Document::original)
                                                        .map(Document::name)
                                                        .orElse("")));
                                    }
                                })
                        .withKeys(Keys.menu(KeyEvent.VK_T))
                        .withIcon("side-copy"),
                new ReadyCommand(
                                words,
                                "keep-side-copy",
                                () -> desk.document()
                                        .filter(Document::canBeKept)
                                        .filter(copy -> copy.session().isChanged())
                                        .isPresent(),
                                words.get("not-ready.keep"),
                                () -> {
                                    if (commit.getAsBoolean()) {
                                        desk.keepSideCopy();
                                        desk.say(words.get("kept", name(desk)));
                                    }
                                })
                        .withKeys(Keys.menuShift(KeyEvent.VK_K)),
                new ReadyCommand(words, "drop-side-copy", desk::isSideCopy, words.get("not-ready.drop"), () -> {
                            if (commit.getAsBoolean()) {
                                desk.dropSideCopy();
                                desk.say(words.get("dropped", name(desk)));
                            }
                        })
                        .withKeys(Keys.menuShift(KeyEvent.VK_BACK_SPACE)),
                new ReadyCommand(
                        words,
                        "take-up-side-copy",
                        () -> desk.droppedCopy().isPresent(),
                        words.get("not-ready.take-up"),
                        () -> {
                            if (commit.getAsBoolean()) {
                                desk.takeUpSideCopy();
                            }
                        }));
    }

    private static String name(Desk desk) {
        return desk.document().map(Document::name).orElse("");
    }
}
