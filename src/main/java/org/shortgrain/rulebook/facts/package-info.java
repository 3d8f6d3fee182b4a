/**
 * What the rules read: the part, its card and its places, with the words a checker would use as questions.
 *
 * <p>A fact answers in one of two ways, and its name says which: {@code is...}, {@code has...} ask for certainty,
 * {@code may...} for possibility, which includes all that is not stated. A rule that objects asks for certainty; a rule
 * that asks a question looks for what is missing.
 */
package org.shortgrain.rulebook.facts;
