"""The Jupyter project's own conformance suite, with samples in our notation.

Left out, because the notation has no such thing: writing to stdout or stderr, a pager, clear_output.
"""

import jupyter_kernel_test

from environment import KERNEL


class TestConformance(jupyter_kernel_test.KernelTests):
    kernel_name = KERNEL
    language_name = "plainscale"

    completion_samples = [
        {"text": "contr", "matches": ["contrast"]},
        {"text": "w = 3 N\nsqr", "matches": ["sqrt"]},
    ]
    complete_code_samples = ["1 + 1", "given m = 2.70 ± 0.05 g", "w = m g_n\nshow w in mN"]
    incomplete_code_samples = ["w = m *", "x = (1 + 2"]
    invalid_code_samples = ["x = 1 + 2)", "given = 3 g"]

    code_generate_error = "x = 1 m + 1 s"
    code_execute_result = [
        {"code": "1 + 1", "result": "2"},
        {"code": "6 * 7", "result": "42"},
        {"code": "2 kg * 3 s", "mime": "text/html"},
    ]
    code_display_data = [
        {"code": 'say "hello, world"', "mime": "text/plain"},
        {"code": "given m = 2.70 ± 0.05 g\nshow m in kg to 2 figures", "mime": "text/html"},
        {"code": "a = 3\nb = 8700000\ncontrast a with b", "mime": "text/plain"},
    ]
    code_history_pattern = "6 ? 7"
    supported_history_operations = ("tail", "range", "search")
    code_inspect_sample = "sqrt"


class TestWelcome(jupyter_kernel_test.IopubWelcomeTests):
    kernel_name = KERNEL
    support_iopub_welcome = True
