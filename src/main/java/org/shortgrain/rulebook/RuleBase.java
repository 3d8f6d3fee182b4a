package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.KieBaseConfiguration;
import org.kie.api.KieServices;

/** Makes the engine's rule base of compiled rules. */
final class RuleBase {

    private RuleBase() {
    }

    /**
     * {@return the rule base}
     *
     * @param models names of the model classes, by the loader that has them
     */
    static KieBase of(Map<ClassLoader, List<String>> models) {
        List<Model> made = new ArrayList<>();
        models.forEach((loader, names) -> names.forEach(name -> made.add(model(loader, name))));
        ClassLoader loader = models.keySet().stream().filter(RuleClassLoader.class::isInstance).findFirst()
                .orElse(RuleBase.class.getClassLoader());
        return KieBaseBuilder.createKieBaseFromModel(made, configuration(loader));
    }

    @SuppressWarnings("deprecation") // the only form that takes a loader
    private static KieBaseConfiguration configuration(ClassLoader loader) {
        return KieServices.get().newKieBaseConfiguration(null, loader);
    }

    private static Model model(ClassLoader loader, String name) {
        try {
            return (Model) loader.loadClass(name).getConstructor().newInstance();
        } catch (ReflectiveOperationException | LinkageError broken) {
            throw new IllegalStateException("the compiled rules are not whole: " + name, broken);
        }
    }
}
