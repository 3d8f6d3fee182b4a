/**
 * How much larger a section must be when a change of alloy or temper lowers its strength.
 *
 * <p>The usual price of stress-corrosion resistance is strength; this package says what that costs in dimension and
 * mass, for a study of remedies. It sizes nothing for release.
 */
package org.shortgrain.mechanics.section;
