"""Runs a program in a terminal of its own and does what the test asks for, a line at a time.

usage: pty_session.py ROWS COLUMNS PROGRAM [ARGUMENT ...]
Each line on standard input gets one line on standard output:
  send HEX         writes bytes to the terminal
  quiet MS MOST    reads until nothing came for MS, at most MOST; answers the bytes in hex
  size ROWS COLS   changes the size
  flow off|on      the terminal takes nothing more, or goes on
  kill NUMBER      sends a signal to the program
  stty             answers the settings of the terminal
  exit MS          waits for the end of the program; answers its exit code, or none
The queries that every terminal answers are answered here too.
"""
import fcntl
import os
import pty
import select
import signal
import struct
import sys
import termios
import time

rows, columns = int(sys.argv[1]), int(sys.argv[2])
master, slave = pty.openpty()
fcntl.ioctl(slave, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))
child = os.fork()
if child == 0:
    os.close(master)
    os.setsid()
    fcntl.ioctl(slave, termios.TIOCSCTTY, 0)
    for fd in (0, 1, 2):
        os.dup2(slave, fd)
    os.close(slave)
    # Whoever started the tests in the background may have let them be ignored, and a child takes that over.
    for stop in (signal.SIGHUP, signal.SIGINT, signal.SIGQUIT, signal.SIGTERM):
        signal.signal(stop, signal.SIG_DFL)
    os.execvp(sys.argv[3], sys.argv[3:])


kept = b""


def read(quiet, most):
    global kept
    data, end, last = kept, time.time() + most, time.time()
    kept = b""
    while time.time() < end and time.time() - last < quiet:
        if not select.select([master], [], [], 0.01)[0]:
            continue
        try:
            part = os.read(master, 65536)
        except OSError:
            break
        if not part:
            break
        last = time.time()
        data += part
        if b"\x1b[6n" in part:
            os.write(master, b"\x1b[1;1R")
        if b"\x1b[c" in part or b"\x1b[0c" in part:
            os.write(master, b"\x1b[?62;22c")
    return data


def ended(milliseconds):
    """What the program writes at its end is kept for the next reading."""
    global kept
    end = time.time() + milliseconds / 1000
    while True:
        pid, status = os.waitpid(child, os.WNOHANG)
        if pid:
            return str(os.waitstatus_to_exitcode(status))
        if time.time() >= end:
            return "none"
        kept = read(0.01, 0.02)


for line in sys.stdin:
    word, *rest = line.split()
    answer = "done"
    try:
        if word == "send":
            os.write(master, bytes.fromhex(rest[0]))
        elif word == "quiet":
            answer = "out " + read(int(rest[0]) / 1000, int(rest[1]) / 1000).hex()
        elif word == "size":
            fcntl.ioctl(master, termios.TIOCSWINSZ, struct.pack("HHHH", int(rest[0]), int(rest[1]), 0, 0))
        elif word == "flow":
            termios.tcflow(slave, termios.TCOOFF if rest[0] == "off" else termios.TCOON)
        elif word == "kill":
            os.kill(child, int(rest[0]))
        elif word == "stty":
            answer = repr(termios.tcgetattr(slave)).replace(" ", "")
        elif word == "exit":
            answer = ended(int(rest[0]))
    except OSError as fault:
        answer = "fault " + str(fault).replace("\n", " ")
    print(answer, flush=True)
try:
    os.kill(child, 9)
except OSError:
    pass
