"""The Jupyter project's own conformance suite, with samples in our notation and in Java.

Left out, because there is no such thing: a pager, clear_output; for the notation also stdout and stderr.
"""

import jupyter_kernel_test

from environment import JAVA_KERNEL, KERNEL


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


class TestJavaConformance(jupyter_kernel_test.KernelTests):
    kernel_name = JAVA_KERNEL
    language_name = "java"
    file_extension = ".java"

    code_hello_world = 'System.out.println("hello, world");'
    code_stderr = 'System.err.println("careful");'
    completion_samples = [
        {"text": "System.currentTimeM", "matches": ["currentTimeMillis()"]},
        {"text": '"a".toUpperC', "matches": ["toUpperCase("]},
    ]
    complete_code_samples = ["1 + 1", "int n = 3;", "int f(int n) { return 2 * n; }\nf(3)"]
    incomplete_code_samples = ["int f() {", "1 +", "/* a comment", 'String s = """']
    invalid_code_samples = ["int n = ;", "1 + 1)"]

    code_generate_error = 'throw new IllegalStateException("no");'
    code_execute_result = [
        {"code": "6 * 7", "result": "42"},
        {"code": "int n = 20; n + 1", "result": "21"},
        {"code": 'quantity("2 kg").times(quantity("3 s"))', "mime": "text/html"},
    ]
    code_display_data = [{"code": 'display(quantity("2 kg"));', "mime": "text/html"}]
    code_history_pattern = "6 ? 7"
    supported_history_operations = ("tail", "range", "search")
    code_inspect_sample = "Math.max"


class TestJavaWelcome(jupyter_kernel_test.IopubWelcomeTests):
    kernel_name = JAVA_KERNEL
    support_iopub_welcome = True
