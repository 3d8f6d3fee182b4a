package org.shortgrain.reference;

import java.util.regex.Pattern;

/**
 * Places in a description: a JSON pointer in which {@code *} between slashes stands for any one key or number, and behind
 * a key for the key and all below it. An empty pattern fits every place.
 */
final class PathPattern {
    private final String text;
    private final Pattern pattern;

    PathPattern(String text) {
        this.text = text;
        boolean below = text.endsWith("*") && !text.endsWith("/*");
        String regex = (below ? text.substring(0, text.length() - 1) : text).replace("*", "[^/]+");
        this.pattern = Pattern.compile(below ? regex + "(/.*)?" : regex);
    }

    boolean fits(String path) {
        return text.isEmpty() || pattern.matcher(path).matches();
    }

    int length() {
        return text.length();
    }
}
