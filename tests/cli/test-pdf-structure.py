# SPDX-License-Identifier: MIT
"""Walks the structure of printed packs as another reader finds it.

What is asked of a tagged PDF: ISO 32000-1, 14.7 (structure, parent tree), 14.8 (tagged
PDF) and 14.9 (language, alternate text). Read with qpdf, which knows nothing of us.

Arguments: source root, slopepack.
"""

import base64
import json
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(sys.argv[1])
SLOPEPACK = str(Path(sys.argv[2]).resolve())
sys.path.insert(0, str(ROOT / "tests" / "lint"))
import tap  # noqa: E402

CONTENT = re.compile(rb"/(\w+) <</MCID (\d+)>> BDC")
BEGIN = re.compile(rb"\b(?:BDC|BMC)\n")
END = re.compile(rb"\bEMC\n")
PACKS = [("kelpie-lane", "crew", "fr"), ("corvendale-interchange", "permit", "es"),
         ("sallow-bank", "class", "en"), ("quernby-heap", "class-key", "fr")]


class Document:
    """Objects of a PDF by their references, streams decoded."""

    def __init__(self, path):
        done = subprocess.run(["qpdf", "--json", "--json-stream-data=inline",
                               "--decode-level=generalized", path], capture_output=True,
                              timeout=120)
        assert done.returncode == 0, done.stderr.decode()
        told = json.loads(done.stdout)
        self.objects = told["qpdf"][1]
        self.outlines = told["outlines"]
        self.labels = told["pagelabels"]
        self.trailer = self.objects["trailer"]["value"]
        self.catalog = self.get(self.trailer["/Root"])
        self.pages = [page["object"] for page in told["pages"]]

    def get(self, value):
        """The object that a reference names; anything else is itself."""
        if isinstance(value, str) and re.fullmatch(r"\d+ \d+ R", value):
            found = self.objects["obj:" + value]
            return found["stream"]["dict"] if "stream" in found else found["value"]
        return value

    def contents(self, page):
        stream = self.objects["obj:" + self.get(page)["/Contents"]]["stream"]
        return base64.b64decode(stream["data"])


class Tree:
    """What the structure tree holds, from the root down."""

    def __init__(self, document):
        self.document = document
        self.marked = {}   # (page, number of marked content) → element
        self.objects = {}  # annotation → element
        self.elements = {}
        root = document.catalog["/StructTreeRoot"]
        self.root = document.get(root)
        for kid in self.root["/K"]:
            self.walk(kid, root)

    def walk(self, reference, parent):
        element = self.document.get(reference)
        assert element["/P"] == parent, f"{reference} is below {parent}"
        assert reference not in self.elements, f"{reference} stands twice in the tree"
        self.elements[reference] = element
        for kid in element["/K"]:
            held = self.document.get(kid)
            if held["/Type"] == "/MCR":
                self.marked[held["/Pg"], held["/MCID"]] = reference
            elif held["/Type"] == "/OBJR":
                self.objects[held["/Obj"]] = reference
            else:
                self.walk(kid, reference)

    def of_type(self, kind):
        return [element for element in self.elements.values() if element["/S"] == kind]

    def parents(self):
        """The parent tree: number → what it leads to; numbers ascend."""
        numbers = self.document.get(self.root["/ParentTree"])["/Nums"]
        keys = numbers[::2]
        assert keys == sorted(set(keys)), "numbers of the parent tree do not ascend"
        assert self.root["/ParentTreeNextKey"] == len(keys)
        return dict(zip(keys, numbers[1::2]))


def printed(folder, job, kind, language):
    path = folder / f"{job}-{kind}-{language}.pdf"
    done = subprocess.run([SLOPEPACK, "pack", ROOT / "examples" / f"{job}.slope.json",
                           "--kind", kind, "--language", language, "-o", path],
                          timeout=120, capture_output=True)
    assert done.returncode in (0, 3), done.stderr.decode()  # 3: there is a stop finding
    return path


def check_catalog(document, job, language):
    card = json.loads((ROOT / "examples" / f"{job}.slope.json").read_text("utf-8"))["card"]
    assert document.catalog["/Lang"] == f"u:{language}"
    assert document.catalog["/MarkInfo"]["/Marked"] is True
    assert document.catalog["/ViewerPreferences"]["/DisplayDocTitle"] is True
    assert document.get(document.trailer["/Info"])["/Title"] == f"u:{card['name']}"
    assert document.labels == [{"index": 0, "label": {"/S": "/D", "/St": 1}}]
    assert [outline["destpageposfrom1"] for outline in document.outlines] == sorted(
        {outline["destpageposfrom1"] for outline in document.outlines})


def check_pages(document, tree):
    """Every marked content is in the tree, and the parent tree leads back to it."""
    parents = tree.parents()
    for page in document.pages:
        known = document.get(page)
        assert known["/Tabs"] == "/S"
        contents = document.contents(page)
        assert len(BEGIN.findall(contents)) == len(END.findall(contents))
        owners = document.get(parents[known["/StructParents"]])
        marks = CONTENT.findall(contents)
        assert sorted(int(number) for _, number in marks) == list(range(len(owners)))
        for kind, number in marks:
            owner = owners[int(number)]
            assert tree.marked[page, int(number)] == owner
            assert tree.elements[owner]["/S"] == "/" + kind.decode()


def check_links(document, tree, wanted):
    """Each link is spoken, where it stands, by the title of the page it leads to."""
    parents = tree.parents()
    titles = {outline["dest"][0]: outline["title"] for outline in document.outlines}
    links = [link for page in document.pages
             for link in document.get(document.get(page).get("/Annots", []))]
    assert set(links) == set(tree.objects)
    assert len(links) >= wanted
    for link in links:
        known = document.get(link)
        element = tree.objects[link]
        assert tree.elements[element]["/S"] == "/Link"
        assert parents[known["/StructParent"]] == element
        assert known["/Contents"] == f"u:{titles[document.get(known['/Dest'])[0]]}"
        parent = tree.elements[element]["/P"]
        assert tree.elements[parent]["/S"] == "/TD"
        assert element in tree.marked.values(), "a link without words"


def check_tables(document, tree):
    for head in tree.of_type("/TH"):
        scope = document.get(head["/A"])
        assert scope["/O"] == "/Table" and scope["/Scope"] == "/Column"
    for table in tree.of_type("/Table"):
        widths = {sum(document.get(tree.elements[cell].get("/A", {})).get("/ColSpan", 1)
                      for cell in tree.elements[row]["/K"]) for row in table["/K"]}
        assert len(widths) == 1, f"rows of {sorted(widths)} columns in one table"


def check_pictures(tree):
    for picture in tree.of_type("/Figure"):
        assert len(picture["/Alt"]) > len("u:"), "a picture without words"


def case_of(job, kind, language):
    def case():
        if shutil.which("qpdf") is None:
            return "qpdf is not installed"
        with tempfile.TemporaryDirectory() as folder:
            document = Document(printed(Path(folder), job, kind, language))
        tree = Tree(document)
        check_catalog(document, job, language)
        check_pages(document, tree)
        check_links(document, tree, 20 if kind == "crew" else 0)
        check_tables(document, tree)
        check_pictures(tree)
        return None

    return f"/pdf-structure/{job}/{kind}/{language}", case


if __name__ == "__main__":
    sys.exit(tap.run([case_of(*pack) for pack in PACKS]))
