package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.section.LabelPlan;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.model.Harness;
import org.ohmloom.pack.label.LabelChoice;
import org.ohmloom.pack.label.LabelFit;
import org.ohmloom.pack.label.LabelSheet;
import org.ohmloom.pack.label.LabelText;
import org.ohmloom.pack.label.LabelTexts;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.tables.LabelSize;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/** All labels: their texts with the size each gets, how many of each size, and sheets of them true to size. */
final class LabelReport {
    private static final List<Column> TEXTS = List.of(
            Column.words("Text"),
            Column.code("Size"),
            Column.count("Quantity", 0),
            Column.words("Where"),
            Column.fileOnly("On"),
            Column.fileOnly("Subject"),
            Column.number("Lettering", Unit.MILLIMETRE, 1),
            Column.number("Cut to", Unit.MILLIMETRE, 0),
            Column.number("Goes over", Unit.MILLIMETRE, 1),
            Column.words("How it suits"),
            Column.code("Or"));

    private static final List<Column> SIZES = List.of(
            Column.code("Size"),
            Column.words("What it is"),
            Column.count("Labels", 0),
            Column.number("Sleeve in all", Unit.METRE, 2),
            Column.number("From", Unit.MILLIMETRE, 1),
            Column.number("To", Unit.MILLIMETRE, 1),
            Column.code("Shrinks"));

    private static final String REMARK =
            "Sleeves go on before the ends are crimped. Print sheets at 100 % and check the bar. Texts, sizes and"
                    + " counts for a label printer stand in the table file.";

    private final Analysis analysis;
    private final Harness harness;
    private final SceneFonts fonts;
    private final FabricationTables tables;
    private final Supplier<List<LabelText>> wanted;

    LabelReport(Analysis analysis, SceneFonts fonts) {
        this(analysis, fonts, () -> LabelTexts.of(analysis));
    }

    /** The report with texts that may be known already. */
    LabelReport(Analysis analysis, SceneFonts fonts, Supplier<List<LabelText>> wanted) {
        this.wanted = wanted;
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.fonts = fonts;
        this.tables = analysis.evidence().tables().fabrication();
    }

    /** The label of every text. */
    List<LabelChoice> choices() {
        return wanted.get().stream()
                .map(text -> LabelChoice.of(text, tables, fonts))
                .toList();
    }

    /** The labels by size, in the order of the table. */
    static Map<LabelSize, List<LabelChoice>> bySize(List<LabelChoice> choices, FabricationTables tables) {
        Map<LabelSize, List<LabelChoice>> bySize = new LinkedHashMap<>();
        for (LabelSize size : tables.labels()) {
            List<LabelChoice> members = choices.stream()
                    .filter(choice -> choice.chosen()
                            .filter(fit -> fit.size().equals(size))
                            .isPresent())
                    .toList();
            if (!members.isEmpty()) {
                bySize.put(size, members);
            }
        }
        return bySize;
    }

    static int count(List<LabelChoice> choices) {
        return choices.stream().mapToInt(choice -> choice.text().count()).sum();
    }

    /** Length of sleeve that labels are cut from, m; 0 for other labels. */
    static double sleeveMetres(List<LabelChoice> choices) {
        return choices.stream()
                .filter(choice -> choice.chosen()
                        .filter(fit -> fit.size().kind() == LabelSize.Kind.SLEEVE)
                        .isPresent())
                .mapToDouble(choice ->
                        choice.chosen().orElseThrow().lengthMm() * choice.text().count())
                .map(Unit.MILLIMETRE::toCanonical)
                .sum();
    }

    Report report() {
        List<LabelChoice> choices = choices();
        Map<LabelSize, List<LabelChoice>> bySize = bySize(choices, tables);
        long without =
                choices.stream().filter(choice -> choice.chosen().isEmpty()).count();
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        blocks.add(new Block.Facts(List.of(
                new Block.Fact("Labels", String.valueOf(count(choices))),
                new Block.Fact("Different texts", String.valueOf(choices.size())),
                new Block.Fact("Sizes", String.valueOf(bySize.size())),
                new Block.Fact("Texts no size takes", String.valueOf(without)))));
        blocks.add(new Block.Kept(List.of(
                new Block.Heading("Sizes"),
                new Block.Table("sizes", SIZES, sizes(bySize), "Nothing is to be labelled."))));
        blocks.add(new Block.Heading("Texts"));
        blocks.add(new Block.Table("", TEXTS, texts(choices), "Nothing is to be labelled."));
        if (!choices.isEmpty()) {
            blocks.add(new Block.Heading("What this rests on"));
            blocks.add(new Block.Points(List.copyOf(sources(bySize))));
        }
        LabelSheet sheet = new LabelSheet(tables, fonts, Block.Pictures.WIDTH_MM);
        bySize.forEach((size, members) -> {
            String heading =
                    "Sheet of " + size.id() + ", " + size.words() + ": " + Wording.count(count(members), "label");
            List<Scene> lines = new ArrayList<>();
            lines.add(sheet.bar());
            lines.addAll(sheet.lines(members));
            blocks.add(new Block.Heading(heading));
            blocks.add(new Block.Pictures(lines));
        });
        return new Report(blocks, REMARK);
    }

    private List<Row> sizes(Map<LabelSize, List<LabelChoice>> bySize) {
        List<Row> rows = new ArrayList<>();
        bySize.forEach((size, members) -> rows.add(Row.of(
                Cell.text(size.id()).toned(Cell.Tone.STRONG),
                Cell.text(size.words()),
                Cell.number(count(members)),
                size.kind() == LabelSize.Kind.SLEEVE ? Cell.number(sleeveMetres(members)) : Cell.empty(),
                Cell.number(size.leastMm()),
                Cell.number(size.mostMm()),
                size.kind() == LabelSize.Kind.SLEEVE
                        ? Cell.text(Math.round(size.mostMm() / size.leastMm()) + ":1")
                        : Cell.empty())));
        return rows;
    }

    private static List<Row> texts(List<LabelChoice> choices) {
        List<Row> rows = new ArrayList<>();
        LabelText.Kind kind = null;
        for (LabelChoice choice : choices) {
            LabelText text = choice.text();
            if (text.kind() != kind) {
                kind = text.kind();
                rows.add(Row.group(kind.words()));
            }
            Optional<LabelFit> fit = choice.chosen();
            rows.add(Row.of(
                    Cell.text(text.text()).toned(Cell.Tone.STRONG),
                    fit.map(each -> Cell.text(each.size().id())).orElseGet(() -> Cell.missing("none")),
                    Cell.number(text.count()),
                    Cell.text(text.where()),
                    Cell.text(text.kind().words()),
                    Cell.text(text.subject()),
                    fit.map(each -> Cell.number(each.letteringMm())).orElseGet(Cell::empty),
                    fit.map(each -> Cell.number(each.lengthMm())).orElseGet(Cell::empty),
                    Cell.number(text.diameterMm()),
                    fit.map(each -> Cell.text(each.words()))
                            .orElseGet(() -> Cell.missing("no size goes round it with lettering that can be read")),
                    Cell.text(choice.instead().map(each -> each.size().id()))));
        }
        return rows;
    }

    private Set<String> sources(Map<LabelSize, List<LabelChoice>> bySize) {
        Set<String> sources = new TreeSet<>();
        bySize.keySet()
                .forEach(size -> sources.add("Sizes of labels: "
                        + size.citation().document() + ", " + size.citation().table() + " ("
                        + size.citation().status().words() + ")"));
        sources.add("Least height of lettering: "
                + tables.value("lettering-least").citation().text());
        sources.add("Sleeves go over the wire as supplied and are narrower recovered; one that has done "
                + Formats.percent(tables.value("shrink-share").value()) + " of its shrinking is tight: "
                + tables.value("shrink-share").citation().text());
        sources.add("Along its length a sleeve loses up to "
                + Formats.percent(tables.value("shrink-along").value()) + ", text and all: "
                + tables.value("shrink-along").citation().text());
        sources.add("Lying flat a sleeve is "
                + Formats.number(tables.value("sleeve-flat").value()) + " times its diameter: "
                + tables.value("sleeve-flat").citation().text());
        sources.add("Wrap-around labels: printed part no longer than once round, clear tail over all of it (geometry)");
        sources.add("Places of marks on wires: "
                + LabelPlan.of(1, harness.rules().fabricationRules(), tables).source());
        sources.add("A label for the harness, and one on or beside each connector: NASA Workmanship Standards Book 4,"
                + " 14.2.1 and 14.2.2");
        return sources;
    }
}
