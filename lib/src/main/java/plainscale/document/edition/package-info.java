/**
 * Editions of a lesson, one HTML file each: the worked example, the teacher's, the students' with
 * blanks, the projector's. What students are to find is taken out of the results before anything is
 * written: {@link plainscale.document.edition.Blanks} turns results into a {@link
 * plainscale.document.edition.Worksheet}, which holds no computed value. A notebook for students is
 * made by {@link plainscale.document.edition.StudentNotebook}. Entry: {@link
 * plainscale.document.edition.Handout#html}. Beside them stands the students' notebook, whose
 * source has blanks: {@link plainscale.document.edition.StudentNotebook#of}.
 */
@NullMarked
package plainscale.document.edition;

import org.jspecify.annotations.NullMarked;
