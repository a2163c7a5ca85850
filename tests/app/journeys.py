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

    def everything(self):
        """All nodes, those of the newest window first: it is most often looked for."""
        root = self.root()
        for i in reversed(range(root.get_child_count() if root is not None else 0)):
            window = root.get_child_at_index(i)
            yield from every(window) if window is not None else ()

    def named(self, name, role=None):
        for node in self.everything():
            try:
                if node.get_name() == name and role in (None, node.get_role_name()):
                    return node
            except GLib.Error:
                continue
        return None

    def find(self, name, role=None):
        return until(f"{role or 'something'} named “{name}”", lambda: self.named(name, role))

    def shown(self, name, *roles):
        """The thing of that name that has room on the screen; of two, the one above."""
        return until(f"“{name}” on the screen", lambda: next(
            (node for node in self.nodes(*roles)
             if node.get_name() == name and extents(node)[2] > 0), None))

    def nodes(self, *roles):
        """All things of these roles."""
        for node in self.everything():
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
        for node in self.everything():
            try:
                if node.get_state_set().contains(Atspi.StateType.FOCUSED):
                    return node.get_name()
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


def surfaces():
    """Places and sizes of the program's windows on the screen, menus and pop-ups too."""
    said = subprocess.run(
        ["xdotool", "search", "--onlyvisible", "--class", "slopewright",
         "getwindowgeometry", "--shell", "%@"], capture_output=True, text=True, check=False)
    numbers = [int(line.partition("=")[2]) for line in said.stdout.splitlines()
               if line.startswith(("X=", "Y=", "WIDTH=", "HEIGHT="))]
    return [tuple(numbers[i:i + 4]) for i in range(0, len(numbers), 4)]


def extents(node):
    box = node.get_extents(Atspi.CoordType.WINDOW)
    return box.x, box.y, box.width, box.height


def surface_of(node):
    """The pop-up that the thing lies in, or its window, as far as the tree knows it."""
    while node.get_parent().get_role_name() != "application":
        if node.get_name() == "GtkPopoverContent":
            return node.get_parent()
        node = node.get_parent()
    return node


def origin(surface):
    """Where a surface of the tree begins on the screen.

    The tree knows only its size, a window's without the frame that it draws itself.
    """
    _, _, width, height = extents(surface)
    for x, y, full_width, full_height in surfaces():
        frame = full_width - width
        if 0 <= frame < 80 and frame == full_height - height:
            return x + frame // 2, y + frame // 2
    return None


def place(node):
    """Middle of a thing on the screen, or None."""
    surface = surface_of(node)
    corner = origin(surface)
    x, y, width, height = extents(node)
    if corner is None or width <= 0:
        return None
    from_x, from_y, _, _ = extents(surface)
    return corner[0] + x - from_x + width // 2, corner[1] + y - from_y + height // 2


def middle(node):
    """Middle of a thing on the screen, once it has a place there and stays in it."""
    seen = [None]

    def stays():
        seen.append(place(node))
        return seen[-1] is not None and seen[-1] == seen[-2]

    until(f"a place for “{node.get_name()}”", stays)
    return seen[-1]


def drag(node, dx, dy):
    x, y = middle(node)
    xdotool("mousemove", x, y)
    time.sleep(0.3)
    xdotool("mousedown", 1)
    for k in range(1, 6):
        xdotool("mousemove", x + dx * k // 5, y + dy * k // 5)
        time.sleep(0.08)
    time.sleep(0.3)


def click(node, up=0):
    """In its middle, or so much further up."""
    x, y = middle(node)
    xdotool("mousemove", x, y - up)
    time.sleep(0.2)
    xdotool("click", 1)
    time.sleep(0.3)


def choose(tab):
    """Click it until it is the one chosen: once in some thirty times nothing comes of the
    click, nor of the pointer's coming, after a redo; the next click is always taken."""
    until(f"“{tab.get_name()}” to be chosen",
          lambda: tab.get_state_set().contains(Atspi.StateType.SELECTED) or click(tab))


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
                print("#", subprocess.run(["xdotool", "getmouselocation"], check=False,
                                          capture_output=True, text=True).stdout)
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

