package org.shortgrain.rulebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;
import org.shortgrain.review.Finding;
import org.shortgrain.review.Grade;
import org.shortgrain.review.RuleUse;

/**
 * A rulebook, ready to judge. Immutable; several threads may use one.
 *
 * <p><strong>A rulebook is code.</strong> Its rules may call any Java method. Load a rulebook of somebody else only if you
 * would run a program of theirs; {@link #WARNING} says so to a user.
 */
public final class Rulebook {

    /** What a user must know before loading a rulebook that is not the shipped one. */
    public static final String WARNING = "A rulebook is code: its rules can do on this computer whatever you can."
            + " Use a rulebook from somebody else only if you would run their program.";

    /** More firings than this in one review mean that rules feed each other without end. */
    private static final int FIRINGS = 100_000;

    private final KieBase base;
    private final RulebookFiles files;
    private final String edition;
    private final String sha256;
    private final List<RuleInfo> rules;
    private final RuleIndex index;
    private final Map<String, String> disabled;

    private Rulebook(KieBase base, RulebookFiles files, RulebookAbout about, String sha256) {
        this.base = base;
        this.files = files;
        this.edition = about.edition();
        this.sha256 = sha256;
        this.disabled = about.disabled();
        this.rules = base.getKiePackages().stream()
                .filter(part -> part.getName().startsWith(DrlFile.ROOT_PACKAGE))
                .flatMap(part -> part.getRules().stream()).map(Rulebook::info).sorted(RuleInfo.ORDER).toList();
        this.index = new RuleIndex(rules);
    }

    private static RuleInfo info(Rule rule) {
        return new RuleMetadata(rule.getName(), DrlFile.fileOf(rule.getPackageName()), rule.getMetaData()).info();
    }

    /** {@return the rulebook that comes with the tool, from classes that were made when it was built} */
    public static Rulebook shipped() {
        ShippedIndex index = ShippedIndex.read();
        ClassLoader loader = Rulebook.class.getClassLoader();
        return new Rulebook(RuleBase.of(Map.of(loader, index.models())), RulebookFiles.shipped(),
                new RulebookAbout(index.edition(), false, Map.of()), index.sha256());
    }

    /**
     * {@return the rulebook in a folder, compiled now or taken from the user's cache}
     *
     * <p>This runs code of the folder: see {@link #WARNING}.
     *
     * <p>A folder whose {@code rulebook.yaml} says {@code extends: shipped} adds its rules to the shipped ones. A file of
     * the same name replaces the shipped file; {@code disabled} names rules that are not asked, with the reason, which the
     * outcome repeats. Any other folder stands for itself.
     *
     * @param folder a folder of rules, tables and sources
     * @throws RulebookException with every fault, each with file and line
     */
    public static Rulebook from(Path folder) throws RulebookException {
        return from(folder, RuleCache.ofUser());
    }

    static Rulebook from(Path folder, RuleCache cache) throws RulebookException {
        RulebookFiles own = RulebookFiles.in(folder);
        RulebookAbout about = RulebookAbout.of(own);
        ShippedIndex shipped = ShippedIndex.read();
        SortedMap<String, String> texts = own.rules();
        List<String> kept = about.besideShipped() ? shipped.modelsWithout(texts.keySet()) : List.of();
        RulebookFiles files = about.besideShipped() ? RulebookFiles.besideShipped(own) : own;
        CompiledRules compiled = cache.compiled(texts, shipped.api(), () -> RuleCompiler.compile(texts,
                RuleCompiler.documents(files), beside(about, texts.keySet())));
        Map<ClassLoader, List<String>> models = Map.of(Rulebook.class.getClassLoader(), kept,
                compiled.loader(), compiled.models());
        return new Rulebook(RuleBase.of(models), files, about, files.sha256()).checked();
    }

    private static List<RuleInfo> beside(RulebookAbout about, Set<String> replaced) {
        return about.besideShipped()
                ? shipped().rules().stream().filter(rule -> !replaced.contains(rule.file())).toList() : List.of();
    }

    private Rulebook checked() throws RulebookException {
        List<RulebookProblem> unknown = disabled.keySet().stream().filter(id -> rule(id).isEmpty()).sorted()
                .map(id -> RulebookProblem.in(RulebookFiles.ABOUT, "disables " + id + ", but there is no such rule"))
                .toList();
        if (!unknown.isEmpty()) {
            throw new RulebookException(unknown);
        }
        return this;
    }

    /** {@return the edition, as the rulebook names it} */
    public String edition() {
        return edition;
    }

    /** {@return SHA-256 over rules, tables, sources and edition, in hexadecimal} */
    public String sha256() {
        return sha256;
    }

    /** {@return the rules, by subject and number} */
    public List<RuleInfo> rules() {
        return rules;
    }

    /**
     * {@return a rule}
     *
     * @param id its id
     */
    public Optional<RuleInfo> rule(String id) {
        return index.find(id).map(RuleIndex.Entry::info);
    }

    /** {@return the files it was made of} */
    public RulebookFiles files() {
        return files;
    }

    /**
     * {@return what the rules say of some facts}
     *
     * @param facts         the facts
     * @param applicability which rules need to be asked of this part
     * @param features      ids of the features, in the order of the description
     * @throws RuleFailedException if a rule fails on them
     */
    public Outcome judge(Collection<?> facts, Applicability applicability, List<String> features) {
        List<Findings.Raised> raised = fire(facts).stream().filter(one -> !disabled.containsKey(one.rule())).toList();
        Map<Boolean, List<Finding>> asking = new Folding(index, features).findings(raised).stream()
                .collect(Collectors.partitioningBy(finding -> finding.grade() == Grade.QUESTION));
        Set<String> spoke = raised.stream().map(Findings.Raised::rule).collect(Collectors.toSet());
        List<RuleUse> applied = new ArrayList<>();
        List<RuleUse> notApplicable = new ArrayList<>();
        Map<String, Optional<String>> keptOut = new HashMap<>();
        for (RuleIndex.Entry rule : index.all()) {
            if (!spoke.contains(rule.info().id())) {
                whyNot(rule.info(), tag -> keptOut.computeIfAbsent(tag, applicability::keepsOut)).ifPresentOrElse(
                        reason -> notApplicable.add(new RuleUse(rule.info().id(), rule.info().title(), reason)),
                        () -> applied.add(rule.unmet()));
            }
        }
        return new Outcome(asking.get(false), asking.get(true), applied, notApplicable);
    }

    private Optional<String> whyNot(RuleInfo rule, Applicability applicability) {
        if (disabled.containsKey(rule.id())) {
            return Optional.of("Disabled by this rulebook: " + disabled.get(rule.id()));
        }
        for (String tag : rule.applies()) {
            Optional<String> reason = applicability.keepsOut(tag);
            if (reason.isPresent()) {
                return Optional.of("Not asked: " + reason.get() + ".");
            }
        }
        return Optional.empty();
    }

    private List<Findings.Raised> fire(Collection<?> facts) {
        Findings findings = new Findings();
        KieSession session = base.newKieSession();
        try {
            session.addEventListener(findings.listener());
            if (!rules.isEmpty()) {
                session.setGlobal(Findings.GLOBAL, findings);
            }
            facts.forEach(session::insert);
            if (session.fireAllRules(FIRINGS) >= FIRINGS) {
                throw new RuleFailedException("rules feed each other without end; the last was "
                        + findings.speaking(), null);
            }
            return findings.raised();
        } catch (RuleFailedException known) {
            throw known;
        } catch (RuntimeException failed) {
            throw new RuleFailedException("the rulebook fails on this part: " + failed.getMessage(), failed);
        } finally {
            session.dispose();
        }
    }

    /** {@return edition, hash and number of rules} */
    @Override
    public String toString() {
        return "rulebook " + edition + " (" + rules.size() + " rules, " + sha256 + ")";
    }
}
