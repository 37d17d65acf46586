"""What the protocol asks of a kernel and the conformance suite does not look at."""

import subprocess

import psutil
import pytest
import zmq
from jupyter_client.session import Session

import environment
from environment import KERNEL
from kernels import Kernel

# Long enough that what is sent right behind it arrives while it runs.
LONG = "\n".join(f"n_{i} = {i} * 10^18\ncontrast n_{i} with {i}" for i in range(1, 201))


def test_kernel_info_is_the_same_on_shell_and_control(shared):
    shell = shared.request("kernel_info_request", {}).content
    control = shared.request("kernel_info_request", {}, channel="control").content
    assert shell == control
    assert shell["protocol_version"] == "5.5"
    assert shell["language_info"]["name"] == "plainscale"
    assert shell["language_info"]["mimetype"]
    assert shell["language_info"]["file_extension"].startswith(".")
    assert "codemirror_mode" not in shell["language_info"]


@pytest.mark.parametrize(
    "kind, content",
    [
        ("kernel_info_request", {}),
        ("complete_request", {"code": "sq", "cursor_pos": 2}),
        ("inspect_request", {"code": "sqrt", "cursor_pos": 4, "detail_level": 0}),
        ("is_complete_request", {"code": "1 + 1"}),
        ("history_request", {"output": False, "raw": True, "hist_access_type": "tail", "n": 3}),
        ("comm_info_request", {}),
    ],
)
def test_every_request_is_framed_by_busy_and_idle(shared, kind, content):
    assert shared.request(kind, content).states == ["busy", "idle"]


def test_what_cannot_go_out_of_date_is_the_result_and_everything_else_is_a_display(kernel):
    answer = kernel.execute('given m = 2.70 ± 0.05 g "mass"\nw = m g_n\nshow w in mN to 2 figures\nw')
    assert answer.content["status"] == "ok"
    assert len(answer.of("execute_result")) == 0
    assert len(answer.of("display_data")) == 1
    assert answer.of("execute_input")[0]["execution_count"] == 1
    answer = kernel.execute("6 * 7")
    assert len(answer.of("display_data")) == 0
    assert answer.of("execute_result")[0]["execution_count"] == 2


def test_counts_go_up_only_for_what_is_kept(kernel):
    assert kernel.execute("1 + 1").content["execution_count"] == 1
    silent = kernel.execute("1 + 2", silent=True, store_history=False)
    assert silent.bundles == []
    assert kernel.execute("1 + 3", store_history=False).content["status"] == "ok"
    assert kernel.execute("1 m + 1 s").content["execution_count"] == 2
    assert kernel.execute("1 + 4").content["execution_count"] == 3


def test_history_keeps_what_was_run_and_not_what_was_silent(kernel):
    kernel.execute("1 + 1")
    kernel.execute("1 + 2", silent=True, store_history=False)
    kernel.execute("1 + 3", store_history=False)
    kernel.execute("1 + 4")
    request = {"output": False, "raw": True, "hist_access_type": "tail", "n": 10}
    history = kernel.request("history_request", request).content["history"]
    assert [entry[2] for entry in history] == ["1 + 1", "1 + 4"]
    assert [entry[1] for entry in history] == [1, 2]


def test_user_expressions_are_answered_one_by_one(kernel):
    expressions = {"good": "2*m", "bad": "nowhere + 1", "worse": "(("}
    results = kernel.execute("given m = 3 g", user_expressions=expressions).content["user_expressions"]
    assert {key: result["status"] for key, result in results.items()} == {
        "good": "ok", "bad": "error", "worse": "error",
    }  # fmt: skip
    assert "6" in results["good"]["data"]["text/plain"]
    assert results["good"]["metadata"] == {}
    assert all(set(results[key]) >= {"ename", "evalue", "traceback"} for key in ("bad", "worse"))


def test_user_expressions_change_nothing(kernel):
    kernel.execute("given m = 3 g", user_expressions={"change": "m = 4 g"})
    assert kernel.execute("m").bundles[0]["text/plain"] == "m = 3 g"


@pytest.mark.parametrize("stops", [True, False])
def test_an_error_stops_the_cells_that_were_sent_with_it(kernel, stops):
    burst = [
        kernel.send_cell(LONG + "\nnowhere", stop_on_error=stops),
        kernel.send_cell('say "second"', stop_on_error=stops),
        kernel.send("is_complete_request", {"code": "1 + 1"}),
        kernel.send_cell('say "third"', stop_on_error=stops),
    ]
    first, second, question, third = (kernel.answer(identity) for identity in burst)
    assert first.content["status"] == "error"
    assert question.content["status"] == "complete"
    expected = "error" if stops else "ok"
    assert [second.content["status"], third.content["status"]] == [expected, expected]
    assert len(second.bundles) == len(third.bundles) == (0 if stops else 1)
    assert second.states == third.states == ["busy", "idle"]
    assert kernel.execute("1 + 1").content["status"] == "ok"


def test_interrupt_is_answered_on_control_while_a_cell_runs(kernel):
    running = kernel.send_cell(LONG)
    queued = [kernel.send_cell(f"{i} + 1") for i in range(20)]
    interrupt = kernel.request("interrupt_request", {}, channel="control")
    assert interrupt.content == {"status": "ok"}
    for identity in [running, *queued]:
        assert kernel.answer(identity).content["status"] in ("ok", "error")
    assert kernel.execute("1 + 1").bundles[0]["text/plain"] == "2"


def test_interrupt_of_an_idle_kernel_changes_nothing(kernel):
    kernel.execute("given m = 3 g")
    assert kernel.request("interrupt_request", {}, channel="control").content == {"status": "ok"}
    assert kernel.execute("m").content["status"] == "ok"


def test_the_front_end_interrupts_by_message(kernel):
    assert kernel.manager.kernel_spec.interrupt_mode == "message"


def test_completion_and_inspection_answer_while_a_cell_runs(kernel):
    running = kernel.send_cell(LONG)
    completion = kernel.request("complete_request", {"code": "sq", "cursor_pos": 2})
    inspection = kernel.request("inspect_request", {"code": "sqrt", "cursor_pos": 4, "detail_level": 0})
    assert "sqrt" in completion.content["matches"]
    assert inspection.content["found"]
    assert kernel.answer(running).content["status"] == "ok"


@pytest.mark.parametrize(
    "before",
    ["", "# 𝑥\n", 'say "𝑥 is 🙂"\n', "𝑥 = 3 m\n"],
    ids=["nothing", "comment", "text", "name"],
)
def test_cursors_count_code_points(shared, before):
    code = before + "y = 2*sq"
    content = shared.request("complete_request", {"code": code, "cursor_pos": len(code)}).content
    assert "sqrt" in content["matches"]
    assert (content["cursor_start"], content["cursor_end"]) == (len(code) - 2, len(code))
    assert content["metadata"].keys() <= {"_jupyter_types_experimental"}


def test_completion_in_the_middle_replaces_what_stands_before_the_cursor(shared):
    code, cursor = "# 𝑥𝑦\nsq + 1", len("# 𝑥𝑦\nsq")
    content = shared.request("complete_request", {"code": code, "cursor_pos": cursor}).content
    assert "sqrt" in content["matches"]
    assert content["cursor_start"] == cursor - 2


def test_completion_types_stand_beside_the_matches(shared):
    content = shared.request("complete_request", {"code": "s", "cursor_pos": 1}).content
    types = content["metadata"]["_jupyter_types_experimental"]
    assert [entry["text"] for entry in types] == content["matches"]
    assert all(entry["type"] for entry in types)


def test_inspection_after_an_astral_character_finds_the_name_at_the_cursor(shared):
    code = "# 𝑥𝑥𝑥\nsqrt(4)"
    content = shared.request(
        "inspect_request", {"code": code, "cursor_pos": len("# 𝑥𝑥𝑥\nsq"), "detail_level": 0}
    ).content
    assert content["found"]
    assert "text/plain" in content["data"]


@pytest.mark.parametrize("cursor", [-1, 100])
def test_a_cursor_outside_the_text_is_survived(shared, cursor):
    answer = shared.request("complete_request", {"code": "sq", "cursor_pos": cursor})
    assert answer.content["status"] in ("ok", "error")


def test_a_comm_of_an_unknown_target_is_closed(kernel):
    content = {"comm_id": "c-1", "target_name": "nobody.knows", "data": {}}
    answer = kernel.answer(kernel.send("comm_open", content), replied=False)
    assert [c["comm_id"] for c in answer.of("comm_close")] == ["c-1"]
    assert answer.states == ["busy", "idle"]
    assert kernel.request("comm_info_request", {}).content["comms"] == {}


def test_messages_of_unknown_comms_and_types_are_survived(kernel):
    kernel.send("comm_msg", {"comm_id": "nobody", "data": {}})
    kernel.send("comm_close", {"comm_id": "nobody", "data": {}})
    kernel.send("never_heard_of_request", {})
    assert kernel.execute("1 + 1").bundles[0]["text/plain"] == "2"


def test_restart_forgets_everything(kernel):
    kernel.execute("given m = 3 g")
    kernel.client.stop_channels()
    kernel.manager.restart_kernel()
    kernel.connect()
    answer = kernel.execute("m")
    assert answer.content["status"] == "error"
    assert answer.content["execution_count"] == 1


@pytest.mark.parametrize("restart", [False, True])
def test_shutdown_ends_the_process_by_itself(restart):
    with Kernel() as kernel:
        kernel.execute("1 + 1")
        answer = kernel.request("shutdown_request", {"restart": restart}, channel="control")
        assert answer.content == {"status": "ok", "restart": restart}
        assert kernel.manager.provisioner.process.wait(timeout=environment.PATIENCE) == 0


def test_a_second_client_is_welcomed_too(kernel):
    late = kernel.manager.blocking_client()
    late.start_channels()
    try:
        first = late.get_iopub_msg(timeout=10)
        assert first["msg_type"] == "iopub_welcome"
        assert first["content"] == {"subscription": ""}
        assert first["parent_header"] == {}
    finally:
        late.stop_channels()


def test_a_message_with_a_wrong_signature_is_dropped(kernel):
    stranger = Session(key=b"not the key", signature_scheme="hmac-sha256")
    with zmq.Context() as context, context.socket(zmq.DEALER) as dealer:
        dealer.linger = 0
        dealer.connect(f"tcp://127.0.0.1:{kernel.manager.shell_port}")
        stranger.send(dealer, "execute_request", {"code": "given m = 3 g", "silent": False})
        dealer.send_multipart([b"nonsense"])
        dealer.send_multipart([b"<IDS|MSG>", b"", b"{", b"}", b"", b"{}"])
        assert kernel.execute("1 + 1").content["execution_count"] == 1
        assert dealer.poll(200) == 0
    assert kernel.execute("m").content["status"] == "error"


def test_a_taken_port_is_told_in_one_line(tmp_path):
    with Kernel() as first:
        first.manager.write_connection_file()
        command = [
            part.replace("{connection_file}", first.manager.connection_file).replace(
                "{resource_dir}", first.manager.kernel_spec.resource_dir
            )
            for part in first.manager.kernel_spec.argv
        ]
        second = subprocess.run(
            command, capture_output=True, text=True, timeout=environment.PATIENCE, cwd=tmp_path
        )
        assert second.returncode != 0
        assert len(second.stderr.strip().splitlines()) == 1
        assert first.execute("1 + 1").content["status"] == "ok"


def test_it_listens_on_this_machine_only(kernel):
    process = psutil.Process(kernel.manager.provisioner.process.pid)
    family = [process, *process.children(recursive=True)]
    listening = [
        c.laddr.ip for p in family for c in p.net_connections("tcp") if c.status == psutil.CONN_LISTEN
    ]
    assert len(listening) >= 5
    assert {address.removeprefix("::ffff:") for address in listening} == {"127.0.0.1"}


def test_the_kernelspec_names_the_language():
    with Kernel(KERNEL) as kernel:
        spec = kernel.manager.kernel_spec
        assert (spec.display_name, spec.language) == ("Plainscale", "plainscale")
