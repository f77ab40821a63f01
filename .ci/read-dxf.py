"""Reads DXF files with an independent general-purpose reader: no error, nothing to mend, millimetres, layers known."""

import sys

import ezdxf

for path in sys.argv[1:]:
    drawing = ezdxf.readfile(path)
    audit = drawing.audit()
    faults = [str(fault.message) for fault in [*audit.errors, *audit.fixes]]
    layers = {layer.dxf.name for layer in drawing.layers}
    faults += [f"layer {entity.dxf.layer} is not defined" for entity in drawing.modelspace() if entity.dxf.layer not in layers]
    if drawing.units != 4:
        faults.append(f"units {drawing.units}, not millimetres")
    if faults:
        sys.exit(f"{path}: {'; '.join(faults[:5])}")
    print(f"{path}: {len(list(drawing.modelspace()))} entities, {len(layers)} layers, nothing to mend")
