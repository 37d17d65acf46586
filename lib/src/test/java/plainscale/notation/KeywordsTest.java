package plainscale.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KeywordsTest {
  @Test
  void everyWordThatBeginsAStatementHasARule() {
    assertEquals(StatementParser.RULES.keySet(), Set.copyOf(Keywords.STATEMENTS));
    assertEquals(Keywords.STATEMENTS.size(), new HashSet<>(Keywords.STATEMENTS).size());
  }

  @ParameterizedTest
  @EnumSource(Statement.Setting.class)
  void everyChoiceOfASettingIsOfferedInCompletion(Statement.Setting setting) {
    List<String> choices = Keywords.choices(setting);
    assertTrue(!choices.isEmpty());
    boolean open = setting == Statement.Setting.LOCALE; // any language tag
    assertTrue(open || Keywords.INNER.containsAll(choices), choices::toString);
  }
}
