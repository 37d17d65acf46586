package plainscale.document.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Rules about pictures in prose. */
class PictureRulesTest {
  private static final String ATTACHED = "{\"a.png\": {\"image/png\": \"QUJD\"}}";

  @Test
  void aPictureNeedsWords() {
    assertEquals(
        List.of(
            "warning c1:3 The picture attachment:a.png has no words for whoever does not see it. → write ![what it shows](attachment:a.png)",
            "warning c1:4 The picture data:… has no words for whoever does not see it. → write ![what it shows](data:…)"),
        new TestLesson()
            .picture(
                "# T\n\nLook: ![](attachment:a.png)\n![ ](data:image/png;base64,QUJD)",
                "{}",
                ATTACHED)
            .found("picture-words"));
  }

  @Test
  void wordsOfThePictureOrOfTheCellWillDo() {
    assertEquals(
        List.of(),
        new TestLesson()
            .picture("![two *balls*](attachment:a.png) `![](b.png)`", "{}", ATTACHED)
            .picture("![](attachment:a.png)", "{\"alternative\": \"Two balls.\"}", ATTACHED)
            .found("picture-words"));
  }

  @Test
  void anAttachedPictureIsShownAndAShownOneAttached() {
    assertEquals(
        List.of(
            "remark c1:0 The attached picture a.png is not shown. → write ![what it shows](attachment:a.png), or take it out of the cell",
            "warning c1:1 No picture b.png is attached to the cell. → drop the picture onto the cell in JupyterLab, or take it out of the text"),
        new TestLesson()
            .picture("![balls](attachment:b.png) `attachment:a.png`", "{}", ATTACHED)
            .found("attachment"));
    assertEquals(
        List.of(),
        new TestLesson()
            .picture("![balls](attachment:a.png) ![web](b.png)", "{}", ATTACHED)
            .found("attachment"));
  }
}
