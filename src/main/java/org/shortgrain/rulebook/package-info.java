/**
 * The rulebook: rules that read facts and raise findings.
 *
 * <p>A rulebook is a folder: {@code rulebook.yaml} (edition), {@code *.drl} (rules, one file for each subject),
 * {@code data/} (tables), {@code sources.yaml} (documents) and {@code examples/} (two descriptions for each rule).
 * The shipped one lies in {@code rules/}, is compiled when the tool is built and starts without a compiler; an edited one
 * is compiled when it is first used.
 *
 * <h2>A rule</h2>
 * One rule is one block, and all that the tool says of it stands on it:
 * <pre>{@code
 * package rules.stress;                                  // file rules/stress.drl
 * import org.shortgrain.rulebook.facts.*;
 * global org.shortgrain.rulebook.Findings findings;
 *
 * rule "STRESS-03"
 * @title("Bush pressed into a bore whose wall is stressed across the grain")
 * @factor("stress")                                      // material, stress, environment, combined, record
 * @grade("condition")                                    // objection, condition, question, advice
 * @applies("forging plating")                            // optional: facts.Tag words that a part must all have
 * @sources("doc-id | clause | read ;; other-id | page 3 | secondary")
 * @why("What happens if nobody acts.")
 * @remedies("first choice ;; second choice")             // in order of preference
 * @subsumes("STRESS-07 STRESS-09")                       // optional: the same cause, said less precisely
 * when
 *   $place : Place( pressedFit, stressedAcrossGrain )
 * then
 *   findings.raise($place.id(), "The wall of the bore carries " + $place.hoopText() + ".")
 *       .evidence("fit " + $place.fitText())
 *       .at($place.at());
 * end
 * }</pre>
 *
 * <ul>
 * <li>The package is {@code rules.} and the file's name, with {@code _} for {@code -}.</li>
 * <li>The id is a subject in capitals, a hyphen and a number of at least two digits; ids are unique in the rulebook.</li>
 * <li>Texts may run over several lines; white space in them counts as one space.</li>
 * <li>A rule that rests only on sources nobody here has seen cannot object: its objection becomes a condition.</li>
 * <li>A rule may subsume only rules that are not graver than itself. Where both are raised at one place, the subsumed
 *     one is folded into the other; a finding on the whole part takes in what is raised at any place.</li>
 * <li>Facts are immutable: rules insert and change nothing, so that their order does not matter.</li>
 * <li>The engine mistakes methods with names such as {@code n}, {@code x} or {@code be} (any run of letters of
 *     {@code alphaIndexedBy} and {@code betaIndexedBy}) for its own: facts and helpers have longer names. It cannot
 *     parse methods named {@code record}.</li>
 * <li>A number that is not stated is NaN. In a condition {@code <}, {@code >} and {@code <=} are false of it, but
 *     {@code >=} is true: with a number that may be missing, write {@code >}.</li>
 * </ul>
 *
 * <h2>Its examples</h2>
 * {@code examples/ID.trigger.yaml} makes the rule speak, {@code examples/ID.quiet.yaml} comes near and does not. Where one
 * near miss does not show every condition of the rule, {@code ID.quiet-2.yaml} and so on show the others. Each is the
 * smallest change of {@code examples/base.yaml}, as a merge patch (RFC 7396) in YAML: a map changes the keys that it
 * names, {@code null} takes a key away, a list takes the place of a list. Features and steps of the route are changed by
 * their names; a new step goes where its number belongs:
 * <pre>{@code
 * # also: WATER-01            (rules that the change raises beside this one, where that cannot be helped)
 * # from: trigger             (change what the rule's trigger made of the base, not the base)
 * features: {BORE: {stress_direction: ST}}
 * route: {"65": {do: shot_peen}, "70": null}
 * }</pre>
 */
package org.shortgrain.rulebook;
