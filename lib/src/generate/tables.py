"""What the generators of this folder share: where the module is, and how a table file is written."""

from pathlib import Path

MODULE = Path(__file__).resolve().parents[2]
LAWS = MODULE / "src/main/resources/plainscale/laws"
FIXTURES = MODULE / "src/test/resources/plainscale/fixtures"


def write(path, header, lines):
    """Writes `header` as comment lines and then `lines`, UTF-8 with Unix line ends."""
    comments = [("# " + text).rstrip() for text in header]
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text("\n".join([*comments, *lines]) + "\n", encoding="utf-8", newline="\n")
    print(f"{path.relative_to(MODULE)}: {len(lines)} lines")


def row(*cells):
    """One line of a table; a cell may hold neither a tab nor a line end, nor be empty."""
    texts = [str(cell) for cell in cells]
    for text in texts:
        if not text or "\t" in text or "\n" in text:
            raise ValueError(f"not a cell: {text!r}")
    return "\t".join(texts)
