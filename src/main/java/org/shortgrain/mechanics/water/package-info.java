/**
 * Where water stands in a part, how much of it, and whether it leaves: hollows at an attitude, drain holes, surface
 * tension, drain time, vents, gaps that draw water in.
 *
 * <p>A hollow is seen along its length: its floor is a line, drawn out over the width between two side walls. The length
 * is taken to run fore and aft, so that pitch tilts it lengthwise and roll sideways. Depths are measured square to the
 * floor as drawn, as a rule put into the hollow shows them.
 */
package org.shortgrain.mechanics.water;
