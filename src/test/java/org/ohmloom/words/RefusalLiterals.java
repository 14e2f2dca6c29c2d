package org.ohmloom.words;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The sentences in source files that are refusals, and the names of what they are about: literals in calls that refuse. */
final class RefusalLiterals extends TreeScanner<Void, Void> {

    /** Calls that take a sentence or a name; {@code Dimension} and {@code Shelf} take a word that goes into one. */
    private static final Set<String> REFUSING = Set.of(
            "Refusals.text",
            "UnfitException",
            "QuantityFormatException",
            "HarnessFileException",
            "RefusedException",
            "CsvTableException",
            "UnitSheetException",
            "PackException",
            "AnalysisRefusedException",
            "Shelf<>",
            "needed",
            "wrong",
            "refused",
            "Dimension");

    /** Calls of {@code units.Require}; what reads the cells of a row has a {@code positive} of its own. */
    private static final Set<String> REQUIRING =
            Set.of("that", "finite", "positive", "notNegative", "within", "notBlank");

    private final Set<String> templates = new TreeSet<>();
    private final Set<String> piecedTogether = new TreeSet<>();

    /** What stands in the files. */
    static RefusalLiterals in(List<Path> files) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        RefusalLiterals found = new RefusalLiterals();
        try (StandardJavaFileManager sources = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, sources, null, List.of("-proc:none"), null, sources.getJavaFileObjectsFromPaths(files));
            for (CompilationUnitTree unit : task.parse()) {
                found.scan(unit, null);
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return found;
    }

    /** The sentences and names. */
    Set<String> templates() {
        return templates;
    }

    /** Calls whose sentence is put together of pieces, so that no language could order them as it needs to. */
    Set<String> piecedTogether() {
        return piecedTogether;
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
        String callee = call.getMethodSelect().toString();
        String name = call.getMethodSelect() instanceof MemberSelectTree select
                ? select.getIdentifier().toString()
                : callee;
        boolean requires = REQUIRING.contains(callee.replaceFirst("^Require\\.", ""));
        if (requires || REFUSING.contains(callee) || REFUSING.contains(name)) {
            call.getArguments().forEach(each -> take(each, call));
        }
        if (name.equals("exists")) {
            take(call.getArguments().get(call.getArguments().size() - 1), call);
        }
        return super.visitMethodInvocation(call, nothing);
    }

    @Override
    public Void visitNewClass(NewClassTree made, Void nothing) {
        if (REFUSING.contains(made.getIdentifier().toString())) {
            made.getArguments().forEach(each -> take(each, made));
        }
        return super.visitNewClass(made, nothing);
    }

    private void take(ExpressionTree given, Tree call) {
        if (given instanceof LiteralTree literal && literal.getValue() instanceof String text) {
            if (text.matches("(?s).*\\p{L}.*")) {
                templates.add(text);
            }
        } else if (given instanceof ParenthesizedTree inner) {
            take(inner.getExpression(), call);
        } else if (given instanceof ConditionalExpressionTree either) {
            take(either.getTrueExpression(), call);
            take(either.getFalseExpression(), call);
        } else if (given instanceof BinaryTree plus && plus.getKind() == Tree.Kind.PLUS && says(plus)) {
            piecedTogether.add(call.toString().replaceAll("\\s+", " "));
        }
    }

    /** Whether a sum has a word in it. */
    private static boolean says(ExpressionTree part) {
        return part instanceof BinaryTree sum
                ? says(sum.getLeftOperand()) || says(sum.getRightOperand())
                : part instanceof LiteralTree literal
                        && literal.getValue() instanceof String text
                        && text.matches("(?s).*\\p{L}{2}.*");
    }
}
