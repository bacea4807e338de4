"""Puts the runs of a painting together to pages, each run in the layers that a reader can switch.

Optional content as in ISO 32000-1, 8.11: one group for each overlay, and a membership dictionary
for what is seen while any of several is. With all groups on, a page looks as it was painted.
"""

from collections.abc import Iterator, Mapping, Sequence
from io import BytesIO
from itertools import count, islice
from types import MappingProxyType

from pikepdf import Array, Dictionary, Name, Object, Page, Pdf

from enclosure_app.drawing.marks import Overlay, Overlays
from enclosure_app.language import later, say
from enclosure_app.reports.pdf.pages import Painting, Run
from enclosure_app.reports.pdf.text import pdf_text

_NAMES = {
    Overlay.LINEWORK: later("Linework"),
    Overlay.WATER: later("Water"),
    Overlay.AIR: later("Air"),
    Overlay.VAPOUR: later("Vapour"),
    Overlay.HEAT: later("Heat"),
    Overlay.FINDINGS: later("Findings"),
}


def layered(painting: Painting) -> tuple[Pdf, Mapping[Overlay, Object]]:
    """Return a document of the pages that were painted, and its optional-content groups.

    Each run that has a tag is marked with its role and a number, counted from 0 on its page; what
    has none is marked as an artifact (ISO 32000-1, 14.8.2.2).
    """
    pdf, source = Pdf.new(), Pdf.open(BytesIO(painting.data))
    groups = _groups(source, painting)
    left = iter(list(source.pages))
    for runs in painting.runs:
        pdf.pages.append(_joined(source, list(islice(left, len(runs))), runs, groups))
    offered = {overlay: pdf.copy_foreign(group) for overlay, group in groups.items()}
    if offered:
        pdf.Root.OCProperties = _offered(list(offered.values()))
    return pdf, MappingProxyType(offered)


def _groups(pdf: Pdf, painting: Painting) -> Mapping[Overlay, Object]:
    """Return a group for each overlay that something lies on."""
    used = {overlay for runs in painting.runs for run in runs for overlay in run.overlays}
    return {
        overlay: pdf.make_indirect(
            Dictionary(Type=Name.OCG, Name=pdf_text(say(_NAMES[overlay])), Intent=Name.View)
        )
        for overlay in Overlay
        if overlay in used
    }


def _offered(groups: list[Object]) -> Dictionary:
    """Return what offers the groups to a reader, all of them on."""
    shown = Dictionary(
        Name=pdf_text(say("All layers")),
        BaseState=Name.ON,
        Order=Array(groups),
        ListMode=Name.AllPages,
    )
    return Dictionary(OCGs=Array(groups), D=shown)


def _joined(
    pdf: Pdf, pages: list[Page], runs: Sequence[Run], groups: Mapping[Overlay, Object]
) -> Page:
    """Make one page of several, one for each run."""
    properties, numbers = Dictionary(), count()
    content = b"".join(
        _marked(_told(page, run, numbers), run.overlays, properties, groups, pdf)
        for page, run in zip(pages, runs, strict=True)
    )
    resources = _together(pages)
    if properties.keys():
        resources.Properties = properties
    whole = pages[0]
    whole.obj.Contents = pdf.make_stream(content)
    whole.obj.Resources = resources
    return whole


def _told(page: Page, run: Run, numbers: Iterator[int]) -> bytes:
    """Return what a run paints, marked with what it is."""
    content = b"q\n" + page.obj.Contents.read_bytes().strip() + b"\nQ\n"
    if run.tag is None:
        return b"/Artifact BMC\n" + content + b"EMC\n"
    begun = f"/{run.tag.role} <</MCID {next(numbers)}>> BDC\n"
    return begun.encode("ascii") + content + b"EMC\n"


def _marked(
    content: bytes,
    overlays: Overlays,
    properties: Dictionary,
    groups: Mapping[Overlay, Object],
    pdf: Pdf,
) -> bytes:
    """Return what a run paints, marked as belonging to its layers."""
    if not overlays:
        return content
    name = "/" + "-".join(overlays)
    if name not in properties:
        properties[name] = _membership(pdf, overlays, groups)
    return f"/OC {name} BDC\n".encode("ascii") + content + b"EMC\n"


def _membership(pdf: Pdf, overlays: Overlays, groups: Mapping[Overlay, Object]) -> Object:
    """Return what says when something is seen: with any layer of several; a finding with them all."""
    if len(overlays) == 1:
        return groups[overlays[0]]
    policy = Name.AllOn if Overlay.FINDINGS in overlays else Name.AnyOn
    members = Array([groups[each] for each in overlays])
    return pdf.make_indirect(Dictionary(Type=Name.OCMD, OCGs=members, P=policy))


def _together(pages: Sequence[Page]) -> Dictionary:
    """Return the resources of all runs; Qt names each by its number in the document."""
    together: dict[str, dict[str, Object]] = {}
    for page in pages:
        for kind, named in page.obj.Resources.items():
            if named.keys():
                together.setdefault(kind, {}).update(named.items())
    return Dictionary({kind: Dictionary(named) for kind, named in together.items()})
