package org.ohmloom.workbench.window;

import java.util.List;
import org.ohmloom.workbench.words.Words;

/** Which command stands in which menu; a dash is a line between groups. */
final class MenuPlan {
    private static final Words WORDS = Words.of("window");

    /**
     * One menu.
     *
     * @param key its texts in the bundle
     * @param ids commands from top to bottom
     */
    record Menu(String key, List<String> ids) {

        /** Its title. */
        String title() {
            return WORDS.get("menu." + key);
        }

        /** The letter underlined in it. */
        char mnemonic() {
            return WORDS.letter("menu." + key);
        }
    }

    /** Stands for a line between groups. */
    static final String LINE = "-";

    /** Stands for the files opened last. */
    static final String RECENT = "recent";

    /** Stands for the examples. */
    static final String EXAMPLES = "examples";

    /** The commands on the strip beside the layout, from top to bottom. */
    static final List<String> TOOLS = List.of(
            "tool-select",
            "tool-lasso",
            "tool-component",
            "tool-connector",
            "tool-ground",
            "tool-breakout",
            "tool-segment",
            "tool-wire",
            "tool-splice",
            "tool-zone",
            "snap-grid");

    /** The menus from left to right. */
    static final List<Menu> MENUS = List.of(
            new Menu(
                    "file",
                    List.of(
                            "new-guided",
                            "new-empty",
                            LINE,
                            "open-file",
                            RECENT,
                            EXAMPLES,
                            LINE,
                            "save",
                            "save-as",
                            LINE,
                            "print",
                            "export-pack",
                            "take-in-values",
                            LINE,
                            "compare-file",
                            "compare-saved",
                            LINE,
                            "new-window",
                            "same-in-window",
                            LINE,
                            "close-file",
                            "close-window",
                            "quit")),
            new Menu(
                    "edit",
                    List.of(
                            "undo",
                            "redo",
                            "change-list",
                            LINE,
                            "apply-fix",
                            "preview-fix",
                            "fix-kind",
                            "try-remedies",
                            "accept-finding",
                            "reopen-finding",
                            LINE,
                            "new-load-group",
                            "new-sequence",
                            LINE,
                            "add-row",
                            "copy-rows",
                            "take-out",
                            "fill-down",
                            "rename-pattern",
                            "find-replace",
                            "choose-columns",
                            LINE,
                            "filter-rows",
                            LINE,
                            "settings")),
            new Menu(
                    "draw",
                    List.of(
                            "tool-select",
                            "tool-lasso",
                            LINE,
                            "tool-component",
                            "tool-connector",
                            "tool-ground",
                            "tool-breakout",
                            "tool-segment",
                            "tool-wire",
                            "tool-splice",
                            "tool-zone",
                            "tool-hang",
                            LINE,
                            "snap-grid",
                            LINE,
                            "select-all")),
            new Menu(
                    "arrange",
                    List.of(
                            "board-cut",
                            "board-copy",
                            "board-paste",
                            "duplicate",
                            LINE,
                            "align-left",
                            "align-centre",
                            "align-right",
                            "align-top",
                            "align-middle",
                            "align-bottom",
                            LINE,
                            "share-across",
                            "share-down",
                            LINE,
                            "mirror-across",
                            "mirror-down",
                            "turn-clockwise",
                            "turn-anticlockwise",
                            LINE,
                            "put-on-grid")),
            new Menu(
                    "view",
                    List.of(
                            "fit-layout",
                            "zoom-in",
                            "zoom-out",
                            "show-selection",
                            LINE,
                            "numbers-none",
                            "numbers-current",
                            "numbers-drop",
                            "numbers-temperature",
                            "numbers-size",
                            "numbers-margin",
                            "numbers-diameter",
                            "show-heat",
                            "show-wires",
                            LINE,
                            "look")),
            new Menu(
                    "go",
                    List.of(
                            "focus-layout",
                            "focus-lists",
                            "focus-inspector",
                            "focus-findings",
                            "focus-studies",
                            "next-pane",
                            "move-divider",
                            LINE,
                            "study-currents",
                            "study-protection",
                            "study-start-up",
                            "study-charge",
                            "study-combinations",
                            "study-duty",
                            "study-duty-range",
                            "study-conductors",
                            "study-returns",
                            "study-tolerance",
                            "study-pin-view",
                            "study-channels",
                            "study-state-matrix",
                            "study-fabrication",
                            "study-as-built",
                            "study-revision",
                            "study-what-if",
                            LINE,
                            "next-finding",
                            "previous-finding",
                            LINE,
                            "next-state",
                            "previous-state")),
            new Menu(
                    "calculation",
                    List.of(
                            "recalculate",
                            "stop-calculating",
                            LINE,
                            "begin-side-copy",
                            "keep-side-copy",
                            "drop-side-copy",
                            "take-up-side-copy",
                            LINE,
                            "show-log")),
            new Menu(
                    "help",
                    List.of(
                            "help-here",
                            "open-manual",
                            LINE,
                            "find-command",
                            "show-keys",
                            "show-cautions",
                            LINE,
                            "about")));

    private MenuPlan() {}
}
