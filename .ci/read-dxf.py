"""Reads DXF files with an independent general-purpose reader: no error, nothing to mend, millimetres, layers known, as large as
the sheet, and as many texts, circles and outlines as the same sheet's SVG."""

import pathlib
import re
import sys

import ezdxf
from ezdxf import bbox

COUNTED = {"TEXT": "text", "CIRCLE": "circle"}

for path in sys.argv[1:]:
    drawing = ezdxf.readfile(path)
    audit = drawing.audit()
    faults = [str(fault.message) for fault in [*audit.errors, *audit.fixes]]
    layers = {layer.dxf.name for layer in drawing.layers}
    entities = list(drawing.modelspace())
    faults += [f"layer {entity.dxf.layer} is not defined" for entity in entities if entity.dxf.layer not in layers]
    if drawing.units != 4:
        faults.append(f"units {drawing.units}, not millimetres")
    drawn = bbox.extents([entity for entity in entities if entity.dxftype() != "TEXT"], fast=True)
    least, most = drawing.header["$EXTMIN"], drawing.header["$EXTMAX"]
    told = [least[0], least[1], most[0], most[1]]
    found = [drawn.extmin.x, drawn.extmin.y, drawn.extmax.x, drawn.extmax.y]
    if any(abs(a - b) > 0.001 for a, b in zip(told, found)):
        faults.append(f"extents {found}, told {told}")
    picture = pathlib.Path(path).with_suffix(".svg")
    if picture.exists():
        text = picture.read_text(encoding="utf-8")
        for kind, tag in COUNTED.items():
            ours, read = len(re.findall(f"<{tag}[ >]", text)), sum(entity.dxftype() == kind for entity in entities)
            if ours != read:
                faults.append(f"{read} {kind}, {ours} in the scene")
    if faults:
        sys.exit(f"{path}: {'; '.join(faults[:5])}")
    print(f"{path}: {len(entities)} entities, {len(layers)} layers, nothing to mend")
