"""Plainscale Java: what cells can do to their process, and what is left of the session afterwards."""

import os
import re
import subprocess
import time

import nbformat
import psutil
import pytest
from nbclient import NotebookClient

from environment import JAVA_KERNEL, JAVA_LESSONS, KERNEL, LESSONS, MODULE, jar, plainscale
from environment import java as java_command
from kernels import Kernel

STOPPED = "Stopped. What was computed before is kept."
GONE = "all values of earlier cells are gone. Run the cells again."


@pytest.fixture
def java():
    with Kernel(JAVA_KERNEL) as started:
        yield started


@pytest.fixture(scope="module")
def shared_java():
    with Kernel(JAVA_KERNEL) as started:
        yield started


def value(answer):
    """The plain text of a cell's value; a cell that failed says so."""
    assert answer.content["status"] == "ok", answer.content
    (result,) = answer.of("execute_result")
    return result["data"]["text/plain"]


def printed(answer, name="stdout"):
    return "".join(content["text"] for content in answer.of("stream") if content["name"] == name)


def interrupted(kernel, code, after=1.0):
    """Runs a cell and interrupts it once it has run for a while."""
    running = kernel.send_cell(code)
    time.sleep(after)
    kernel.request("interrupt_request", {}, channel="control")
    return kernel.answer(running)


def test_the_kernel_says_that_its_cells_can_do_all(shared_java):
    info = shared_java.request("kernel_info_request", {}).content
    assert info["language_info"]["mimetype"] == "text/x-java"
    assert "can do all that you can do on this machine" in info["banner"]
    assert "any code" in shared_java.manager.kernel_spec.display_name


def test_values_last_from_cell_to_cell(java):
    assert java.execute("int n = 20;").bundles == []
    assert value(java.execute("n * 2")) == "40"
    java.execute("int doubled(int k) {\n  return 2 * k;\n}")
    assert value(java.execute("doubled(n) + 1 // twice and one")) == "41"
    assert value(java.execute("n")) == "20"


def test_a_semicolon_keeps_a_value_quiet_and_display_shows_several(shared_java):
    assert shared_java.execute("3 + 4;").bundles == []
    answer = shared_java.execute('display("a", 2); display(List.of(3)); "d"')
    assert [bundle["text/plain"] for bundle in answer.bundles] == ["a", "2", "[3]", "d"]
    assert len(answer.of("execute_result")) == 1


def test_the_library_is_imported_and_shown_as_the_notation_shows_it(shared_java):
    with Kernel(KERNEL) as notation:
        expected = notation.execute("use pendulum").bundles[0]
    answer = shared_java.execute('law("pendulum")')
    assert answer.bundles[0]["text/plain"] == expected["text/plain"]
    assert answer.bundles[0]["text/html"] == expected["text/html"]


def test_arrays_and_collections_can_be_read(shared_java):
    assert value(shared_java.execute("new double[] {1.5, 2}")) == "[1.5, 2.0]"
    assert value(shared_java.execute("new int[][] {{1}, {2, 3}}")) == "[[1], [2, 3]]"
    assert value(shared_java.execute('Map.of("a", new int[] {1})')) == "{a=[1]}"
    assert value(shared_java.execute("null")) == "null"


def test_standard_streams_are_captured_in_order(shared_java):
    answer = shared_java.execute('System.out.print("ä"); System.err.print("oh"); System.out.println("∆");')
    assert [(c["name"], c["text"]) for c in answer.of("stream")] == [
        ("stdout", "ä"), ("stderr", "oh"), ("stdout", "∆\n"),
    ]  # fmt: skip


def test_a_cell_can_ask_for_a_line(java):
    running = java.send_cell('System.out.print("Name? ");\nnew Scanner(System.in).nextLine()', allow_stdin=True)
    question = java.client.get_stdin_msg(timeout=30)
    assert question["msg_type"] == "input_request"
    assert question["parent_header"]["msg_id"] == running
    java.client.input("Ada")
    answer = java.answer(running)
    assert (value(answer), printed(answer)) == ("Ada", "Name? ")


def test_nobody_to_ask_is_the_end_of_input(shared_java):
    assert value(shared_java.execute("System.in.read()")) == "-1"


def test_a_cell_that_waits_for_a_line_can_be_interrupted_and_the_next_can_ask(java):
    running = java.send_cell("new Scanner(System.in).nextLine()", allow_stdin=True)
    java.client.get_stdin_msg(timeout=30)
    java.request("interrupt_request", {}, channel="control")
    assert java.answer(running).content["evalue"] == STOPPED
    running = java.send_cell("new Scanner(System.in).nextLine()", allow_stdin=True)
    java.client.get_stdin_msg(timeout=30)
    java.client.input("second")
    assert value(java.answer(running)) == "second"


@pytest.mark.parametrize(
    "code, line, words",
    [
        ("int n = 1;\nint m = nowhere + 1;", 2, "cannot find symbol, variable nowhere"),
        ("int n = ;", 1, "illegal start of expression"),
        ('String s = 3;', 1, "incompatible types: int cannot be converted to"),
        ("for (;;) {", 1, "reached end of file while parsing"),
    ],
)
def test_compile_errors_have_a_place_and_the_compilers_sentence(shared_java, code, line, words):
    answer = shared_java.execute(code)
    (error,) = answer.of("error")
    assert error["ename"] == "CompileProblem"
    assert error["evalue"].startswith(f"Line {line}: {words}")
    assert error["traceback"][1].strip() == code.splitlines()[line - 1].strip()
    assert error["traceback"][2].strip() == "^"


def test_nothing_of_a_cell_runs_that_stops_in_the_middle(java):
    java.execute("int n = 1;")
    answer = java.execute("n = 2;\nfor (;;) {")
    assert answer.content["status"] == "error"
    assert value(java.execute("n")) == "1"


def test_run_time_errors_tell_lines_of_cells_only(java):
    java.execute("int inverse(int n) {\n  return 1 / n;\n}")
    (error,) = java.execute("// a comment\ninverse(0)").of("error")
    assert (error["ename"], error["evalue"]) == ("ArithmeticException", "/ by zero")
    assert error["traceback"] == [
        "/ by zero",
        "  in line 2 of an earlier cell: return 1 / n;",
        "  called from line 2 of this cell: inverse(0)",
    ]


def test_a_mistake_in_physics_is_told_as_the_notation_tells_it(shared_java):
    (error,) = shared_java.execute('quantity("1 m").plus(quantity("1 s"))').of("error")
    assert "adding" in error["evalue"]
    assert not any("java.base" in line or "\tat " in line for line in error["traceback"])


def test_an_endless_loop_stops_and_values_are_kept(java):
    java.execute("int n = 5;")
    for loop in ("while (true) {}", "while (true) n++;", "Thread.sleep(1_000_000);", "IntStream.iterate(0, i -> 1).sum();"):
        answer = interrupted(java, loop)
        assert (answer.content["ename"], answer.content["evalue"]) == ("Stopped", STOPPED), loop
    assert int(value(java.execute("n"))) > 5


def test_completion_answers_while_a_cell_runs(java):
    java.execute("double speed = 3;")
    running = java.send_cell("while (true) {}")
    time.sleep(0.5)
    reply = java.request("complete_request", {"code": "spe", "cursor_pos": 3}).content
    assert reply["matches"] == ["speed"]
    assert not java.answers[running].finished
    java.request("interrupt_request", {}, channel="control")
    java.answer(running)


def test_a_loop_that_catches_everything_is_ended_too(java):
    java.execute("int n = 5;")
    answer = interrupted(java, "while (true) try { while (true) {} } catch (Throwable e) {}")
    # It may also be hit between two rounds, where it catches nothing.
    assert answer.content["evalue"] in (f"The cell did not stop and had to be ended with all of Java: {GONE}", STOPPED)
    assert value(java.execute("1 + 1")) == "2"


def test_a_stack_overflow_is_one_sentence(java):
    java.execute("int n = 5;")
    (error,) = java.execute("int deep(int k) { return deep(k + 1) + 1; }\ndeep(0)").of("error")
    assert error["ename"] == "StackOverflowError"
    assert error["evalue"] == "The stack is full: a method goes on calling itself."
    assert len(error["traceback"]) < 6
    assert value(java.execute("n")) == "5"


def test_memory_that_runs_out_is_one_sentence(java):
    java.execute("int n = 5;")
    code = "var all = new ArrayList<long[]>();\nwhile (true) all.add(new long[10_000_000]);"
    (error,) = java.execute(code).of("error")
    assert error["ename"] == "OutOfMemoryError"
    assert error["evalue"].startswith("There is no memory left")
    java.execute("all = null;")
    assert value(java.execute("n")) == "5"


def test_exit_ends_the_values_and_not_the_session(java):
    java.execute("int n = 5;")
    answer = java.execute("System.exit(3);")
    assert answer.content["evalue"] == f"The cell ended Java itself (exit code 3): {GONE}"
    assert "cannot find symbol, variable n" in java.execute("n").content["evalue"]
    assert value(java.execute("int n = 6; n")) == "6"


def test_a_thread_left_running_does_not_hold_the_session(java):
    code = """
    var beats = new java.util.concurrent.atomic.AtomicInteger();
    new Thread(() -> {
      while (true) {
        System.out.println("beat " + beats.incrementAndGet());
        try { Thread.sleep(50); } catch (InterruptedException e) {}
      }
    }).start();"""
    assert java.execute(code).content["status"] == "ok"
    time.sleep(0.5)
    answer = java.execute("beats.get() > 3")
    assert value(answer) == "true"
    assert "beat" in printed(answer)


def test_a_hundred_megabytes_of_output_are_cut_and_that_is_said(java):
    answer = java.execute('var line = "x".repeat(99);\nfor (int i = 0; i < 1_000_000; i++) System.out.println(line);\n7')
    assert value(answer) == "7"
    text = printed(answer)
    assert 900_000 < len(text) < 1_100_000
    assert text.endswith("the rest is left out: a cell may print a million characters.\n")
    assert len(answer.of("stream")) < 200
    assert printed(java.execute('System.out.print("short");')) == "short"


def test_user_expressions_change_nothing(java):
    java.execute("int n = 5;")
    expressions = {"good": "2 * n", "bad": "nowhere"}
    answers = java.execute("n", user_expressions=expressions).content["user_expressions"]
    assert answers["good"]["data"]["text/plain"] == "10"
    assert answers["bad"]["status"] == "error"


def test_inspection_gives_signatures_and_the_librarys_words(shared_java):
    def inspect(code):
        return shared_java.request(
            "inspect_request", {"code": code, "cursor_pos": len(code), "detail_level": 0}
        ).content

    assert "double Math.max(double a, double b)" in inspect("Math.max")["data"]["text/plain"]
    words = inspect("quantity")["data"]["text/plain"]
    assert "quantity(String" in words
    assert len(words.splitlines()) > 1
    assert not inspect("nowhere")["found"]


def guide():
    """The examples of the guide: a cell, and what stands below it."""
    text = (LESSONS[0].parent / "JAVA.md").read_text(encoding="utf-8")
    return re.findall(r"```java\n(.*?)```\n+```(text|error)\n(.*?)```", text, re.DOTALL)


def test_the_guide_shows_what_its_cells_show(java):
    examples = guide()
    assert len(examples) > 6
    for code, kind, expected in examples:
        answer = java.execute(code)
        if kind == "error":
            shown = [answer.content.get("evalue", "no error")]
        else:
            assert answer.content["status"] == "ok", answer.content
            shown = [printed(answer).rstrip()] if printed(answer) else []
            shown += [bundle["text/plain"] for bundle in answer.bundles]
        assert "\n".join(shown).strip() == expected.strip(), code


@pytest.mark.parametrize("lesson", JAVA_LESSONS, ids=lambda path: path.stem)
def test_the_lesson_runs_in_its_kernel(lesson):
    notebook = nbformat.read(lesson, as_version=4)
    assert notebook.metadata.kernelspec.name == JAVA_KERNEL
    NotebookClient(notebook, timeout=120, record_timing=False).execute()
    shown = [output for cell in notebook.cells if cell.cell_type == "code" for output in cell.outputs]
    assert [output for output in shown if output.output_type == "error"] == []
    texts = [output.data["text/plain"] for output in shown if "data" in output]
    assert any("orders of magnitude" in text for text in texts)
    # A random walk of N steps gets √N steps far: the exponent is ½ (Einstein 1905, Annalen der Physik 17:549).
    (exponent, doubt) = re.search(r"s +(\d\.\d+) ± (\d\.\d+) +exponent", "\n".join(texts)).groups()
    assert abs(float(exponent) - 0.5) < 3 * float(doubt) < 0.02


@pytest.mark.parametrize("lesson", JAVA_LESSONS, ids=lambda path: path.stem)
def test_commands_leave_the_lesson_alone_unless_they_are_allowed(lesson, tmp_path):
    for command in ("run", "handout"):
        with pytest.raises(RuntimeError, match="can do anything on this machine, so it was not run.*--allow-java"):
            plainscale(command, lesson, *(["--out", tmp_path] if command == "handout" else []))
    assert list(tmp_path.iterdir()) == []
    plainscale("handout", lesson, "--allow-java", "--out", tmp_path)
    page = (tmp_path / f"{lesson.stem}.html").read_text(encoding="utf-8")
    assert "ps-contrast" in page
    assert "<svg" in page
    assert "ps-printed" in page
    assert "nothing to mend" in plainscale("check", "--allow-java", "--strict", lesson)
    assert "not-run" in plainscale("check", lesson)


def test_a_program_needs_nothing_but_the_jar(tmp_path):
    """The example program of the library, compiled and run with the one jar on its class path."""
    source = MODULE.parent / "lib/src/example/java/example/ThreadLength.java"
    subprocess.run([java_command() + "c", "-cp", jar(), "-d", tmp_path, source], check=True, timeout=120)
    path = os.pathsep.join([str(jar()), str(tmp_path)])
    done = subprocess.run(
        [java_command(), "-cp", path, "example.ThreadLength"], capture_output=True, text=True, encoding="utf-8", timeout=120
    )
    assert (done.returncode, done.stderr) == (0, "")
    shares = [float(share) for share in re.findall(r"the charge to (\d+\.\d) %", done.stdout)]
    assert len(shares) > 3
    assert shares == sorted(shares, reverse=True)
    assert shares[-1] <= 5.0 < shares[-2]


def test_the_process_of_the_cells_ends_with_the_kernel():
    with Kernel(JAVA_KERNEL) as java:
        java.execute("1 + 1")
        process = psutil.Process(java.manager.provisioner.process.pid)
        (cells,) = process.children()
        process.kill()
        gone, alive = psutil.wait_procs([cells], timeout=20)
        assert not alive


def test_the_notations_kernel_loads_nothing_of_java_cells(kernel):
    kernel.execute("1 + 1")
    process = psutil.Process(kernel.manager.provisioner.process.pid)
    assert process.children() == []
