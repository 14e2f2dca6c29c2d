package org.ohmloom.workbench.settings;

import java.awt.Rectangle;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.prefs.BackingStoreException;

/** Keeps preferences in one node of the user's preferences. A damaged entry counts as none. */
public final class PreferenceNode implements PreferenceStore {

    private static final String LOOK = "look";
    private static final String CAUTIONS = "cautionsRead";
    private static final String RECENT = "recent.";
    private static final String FOLDER = "folder.";
    private static final String ZOOM = "zoomPercent";
    private static final String FONT = "fontPoints";
    private static final String SYSTEM = "followSystem";
    private static final String SIZES = "units.sizes";
    private static final String LENGTHS = "units.lengths";
    private static final String TEMPERATURES = "units.temperatures";
    private static final String DECIMALS = "units.decimals";
    private static final String KEYS = "keys.";
    private static final String DIVIDER = "divider.";
    private static final String COLUMNS = "columns.";
    private static final List<String> WINDOW = List.of("window.x", "window.y", "window.width", "window.height");

    private final java.util.prefs.Preferences node;
    private Preferences now;

    private PreferenceNode(java.util.prefs.Preferences node) {
        this.node = node;
        this.now = read();
    }

    /** The node of this program. */
    public static PreferenceNode ofUser() {
        return at("org/ohmloom/workbench");
    }

    /** A node of another name, for a test. */
    static PreferenceNode at(String path) {
        return new PreferenceNode(java.util.prefs.Preferences.userRoot().node(path));
    }

    @Override
    public Preferences now() {
        return now;
    }

    @Override
    public void change(UnaryOperator<Preferences> step) {
        Preferences changed = step.apply(now);
        if (!changed.equals(now)) {
            now = changed;
            write();
        }
    }

    private Preferences read() {
        Look look = node.get(LOOK, Look.LIGHT.name()).equals(Look.DARK.name()) ? Look.DARK : Look.LIGHT;
        List<Path> recent = new ArrayList<>();
        for (int k = 0; k < Preferences.RECENT; k++) {
            path(node.get(RECENT + k, "")).ifPresent(recent::add);
        }
        Map<String, Path> folders = new TreeMap<>();
        Map<String, Integer> dividers = new TreeMap<>();
        Map<String, String> columns = new TreeMap<>();
        for (String key : keys()) {
            if (key.startsWith(FOLDER)) {
                path(node.get(key, "")).ifPresent(folder -> folders.put(key.substring(FOLDER.length()), folder));
            } else if (key.startsWith(DIVIDER) && node.getInt(key, -1) > 0) {
                dividers.put(key.substring(DIVIDER.length()), node.getInt(key, -1));
            } else if (key.startsWith(COLUMNS)) {
                columns.put(key.substring(COLUMNS.length()), node.get(key, ""));
            }
        }
        return new Preferences(
                look, node.getBoolean(CAUTIONS, false), recent, folders, window(), dividers, columns, personal());
    }

    private Personal personal() {
        Map<String, String> keys = new TreeMap<>();
        for (String key : keys()) {
            if (key.startsWith(KEYS)) {
                keys.put(key.substring(KEYS.length()), node.get(key, ""));
            }
        }
        return Personal.of(
                node.getInt(ZOOM, Personal.DEFAULT.zoomPercent()),
                node.getInt(FONT, 0),
                node.getBoolean(SYSTEM, false),
                keys,
                units());
    }

    private UnitChoice units() {
        UnitChoice usual = UnitChoice.DEFAULT;
        return new UnitChoice(
                constant(SIZES, usual.sizes()),
                constant(LENGTHS, usual.lengths()),
                constant(TEMPERATURES, usual.temperatures()),
                constant(DECIMALS, usual.decimals()));
    }

    /** The constant of that name; the usual one where none has it. */
    private <E extends Enum<E>> E constant(String key, E usual) {
        String kept = node.get(key, usual.name());
        return Arrays.stream(usual.getDeclaringClass().getEnumConstants())
                .filter(each -> each.name().equals(kept))
                .findFirst()
                .orElse(usual);
    }

    private Optional<Rectangle> window() {
        int[] sides = WINDOW.stream().mapToInt(key -> node.getInt(key, -1)).toArray();
        return sides[2] > 0 && sides[3] > 0
                ? Optional.of(new Rectangle(sides[0], sides[1], sides[2], sides[3]))
                : Optional.empty();
    }

    private void write() {
        writePersonal();
        node.put(LOOK, now.look().name());
        node.putBoolean(CAUTIONS, now.cautions());
        for (int k = 0; k < Preferences.RECENT; k++) {
            if (k < now.recent().size()) {
                node.put(RECENT + k, now.recent().get(k).toString());
            } else {
                node.remove(RECENT + k);
            }
        }
        now.folders().forEach((purpose, folder) -> node.put(FOLDER + purpose, folder.toString()));
        now.dividers().forEach((name, place) -> node.putInt(DIVIDER + name, place));
        now.columns().forEach((list, shown) -> node.put(COLUMNS + list, shown));
        now.window().ifPresent(bounds -> {
            int[] sides = {bounds.x, bounds.y, bounds.width, bounds.height};
            for (int k = 0; k < sides.length; k++) {
                node.putInt(WINDOW.get(k), sides[k]);
            }
        });
    }

    private void writePersonal() {
        Personal personal = now.personal();
        node.putInt(ZOOM, personal.zoomPercent());
        node.putInt(FONT, personal.fontPoints());
        node.putBoolean(SYSTEM, personal.followSystem());
        node.put(SIZES, personal.units().sizes().name());
        node.put(LENGTHS, personal.units().lengths().name());
        node.put(TEMPERATURES, personal.units().temperatures().name());
        node.put(DECIMALS, personal.units().decimals().name());
        keys().stream()
                .filter(key -> key.startsWith(KEYS) && !personal.keys().containsKey(key.substring(KEYS.length())))
                .forEach(node::remove);
        personal.keys().forEach((command, keys) -> node.put(KEYS + command, keys));
    }

    private List<String> keys() {
        try {
            return List.of(node.keys());
        } catch (BackingStoreException unreadable) {
            return List.of();
        }
    }

    private static Optional<Path> path(String text) {
        try {
            return text.isBlank() ? Optional.empty() : Optional.of(Path.of(text));
        } catch (InvalidPathException damaged) {
            return Optional.empty();
        }
    }
}
