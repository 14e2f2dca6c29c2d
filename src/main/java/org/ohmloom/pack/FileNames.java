package org.ohmloom.pack;

import java.util.regex.Pattern;

/** Names of the pack's files: number of the harness and id of the document, in letters every file system takes. */
final class FileNames {
    private static final Pattern UNSAFE = Pattern.compile("[^A-Za-z0-9._-]+");
    private static final Pattern EDGES = Pattern.compile("^[._-]+|[._-]+$");
    private static final int LONGEST_STEM = 80;

    private final String stem;

    /** Names for the harness of that number. */
    FileNames(String number) {
        String safe = EDGES.matcher(UNSAFE.matcher(number).replaceAll("-")).replaceAll("");
        String shorter = safe.length() > LONGEST_STEM ? safe.substring(0, LONGEST_STEM) : safe;
        this.stem = shorter.isEmpty() ? "harness" : shorter;
    }

    /** A folder for all of them, with a slash. */
    String folder() {
        return stem + "/";
    }

    String pdf(PackDocument document) {
        return pdf(document.id());
    }

    /** The file of a document by the id of that. */
    String pdf(String document) {
        return stem + "-" + document + ".pdf";
    }

    /** A picture of one sheet of a document, from 1. */
    String picture(PackDocument document, int sheet, String ending) {
        return stem + "-" + document.id() + "-" + sheet + "." + ending;
    }

    /** The workbook of all tables. */
    String workbook() {
        return stem + "-tables.xlsx";
    }

    /** The file of a document's tables; the part names one of several. */
    String csv(PackDocument document, String part) {
        return csv(document.id(), part);
    }

    /** The file of a document's tables by the id of that; the part names one of several. */
    String csv(String document, String part) {
        return stem + "-" + document + (part.isEmpty() ? "" : "-" + part) + ".csv";
    }
}
