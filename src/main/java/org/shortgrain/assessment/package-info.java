/**
 * Runs look-up, computation and rules over a part description and puts the review together.
 *
 * <p>The order of work: the card is read, the material looked up, each place computed and its three factors judged,
 * the rulebook asked, the verdict drawn. What had to be taken for granted on the way is written into a
 * {@link org.shortgrain.assessment.Ledger}, never left unsaid.
 */
package org.shortgrain.assessment;
