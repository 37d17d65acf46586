package plainscale.notation;

import java.util.Set;

/** A sheet that knows these names and nothing else. */
record KnownNames(Set<String> all) implements Names {
  static KnownNames of(String... names) {
    return new KnownNames(Set.of(names));
  }

  @Override
  public boolean isQuantity(String name) {
    return all.contains(name);
  }

  @Override
  public boolean isDefined(String name) {
    return isQuantity(name);
  }

  @Override
  public boolean isSameAsUnit(String name) {
    return false;
  }

  @Override
  public String meaning(String name) {
    return "a quantity of this sheet";
  }
}
