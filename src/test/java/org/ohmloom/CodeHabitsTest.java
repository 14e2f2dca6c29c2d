package org.ohmloom;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Standard streams, the clock, the locale, and names: habits every class keeps. */
class CodeHabitsTest {
    private static final List<String> BANNED_ENDINGS =
            List.of("Manager", "Helper", "Util", "Utils", "Data", "Info", "Impl");

    /** The one name with a banned ending: it is the word the rule registry is described with. */
    private static final Set<String> ALLOWED_NAMES = Set.of("RuleInfo");

    /** Methods that read the default locale when they get none. */
    private static final Set<String> LOCALE_READERS = Set.of(
            "String.format(java.lang.String, [Ljava.lang.Object;)",
            "String.formatted([Ljava.lang.Object;)",
            "String.toLowerCase()",
            "String.toUpperCase()",
            "Locale.getDefault()",
            "NumberFormat.getInstance()",
            "NumberFormat.getNumberInstance()",
            "DecimalFormat.<init>(java.lang.String)",
            "DecimalFormatSymbols.getInstance()",
            "Collator.getInstance()",
            "Scanner.<init>(java.lang.String)");

    @Test
    void standardStreamsAreTheCommandLinesAlone() {
        // The launcher may say on the error stream why nothing else could start.
        noClasses()
                .that()
                .resideOutsideOfPackages("org.ohmloom", "org.ohmloom.cli..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .accessField(System.class, "in")
                .check(OurClasses.MAIN);
    }

    @Test
    void nobodyPrintsAStackTraceOrEndsTheProgramBelowTheCommandLine() {
        noClasses()
                .should()
                .callMethodWhere(target(owner(assignableTo(Throwable.class))).and(target(name("printStackTrace"))))
                .because("bad input gives one clear line, and a defect goes to the log")
                .check(OurClasses.MAIN);
        noClasses()
                .that()
                .resideOutsideOfPackages("org.ohmloom", "org.ohmloom.cli..", "org.ohmloom.workbench..")
                .should()
                .callMethod(System.class, "exit", int.class)
                .check(OurClasses.MAIN);
    }

    @Test
    void theClockIsHandedInBelowTheTopFloor() {
        noClasses()
                .that(belowTheTopFloor())
                .should()
                .callCodeUnitWhere(readsTheClock())
                .because("the same harness must give the same result at any hour")
                .check(OurClasses.MAIN);
    }

    @Test
    void theDefaultLocaleIsNotReadBelowTheTopFloor() {
        noClasses()
                .that(belowTheTopFloor())
                .should()
                .callCodeUnitWhere(readsTheLocale())
                .because("a file or a message must not depend on where the computer stands; pass Locale.ROOT")
                .check(OurClasses.MAIN);
    }

    @Test
    void classNamesAreNounsOfTheTrade() {
        classes().that().areNotAnonymousClasses().should(notEndInABannedWord()).check(OurClasses.MAIN);
    }

    private static DescribedPredicate<JavaClass> belowTheTopFloor() {
        return DescribedPredicate.describe(
                "lie below the top floor",
                each -> Floors.floorOf(Floors.floorPackage(each.getPackageName())) < Floors.floorOf("cli"));
    }

    private static DescribedPredicate<JavaCall<?>> readsTheClock() {
        return DescribedPredicate.describe("the call reads the clock", call -> {
            String owner = call.getTargetOwner().getName();
            String method = call.getName();
            boolean noArguments = call.getTarget().getRawParameterTypes().isEmpty();
            return switch (owner) {
                case "java.lang.System" -> method.equals("currentTimeMillis") || method.equals("nanoTime");
                case "java.time.Clock" -> method.startsWith("system");
                case "java.util.Date" -> method.equals("<init>") && noArguments;
                case "java.util.Calendar" -> method.equals("getInstance");
                default -> owner.startsWith("java.time.") && method.equals("now") && noArguments;
            };
        });
    }

    private static DescribedPredicate<JavaCall<?>> readsTheLocale() {
        return DescribedPredicate.describe("the call reads the default locale", call -> {
            String arguments = String.join(
                    ", ",
                    call.getTarget().getRawParameterTypes().stream()
                            .map(JavaClass::getName)
                            .toList());
            String signature = call.getTargetOwner().getSimpleName() + "." + call.getName() + "(" + arguments + ")";
            return LOCALE_READERS.contains(signature);
        });
    }

    private static ArchCondition<JavaClass> notEndInABannedWord() {
        return new ArchCondition<>("not end in " + BANNED_ENDINGS) {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                String simple = item.getSimpleName();
                if (!ALLOWED_NAMES.contains(simple) && BANNED_ENDINGS.stream().anyMatch(simple::endsWith)) {
                    events.add(SimpleConditionEvent.violated(item, item.getName() + " says nothing by its last word"));
                }
            }
        };
    }
}
