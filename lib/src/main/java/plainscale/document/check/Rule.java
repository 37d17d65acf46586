package plainscale.document.check;

import java.util.stream.Stream;

/** One thing that is checked. */
sealed interface Rule
    permits AttachedPictures,
        BracedNames,
        Cautions,
        CellMistakes,
        CellRoles,
        CellsNotRun,
        DeclaredSettings,
        FigureCaptions,
        FormatVersion,
        GivenDescriptions,
        GivenUnits,
        ImplausibleValues,
        LessonMinutes,
        LessonTitle,
        Metadata,
        PictureWords,
        ReaderRemarks,
        SameDescriptions,
        TypedNumbers,
        UnusedGivens,
        UnusedResults {

  /** What the rule is called in reports. */
  String name();

  /** What it finds in a lesson. */
  Stream<Finding> check(CheckedLesson lesson);
}
