package org.shortgrain.part;

/**
 * A place in a part description.
 *
 * @param path   JSON pointer of the key or list item, such as {@code /route/3}
 * @param line   line in the file, from 1; 0 where nothing stands in the file
 * @param column column in the line, from 1; 0 where nothing stands in the file
 */
public record Location(String path, int line, int column) {
}
