"""Reads a DXF file with ezdxf and prints what it holds as JSON.

Usage: python3 read.py FILE
"""
import json
import sys

import ezdxf
from ezdxf.lldxf.encoding import decode_dxf_unicode

HEADER = ["$ACADVER", "$DWGCODEPAGE", "$INSUNITS", "$MEASUREMENT", "$LUNITS"]


def xy(v):
    return [v[0], v[1]]


def text(e):
    """The text a reader shows; surrogate pairs of the escapes are joined."""
    s = decode_dxf_unicode(e.plain_text())
    return s.encode("utf-16", "surrogatepass").decode("utf-16")


def shape(e):
    kind, d = e.dxftype(), e.dxf
    if kind == "LINE":
        return {"points": [xy(d.start), xy(d.end)]}
    if kind == "CIRCLE":
        return {"points": [xy(d.center)], "radius": d.radius}
    if kind == "ARC":
        return {
            "points": [xy(d.center), xy(e.start_point), xy(e.end_point)],
            "radius": d.radius,
            "angles": [d.start_angle, d.end_angle],
        }
    if kind == "LWPOLYLINE":
        return {"points": [xy(v) for v in e.get_points("xy")], "closed": e.closed}
    if kind == "TEXT":
        align, at, _ = e.get_pos()
        return {
            "points": [xy(at)],
            "radius": d.height,
            "angles": [d.rotation],
            "text": text(e),
            "align": align,
        }
    raise SystemExit("unexpected entity " + kind)


doc = ezdxf.readfile(sys.argv[1])
entities = [
    {"kind": e.dxftype(), "layer": e.dxf.layer, "owner": e.dxf.owner, **shape(e)}
    for e in doc.modelspace()
]
view = doc.viewports.get("*Active")[0]
audit = doc.audit()
json.dump(
    {
        "header": {k: str(doc.header[k]) for k in HEADER},
        "min": xy(doc.header["$EXTMIN"]),
        "max": xy(doc.header["$EXTMAX"]),
        "view": [*xy(view.dxf.center), view.dxf.height],
        "space": doc.modelspace().layout_key,
        "layers": [
            {
                "name": l.dxf.name,
                "colour": l.dxf.color,
                "line": l.dxf.linetype,
                "weight": l.dxf.lineweight,
                "dash": [t.value for t in doc.linetypes.get(l.dxf.linetype).pattern_tags.tags if t.code == 49],
            }
            for l in doc.layers
            if l.dxf.name != "Defpoints"  # the reader adds it by itself
        ],
        "entities": entities,
        "errors": [f"{e.code} {e.message}" for e in audit.errors],
        "fixes": [f"{e.code} {e.message}" for e in audit.fixes],
    },
    sys.stdout,
)
