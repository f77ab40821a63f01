#!/usr/bin/env python3
"""Recalculates spreadsheets with LibreOffice and compares every formula with the figure stored beside it.

LibreOffice trusts stored figures, so they are taken out first: what comes back was worked out from the formulas alone.
Usage: recalculate.py FILE.xlsx ...; exits with 1 when a figure differs by half a smallest coin or more.
"""

import re
import subprocess
import sys
import tempfile
import zipfile
from pathlib import Path
from xml.etree import ElementTree

MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
TOLERANCE = 0.005


def column(number):
    letters = ""
    while number:
        number, digit = divmod(number - 1, 26)
        letters = chr(65 + digit) + letters
    return letters


def figures(path):
    """Stored figures of all cells, and which of them are formulas, by sheet number and cell."""
    values, formulas = {}, set()
    with zipfile.ZipFile(path) as archive:
        names = sorted(
            (name for name in archive.namelist() if re.fullmatch(r"xl/worksheets/sheet\d+\.xml", name)),
            key=lambda name: int(re.search(r"\d+", name.rsplit("/", 1)[1]).group()),
        )
        for sheet, name in enumerate(names):
            root = ElementTree.fromstring(archive.read(name))
            for r, row in enumerate(root.iter(MAIN + "row")):
                for c, cell in enumerate(row.iter(MAIN + "c")):
                    key = (sheet, cell.get("r") or f"{column(c + 1)}{int(row.get('r') or r + 1)}")
                    value = cell.find(MAIN + "v")
                    if cell.find(MAIN + "f") is not None:
                        formulas.add(key)
                    if value is not None and cell.get("t") in (None, "n") and value.text:
                        values[key] = float(value.text)
    return values, formulas


def without_figures(path, target):
    """A copy of which no formula has a figure any more."""
    with zipfile.ZipFile(path) as source, zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as copy:
        for entry in source.infolist():
            data = source.read(entry)
            if entry.filename.startswith("xl/worksheets/sheet"):
                data = re.sub(rb"(<f>[^<]*</f>)<v>[^<]*</v>", rb"\1", data)
            copy.writestr(entry, data)


def check(path):
    expected, formulas = figures(path)
    with tempfile.TemporaryDirectory() as folder:
        bare = Path(folder) / "bare.xlsx"
        without_figures(path, bare)
        subprocess.run(
            ["soffice", f"-env:UserInstallation=file://{folder}/profile", "--headless", "--convert-to",
             "xlsx:Calc MS Excel 2007 XML", "--outdir", f"{folder}/out", str(bare)],
            check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=180,
        )
        worked, _ = figures(Path(folder) / "out" / "bare.xlsx")
    wrong = [
        f"{path}: sheet {sheet + 1} {cell}: {worked.get((sheet, cell))} worked out, {expected.get((sheet, cell))} stored"
        for sheet, cell in sorted(formulas)
        if abs(worked.get((sheet, cell), float("inf")) - expected.get((sheet, cell), float("-inf"))) >= TOLERANCE
    ]
    print("\n".join(wrong) if wrong else f"{path}: {len(formulas)} formulas come to the figures stored beside them")
    return not wrong and len(formulas) > 0


sys.exit(0 if all([check(path) for path in sys.argv[1:]]) else 1)
