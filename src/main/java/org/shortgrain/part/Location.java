package org.shortgrain.part;

/**
 * A place in a part description.
 *
 * @param path   JSON pointer of the key or list item, such as {@code /route/3}
 * @param line   line in the file, from 1; 0 where nothing stands in the file
 * @param column column in the line, from 1; 0 where nothing stands in the file
 */
public record Location(String path, int line, int column) {
    // written out: what the compiler leaves to the runtime costs a cold start several milliseconds
    @Override
    public boolean equals(Object other) {
        return other instanceof Location that && line == that.line && column == that.column && path.equals(that.path);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * path.hashCode() + line) + column;
    }
}
