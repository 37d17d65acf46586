"""A kernel process with a client that keeps every message, checks it, and sorts it by its request."""

import time
from collections import defaultdict
from dataclasses import dataclass, field
from queue import Empty

from jupyter_client import KernelManager
from jupyter_kernel_test.msgspec_v5 import mime_data, schema_fragments, validate_message

from environment import KERNEL, PATIENCE

# Messages that the conformance suite's schemas leave out.
COMM = {"comm_id": {"type": "string"}, "data": {"type": "object"}}
schema_fragments["comm_close"] = {"properties": COMM, "required": ["comm_id"]}
schema_fragments["comm_msg"] = {"properties": COMM}
schema_fragments["comm_open"] = {"properties": {**COMM, "target_name": {"type": "string"}}}
schema_fragments["iopub_welcome"] = {"properties": {"subscription": {"type": "string"}}}
schema_fragments["execute_result"]["properties"]["data"] = mime_data


@dataclass
class Answer:
    """All that came back to one request."""

    reply: dict | None = None
    published: list = field(default_factory=list)

    @property
    def content(self):
        return self.reply["content"]

    def of(self, *kinds):
        """Contents of the published messages of these types, in order."""
        return [message["content"] for message in self.published if message["msg_type"] in kinds]

    @property
    def states(self):
        return [content["execution_state"] for content in self.of("status")]

    @property
    def bundles(self):
        """Everything that the request showed, as mime bundles."""
        return [content["data"] for content in self.of("display_data", "execute_result")]

    @property
    def finished(self):
        return self.reply is not None and "idle" in self.states


class Kernel:
    """Use as a context manager; `name` is a kernelspec."""

    def __init__(self, name=KERNEL):
        self.manager = KernelManager(kernel_name=name)
        self.answers = defaultdict(Answer)

    def __enter__(self):
        self.manager.start_kernel()
        self.connect()
        return self

    def __exit__(self, *_):
        self.client.stop_channels()
        self.manager.shutdown_kernel(now=True)

    def connect(self):
        self.client = self.manager.blocking_client()
        self.client.start_channels()
        self.client.wait_for_ready(timeout=PATIENCE)

    def send(self, kind, content, channel="shell", metadata=None):
        """Sends a request and returns its id, without waiting for the answer."""
        message = self.client.session.msg(kind, content, metadata=metadata)
        getattr(self.client, f"{channel}_channel").send(message)
        return message["header"]["msg_id"]

    def answer(self, identity, replied=True):
        """Waits until the request is answered and its `idle` has come; without `replied` for idle alone."""
        end = time.monotonic() + PATIENCE
        answer = self.answers[identity]
        while not (answer.finished or not replied and "idle" in answer.states):
            if time.monotonic() > end:
                kinds = [message["msg_type"] for message in answer.published]
                raise TimeoutError(
                    f"no whole answer; reply: {answer.reply is not None}, published: {kinds[-20:]}"
                )
            self._receive()
        return answer

    def request(self, kind, content, **options):
        return self.answer(self.send(kind, content, **options))

    def execute(self, code, **options):
        return self.answer(self.send_cell(code, **options))

    def send_cell(self, code, cell_id=None, **options):
        content = {
            "code": code, "silent": False, "store_history": True, "user_expressions": {},
            "allow_stdin": False, "stop_on_error": True, **options,
        }  # fmt: skip
        return self.send("execute_request", content, metadata={"cellId": cell_id} if cell_id else None)

    def _receive(self):
        for channel in ("iopub", "shell", "control"):
            try:
                while True:
                    get = getattr(self.client, f"get_{channel}_msg")
                    self._file(channel, get(timeout=0.02 if channel == "iopub" else 0.001))
            except Empty:
                pass

    def _file(self, channel, message):
        validate_message(message)
        answer = self.answers[message["parent_header"].get("msg_id")]
        if channel == "iopub":
            answer.published.append(message)
        elif answer.reply is not None:
            raise AssertionError(f"a second reply: {message['msg_type']}")
        else:
            answer.reply = message
