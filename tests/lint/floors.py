# SPDX-License-Identifier: MIT
"""Which room may include which, read from the includes of the sources."""

import re

ROOMS = ["base", "ground", "layout", "tally", "judge", "figure", "store", "sheet",
         "paint", "document", "cli", "app"]

# What a room may include, itself aside. Everything up to figure is one pile;
# above it the rooms fan out.
MODEL = ["base", "ground", "layout", "tally", "judge", "figure"]
ALLOWED = {room: MODEL[:number] for number, room in enumerate(MODEL)}
ALLOWED["store"] = MODEL
ALLOWED["sheet"] = MODEL
ALLOWED["paint"] = MODEL
ALLOWED["document"] = MODEL + ["store"]
ALLOWED["cli"] = MODEL + ["store", "sheet", "paint"]
ALLOWED["app"] = MODEL + ["store", "sheet", "paint", "document"]

# Libraries that only some rooms may see.
LIBRARIES = {
    "gtk/": ["app"],
    "gdk/": ["app"],
    "jansson": ["store"],
    "hpdf": ["paint"],
    "cairo": ["paint", "app"],
    "geos_c": ["ground", "layout"],
    "gio/": ["store", "paint", "document", "cli", "app"],
}

INCLUDE = re.compile(r'^[ \t]*#[ \t]*include[ \t]*[<"]([^>"]+)[>"]', re.MULTILINE)


def violations(room, text):
    """Includes in @text, a file of @room, that stand on a higher floor."""
    found = []
    for name in INCLUDE.findall(text):
        path = name.split("/")
        if path[0] == "slopewright":
            if path[1] != room and path[1] not in ALLOWED[room]:
                found.append(f"{name}: room {room} may not include room {path[1]}")
        elif ".." in path:
            found.append(f"{name}: reach another room through <slopewright/...>")
        else:
            for library, rooms in LIBRARIES.items():
                if name.startswith(library) and room not in rooms:
                    found.append(f"{name}: room {room} may not see this library")
    return found
