# SPDX-License-Identifier: MIT
"""Drives the built program with a real pointer and real keys.

Runs inside xvfb-run and dbus-run-session. The accessibility tree tells where
things are and what they say; xdotool moves the pointer and presses the keys.
"""
import os
import shutil
import subprocess
import sys
import tempfile
import time

try:
    import gi

    gi.require_version("Atspi", "2.0")
    from gi.repository import Atspi, GLib
except (ImportError, ValueError) as missing:
    print("1..0 # SKIP", missing)
    sys.exit(0)

PATIENCE_S = 40.0


def xdotool(*words):
    subprocess.run(["xdotool", *map(str, words)], check=True, stdout=subprocess.DEVNULL)


def keys(*names):
    for name in names:
        xdotool("key", name)
        time.sleep(0.15)


def write(text):
    xdotool("type", "--delay", 25, text)
    time.sleep(0.2)


def every(node, depth=0):
    """The node and all below it; nodes that vanish meanwhile are passed over."""
    yield node
    if depth > 40:
        return
    try:
        count = node.get_child_count()
    except GLib.Error:
        return
    for i in range(count):
        try:
            child = node.get_child_at_index(i)
        except GLib.Error:
            continue
        if child is not None:
            yield from every(child, depth + 1)


def until(what, look):
    """What look() finds, once it finds it."""
    end = time.monotonic() + PATIENCE_S
    while time.monotonic() < end:
        try:
            found = look()
        except GLib.Error:
            found = None
        if found:
            return found
        time.sleep(0.2)
    raise AssertionError("did not come: " + what)


class Program:
    def __init__(self, binary, jobs, log, **environment):
        self.process = subprocess.Popen([binary, *jobs], stdout=log, stderr=log,
                                        env={**os.environ, **environment})

    def root(self):
        desktop = Atspi.get_desktop(0)
        for i in range(desktop.get_child_count()):
            app = desktop.get_child_at_index(i)
            if app is not None and app.get_process_id() == self.process.pid:
                return app
        return None

    def named(self, name, role=None):
        root = self.root()
        if root is None:
            return None
        for node in every(root):
            try:
                if node.get_name() == name and role in (None, node.get_role_name()):
                    return node
            except GLib.Error:
                continue
        return None

    def find(self, name, role=None):
        return until(f"{role or 'something'} named “{name}”", lambda: self.named(name, role))

    def nodes(self, *roles):
        """All things of these roles."""
        root = self.root()
        for node in every(root) if root is not None else ():
            try:
                if node.get_role_name() in roles:
                    yield node
            except GLib.Error:
                continue

    def all_labels(self):
        """Texts of all labels."""
        return [node.get_name() or "" for node in self.nodes("label", "status bar", "statusbar")]

    def focused(self):
        """Name of what has the keyboard, or None; the newest window is asked first."""
        root = self.root()
        windows = range(root.get_child_count() if root is not None else 0)
        for i in reversed(windows):
            for node in every(root.get_child_at_index(i)):
                try:
                    if node.get_state_set().contains(Atspi.StateType.FOCUSED):
                        return node.get_name().lstrip("_")
                except GLib.Error:
                    continue
        return None

    def tab_to(self, beginning, most=20):
        """Press Tab until what has the keyboard is called so."""
        for _ in range(most):
            if (self.focused() or "").startswith(beginning):
                return
            keys("Tab")
        raise AssertionError(f"Tab never came to “{beginning}”; it is at “{self.focused()}”")

    def says(self, name):
        """Description of the thing of that name, or None."""
        node = self.named(name)
        return node.get_description() if node is not None else None


def middle(node):
    box = node.get_extents(Atspi.CoordType.WINDOW)
    return box.x + box.width // 2, box.y + box.height // 2


def drag(node, dx, dy):
    x, y = middle(node)
    xdotool("mousemove", x, y)
    time.sleep(0.3)
    xdotool("mousedown", 1)
    for k in range(1, 6):
        xdotool("mousemove", x + dx * k // 5, y + dy * k // 5)
        time.sleep(0.08)
    time.sleep(0.3)


def click(node):
    xdotool("mousemove", *middle(node))
    time.sleep(0.2)
    xdotool("click", 1)
    time.sleep(0.3)


class Journey:
    """One way through the program; its steps are methods, in the order of STEPS."""

    STEPS = []

    def __init__(self, binary, examples):
        self.binary = binary
        self.folder = tempfile.mkdtemp(prefix="slopewright-journey-")
        self.job = os.path.join(self.folder, "road.slope.json")
        shutil.copy(os.path.join(examples, "sandlark-bluff-road.slope.json"), self.job)
        self.log = open(os.path.join(self.folder, "log.txt"), "w+", encoding="utf-8")
        self.program = None

    def start(self, *jobs, **environment):
        self.program = Program(self.binary, jobs, self.log,
                               XDG_STATE_HOME=os.path.join(self.folder, "state"),
                               XDG_DATA_HOME=os.path.join(self.folder, "data"),
                               **environment)

    def writes_into_file_dialog(self, title, path):
        until("the file dialog", lambda: self.program.named(title))
        time.sleep(1.0)
        keys("ctrl+a")
        write(path)
        keys("Return")
        until("the file", lambda: os.path.exists(path) and os.path.getsize(path) > 1000)

    def says_nothing_on_the_side(self):
        self.log.seek(0)
        bad = [line for line in self.log
               if "CRITICAL" in line or "WARNING" in line or "ERROR" in line]
        assert not bad, "".join(bad)

    def end(self, failed):
        if self.program is not None and self.program.process.poll() is None:
            if failed:
                subprocess.run(["import", "-window", "root", "journey-failed.png"], check=False)
            self.program.process.kill()
            self.program.process.wait()
        self.log.seek(0)
        for line in self.log:
            print("#", line.rstrip())
        self.log.close()
        shutil.rmtree(self.folder)


def travel(journey, name):
    """Take all steps and print TAP. Returns whether one failed."""
    failed = False
    print(f"1..{len(journey.STEPS)}")
    for number, step in enumerate(journey.STEPS, 1):
        path = f"/app/journey/{name}/{step.replace('_', '-')}"
        if failed:
            print(f"not ok {number} {path} # an earlier step failed")
            continue
        try:
            getattr(journey, step)()
            print(f"ok {number} {path}", flush=True)
        except (AssertionError, GLib.Error, subprocess.CalledProcessError) as problem:
            failed = True
            print(f"not ok {number} {path}")
            print("#", problem, flush=True)
    journey.end(failed)
    return failed

