/**
 * The description of a part as its checker states it: what is made of what, in which order, stressed and wetted where.
 *
 * <p>Every value is {@link org.shortgrain.part.Stated}: a value, none, unknown, or absent, with the place in the file it
 * came from. The key in the YAML file is the component's name in lower case with underscores, unless
 * {@link org.shortgrain.part.Key} says otherwise. Numbers are in SI units. Knows nothing else of the tool but
 * {@code terms}.
 */
package org.shortgrain.part;
