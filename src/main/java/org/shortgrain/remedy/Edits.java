package org.shortgrain.remedy;

import java.util.List;
import org.shortgrain.part.reader.DescriptionValue;
import org.shortgrain.part.reader.EditableDescription;
import org.shortgrain.part.reader.JsonPatch;

/** Collects the edits of one change, each written for what those before it leave. Used by one thread while a patch is made. */
final class Edits {

    private EditableDescription now;
    private JsonPatch patch = JsonPatch.NOTHING;

    Edits(EditableDescription now) {
        this.now = now;
    }

    private Edits make(JsonPatch next) {
        now = now.with(next);
        patch = patch.then(next);
        return this;
    }

    Edits set(String place, String yaml) {
        return set(place, DescriptionValue.of(yaml));
    }

    Edits set(String place, DescriptionValue value) {
        boolean same = now.at(place).filter(value::equals).isPresent();
        return same ? this : make(now.setting(place, value));
    }

    Edits setIfThere(String place, String yaml) {
        return now.at(place).isPresent() ? set(place, yaml) : this;
    }

    Edits add(String place, DescriptionValue value) {
        return make(new JsonPatch(List.of(JsonPatch.add(place, value))));
    }

    Edits move(String from, String to) {
        return make(new JsonPatch(List.of(JsonPatch.move(from, to))));
    }

    Edits removeIfThere(String place) {
        return now.at(place).isPresent() ? make(new JsonPatch(List.of(JsonPatch.remove(place)))) : this;
    }

    JsonPatch patch() {
        return patch;
    }
}
