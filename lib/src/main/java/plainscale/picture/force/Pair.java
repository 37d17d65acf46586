package plainscale.picture.force;

/**
 * Action and reaction: the places of the two bodies in the picture, from 0, and the forces' name.
 */
public record Pair(int first, int second, String label) {}
