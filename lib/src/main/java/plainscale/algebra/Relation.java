package plainscale.algebra;

/** An equation of the lesson with its name and what it says in words, such as "weight = pull". */
public record Relation(String name, Equation equation, String words) {}
