package org.ohmloom.workbench.settings;

import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a person has settled, kept from one start to the next.
 *
 * @param look        light or dark
 * @param cautions    whether the cautions were acknowledged
 * @param recent      files opened last, latest first
 * @param folders     folder used last, by purpose
 * @param window      place and size of the window
 * @param dividers    places of the dividers between the views, px, by name
 * @param columns     which columns of a list are shown, in which order and how wide, by the key of the list
 * @param personal    size, font, keys and units
 */
public record Preferences(
        Look look,
        boolean cautions,
        List<Path> recent,
        Map<String, Path> folders,
        Optional<Rectangle> window,
        Map<String, Integer> dividers,
        Map<String, String> columns,
        Personal personal) {

    /** How many files are remembered. */
    static final int RECENT = 8;

    /** What holds before a person has settled anything. */
    public static final Preferences DEFAULT = new Preferences(
            Look.LIGHT, false, List.of(), Map.of(), Optional.empty(), Map.of(), Map.of(), Personal.DEFAULT);

    public Preferences {
        recent = List.copyOf(recent);
        folders = Map.copyOf(folders);
        window = window.map(Rectangle::new);
        dividers = Map.copyOf(dividers);
        columns = Map.copyOf(columns);
    }

    public Preferences withLook(Look changed) {
        return new Preferences(changed, cautions, recent, folders, window, dividers, columns, personal);
    }

    public Preferences withCautionsRead() {
        return new Preferences(look, true, recent, folders, window, dividers, columns, personal);
    }

    /** With a file as the latest one. */
    public Preferences withRecent(Path file) {
        List<Path> files = new ArrayList<>(recent);
        files.remove(file);
        files.add(0, file);
        return withRecent(files.subList(0, Math.min(RECENT, files.size())));
    }

    /** Without a file that is no longer there. */
    public Preferences withoutRecent(Path file) {
        return withRecent(recent.stream().filter(each -> !each.equals(file)).toList());
    }

    private Preferences withRecent(List<Path> changed) {
        return new Preferences(look, cautions, changed, folders, window, dividers, columns, personal);
    }

    public Preferences withFolder(String purpose, Path folder) {
        Map<String, Path> changed = new TreeMap<>(folders);
        changed.put(purpose, folder);
        return new Preferences(look, cautions, recent, changed, window, dividers, columns, personal);
    }

    public Preferences withWindow(Rectangle changed, Map<String, Integer> places) {
        return new Preferences(look, cautions, recent, folders, Optional.of(changed), places, columns, personal);
    }

    /** With the columns of a list. */
    public Preferences withColumns(String list, String shown) {
        Map<String, String> changed = new TreeMap<>(columns);
        changed.put(list, shown);
        return new Preferences(look, cautions, recent, folders, window, dividers, changed, personal);
    }

    /** With another size, font or keys. */
    public Preferences withPersonal(Personal changed) {
        return new Preferences(look, cautions, recent, folders, window, dividers, columns, changed);
    }
}
