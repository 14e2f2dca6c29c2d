package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.PartId;
import org.ohmloom.model.SizingRules;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.pack.label.LabelText;
import org.ohmloom.pack.label.LabelTexts;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.words.Text;

/** What a line of the bill comes to: lengths with waste, prices, what the customer supplies. */
@BesideOthers
class PurchaseTest {
    private static final SceneFonts FONTS = SceneFonts.load();
    private static final double EXACT = 1e-9;

    private static final Gauge GAUGE = Gauge.metric(1.5);

    private static Harness harness(boolean customerSupplied, OptionalDouble price) {
        SizingRules sizing = new SizingRules(
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(new SizingRules.StockSize(GAUGE, OptionalDouble.of(0.48))),
                false,
                OptionalDouble.empty());
        DesignRules rules = new DesignRules(
                "road-vehicle",
                12,
                0.05,
                GaugeSystem.METRIC,
                "ISO 6722-1 class B",
                Optional.empty(),
                30,
                Optional.of(sizing),
                Optional.empty());
        return Harness.empty(TitleBlock.of("Bought", "EX-7"), rules)
                .with(new Part(
                        new PartId("EX-H2"),
                        "Example",
                        "2-way housing",
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        price,
                        List.of(),
                        customerSupplied));
    }

    private static Material housing() {
        return Material.piece(Optional.empty(), MaterialKind.HOUSING, Optional.of(new PartId("EX-H2")), Text.NONE);
    }

    private static Material wire() {
        return Material.length(Optional.empty(), MaterialKind.WIRE, Optional.empty(), Text.of("1.5 mm2"));
    }

    @Test
    void wireIsBoughtWithATenthMoreAndRoundedUpToADecimetreAndPricedByTheStockOfSizes() {
        Harness harness = harness(false, OptionalDouble.empty());
        // 17.53 m x (1 + 0.10) = 19.283 m, so 19.3 m; x 0.48 a metre = 9.264, so 9.26
        Purchase purchase = Purchase.of(wire(), Optional.of(GAUGE), 17.53, 0.10, harness);
        assertEquals(19.3, purchase.quantity(), EXACT);
        assertEquals(Optional.of(new BigDecimal("9.26")), purchase.total());
        // 2.0 m x 1.1 is 2.2 m and stays that, not 2.3 m for the last binary digit
        assertEquals(
                2.2, Purchase.of(wire(), Optional.of(GAUGE), 2, 0.10, harness).quantity(), EXACT);
        assertEquals(
                Optional.empty(),
                Purchase.of(wire(), Optional.of(Gauge.metric(2.5)), 2, 0.10, harness)
                        .total());
    }

    @Test
    void piecesAreBoughtAsCountedAndALineIsRoundedToAHundredthHalvesUp() {
        Harness harness = harness(false, OptionalDouble.of(0.335));
        // 11 x 0.335 = 3.685, so 3.69
        Purchase purchase = Purchase.of(housing(), Optional.empty(), 11, 0.10, harness);
        assertEquals(11, purchase.quantity(), EXACT);
        assertEquals(Optional.of(new BigDecimal("3.69")), purchase.total());
    }

    @Test
    void whatTheCustomerSuppliesCostsNothingHereThoughItsPriceIsKnown() {
        Purchase purchase = Purchase.of(housing(), Optional.empty(), 11, 0.10, harness(true, OptionalDouble.of(2)));
        assertTrue(purchase.customerSupplied());
        assertEquals(Optional.empty(), purchase.total());
    }

    private static List<Row> rows(List<Block> blocks, String file) {
        return blocks.stream()
                .filter(block ->
                        block instanceof Block.Table table && table.file().equals(file))
                .flatMap(block -> ((Block.Table) block).rows().stream())
                .filter(row -> row.kind() == Row.Kind.ITEM)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat"})
    void everyLineOfTheBillIsInOnePurchaseAndThePricesSumToTheTotal(String example) {
        Analysis analysis = Packs.analysis(example);
        List<Block> blocks = new BillOfMaterials(analysis).report(FONTS).blocks();
        List<Row> bill = rows(blocks, "");
        List<Row> bought = rows(blocks, "purchasing");
        Map<String, String> partByItem = new TreeMap<>();
        for (Row row : bought) {
            for (String item : row.cells().get(0).text().split(", ")) {
                assertNull(partByItem.put(item, row.cells().get(1).text()), item + " is bought once");
            }
        }
        assertEquals(bill.size(), partByItem.size());
        for (Row row : bill) {
            String item = String.valueOf(Math.round(row.cells().get(0).number().orElseThrow()));
            assertEquals(row.cells().get(6).text(), partByItem.get(item));
        }
        List<Column> columns = blocks.stream()
                .filter(block ->
                        block instanceof Block.Table table && table.file().equals("purchasing"))
                .map(block -> ((Block.Table) block).columns())
                .findFirst()
                .orElseThrow();
        BigDecimal sum = BigDecimal.ZERO;
        int without = 0;
        int supplied = 0;
        for (Row row : bought) {
            OptionalDouble price = number(row, columns, "Price");
            sum = sum.add(price.isPresent() ? BigDecimal.valueOf(price.getAsDouble()) : BigDecimal.ZERO);
            String remark = cell(row, columns, "Remark").text();
            without += remark.equals("no price") ? 1 : 0;
            supplied += remark.equals("customer supplies") ? 1 : 0;
        }
        List<Block.Fact> facts = blocks.stream()
                .filter(Block.Facts.class::isInstance)
                .flatMap(block -> ((Block.Facts) block).facts().stream())
                .toList();
        assertEquals(sum.setScale(2) + " EUR", value(facts, "Price of all purchases that have one"));
        assertEquals(without + " of " + bought.size(), value(facts, "Purchases without a price"));
        assertEquals(String.valueOf(supplied), value(facts, "Purchases the customer supplies"));
    }

    private static Cell cell(Row row, List<Column> columns, String head) {
        return row.cells().get(columns.stream().map(Column::head).toList().indexOf(head));
    }

    private static OptionalDouble number(Row row, List<Column> columns, String head) {
        return cell(row, columns, head).number();
    }

    private static String value(List<Block.Fact> facts, String label) {
        return facts.stream()
                .filter(fact -> fact.label().equals(label))
                .map(Block.Fact::value)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat"})
    void contactsWireLabelsTiesAndToolsAreThoseOfTheModel(String example) {
        Analysis analysis = Packs.analysis(example);
        Harness harness = analysis.harness();
        Map<Material, MaterialCount> bill = new BillOfMaterials(analysis).everything(FONTS);
        long cavities = harness.wires().all().stream()
                .filter(wire -> !wire.existing())
                .flatMap(wire -> wire.ends().stream())
                .filter(WireEnd.AtCavity.class::isInstance)
                .map(WireEnd::text)
                .distinct()
                .count();
        assertEquals(cavities, sum(bill, MaterialKind.CONTACT), EXACT);
        double metres = harness.wires().all().stream()
                .filter(wire -> !wire.existing()
                        && wire.cable()
                                .map(harness.cables()::get)
                                .filter(cable -> cable.part().isPresent() || cable.shielded())
                                .isEmpty())
                .mapToDouble((Wire wire) -> analysis.routes().lengthMetres(wire).orElse(0))
                .sum();
        assertEquals(metres, sum(bill, MaterialKind.WIRE), 1e-6);
        double fixings = analysis.evidence().bundles().bySegment().values().stream()
                .filter(section -> !section.members().isEmpty())
                .mapToDouble(section -> section.supports().supportMetres().size()
                        + section.supports().tieMetres().size())
                .sum();
        assertEquals(fixings, sum(bill, MaterialKind.FIXING), EXACT);
        Set<String> labelled = new TreeSet<>();
        bill.forEach((material, count) -> {
            if (material.kind() == MaterialKind.LABEL) {
                labelled.addAll(count.designators());
            }
        });
        Set<String> asked = new TreeSet<>();
        LabelTexts.of(analysis).stream().map(LabelText::subject).forEach(asked::add);
        assertEquals(asked, labelled);
        Set<String> tools = new TreeSet<>();
        harness.contacts().all().stream()
                .filter(contact -> harness.wires().all().stream()
                        .filter(wire -> !wire.existing())
                        .flatMap(wire -> wire.ends().stream())
                        .anyMatch(end -> harness.contact(end).equals(Optional.of(contact))))
                .flatMap(contact -> contact.tool().stream())
                .map(PartId::value)
                .forEach(tools::add);
        Set<String> listed = new TreeSet<>();
        bill.forEach((material, count) -> {
            if (material.kind() == MaterialKind.TOOL) {
                material.part().map(PartId::value).ifPresent(listed::add);
                assertEquals(1, count.quantity(), EXACT);
            }
        });
        assertEquals(tools, listed);
    }

    private static double sum(Map<Material, MaterialCount> bill, MaterialKind kind) {
        return bill.entrySet().stream()
                .filter(entry -> entry.getKey().kind() == kind)
                .mapToDouble(entry -> entry.getValue().quantity())
                .sum();
    }

    @Test
    void wasteAskedForByTheHarnessTakesThePlaceOfTheTable() {
        FabricationRules rules =
                FabricationRules.NONE.withWorkshop(Optional.empty(), OptionalDouble.of(0.25), Optional.of("EUR"));
        assertEquals(0.25, rules.wasteFraction().orElseThrow());
        // 4 m x 1.25 = 5 m
        assertEquals(
                5,
                Purchase.of(wire(), Optional.of(GAUGE), 4, 0.25, harness(false, OptionalDouble.empty()))
                        .quantity(),
                EXACT);
    }
}
