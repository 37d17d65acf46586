package plainscale.render;

import java.util.List;
import java.util.Optional;
import plainscale.picture.Scene;

/** What a result about a field shows: tables and sentences, and a picture if it has one. */
record FieldView(Sections sections, Optional<Scene> scene) {

  static FieldView of(Scene scene) {
    return new FieldView(new Sections("", List.of(), List.of()), Optional.of(scene));
  }

  /** The lines in plain text, where a picture is what it says in words. */
  List<String> lines() {
    return sections.lines();
  }

  String html(Medium medium) {
    String picture = scene.map(medium.pictures()).orElse("");
    return "<div class=\"ps-field\">" + picture + sections.html(medium, "ps-numbers") + "</div>";
  }
}
