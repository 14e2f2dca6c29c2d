package org.ohmloom.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.DrawStyle;
import org.ohmloom.draw.DrawingSheet;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.form.FormBoard;
import org.ohmloom.draw.form.FormBoards;
import org.ohmloom.draw.form.TileSheets;
import org.ohmloom.draw.wiring.WiringDiagram;
import org.ohmloom.model.Harness;
import org.ohmloom.pack.label.LabelText;
import org.ohmloom.pack.label.LabelTexts;
import org.ohmloom.pack.page.Bookmark;
import org.ohmloom.pack.page.PdfContent;
import org.ohmloom.pack.page.PdfFile;
import org.ohmloom.pack.page.PngFile;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.ReportPages;
import org.ohmloom.pack.page.SvgFile;
import org.ohmloom.pack.page.TableFile;
import org.ohmloom.pack.page.TitleFields;
import org.ohmloom.pack.page.WorkbookFile;
import org.ohmloom.remedy.RemedyList;
import org.ohmloom.remedy.RemedySearch;
import org.ohmloom.words.Constants;

/**
 * Writes the build pack of a harness: cover, drawing, wiring diagram, pin tables, bill of materials, wire list, bundles, build order, test sheet, labels and calculation as PDF, and
 * every table as CSV beside it and in one workbook, with a list of their checksums; the documents lead to each other by links. On request each assembly gets a pack of its own in a folder beside. All documents carry the revision of the title block. No clock is read: the same analysis
 * gives the same bytes.
 */
public final class BuildPack {
    private final Analysis analysis;
    private final PackPart part;
    private final PackOptions options;
    private final Steps steps;
    private final SceneFonts fonts;
    private final PdfFile pdf;
    private final FileNames names;
    private final PackManifest manifest;
    private final CrossLinks links;
    private final WorkbookFile workbook = new WorkbookFile();
    private Optional<List<LabelText>> labels = Optional.empty();

    private BuildPack(PackPart part, PackOptions options, Steps steps) {
        this.part = part;
        this.analysis = part.analysis();
        this.options = options;
        this.steps = steps;
        this.fonts = SceneFonts.load();
        this.pdf = new PdfFile(fonts, options.monochrome() ? DrawStyle.PRINT_MONO : DrawStyle.PRINT);
        this.names = new FileNames(analysis.harness().titleBlock().number());
        this.manifest = new PackManifest(analysis.harness());
        this.links = new CrossLinks(analysis.harness());
    }

    /**
     * Writes the documents asked for into a folder, which is made when it is not there. Files of the same names are
     * replaced, one by one, when all are ready; until then nothing in the folder changes.
     *
     * @return the files written, in order
     * @throws PackException         when the folder is a file or cannot be written to; one line for people
     * @throws CancellationException when the progress says so; nothing in the folder has changed
     */
    public static List<Path> write(Analysis analysis, Path directory, PackOptions options, Progress progress)
            throws PackException {
        List<PackPart> parts = PackPart.of(analysis, options);
        Steps steps = new Steps(
                progress,
                2 * parts.stream().mapToInt(part -> part.documents().size()).sum());
        try (StagedFiles files = StagedFiles.in(directory)) {
            for (PackPart part : parts) {
                new BuildPack(part, options, steps).make(files);
            }
            steps.checkpoint();
            steps.last(MaterialTexts.text("moving"));
            return files.moveIntoPlace();
        }
    }

    /** The pages of each document, without writing them. */
    static Map<PackDocument, List<Scene>> pages(Analysis analysis, PackOptions options) {
        PackPart whole = PackPart.whole(analysis, options);
        BuildPack pack = new BuildPack(
                whole, options, new Steps(Progress.NONE, options.documents().size()));
        Map<PackDocument, List<Scene>> pages = new EnumMap<>(PackDocument.class);
        options.documents()
                .forEach(document -> pages.put(document, pack.prepared(document).pages()));
        return pages;
    }

    /** The pages of one document as it is in a pack of all those of the options. */
    static List<Scene> pages(Analysis analysis, PackOptions options, PackDocument document) {
        PackPart whole = PackPart.whole(analysis, options);
        return new BuildPack(whole, options, new Steps(Progress.NONE, 1))
                .prepared(document)
                .pages();
    }

    private void make(StagedFiles files) throws PackException {
        List<Prepared> all = new ArrayList<>();
        for (PackDocument document : part.documents()) {
            steps.next(Constants.text(document));
            all.add(prepared(document));
        }
        List<byte[]> pdfs = pdfs(all);
        for (int k = 0; k < all.size(); k++) {
            write(files, all.get(k), pdfs.get(k));
        }
        workbook(files);
        files.add(
                part.folder() + names.csv(PackManifest.ID, ""), manifest.text().getBytes(StandardCharsets.UTF_8));
    }

    /**
     * A document set in pages, its links not yet put in.
     *
     * @param report the report it is made of, or the tables beside a drawing; empty without any
     */
    private record Prepared(
            PackDocument document, Optional<Report> report, List<Scene> pages, List<Bookmark> bookmarks) {}

    private Prepared prepared(PackDocument document) {
        String file = names.pdf(document);
        if (document == PackDocument.DRAWING) {
            Harness harness = analysis.harness();
            List<Scene> sheets = new DrawingSheet(fonts).sheets(harness, analysis, options.paper());
            links.addDrawing(document, file, sheets);
            return new Prepared(document, Optional.empty(), sheets, SheetBookmarks.of(harness, sheets));
        }
        if (document == PackDocument.WIRING_DIAGRAM) {
            Harness harness = analysis.harness();
            WiringDiagram diagram =
                    WiringDiagram.of(harness, Optional.of(analysis), part.whole(), options.paper(), fonts);
            WiringTable table = new WiringTable(diagram, part.whole());
            links.addDrawing(document, file, diagram.sheets());
            return new Prepared(document, Optional.of(table.report()), diagram.sheets(), table.bookmarks());
        }
        if (document == PackDocument.FORM_BOARD) {
            return formBoards(document, file);
        }
        Report report = report(document);
        ReportPages.Pages pages = new ReportPages(fonts, options.paper()).set(report, fields(document), 0);
        links.addReport(document, file, pages.mentions());
        return new Prepared(document, Optional.of(report), pages.scenes(), pages.bookmarks());
    }

    /** The first sheets, then the tiles of each board. */
    private Prepared formBoards(PackDocument document, String file) {
        BoardOptions wanted = options.board();
        Optional<Paper> paper = wanted.whole() ? Optional.empty() : Optional.of(options.paper());
        List<FormBoard> boards = FormBoards.of(analysis, fonts, wanted.size(), paper);
        Report report =
                new FormBoardReport(analysis, boards, wanted, options.paper().label(), fonts).report();
        int tiles = boards.stream().mapToInt(board -> board.tileNames().size()).sum();
        ReportPages.Pages pages = new ReportPages(fonts, options.paper()).set(report, fields(document), tiles);
        List<Scene> sheets = new ArrayList<>(pages.scenes());
        List<Bookmark> bookmarks = new ArrayList<>(pages.bookmarks());
        int of = sheets.size() + tiles;
        TileSheets setting = new TileSheets(fonts, analysis.harness().titleBlock());
        for (int k = 0; k < boards.size(); k++) {
            FormBoard board = boards.get(k);
            int first = sheets.size();
            String prefix = FormBoardReport.prefix(boards, k);
            sheets.addAll(setting.sheets(board, prefix, first, of));
            List<Bookmark> inner = new ArrayList<>();
            for (int tile = 0; tile < board.tileNames().size(); tile++) {
                inner.add(new Bookmark(prefix + board.tileNames().get(tile), first + tile));
            }
            bookmarks.add(new Bookmark(wanted.whole() ? board.name() : "Tiles of " + board.name(), first, inner));
        }
        links.addReport(document, file, pages.mentions());
        return new Prepared(document, Optional.of(report), sheets, bookmarks);
    }

    /** The PDF of each document, side by side: no document depends on another any more. */
    private List<byte[]> pdfs(List<Prepared> all) throws PackException {
        try {
            return all.parallelStream().map(this::pdf).toList();
        } catch (UncheckedIOException failed) {
            throw new PackException(
                    failed.getCause(),
                    "%s not made: %s",
                    String.valueOf(failed.getMessage()),
                    String.valueOf(failed.getCause().getMessage()));
        }
    }

    private byte[] pdf(Prepared prepared) {
        PackDocument document = prepared.document();
        steps.next(Constants.text(document));
        PdfContent content =
                new PdfContent(prepared.pages(), prepared.bookmarks(), links.places(document), links.links(document));
        try {
            return pdf.bytes(content, fields(document));
        } catch (IOException failed) {
            throw new UncheckedIOException(document.title(), failed);
        }
    }

    private void write(StagedFiles files, Prepared prepared, byte[] written) throws PackException {
        PackDocument document = prepared.document();
        add(files, names.pdf(document), written);
        if (document == PackDocument.DRAWING) {
            pictures(files, prepared);
        }
        if (prepared.report().isPresent()) {
            Report report = prepared.report().get();
            workbook.add(document.id(), report);
            for (Map.Entry<String, String> table : TableFile.texts(report).entrySet()) {
                add(files, names.csv(document, table.getKey()), table.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    /** Each sheet of the drawing as the pictures asked for. */
    private void pictures(StagedFiles files, Prepared drawing) throws PackException {
        PictureOptions wanted = options.pictures();
        DrawStyle style = options.monochrome() ? DrawStyle.PRINT_MONO : DrawStyle.PRINT;
        int of = drawing.pages().size();
        for (int k = 0; k < of; k++) {
            Scene sheet = drawing.pages().get(k);
            String title = drawing.document().title() + ", "
                    + analysis.harness().titleBlock().number() + ", sheet " + (k + 1) + " of " + of;
            if (wanted.svg()) {
                byte[] svg = SvgFile.text(sheet, title, style).getBytes(StandardCharsets.UTF_8);
                add(files, names.picture(drawing.document(), k + 1, "svg"), svg);
            }
            if (wanted.png()) {
                steps.checkpoint();
                try {
                    byte[] png = PngFile.bytes(sheet, fonts, style, wanted.dotsPerInch());
                    add(files, names.picture(drawing.document(), k + 1, "png"), png);
                } catch (IOException failed) {
                    throw new PackException(
                            failed,
                            "The pictures of the drawing are not made: %s",
                            String.valueOf(failed.getMessage()));
                }
            }
        }
    }

    private void workbook(StagedFiles files) throws PackException {
        if (!workbook.isEmpty()) {
            try {
                add(files, names.workbook(), workbook.bytes());
            } catch (IOException failed) {
                throw new PackException(
                        failed, "The workbook of tables is not made: %s", String.valueOf(failed.getMessage()));
            }
        }
    }

    private void add(StagedFiles files, String name, byte[] content) throws PackException {
        files.add(part.folder() + name, content);
        manifest.add(name, content);
    }

    private Report report(PackDocument document) {
        return switch (document) {
            case COVER -> new Cover(analysis, part.documents(), names).report();
            case PIN_TABLES -> new PinTables(analysis.harness(), fonts).report();
            case BILL_OF_MATERIALS -> new BillOfMaterials(analysis, this::labels).report(fonts);
            case WIRE_LIST -> new WireList(analysis).report();
            case BUNDLES -> new BundleReport(analysis, fonts).report();
            case BUILD_ORDER -> new BuildOrder(analysis, this::labels).report();
            case CHANNELS -> new ChannelSheet(analysis).report();
            case CALIBRATION -> new CalibrationSheet(analysis, fonts).report();
            case BUS -> new BusSheet(analysis, fonts).report();
            case INSTALLATION -> new InstallationSheet(analysis).report();
            case TEST_SHEET -> new TestSheet(analysis).report();
            case LABELS -> new LabelReport(analysis, fonts, this::labels).report();
            case CALCULATION -> new CalculationReport(analysis, fonts, remedies()).report();
            case DRAWING, WIRING_DIAGRAM, FORM_BOARD -> throw new IllegalArgumentException(
                    document.id() + " is no report");
        };
    }

    /** The texts of labels, which several documents need, worked out once. */
    private List<LabelText> labels() {
        List<LabelText> texts = labels.orElseGet(() -> LabelTexts.of(analysis));
        labels = Optional.of(texts);
        return texts;
    }

    private List<RemedyList> remedies() {
        return options.remedies() ? new RemedySearch(analysis, steps::isCancelled).all() : List.of();
    }

    private TitleFields fields(PackDocument document) {
        return TitleFields.of(analysis.harness().titleBlock(), document.title());
    }
}
