"""How long after its start a program asks the first question, in linear mode and on the full screen, on a terminal of its own.

Usage: start.py RUNS NAME PROGRAM [NAME PROGRAM]... Programs take turns, so that whatever else the machine does meets all of them. Prints medians and
the processor time, which other work on the machine changes less. Exits with 1 when a program asks nothing or two programs ask differently.
"""
import fcntl
import os
import pty
import select
import signal
import statistics
import struct
import sys
import tempfile
import termios
import time

PROMPT = b"1 of "
TIMEOUT = 30
# A home with nothing in it: a visit that somebody did not finish would be asked about first.
EMPTY = tempfile.TemporaryDirectory()
HOME = {name: EMPTY.name for name in ("HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_STATE_HOME", "XDG_CACHE_HOME")}
MODES = [("linear", "--linear"), ("full screen", "--full-screen")]


def first_question(program, mode):
    """Seconds to the first question, processor seconds by then, and what was said up to it."""
    begin = time.perf_counter()
    child, terminal = pty.fork()
    if child == 0:
        fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
        os.execve(program, [program, "assess", mode, "--depth", "quick"], {**os.environ, **HOME, "TERM": "xterm-256color"})
    said = b""
    while PROMPT not in said:
        ready, _, _ = select.select([terminal], [], [], TIMEOUT)
        try:
            some = os.read(terminal, 65536) if ready else b""
        except OSError:
            some = b""
        if not some:
            break
        said += some
    seconds = time.perf_counter() - begin
    os.kill(child, signal.SIGKILL)
    _, _, used = os.wait4(child, 0)
    os.close(terminal)
    return seconds, used.ru_utime + used.ru_stime, said[: said.find(PROMPT)] if PROMPT in said else None


def main(runs, *programs):
    programs = list(zip(programs[::2], programs[1::2]))
    for name, option in MODES:
        taken = {program: [] for program, _ in programs}
        said = {}
        for _ in range(int(runs) + 1):
            for program, path in programs:
                seconds, used, text = first_question(path, option)
                if text is None or said.setdefault(option, text) != text:
                    print(f"{program}, {name}: " + ("no question was asked" if text is None else "another first question"))
                    return 1
                taken[program].append((seconds, used))
        for program, times in taken.items():
            wall, used = (statistics.median(t[i] for t in times[1:]) * 1000 for i in range(2))
            print(f"{program}, first question, {name}: median {wall:.0f} ms, least {min(t[0] for t in times[1:]) * 1000:.0f} ms, processor time {used:.0f} ms")
    return 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
