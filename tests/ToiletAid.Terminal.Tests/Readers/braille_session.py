"""Runs a program on a Linux console under BRLTTY with a display of 40 cells that exists only here.

usage: braille_session.py CONSOLE KEY ... -- PROGRAM [ARGUMENT ...]
KEYs are Python escapes. Prints the line that the display shows after the start and after each key. Needs root.
"""
import fcntl
import os
import socket
import subprocess
import sys
import tempfile
import termios
import time

console = sys.argv[1]
split = sys.argv.index("--")
keys, program = sys.argv[2:split], sys.argv[split + 1:]
folder = tempfile.mkdtemp()
listener = socket.socket(socket.AF_UNIX)
listener.bind(os.path.join(folder, "display"))
listener.listen(1)
listener.settimeout(15)
terminal = os.open("/dev/tty" + console, os.O_RDWR | os.O_NOCTTY)
fcntl.ioctl(terminal, termios.TIOCSWINSZ, b"\x18\x00\x50\x00\x00\x00\x00\x00")
os.write(terminal, b"\x1b[H\x1b[2J")


def own_terminal():
    os.setsid()
    fcntl.ioctl(0, termios.TIOCSCTTY, 1)


reader = subprocess.Popen(
    ["brltty", "-n", "-e", "-q", "-b", "vr", "-d", "client:" + os.path.join(folder, "display"), "-x", "lx", "-X",
     "vt=" + console, "-A", "none=none", "-P", os.path.join(folder, "pid")],
    stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
display, _ = listener.accept()
display.sendall(b"cells 40\n")
display.settimeout(0.1)
buffer = b""


def shown(seconds):
    global buffer
    end, line = time.time() + seconds, None
    while time.time() < end:
        try:
            part = display.recv(4096)
        except socket.timeout:
            continue
        if not part:
            break
        buffer += part
        while b"\n" in buffer:
            text, buffer = buffer.split(b"\n", 1)
            if text.startswith(b"Visual"):
                line = text[7:].decode("utf8", "replace").strip().strip('"').rstrip()
    return line


shown(1)
child = subprocess.Popen(program, stdin=terminal, stdout=terminal, stderr=subprocess.DEVNULL,
                         env=dict(os.environ, TERM="linux"), preexec_fn=own_terminal)
last = shown(5) or ""
print(last, flush=True)
for key in keys:
    for byte in key.encode().decode("unicode_escape").encode("latin1"):
        fcntl.ioctl(terminal, termios.TIOCSTI, bytes([byte]))
    last = shown(1.2) or last
    print(last, flush=True)
child.terminate()
try:
    child.wait(3)
except subprocess.TimeoutExpired:
    child.kill()
reader.terminate()
try:
    reader.wait(3)
except subprocess.TimeoutExpired:
    reader.kill()
