package org.ohmloom.pack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.ohmloom.analysis.revision.RevisionComparison;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.pack.page.PdfContent;
import org.ohmloom.pack.page.PdfFile;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.ReportPages;
import org.ohmloom.pack.page.TableFile;
import org.ohmloom.pack.page.TitleFields;

/**
 * Writes what differs between two revisions: a change sheet as PDF under the title block of the new one, and each of its
 * tables as CSV beside it. The same two analyses give the same bytes.
 */
public final class ChangeSheet {
    private static final String ID = "change-sheet";
    private static final String TITLE = "Change sheet";

    private ChangeSheet() {}

    /** What has to be bought more or less of, in the order of the bill of materials. */
    public static List<PartChange> parts(RevisionComparison comparison) {
        return new PartChanges(comparison).list();
    }

    /**
     * Writes it into a folder, which is made when it is not there.
     *
     * @return the files written, in order
     * @throws PackException when the folder is a file or cannot be written to; one line for people
     */
    public static List<Path> write(RevisionComparison comparison, Path directory) throws PackException {
        Report report = new ChangeReport(comparison).report();
        TitleFields fields = TitleFields.of(comparison.after().harness().titleBlock(), TITLE);
        FileNames names =
                new FileNames(comparison.after().harness().titleBlock().number());
        SceneFonts fonts = SceneFonts.load();
        ReportPages.Pages pages = new ReportPages(fonts).set(report, fields);
        try (StagedFiles files = StagedFiles.in(directory)) {
            byte[] pdf =
                    new PdfFile(fonts, DrawStyle.PRINT).bytes(PdfContent.of(pages.scenes(), pages.bookmarks()), fields);
            files.add(names.pdf(ID), pdf);
            for (Map.Entry<String, String> table : TableFile.texts(report).entrySet()) {
                files.add(names.csv(ID, table.getKey()), table.getValue().getBytes(StandardCharsets.UTF_8));
            }
            return files.moveIntoPlace();
        } catch (IOException failed) {
            throw new PackException(failed, "%s not made: %s", TITLE, String.valueOf(failed.getMessage()));
        }
    }
}
