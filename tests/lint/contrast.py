# SPDX-License-Identifier: MIT
"""How well the drawings and the window's greys are told from their ground.

Ratios of luminance as WCAG 2.1 defines them (1.4.3 text 4.5:1, 1.4.11 graphics 3:1).
"""

import json
import re

TEXT = 4.5
MARK = 3.0
THEMES = {"": "#ffffff", "_dark": "#1e1e1e"}
WORDS = {"text", "muted", "heading", "dimension", "fall_line", "wind", "caution", "stop"}
# Decoration, of which nothing hangs on being seen; new_pin is the rim of a filled pin.
SLIGHT = {"grid", "soil", "new_pin"}
# Text, ground, red, orange and blue of GTK's own theme, light and dark.
DESKTOP = [("#2e3436", "#f6f5f4", "#cc0000", "#f57900", "#3584e4"),
           ("#eeeeec", "#353535", "#cc0000", "#f57900", "#15539e")]


def channels(colour):
    return [int(colour[i:i + 2], 16) / 255 for i in (1, 3, 5)]


def mix(one, two, share):
    return [a * (1 - share) + b * share for a, b in zip(channels(one), channels(two))]


def luminance(rgb):
    linear = [c / 12.92 if c <= 0.03928 else ((c + 0.055) / 1.055) ** 2.4 for c in rgb]
    return sum(share * c for share, c in zip((0.2126, 0.7152, 0.0722), linear))


def ratio(one, two):
    low, high = sorted((luminance(one), luminance(two)))
    return (high + 0.05) / (low + 0.05)


def palette_faults(text):
    faults = []
    for role, look in json.loads(text)["roles"].items():
        least = TEXT if role in WORDS else MARK
        for theme, paper in THEMES.items():
            line = look["line" + theme]
            if line == "none" or role in SLIGHT:
                continue
            has = ratio(channels(line), channels(paper))
            if has < least:
                faults.append(f"{role}{theme}: {has:.1f}:1, not {least}:1")
    return faults


def number(style, pattern):
    return float(re.search(pattern, style).group(1))


def style_faults(style):
    looks = {
        "dim-label": (None, 1 - number(style, r"\.dim-label[^}]*opacity: ([\d.]+)"), TEXT),
        "placeholder": (None, 1 - number(style, r"placeholder \{ opacity: ([\d.]+)"), TEXT),
        "stop": (2, number(style, r"image\.stop .*fg_color, ([\d.]+)\)"), MARK),
        "caution": (3, number(style, r"image\.caution .*fg_color, ([\d.]+)\)"), MARK),
        "error": (2, number(style, r"entry\.error .*fg_color, ([\d.]+)\)"), MARK),
        "focus": (4, number(style, r"focus_ring mix.*fg_color, ([\d.]+)\)"), MARK),
    }
    faults = []
    for theme in DESKTOP:
        words, ground = theme[:2]
        for name, (colour, share, least) in looks.items():
            seen = mix(words, ground, share) if colour is None \
                else mix(theme[colour], words, share)
            has = ratio(seen, channels(ground))
            if has < least:
                faults.append(f"{name} on {ground}: {has:.1f}:1, not {least}:1")
    return faults
