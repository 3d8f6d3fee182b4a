package org.shortgrain;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows of the architecture: each layer knows those above it in the order of the work, and never the reverse. */
class ArchitectureTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("org.shortgrain");

    private static final ArchRule LAYERS_KNOW_ONLY_WHAT_COMES_BEFORE_THEM = layeredArchitecture().consideringOnlyDependenciesInLayers()
            .layer("terms").definedBy("org.shortgrain.terms..")
            .layer("part").definedBy("org.shortgrain.part..")
            .layer("reference").definedBy("org.shortgrain.reference..")
            .layer("mechanics").definedBy("org.shortgrain.mechanics..")
            .layer("review").definedBy("org.shortgrain.review..")
            .layer("rulebook").definedBy("org.shortgrain.rulebook..")
            .layer("assessment").definedBy("org.shortgrain.assessment..")
            .optionalLayer("remedy").definedBy("org.shortgrain.remedy..")
            .layer("report").definedBy("org.shortgrain.report..")
            .optionalLayer("signoff").definedBy("org.shortgrain.signoff..")
            .layer("cli").definedBy("org.shortgrain.cli..")
            .whereLayer("cli").mayNotBeAccessedByAnyLayer()
            .whereLayer("signoff").mayOnlyBeAccessedByLayers("cli")
            .whereLayer("report").mayOnlyBeAccessedByLayers("signoff", "cli")
            .whereLayer("remedy").mayOnlyBeAccessedByLayers("cli")
            .whereLayer("assessment").mayOnlyBeAccessedByLayers("remedy", "signoff", "cli")
            .whereLayer("rulebook").mayOnlyBeAccessedByLayers("assessment", "remedy", "signoff", "cli")
            .whereLayer("review").mayOnlyBeAccessedByLayers("rulebook", "assessment", "remedy", "report", "signoff", "cli")
            .whereLayer("mechanics").mayOnlyBeAccessedByLayers("reference", "review", "rulebook", "assessment", "remedy",
                    "report", "signoff", "cli")
            .whereLayer("reference").mayOnlyBeAccessedByLayers("rulebook", "assessment", "remedy", "cli")
            .whereLayer("part").mayOnlyBeAccessedByLayers("reference", "review", "rulebook", "assessment", "remedy",
                    "report", "signoff", "cli");

    private static final ArchRule MECHANICS_KNOWS_THE_MATHS_LIBRARY_ONLY = noClasses()
            .that().resideInAPackage("org.shortgrain.mechanics..")
            .should().dependOnClassesThat().resideOutsideOfPackages("java..", "org.hipparchus..",
                    "org.shortgrain.mechanics..", "org.shortgrain.terms..");

    private static final ArchRule RULES_RUN_IN_THE_RULEBOOK_ONLY = noClasses()
            .that().resideOutsideOfPackages("org.shortgrain.rulebook..", "rules..")
            .should().dependOnClassesThat().resideInAnyPackage("org.drools..", "org.kie..");

    private static final ArchRule PDF_IS_WRITTEN_IN_ITS_LAYER_ONLY = noClasses()
            .that().resideOutsideOfPackages("org.shortgrain.report.pdf..", "org.shortgrain.signoff..")
            .should().dependOnClassesThat().resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..",
                    "org.apache.xmpbox..");

    private static final ArchRule SIGNATURES_ARE_MADE_IN_THEIR_LAYER_ONLY = noClasses()
            .that().resideOutsideOfPackage("org.shortgrain.signoff..")
            .should().dependOnClassesThat().resideInAnyPackage("eu.europa.esig..", "org.bouncycastle..");

    private static final ArchRule YAML_IS_READ_AT_THE_EDGES_ONLY = noClasses()
            .that().resideOutsideOfPackages("org.shortgrain.part.reader..", "org.shortgrain.reference..",
                    "org.shortgrain.rulebook..")
            .should().dependOnClassesThat().resideInAPackage("org.yaml.snakeyaml..");

    private static final ArchRule THE_COMMAND_LINE_LIBRARY_STAYS_IN_ITS_LAYER = noClasses()
            .that().resideOutsideOfPackage("org.shortgrain.cli..")
            .should().dependOnClassesThat().resideInAPackage("picocli..");

    /** The library that reads class files is there when the tool is built, and not beside the tool. */
    private static final String READERS_OF_CLASS_FILES =
            "org\\.shortgrain\\.rulebook\\.(GatheredLambdas|CompiledLambda|AccessorCalls)(\\$.*)?";

    private static final ArchRule CLASS_FILES_ARE_READ_IN_FEW_PLACES = noClasses()
            .that().haveNameNotMatching(READERS_OF_CLASS_FILES)
            .should().dependOnClassesThat().resideInAPackage("org.objectweb.asm..");

    private static final ArchRule CLASS_FILES_ARE_READ_BY_THE_BUILD_ONLY = noClasses()
            .that().haveNameNotMatching(READERS_OF_CLASS_FILES)
            .and().doNotHaveFullyQualifiedName("org.shortgrain.rulebook.RuleCompiler")
            .should().dependOnClassesThat().haveNameMatching(READERS_OF_CLASS_FILES);

    private static final ArchRule PACKAGES_ARE_FREE_OF_CYCLES = slices().matching("org.shortgrain.(*)..")
            .should().beFreeOfCycles();

    /** Plain tests, since the runner does not count rules that stand in fields. */
    static Stream<ArchRule> rules() {
        return Stream.of(LAYERS_KNOW_ONLY_WHAT_COMES_BEFORE_THEM,
                MECHANICS_KNOWS_THE_MATHS_LIBRARY_ONLY,
                RULES_RUN_IN_THE_RULEBOOK_ONLY,
                PDF_IS_WRITTEN_IN_ITS_LAYER_ONLY,
                SIGNATURES_ARE_MADE_IN_THEIR_LAYER_ONLY,
                YAML_IS_READ_AT_THE_EDGES_ONLY,
                THE_COMMAND_LINE_LIBRARY_STAYS_IN_ITS_LAYER,
                CLASS_FILES_ARE_READ_IN_FEW_PLACES,
                CLASS_FILES_ARE_READ_BY_THE_BUILD_ONLY,
                PACKAGES_ARE_FREE_OF_CYCLES);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theRuleHolds(ArchRule rule) {
        rule.check(CLASSES);
    }
}
