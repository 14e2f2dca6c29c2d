package org.ohmloom.workbench.words;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CaseTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * The string literals in source files that a person may come to read, told by their look and by where they stand: a literal
 * with a blank between words or with a capital at its beginning, and a single word where only texts stand. Left out is what
 * is a key, a name or a notation: see {@link #NAMES}, {@link #COMPARED}, {@link #NOTATION}.
 */
final class SpokenLiterals {

    /** A literal, and where it stands. */
    record Spoken(Path file, long line, long start, String text) {
        @Override
        public String toString() {
            return file + ":" + line + " \"" + text.replace("\n", "\\n") + "\"";
        }
    }

    /** Calls whose arguments are names for the program: keys, properties, constraints of the layout, patterns. */
    private static final Set<String> NAMES = Set.of(
            "setName",
            "putClientProperty",
            "getClientProperty",
            "withIcon",
            "onAccent",
            "MigLayout",
            "Box",
            "colour",
            "ofKey",
            "getResource",
            "getResourceAsStream",
            "getBundle",
            "forLanguageTag",
            "getColor",
            "getFont",
            "getProperty",
            "getMethod",
            "letter",
            "LatestWins",
            "Thread",
            "LoadGroupId",
            "ReadingId",
            "getKeyStroke",
            "ofPattern",
            "Path",
            "resolve",
            "IllegalStateException",
            "AssertionError",
            "UncheckedIOException",
            "LinkageError",
            "log");

    /** Calls that hold a text against another, or take it apart: what is compared is not shown. */
    private static final Set<String> COMPARED = Set.of(
            "equals",
            "equalsIgnoreCase",
            "startsWith",
            "endsWith",
            "contains",
            "matches",
            "replace",
            "replaceAll",
            "replaceFirst",
            "split",
            "indexOf",
            "lastIndexOf",
            "length",
            "compile",
            "substring");

    /** Calls that show a text: here a single word counts too. */
    private static final Set<String> SHOWN = Set.of(
            "setText",
            "JLabel",
            "JButton",
            "JCheckBox",
            "JMenuItem",
            "setTitle",
            "setToolTipText",
            "setAccessibleName",
            "setAccessibleDescription",
            "say",
            "Fact",
            "Grid",
            "CellText",
            "Reason",
            "saying",
            "setReady",
            "all",
            "known",
            "coverings",
            "model",
            "Column",
            "ColumnEdits",
            "ofReading",
            "verdict",
            "covering");

    /** Constraints of a layout, names of colours, units and what else is written alike in every language. */
    private static final Pattern NOTATION = Pattern.compile(
            // constraints
            "(?s)\\s*,?\\s*(grow|push|span|wmin|hmin|wrap|w |h |gap|align|split|dock|center|cell|insets|fill|hide|sizegroup|skip|novis|newline|tag |\\[).*"
                    // marks of a page
                    + "|<html>.*|.*</html>|[</>a-z]*[<>][</>a-z]*|; font: "
                    // keys
                    + "|[a-z0-9]+([-./:#][A-Za-z0-9]*)+|[A-Z][A-Za-z]*(\\.[A-Za-z]+)+|[a-z]+[A-Z][A-Za-z]*|[A-Z_]{2,}[0-9]*|W[0-9]|[-.][a-z-]+"
                    // units
                    + "|[ (),;/+×·0-9-]*(V|px|mH|mV|A|mA|Ah|As|A²s|W|kW|Wh|J|Ω|mΩ|MΩ|Ohm|mOhm|m|mm|mm2|mm²|cm|kg|g|s|ms|µs|ns|h|min|Hz|kHz|°C|°F|K|F|nF|pF|µF|H|µH|N|ft|in|bit/s|mV/K|%/K|cm²|rpm|pt|AWG|RMS|K/W|m²|%)[ (),;/+×·-]*"
                    // the program and its files
                    + "|Ohmloom|ISO 6722-1 class C|\\*?\\.?[a-z]+\\.(json|csv|pdf|png|txt|md)");

    /** Constants that hold the form in which something is typed. */
    private static final Set<String> TYPED_FORMS = Set.of("FORM", "FORMS");

    /** Style rules of the pages of the manual. */
    private static final Set<String> NOT_SHOWN = Set.of("PageStyle.java");

    /** Classes whose refusals tell a programmer of a name that nobody typed. */
    private static final Set<String> REFUSE_PROGRAMMERS =
            Set.of("CalibrationKind.java", "CommandBook.java", "Icons.java", "Personal.java", "ViewTabs.java");

    private SpokenLiterals() {}

    /** Every literal of the files that a person may come to read, in the order of the files and lines. */
    static List<Spoken> in(List<Path> files) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<Spoken> found = new ArrayList<>();
        try (StandardJavaFileManager sources = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, sources, null, List.of("-proc:none"), null, sources.getJavaFileObjectsFromPaths(files));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                new Reader(unit, positions, found).scan(unit, null);
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return found;
    }

    private static final class Reader extends TreePathScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final List<Spoken> found;

        Reader(CompilationUnitTree unit, SourcePositions positions, List<Spoken> found) {
            this.unit = unit;
            this.positions = positions;
            this.found = found;
        }

        @Override
        public Void visitAnnotation(AnnotationTree tree, Void nothing) {
            return null;
        }

        @Override
        public Void visitLiteral(LiteralTree literal, Void nothing) {
            if (literal.getValue() instanceof String text && isSpoken(text, getCurrentPath())) {
                long start = positions.getStartPosition(unit, literal);
                long line = unit.getLineMap().getLineNumber(start);
                found.add(new Spoken(Path.of(unit.getSourceFile().getName()), line, start, text));
            }
            return null;
        }
    }

    private static boolean isSpoken(String text, TreePath path) {
        if (!text.matches("(?s).*\\p{L}.*") || NOTATION.matcher(text).matches()) {
            return false;
        }
        TreePath around = path.getParentPath();
        Tree inner = path.getLeaf();
        boolean joined = false;
        while (around.getLeaf() instanceof ParenthesizedTree
                || around.getLeaf() instanceof BinaryTree plus && plus.getKind() == Tree.Kind.PLUS
                || around.getLeaf() instanceof ConditionalExpressionTree) {
            joined |= around.getLeaf() instanceof BinaryTree;
            inner = around.getLeaf();
            around = around.getParentPath();
        }
        Tree place = around.getLeaf();
        if (place instanceof CaseTree given && given.getExpressions().contains(inner)
                || place instanceof BinaryTree
                || place instanceof MemberSelectTree compared
                        && COMPARED.contains(compared.getIdentifier().toString())) {
            return false;
        }
        String call = call(place);
        String file = Path.of(path.getCompilationUnit().getSourceFile().getName())
                .getFileName()
                .toString();
        if (NOT_SHOWN.contains(file) || call.equals("IllegalArgumentException") && REFUSE_PROGRAMMERS.contains(file)) {
            return false;
        }
        if (NAMES.contains(call) || COMPARED.contains(call) || isKey(place, inner, call)) {
            return false;
        }
        if (place instanceof VariableTree constant
                        && TYPED_FORMS.contains(constant.getName().toString())
                || isCalibrationForm(path, file)) {
            return false;
        }
        return text.strip().contains(" ")
                || text.length() > 1 && Character.isUpperCase(text.charAt(0))
                || joined && text.matches("(?s).*[\\p{L}]{2}.*")
                || SHOWN.contains(call) && !text.matches("[a-z]");
    }

    /** How a calibration is written in a cell: the same in every language, for it is typed and read as it is shown. */
    private static boolean isCalibrationForm(TreePath path, String file) {
        TreePath at = path;
        while (at != null && !(at.getLeaf() instanceof MethodTree)) {
            at = at.getParentPath();
        }
        return file.equals("CalibrationText.java")
                && at != null
                && ((MethodTree) at.getLeaf()).getName().contentEquals("of");
    }

    /** A key of a bundle, or the colour beside a text. */
    private static boolean isKey(Tree place, Tree inner, String call) {
        if (!(place instanceof MethodInvocationTree made)) {
            return false;
        }
        int at = made.getArguments().indexOf(inner);
        String callee = made.getMethodSelect().toString();
        return at == 0
                        && (call.equals("get")
                                || call.equals("text")
                                || callee.matches("(easel|easel\\(\\))\\.(say|wrong)"))
                || callee.equals("Words.of")
                || callee.equals("Tone.colour")
                || call.equals("show") && callee.startsWith("((CardLayout)");
    }

    private static String call(Tree place) {
        if (place instanceof NewClassTree made) {
            return made.getIdentifier().toString().replaceAll("<.*", "");
        }
        if (place instanceof MethodInvocationTree called) {
            if (called.getMethodSelect() instanceof MemberSelectTree select) {
                String name = select.getIdentifier().toString();
                return name.equals("of") || select.getExpression().toString().startsWith("Column")
                        ? select.getExpression().toString()
                        : name;
            }
            return called.getMethodSelect().toString();
        }
        return "";
    }
}
