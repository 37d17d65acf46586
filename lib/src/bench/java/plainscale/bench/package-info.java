/**
 * Benchmarks with JMH, run by hand and never by the build: {@code mvn -q -pl lib -Pbench
 * test-compile exec:exec}. Each class measures one thing that a lesson does many times.
 */
@NullMarked
package plainscale.bench;

import org.jspecify.annotations.NullMarked;
