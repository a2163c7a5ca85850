# SPDX-License-Identifier: MIT
"""A user's way through the built program, with a real pointer and real keys.

Runs inside xvfb-run and dbus-run-session. The accessibility tree tells where
things are and what they say; xdotool moves the pointer and presses the keys.
Prints TAP.
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
    def __init__(self, binary, job, log):
        self.process = subprocess.Popen([binary, job], stdout=log, stderr=log)

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
    def __init__(self, binary, examples):
        self.folder = tempfile.mkdtemp(prefix="slopewright-journey-")
        self.job = os.path.join(self.folder, "road.slope.json")
        shutil.copy(os.path.join(examples, "sandlark-bluff-road.slope.json"), self.job)
        self.log = open(os.path.join(self.folder, "log.txt"), "w+", encoding="utf-8")
        self.program = Program(binary, self.job, self.log)
        self.toe_name = "Section point 3 of 4, toe"

    def opens_the_example(self):
        self.program.find(self.toe_name)
        self.area = until("an area", lambda: self.program.says("Net area"))
        assert "m²" in self.area, self.area
        xdotool("search", "--sync", "--onlyvisible", "--name", "Sandlark", "windowfocus")
        time.sleep(0.5)

    def drags_the_toe(self):
        drag(self.program.find(self.toe_name), 30, 0)
        changed = until(
            "another area while the pointer is down",
            lambda: self.program.says("Net area") not in (None, self.area))
        xdotool("mouseup", 1)
        time.sleep(0.5)
        assert changed
        assert self.program.says("Net area") != self.area

    def undoes_in_one_step(self):
        keys("ctrl+z")
        until("the old area", lambda: self.program.says("Net area") == self.area)
        keys("ctrl+shift+z")
        until("the new area again", lambda: self.program.says("Net area") != self.area)
        keys("ctrl+z")
        until("the old area again", lambda: self.program.says("Net area") == self.area)

    def escape_gives_up_a_drag(self):
        drag(self.program.find(self.toe_name), 30, 0)
        until("another area", lambda: self.program.says("Net area") != self.area)
        keys("Escape")
        until("the old area", lambda: self.program.says("Net area") == self.area)
        xdotool("mouseup", 1)
        time.sleep(0.4)
        assert self.program.says("Net area") == self.area

    def nudges_by_key(self):
        click(self.program.find(self.toe_name))
        keys("Right", "Right")
        until("another area", lambda: self.program.says("Net area") != self.area)
        keys("ctrl+z")
        until("the old area", lambda: self.program.says("Net area") == self.area)

    def types_a_point(self):
        click(self.program.find(self.toe_name))
        keys("Return")
        until("the point's fields",
              lambda: any(n.get_name() == "Out" and n.get_role_name() in ("text", "entry")
                          for n in every(self.program.root())))
        time.sleep(0.5)
        keys("ctrl+a")
        write("8,75")
        keys("Return")
        until("the toe where it was typed",
              lambda: (self.program.says(self.toe_name) or "").startswith("8.75"))

    def exports_the_pack(self):
        pdf = os.path.join(self.folder, "pack.pdf")
        keys("ctrl+e")
        until("the file dialog", lambda: self.program.named("Export Pack"))
        time.sleep(1.0)
        keys("ctrl+a")
        write(pdf)
        keys("Return")
        until("a PDF", lambda: os.path.exists(pdf) and os.path.getsize(pdf) > 1000)
        with open(pdf, "rb") as file:
            assert file.read(5) == b"%PDF-"

    def asks_before_it_closes(self):
        time.sleep(0.5)
        keys("ctrl+w")
        self.program.find("Discard")
        keys("Escape")
        until("no question", lambda: self.program.named("Discard") is None)
        assert self.program.process.poll() is None
        keys("ctrl+w")
        self.program.find("Discard")
        before = open(self.job, "rb").read()
        keys("Return")  # Save is what Enter means
        until("its end", lambda: self.program.process.poll() is not None)
        assert self.program.process.returncode == 0, self.program.process.returncode
        assert open(self.job, "rb").read() != before

    def says_nothing_on_the_side(self):
        self.log.seek(0)
        bad = [line for line in self.log
               if "CRITICAL" in line or "WARNING" in line or "ERROR" in line]
        assert not bad, "".join(bad)

    def end(self, failed):
        if self.program.process.poll() is None:
            if failed:
                subprocess.run(["import", "-window", "root", "journey-failed.png"], check=False)
            self.program.process.kill()
            self.program.process.wait()
        self.log.seek(0)
        for line in self.log:
            print("#", line.rstrip())
        self.log.close()
        shutil.rmtree(self.folder)


STEPS = ["opens_the_example", "drags_the_toe", "undoes_in_one_step", "escape_gives_up_a_drag",
         "nudges_by_key", "types_a_point", "exports_the_pack", "asks_before_it_closes",
         "says_nothing_on_the_side"]


def main():
    journey = Journey(sys.argv[1], sys.argv[2])
    failed = False
    print(f"1..{len(STEPS)}")
    for number, step in enumerate(STEPS, 1):
        name = f"/app/journey/{step.replace('_', '-')}"
        if failed:
            print(f"not ok {number} {name} # an earlier step failed")
            continue
        try:
            getattr(journey, step)()
            print(f"ok {number} {name}", flush=True)
        except (AssertionError, GLib.Error, subprocess.CalledProcessError) as problem:
            failed = True
            print(f"not ok {number} {name}")
            print("#", problem, flush=True)
    journey.end(failed)
    return 1 if failed else 0


sys.exit(main())
